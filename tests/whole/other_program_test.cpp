// Another program has to do with the register that is on the screen: it writes in it, and this one
// shows what it adds; or it takes the log away, and what this one said to be saved is put back.
#include <sys/file.h>

#include <QFile>
#include <QLabel>

#include <sqlite3.h>

#include "core/error/register_errors.h"
#include "tests/passing_time.h"
#include "tests/whole/walking.h"

namespace latchround::test {
namespace {

/// Another program that has the register to itself, and records with SQLite alone.
class OtherProgram {
public:
    explicit OtherProgram(const QString& vessel_register)
        : m_lock(vessel_register + QStringLiteral(".writer")) {
        EXPECT_TRUE(m_lock.open(QIODevice::ReadWrite));
        EXPECT_EQ(::flock(m_lock.handle(), LOCK_EX | LOCK_NB), 0);
        EXPECT_GT(m_lock.write("process 4711 on bridge\n"), 0);
        EXPECT_TRUE(m_lock.flush());
        EXPECT_EQ(sqlite3_open(vessel_register.toUtf8().constData(), &m_handle), SQLITE_OK);
    }
    ~OtherProgram() { sqlite3_close(m_handle); }
    OtherProgram(const OtherProgram&) = delete;
    OtherProgram& operator=(const OtherProgram&) = delete;

    void end(const FactId& walkdown) {
        const std::string id = "'" + factIdOf(momentNow().utc_ms + 60'000, {7}) + "'";
        run("BEGIN;"
            "INSERT INTO fact (id, kind, utc_ms, ship_offset_minutes, person, device, walkdown)"
            " SELECT " +
            id +
            ", 'walkdown-ended', utc_ms + 60000, ship_offset_minutes, person, 'other', id"
            " FROM fact WHERE id = '" +
            walkdown + "'; INSERT INTO walkdown_ended (fact, remark) VALUES (" + id +
            ", ''); COMMIT");
    }

private:
    void run(const std::string& sql) {
        EXPECT_EQ(sqlite3_exec(m_handle, sql.c_str(), nullptr, nullptr, nullptr), SQLITE_OK)
            << sqlite3_errmsg(m_handle);
    }
    QFile m_lock;
    sqlite3* m_handle = nullptr;
};

struct BesideAnotherProgram : testing::Test {
    QTemporaryDir data;
    Look look;
    DesktopApp app{builtInCatalogue().value(), {}, look};

    QString words(const char* name) const {
        return app.window()->findChild<QLabel*>(QLatin1String(name))->text();
    }
};

} // namespace

TEST_F(BesideAnotherProgram, ItSaysWhoWritesAndShowsWithinSecondsWhatIsAdded) {
    qputenv("LATCHROUND_DATA", data.path().toUtf8());
    const QString vessel = placeSampleVessel(sampleVessels().front(), momentNow()).value();
    Ledger ledger;
    const std::vector<Fact> facts = SqliteRegister::open(vessel).value()->facts().value();
    for (const Fact& fact : facts)
        ledger.add(fact);
    ASSERT_FALSE(ledger.walkdowns().back().end);
    OtherProgram other(vessel);
    ASSERT_TRUE(app.open(vessel));
    test::settle(*app.window());
    const auto* banner = app.window()->findChild<QWidget*>("not-saved");
    ASSERT_TRUE(banner->isVisible());
    QString said;
    for (const QLabel* label : banner->findChildren<QLabel*>())
        said += label->text();
    EXPECT_TRUE(said.contains("process 4711 on bridge")) << said.toStdString();
    EXPECT_EQ(words("walkdown-title"), "Walkdown under way");
    other.end(ledger.walkdowns().back().id);
    hands::until([&] { return words("walkdown-title") == "No walkdown under way"; },
                 "it is shown that the walkdown has ended");
}

class LogTakenAway : public Walk {};

/// Without a tap: what only the log held would be gone with the program.
TEST_F(LogTakenAway, WhatWasSaidToBeSavedIsPutBackWithinSeconds) {
    planAndBegin();
    test::settle(*window());
    for (ChoiceRow* row : doorScreen().findChildren<ChoiceRow*>())
        if (row->isVisible() && row->key(Answer::Yes, Side::None))
            hands::click(row->key(Answer::Yes, Side::None));
    const std::size_t saved = ledgerOnDisk().facts().size();
    ASSERT_GT(saved, 3u);
    ASSERT_TRUE(QFile::remove(path + "-wal"));
    const auto refused = SqliteRegister::open(path);
    ASSERT_FALSE(refused) << "nobody has noticed yet";
    EXPECT_EQ(refused.error().what, errors::log_taken_away());
    hands::until([&] { return QFile::exists(path + "-wal") && SqliteRegister::open(path); },
                 "the register is opened anew");
    EXPECT_EQ(ledgerOnDisk().facts().size(), saved);
    EXPECT_TRUE(SqliteRegister::open(path).value()->examine());
    EXPECT_FALSE(window()->findChild<QWidget*>("not-saved")->isVisible());
}

} // namespace latchround::test
