// What a mark costs while a long job runs on its worker, beside what it costs while nothing else
// does, turn by turn in one run: from the moment at which it is due to the moment at which it is on
// disk, in the register or, while somebody else writes there, in the file of what waits. Aim: at
// the 99th of 100 not more than 1.25 times.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <functional>
#include <string>
#include <vector>

#include <QApplication>
#include <QDir>
#include <QEventLoop>
#include <QTemporaryDir>
#include <QTimer>

#include "app/catalogue/catalogue_place.h"
#include "app/desktop/waiting_file.h"
#include "app/desktop/worker.h"
#include "app/handover/device_key.h"
#include "app/handover/give.h"
#include "app/handover/take.h"
#include "app/report/made_report.h"
#include "app/vessels/sample_vessel.h"
#include "core/evidence/fact_id.h"
#include "tests/ui/memory_register.h"
#include "ui/ink/typeface.h"
#include "ui/words/phrase_words.h"

using namespace latchround;

namespace {

constexpr int between_ms = 12;
constexpr int marks_a_turn = 100;
constexpr int turns = 8;
constexpr std::size_t runs_at_a_door = 6;
constexpr int unmeasured = 20; ///< first marks of a turn: caches fill

using Clock = std::chrono::steady_clock;

template <class T, class Fault>
T orDie(tl::expected<T, Fault> result) {
    if (result)
        return std::move(*result);
    if constexpr (std::is_same_v<Fault, Errors>)
        std::fprintf(stderr, "%s\n", ui::inOneLine(result.error().front()).c_str());
    else
        std::fprintf(stderr, "%s\n", ui::inOneLine(result.error()).c_str());
    std::exit(1);
}

/// Keeps what waits as the program does.
class OnDisk : public ui::WaitingStore {
public:
    explicit OnDisk(const QString& file)
        : m_waiting(file) {}
    Result<> keep(const std::vector<ui::WaitingBatch>& waiting) override {
        kept_aside += waiting.empty() ? 0 : 1;
        return m_waiting.keep(waiting);
    }
    Result<QString> putAside(const std::vector<ui::WaitingBatch>& refused) override {
        return m_waiting.putAside(refused);
    }
    int kept_aside = 0;

private:
    WaitingFile m_waiting;
};

double quantile(std::vector<double> values, double part) {
    const auto at = static_cast<std::ptrdiff_t>(part * static_cast<double>(values.size() - 1));
    std::nth_element(values.begin(), values.begin() + at, values.end());
    return values[static_cast<std::size_t>(at)];
}

/// A vessel of 400 doors on whose newest walkdown doors are timed, one after the other, each from
/// both sides, from the control station and again.
class Timed {
public:
    Timed(const QString& file, const Moment& now)
        : m_on_disk(file)
        , m_register(opened(file))
        , m_session(*m_register, ports(), builtInCatalogue().value()) {
        m_outside.clock = now;
        if (!orDie(m_session.load().map([](auto) { return true; })))
            return;
        m_session.setPerson(m_session.join("A. Ahn", "surveyor"));
        WalkdownBegun plan;
        for (const Door& door : m_session.arrangement().doors)
            plan.doors.push_back(door.number);
        orDie(m_session.record(plan));
        m_timer.setTimerType(Qt::PreciseTimer);
        m_timer.setInterval(between_ms);
        QObject::connect(&m_timer, &QTimer::timeout, [this] { mark(); });
    }

    /// Marks until there are enough of them, while `meanwhile` runs.
    std::vector<double> turn(const std::function<void()>& meanwhile) {
        m_took_us.clear();
        m_due = Clock::now() + std::chrono::milliseconds(between_ms);
        m_timer.start();
        meanwhile();
        m_timer.stop();
        while (m_session.waiting() > 0) // its turn comes by itself
            QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
        m_took_us.erase(m_took_us.begin(),
                        m_took_us.begin() +
                            std::min<std::ptrdiff_t>(unmeasured, std::ssize(m_took_us)));
        return m_took_us;
    }
    bool isEnough() const { return m_took_us.size() >= marks_a_turn + unmeasured; }
    int keptAside() const { return m_on_disk.kept_aside; }
    const ui::VesselSession& session() const { return m_session; }

private:
    const ui::Ports& ports() {
        m_outside.setWaitingStore(m_on_disk);
        return m_outside.all();
    }
    static std::unique_ptr<SqliteRegister> opened(const QString& file) {
        OpenOptions options;
        options.busy_timeout_ms = 0; // as the desk has it
        return orDie(SqliteRegister::open(file, options));
    }
    void mark() {
        if (m_marks++ % 2 == 0) {
            m_run = m_session.newId();
            const std::string& door =
                m_session.doors()[m_runs++ / runs_at_a_door % m_session.doors().size()]
                    .door->number;
            std::vector<ui::Entry> entries;
            entries.push_back(
                {RunStarted{
                     m_session.walkdown()->id, door, RunKind::Closing, Release::LetGo, 0.2, {}},
                 std::nullopt, m_run});
            entries.push_back({Mark{m_run, MarkKind::LeafMoves, 1000, {}, InputDevice::Touch, {}}});
            (void)m_session.record(std::move(entries));
        } else {
            (void)m_session.record(Mark{m_run, MarkKind::Shut, 17000, {}, InputDevice::Touch, {}});
        }
        const auto now = Clock::now();
        m_took_us.push_back(std::chrono::duration<double, std::micro>(now - m_due).count());
        while (m_due <= now)
            m_due += std::chrono::milliseconds(between_ms);
    }

    OnDisk m_on_disk;
    ui::FakePorts m_outside;
    std::unique_ptr<SqliteRegister> m_register;
    ui::VesselSession m_session;
    QTimer m_timer;
    Clock::time_point m_due;
    FactId m_run;
    int m_marks = 0;
    std::size_t m_runs = 0;
    std::vector<double> m_took_us;
};

/// Another tablet with as many facts of its own as a large handover brings.
Handover fromAnotherTablet(const QString& folder, const Arrangement& arrangement) {
    const QString file = folder + QStringLiteral("/other.db");
    const auto other = orDie(SqliteRegister::open(file));
    std::vector<Fact> facts;
    std::int64_t now_ms = 1'700'000'000'000;
    FactId person;
    const auto add = [&](FactBody body) {
        const FactId id = factIdOf(++now_ms, {7});
        if (person.empty())
            person = id;
        facts.push_back({{id, {now_ms, 0}, person, other->device(), {}}, std::move(body)});
        return id;
    };
    add(PersonJoined{"B. Berg", "surveyor"});
    for (int walk = 0; walk < 4; ++walk) {
        WalkdownBegun plan;
        for (const Door& door : arrangement.doors)
            plan.doors.push_back(door.number);
        const FactId walkdown = add(plan);
        for (const Door& door : arrangement.doors)
            for (const char* row : {"local-release", "hold-back", "leaf-gap", "latch-holds",
                                    "no-wedge", "seal-whole", "sill-clear", "plate-fits"})
                add(Observation{walkdown, door.number, row, Side::None, Answer::Yes});
        add(WalkdownEnded{walkdown, {}});
    }
    if (const Result<> taken = other->takeIn(arrangement, facts, {1'600'000'000'000, 0}); !taken)
        std::exit(1);
    return orDie(Handover::read(orDie(handoverOf(*other, {})).bytes, "bench", nullptr));
}

void judge(const char* what, Timed& timed, const std::function<void(const Progress&)>& job) {
    std::vector<double> idle;
    std::vector<double> meanwhile;
    int jobs = 0;
    const int aside_before = timed.keptAside();
    for (int i = 0; i < turns; ++i) {
        const std::vector<double> quiet = timed.turn([&] {
            while (!timed.isEnough())
                QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
        });
        idle.insert(idle.end(), quiet.begin(), quiet.end());
        const std::vector<double> busy = timed.turn([&] {
            while (!timed.isEnough()) {
                doOnWorker({}, job);
                ++jobs;
            }
        });
        meanwhile.insert(meanwhile.end(), busy.begin(), busy.end());
    }
    const double ratio = quantile(meanwhile, 0.99) / quantile(idle, 0.99);
    std::printf("%-10s %6zu %10.0f %10.0f %6zu %10.0f %10.0f %6.2f %s (%d jobs, %d kept aside)\n",
                what, idle.size(), quantile(idle, 0.5), quantile(idle, 0.99), meanwhile.size(),
                quantile(meanwhile, 0.5), quantile(meanwhile, 0.99), ratio,
                ratio <= 1.25 ? "held" : "NOT HELD", jobs, timed.keptAside() - aside_before);
}

} // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    ui::readyTypeface();
    const QApplication application(argc, argv);
    const QTemporaryDir place(QDir(argc > 1 ? QString::fromLocal8Bit(argv[1]) : QDir::tempPath())
                                  .filePath(QStringLiteral("mark-meanwhile-XXXXXX")));
    qputenv("LATCHROUND_DATA", place.path().toUtf8());
    const Moment now{1795701520000, 60};
    const QString file = orDie(placeSampleVessel(QStringLiteral("oriveth-meridian"), now));
    Timed timed(file, now);
    const ui::VesselSession& session = timed.session();
    const Arrangement arrangement = session.arrangement();
    const Ledger known = session.ledger();
    const Catalogue catalogue = builtInCatalogue().value();
    OpenOptions checked;
    checked.is_checked = true;

    std::printf("one mark in %d ms, from due to on disk; aim: p99 at most 1.25 times idle\n",
                between_ms);
    std::printf("%-10s %6s %10s %10s %6s %10s %10s %6s\n", "", "idle", "median us", "p99 us",
                "marks", "median us", "p99 us", "ratio");

    const WalkdownReport report{
        arrangement, known, known.walkdowns().front().id, catalogue, now, "bench", {}, false};
    judge("report", timed, [&](const Progress& progress) {
        (void)orDie(madeReport(report, ReportKind::Survey, Format::Pdf, ProgressRange(progress)));
    });
    const QString csv =
        QStringLiteral(LATCHROUND_SOURCE "/sample_vessels/oriveth-meridian/register.csv");
    judge("import", timed, [&](const Progress& progress) {
        (void)orDie(takeInVessel(csv, now, ProgressRange(progress)));
    });
    const Handover handover = fromAnotherTablet(place.path(), arrangement);
    judge("merge", timed, [&](const Progress& progress) {
        const auto own = orDie(SqliteRegister::open(file, checked));
        (void)orDie(previewOf(handover, *own, known, progress));
    });
    return 0;
}
