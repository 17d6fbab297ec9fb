// What recording one mark costs beside the bare minimum: the same rows through prepared statements
// of SQLite itself, same pragmas, same schema, same file system, turn by turn in one run. Printed,
// never asserted.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <vector>

#include <QCoreApplication>
#include <QDir>
#include <QTemporaryDir>
#include <sqlite3.h>

#include "app/register/sqlite_register.h"
#include "core/evidence/fact_id.h"
#include "ui/words/phrase_words.h"

namespace latchround {
namespace {

constexpr int rounds = 2000;
constexpr int unmeasured = 100; ///< first rounds: caches fill, the log grows to its size

using Microseconds = std::chrono::duration<double, std::micro>;

[[noreturn]] void giveUp(const std::string& why) {
    std::fprintf(stderr, "%s\n", why.c_str());
    std::exit(1);
}

FactId idOf(int n) {
    return factIdOf(1795772533120 + n, {1, 2, 3, 4, 5, 6, 7, 8, 9, 10});
}

Fact factOf(int n, FactBody body) {
    return {{idOf(n), {1795772533120 + n, 60}, idOf(0), "tablet-1", std::nullopt}, std::move(body)};
}

Mark markOf(int n) {
    return {idOf(2), MarkKind::LeafMoves, static_cast<std::uint32_t>(n), n, InputDevice::Touch, {}};
}

std::unique_ptr<SqliteRegister> registerWithRun(const QString& file) {
    auto opened = SqliteRegister::open(file);
    if (!opened)
        giveUp(ui::inOneLine(opened.error()));
    Arrangement arrangement;
    arrangement.particulars.name = "Grey Heron";
    arrangement.decks = {{"5", "", 7}};
    arrangement.zones = {{"3", 40, 72}, {"4", 72, 104}};
    arrangement.boundaries = {{"3/4", Place::ZoneBulkhead, "3", "4", 72, FireClass::A60}};
    Door door;
    door.number = "5-32";
    door.deck = "5";
    door.boundary = "3/4";
    door.opening_m = 1.4;
    arrangement.doors = {door};
    const std::vector<Fact> start{
        factOf(0, PersonJoined{"A. Ahn", "surveyor"}), factOf(1, WalkdownBegun{}),
        factOf(2, RunStarted{idOf(1), "5-32", RunKind::Closing, Release::Remote, 0})};
    Result<> done = (*opened)->adopt(arrangement, {});
    if (done)
        done = (*opened)->record(start);
    if (!done)
        giveUp(ui::inOneLine(done.error()));
    return std::move(*opened);
}

/// The least that puts the two rows of a mark on disk.
class BareMarks {
public:
    explicit BareMarks(const QString& file) {
        check(sqlite3_open(file.toUtf8().constData(), &m_handle));
        check(sqlite3_exec(m_handle,
                           "PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL;"
                           "PRAGMA foreign_keys=ON; PRAGMA trusted_schema=OFF",
                           nullptr, nullptr, nullptr));
        m_begin = prepared("BEGIN IMMEDIATE");
        m_fact = prepared("INSERT INTO fact (id, kind, utc_ms, ship_offset_minutes, person, device)"
                          " VALUES (?, 'mark', ?, 60, ?, 'tablet-1')");
        m_mark = prepared("INSERT INTO mark (fact, run, mark, event_ms, steady_ns, input_device)"
                          " VALUES (?, ?, 'moves', ?, ?, 'touch')");
        m_commit = prepared("COMMIT");
    }
    BareMarks(const BareMarks&) = delete;
    BareMarks& operator=(const BareMarks&) = delete;
    ~BareMarks() {
        for (sqlite3_stmt* statement : {m_begin, m_fact, m_mark, m_commit})
            sqlite3_finalize(statement);
        sqlite3_close(m_handle);
    }

    void record(int n) {
        const FactId id = idOf(n);
        const FactId run = idOf(2);
        const FactId person = idOf(0);
        step(m_begin);
        text(m_fact, 1, id);
        sqlite3_bind_int64(m_fact, 2, 1795772533120 + n);
        text(m_fact, 3, person);
        step(m_fact);
        text(m_mark, 1, id);
        text(m_mark, 2, run);
        sqlite3_bind_int64(m_mark, 3, n);
        sqlite3_bind_int64(m_mark, 4, n);
        step(m_mark);
        step(m_commit);
    }

private:
    void check(int code) {
        if (code != SQLITE_OK)
            giveUp(sqlite3_errmsg(m_handle));
    }
    sqlite3_stmt* prepared(const char* sql) {
        sqlite3_stmt* statement = nullptr;
        check(sqlite3_prepare_v2(m_handle, sql, -1, &statement, nullptr));
        return statement;
    }
    static void text(sqlite3_stmt* statement, int place, const std::string& value) {
        sqlite3_bind_text(statement, place, value.data(), static_cast<int>(value.size()),
                          SQLITE_STATIC);
    }
    void step(sqlite3_stmt* statement) {
        if (sqlite3_step(statement) != SQLITE_DONE)
            giveUp(sqlite3_errmsg(m_handle));
        sqlite3_reset(statement);
    }

    sqlite3* m_handle = nullptr;
    sqlite3_stmt* m_begin = nullptr;
    sqlite3_stmt* m_fact = nullptr;
    sqlite3_stmt* m_mark = nullptr;
    sqlite3_stmt* m_commit = nullptr;
};

template <class Act>
double microsecondsOf(const Act& act) {
    const auto start = std::chrono::steady_clock::now();
    act();
    return Microseconds(std::chrono::steady_clock::now() - start).count();
}

double quantile(std::vector<double> values, double part) {
    const auto at = static_cast<std::ptrdiff_t>(part * static_cast<double>(values.size() - 1));
    std::nth_element(values.begin(), values.begin() + at, values.end());
    return values[static_cast<std::size_t>(at)];
}

void measure(const QString& folder) {
    const QTemporaryDir place(QDir(folder).filePath(QStringLiteral("mark-cost-XXXXXX")));
    if (!place.isValid())
        giveUp("cannot write to " + folder.toStdString());
    const auto opened = registerWithRun(place.filePath(QStringLiteral("register.db")));
    const QString bare_file = place.filePath(QStringLiteral("bare.db"));
    registerWithRun(bare_file).reset(); // the same schema and the same first rows
    BareMarks bare(bare_file);
    std::vector<double> register_us;
    std::vector<double> bare_us;
    for (int i = 0; i < rounds + unmeasured; ++i) {
        const int n = 10 + i;
        const Fact fact = factOf(n, markOf(n));
        double ours = 0;
        double least = 0;
        const auto measureOurs = [&] {
            ours = microsecondsOf([&] {
                if (const Result<> done = opened->record({&fact, 1}); !done)
                    giveUp(ui::inOneLine(done.error()));
            });
        };
        const auto measureLeast = [&] { least = microsecondsOf([&] { bare.record(n); }); };
        if (i % 2 == 0) { // neither always follows the other's flush
            measureOurs();
            measureLeast();
        } else {
            measureLeast();
            measureOurs();
        }
        if (i < unmeasured)
            continue;
        register_us.push_back(ours);
        bare_us.push_back(least);
    }
    std::printf("one mark, %d times each, in %s\n", rounds, folder.toUtf8().constData());
    std::printf("%-28s %12s %12s\n", "", "median us", "p99 us");
    std::printf("%-28s %12.1f %12.1f\n", "SqliteRegister::record", quantile(register_us, 0.5),
                quantile(register_us, 0.99));
    std::printf("%-28s %12.1f %12.1f\n", "bare prepared statements", quantile(bare_us, 0.5),
                quantile(bare_us, 0.99));
    std::printf("%-28s %12.2f   (aim: at most 1.50)\n", "ratio of medians",
                quantile(register_us, 0.5) / quantile(bare_us, 0.5));
}

} // namespace
} // namespace latchround

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    latchround::measure(argc > 1 ? QString::fromLocal8Bit(argv[1]) : QDir::tempPath());
}
