// Ten years of quarterly walkdowns of 400 doors, handed over to a twin: how long the taking lasts
// against the time that SQLite's own interface needs for INSERT OR IGNORE of the same rows into the
// same schema in one transaction. Aim: not more than twice, (a) where the twin has every fact
// already, (b) where it has none of them but as many of its own. Taking begins with the bytes of
// the file: unpacking, hashes, signature and reading every fact are part of it.
#include <array>
#include <cstdio>
#include <cstdlib>
#include <functional>
#include <memory>
#include <optional>
#include <random>
#include <string>
#include <vector>

#include <QCoreApplication>
#include <QFile>
#include <QTemporaryDir>
#include <sqlite3.h>

#include "app/exchange/file_bytes.h"
#include "app/exchange/register_csv.h"
#include "app/handover/give.h"
#include "app/handover/take.h"
#include "core/evidence/fact_id.h"
#include "tests/bench/best_ms.h"
#include "ui/words/phrase_words.h"

using namespace latchround;

namespace {

constexpr int walkdowns = 40;

template <class T>
T orDie(Result<T> result) {
    if (result)
        return std::move(*result);
    std::fprintf(stderr, "%s\n", ui::inOneLine(result.error()).c_str());
    std::exit(1);
}

/// Ten years of one tablet; the number sets its ids apart from another's.
class History {
public:
    History(const Arrangement& arrangement, unsigned number)
        : m_arrangement(arrangement)
        , m_random(number) {
        m_person = nextId();
        facts.push_back({{m_person, {m_now_ms, 0}, m_person, "tablet", {}},
                         PersonJoined{"A. Ahn", "surveyor"}});
        for (int i = 0; i < walkdowns; ++i)
            walk(i);
    }

    std::vector<Fact> facts;

private:
    FactId nextId() {
        m_now_ms += 2000;
        std::array<std::uint8_t, 10> random{};
        for (std::uint8_t& byte : random)
            byte = static_cast<std::uint8_t>(m_random());
        return factIdOf(m_now_ms, random);
    }
    FactId add(FactBody body) {
        FactId id = nextId();
        facts.push_back({{id, {m_now_ms, 0}, m_person, "tablet", {}}, std::move(body)});
        return id;
    }
    void walk(int number) {
        m_now_ms = 1'100'000'000'000 + std::int64_t{7'862'400'000} * number;
        WalkdownBegun plan;
        plan.purpose = Purpose::Quarterly;
        for (const Door& door : m_arrangement.doors)
            plan.doors.push_back(door.number);
        const FactId walkdown = add(std::move(plan));
        for (const Door& door : m_arrangement.doors) {
            for (const char* row :
                 {"local-release", "hold-back", "leaf-gap", "latch-holds", "no-wedge", "seal-whole",
                  "sill-clear", "pocket-clear", "alarm-heard", "plate-fits"})
                add(Observation{walkdown, door.number, row, Side::None, Answer::Yes});
            for (std::uint32_t run = 0; run < 2; ++run)
                time(walkdown, door, 16'000 + run);
        }
        add(WalkdownEnded{walkdown, {}});
    }
    void time(const FactId& walkdown, const Door& door, std::uint32_t closing_ms) {
        const FactId run =
            add(RunStarted{walkdown, door.number, RunKind::Closing, Release::LetGo, 0.2, {}});
        add(Mark{run, MarkKind::LeafMoves, 1000, {}, InputDevice::Touch, {}});
        add(Mark{run, MarkKind::Shut, 1000 + closing_ms, {}, InputDevice::Touch, {}});
        add(RunEnded{run, RunOutcome::Complete, {}});
    }

    const Arrangement& m_arrangement;
    std::mt19937 m_random;
    std::int64_t m_now_ms = 1'000'000'000'000;
    FactId m_person;
};

/// The baseline: nothing but binding and stepping.
class Bare {
public:
    explicit Bare(const QString& path) {
        sqlite3_open_v2(path.toUtf8().constData(), &m_handle, SQLITE_OPEN_READWRITE, nullptr);
        run("PRAGMA journal_mode=WAL");
        run("PRAGMA synchronous=FULL");
        run("PRAGMA foreign_keys=ON");
        m_fact = prepared("fact VALUES (?,?,?,?,?,?,?,?,?)");
        m_person = prepared("person_joined VALUES (?,?,?,?)");
        m_begun = prepared("walkdown_begun VALUES (?,?,?,?,?,?,?,?,?,?,?,?,?,?)");
        m_door = prepared("walkdown_begun_doors VALUES (?,?,?)");
        m_ended = prepared("walkdown_ended VALUES (?,?)");
        m_seen = prepared("observation VALUES (?,?,?,?)");
        m_run = prepared("run_started VALUES (?,?,?,?,?)");
        m_mark = prepared("mark VALUES (?,?,?,?,?,?,?)");
        m_run_ended = prepared("run_ended VALUES (?,?,?,?,?)");
    }
    ~Bare() {
        for (sqlite3_stmt* statement : m_all)
            sqlite3_finalize(statement);
        sqlite3_close(m_handle);
    }
    Bare(const Bare&) = delete;
    Bare& operator=(const Bare&) = delete;

    void insertOrIgnore(const std::vector<Fact>& facts) {
        run("BEGIN IMMEDIATE");
        for (const Fact& fact : facts) {
            header(fact);
            std::visit([&](const auto& body) { insert(fact.stamp.id, body); }, fact.body);
        }
        run("COMMIT");
    }

private:
    void run(const char* sql) {
        if (sqlite3_exec(m_handle, sql, nullptr, nullptr, nullptr) != SQLITE_OK)
            die();
    }
    void die() {
        std::fprintf(stderr, "baseline: %s\n", sqlite3_errmsg(m_handle));
        std::exit(1);
    }
    sqlite3_stmt* prepared(const std::string& into) {
        sqlite3_stmt* statement = nullptr;
        if (sqlite3_prepare_v2(m_handle, ("INSERT OR IGNORE INTO " + into).c_str(), -1, &statement,
                               nullptr) != SQLITE_OK)
            die();
        m_all.push_back(statement);
        return statement;
    }
    static void bind(sqlite3_stmt* statement, int place, std::string_view text) {
        sqlite3_bind_text(statement, place, text.data() ? text.data() : "",
                          static_cast<int>(text.size()), SQLITE_STATIC);
    }
    static void bind(sqlite3_stmt* statement, int place, std::int64_t value) {
        sqlite3_bind_int64(statement, place, value);
    }
    static void bind(sqlite3_stmt* statement, int place, double value) {
        sqlite3_bind_double(statement, place, value);
    }
    static void bind(sqlite3_stmt* statement, int place, std::nullptr_t) {
        sqlite3_bind_null(statement, place);
    }
    template <class... Values>
    void step(sqlite3_stmt* statement, const Values&... values) {
        int place = 0;
        (bind(statement, ++place, values), ...);
        if (sqlite3_step(statement) != SQLITE_DONE)
            die();
        sqlite3_reset(statement);
    }

    void header(const Fact& fact) {
        const std::string* walkdown = nullptr;
        const std::string* door = nullptr;
        std::visit(
            [&](const auto& body) {
                if constexpr (requires { body.walkdown; })
                    walkdown = &body.walkdown;
                if constexpr (requires { body.door; })
                    door = &body.door;
            },
            fact.body);
        const Stamp& stamp = fact.stamp;
        const std::string_view kind = factKindWords[fact.body.index()];
        const std::int64_t offset = stamp.when.ship_offset_minutes;
        if (walkdown && door)
            step(m_fact, stamp.id, kind, stamp.when.utc_ms, offset, stamp.person, stamp.device,
                 nullptr, *walkdown, *door);
        else if (walkdown)
            step(m_fact, stamp.id, kind, stamp.when.utc_ms, offset, stamp.person, stamp.device,
                 nullptr, *walkdown, nullptr);
        else
            step(m_fact, stamp.id, kind, stamp.when.utc_ms, offset, stamp.person, stamp.device,
                 nullptr, nullptr, nullptr);
    }
    void insert(const FactId& id, const PersonJoined& body) {
        step(m_person, id, body.name, body.role.text, nullptr);
    }
    void insert(const FactId& id, const WalkdownBegun& body) {
        step(m_begun, id, word(body.purpose), body.scope.text, nullptr, body.heel_deg,
             body.control_station.text, nullptr, body.channel.text, nullptr, body.start_word,
             body.stop_word, body.may_stop.text, nullptr, std::int64_t{body.brief_read});
        for (std::size_t i = 0; i < body.doors.size(); ++i)
            step(m_door, id, static_cast<std::int64_t>(i), body.doors[i]);
    }
    void insert(const FactId& id, const WalkdownEnded& body) { step(m_ended, id, body.remark); }
    void insert(const FactId& id, const Observation& body) {
        step(m_seen, id, body.requirement, word(body.side), word(body.answer));
    }
    void insert(const FactId& id, const RunStarted& body) {
        step(m_run, id, word(body.kind), word(body.release), body.heel_deg, nullptr);
    }
    void insert(const FactId& id, const Mark& body) {
        step(m_mark, id, body.run, word(body.kind), std::int64_t{*body.event_ms}, nullptr,
             word(body.device), nullptr);
    }
    void insert(const FactId& id, const RunEnded& body) {
        step(m_run_ended, id, body.run, word(body.outcome), body.reason.text, nullptr);
    }
    template <class Other>
    void insert(const FactId&, const Other&) {
        std::fprintf(stderr, "baseline: no such kind in the history\n");
        std::exit(1);
    }

    sqlite3* m_handle = nullptr;
    std::vector<sqlite3_stmt*> m_all;
    sqlite3_stmt *m_fact, *m_person, *m_begun, *m_door, *m_ended, *m_seen, *m_run, *m_mark,
        *m_run_ended;
};

std::unique_ptr<SqliteRegister> opened(const QString& path) {
    return orDie(SqliteRegister::open(path));
}

void fill(const QString& path, const Arrangement& arrangement, const std::vector<Fact>& facts) {
    const auto file = opened(path);
    if (Result<> done = file->takeIn(arrangement, facts, {1'000'000'000'000, 0}); !done) {
        std::fprintf(stderr, "%s\n", ui::inOneLine(done.error()).c_str());
        std::exit(1);
    }
}

double msOf(const std::function<void()>& work) {
    return bestMs(1, work);
}

struct Costs {
    double bare = 1e9;
    double read = 1e9;
    double take = 1e9;
};

/// Each round begins with the same file; what is compared runs side by side.
Costs compare(const QTemporaryDir& folder, const QString& base, const std::string& bytes,
              const std::vector<Fact>& rows, int rounds) {
    Costs best;
    const QString path = folder.filePath(QStringLiteral("round.db"));
    const auto begin = [&] {
        for (const char* ending : {"", "-wal", "-shm"})
            QFile::remove(path + QString::fromLatin1(ending));
        QFile::copy(base, path);
    };
    for (int round = 0; round < rounds; ++round) {
        begin();
        {
            Bare bare(path);
            best.bare = std::min(best.bare, msOf([&] { bare.insertOrIgnore(rows); }));
        }
        begin();
        const auto file = opened(path);
        std::optional<Handover> handover;
        best.read = std::min(
            best.read, msOf([&] { handover = orDie(Handover::read(bytes, "h.zip", nullptr)); }));
        best.take = std::min(best.take, msOf([&] { orDie(take(*handover, *file, {})); }));
    }
    return best;
}

void print(const char* what, const Costs& costs) {
    std::printf("  %s: INSERT OR IGNORE alone %.0f ms; taking %.0f ms, %.2f times; with reading "
                "and checking the file %.0f ms, %.2f times (aim 2)\n",
                what, costs.bare, costs.take, costs.take / costs.bare, costs.read + costs.take,
                (costs.read + costs.take) / costs.bare);
}

} // namespace

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    const int rounds = argc > 1 ? std::atoi(argv[1]) : 1; // the best of so many
    const std::string csv = orDie(
        bytesOf(std::string(LATCHROUND_SOURCE) + "/sample_vessels/oriveth-meridian/register.csv",
                64u << 20));
    const Arrangement arrangement = arrangementFromCsv(csv, "register.csv").value();
    const History one(arrangement, 1);
    const QTemporaryDir folder;
    const QString base = folder.filePath(QStringLiteral("base.db"));
    const QString twin = folder.filePath(QStringLiteral("twin.db"));
    fill(base, arrangement, one.facts);
    fill(twin, arrangement, one.facts);
    const auto accept = [&](const QString& path) {
        const auto giver = opened(path);
        const auto taker = opened(base);
        static std::int64_t now_ms = 1'900'000'000'000;
        const Fact accepted{
            {factIdOf(++now_ms, {}), {}, one.facts.front().stamp.id, taker->device(), {}},
            KeyAccepted{orDie(DeviceKey::of(*giver)).publicHex(), giver->device(), ""}};
        return taker->record({&accepted, 1}) ? orDie(handoverOf(*giver, {})).bytes : std::string{};
    };
    const std::string same = accept(twin);
    std::printf("%zu facts of 10 years and %zu doors, handed over in a file of %.0f MB\n",
                one.facts.size(), arrangement.doors.size(), static_cast<double>(same.size()) / 1e6);
    const Costs known = compare(folder, base, same, one.facts, rounds);
    print("all of them known", known);

    const QString other = folder.filePath(QStringLiteral("other.db"));
    const History second(arrangement, 2);
    fill(other, arrangement, second.facts);
    const std::string fresh = accept(other);
    print("all of them new", compare(folder, base, fresh, second.facts, rounds));
    return 0;
}
