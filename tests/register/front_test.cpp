// What a list of vessels reads of each register: without a lock, and without a trace.
#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <gmock/gmock.h>

#include "app/register/open_sequence.h"
#include "app/register/register_front.h"
#include "app/register/sqlite_register.h"
#include "app/register/writer_lock.h"
#include "core/error/reading_errors.h"
#include "core/error/register_errors.h"
#include "tests/register/raw_sqlite.h"
#include "tests/register/sample_facts.h"
#include "ui/words/phrase_words.h"

namespace latchround {
namespace {

struct Front : testing::Test {
    QTemporaryDir folder;
    QString file = folder.filePath(QStringLiteral("ship.db"));

    std::unique_ptr<SqliteRegister> begun() const {
        auto opened = SqliteRegister::open(file).value();
        EXPECT_TRUE(opened->adopt(sampleArrangement(), sampleMoment()));
        return opened;
    }
    QStringList entries() const {
        return QDir(folder.path()).entryList(QDir::Files | QDir::Hidden, QDir::Name);
    }
    QByteArray bytes() const {
        QFile opened(file);
        EXPECT_TRUE(opened.open(QIODevice::ReadOnly));
        return opened.readAll();
    }
};

TEST_F(Front, NamesTheVesselAndLeavesNoTrace) {
    begun().reset();
    const QByteArray before = bytes();
    const auto front = frontOf(file);
    ASSERT_TRUE(front) << ui::inOneLine(front.error());
    EXPECT_EQ(front->vessel, sampleArrangement().particulars.name);
    EXPECT_EQ(front->doors, sampleArrangement().doors.size());
    EXPECT_EQ(front->zones, sampleArrangement().zones.size());
    EXPECT_EQ(entries(), QStringList{"ship.db"});
    EXPECT_EQ(bytes(), before);
}

/// What a writer has added lies in its log, which it may be about to go on with.
TEST_F(Front, SeesWhatAWriterHasAddedAndTakesNothingFromIt) {
    const auto writer = begun();
    Arrangement renamed = sampleArrangement();
    renamed.particulars.name = "Second Name";
    Moment later = sampleMoment();
    ++later.utc_ms;
    ASSERT_TRUE(writer->adopt(renamed, later));
    const QStringList before = entries();
    EXPECT_EQ(frontOf(file).value().vessel, "Second Name");
    EXPECT_EQ(entries(), before);
    EXPECT_TRUE(writer->record(samplePersonAndWalkdown()));
}

/// To list the vessels is no reason to lock out whoever opens one of them.
TEST_F(Front, TakesNoWritersLock) {
    begun().reset();
    const auto connection = lookInto(file);
    ASSERT_TRUE(connection);
    EXPECT_FALSE(QFile::exists(file + ".writer"));
    const auto opened = SqliteRegister::open(file);
    ASSERT_TRUE(opened);
    EXPECT_EQ((*opened)->otherWriter(), "");
}

TEST_F(Front, ComplainsOfWhatIsNoRegister) {
    QFile letter(file);
    ASSERT_TRUE(letter.open(QIODevice::WriteOnly));
    letter.write("Dear Sir");
    letter.close();
    const auto front = frontOf(file);
    ASSERT_FALSE(front);
    EXPECT_EQ(front.error().what, errors::register_of_others());
    EXPECT_FALSE(frontOf(folder.filePath("none.db")));
    EXPECT_EQ(entries(), QStringList{"ship.db"});
}

/// It is looked through once; who knows that it was may open it without.
TEST_F(Front, TheWholeFileIsCheckedUnlessItWasBefore) {
    begun().reset();
    // A page that opening asks for nothing.
    const int page =
        std::stoi(RawSqlite(file).single("SELECT rootpage FROM sqlite_schema WHERE name = 'note'"));
    QByteArray damaged = bytes();
    damaged.replace((page - 1) * 4096, 8, QByteArray(8, '\x7f'));
    QFile opened(file);
    ASSERT_TRUE(opened.open(QIODevice::WriteOnly));
    opened.write(damaged);
    opened.close();
    EXPECT_FALSE(checkWhole(file));
    EXPECT_FALSE(SqliteRegister::open(file));
    OpenOptions options;
    options.is_checked = true;
    EXPECT_TRUE(SqliteRegister::open(file, options));
}

/// Between a page in the log and the same page in the file, the file alone may look damaged.
TEST_F(Front, AFileThatSomebodyWritesMeanwhileIsNotCalledDamaged) {
    begun().reset();
    const int page = [&] {
        RawSqlite raw(file);
        EXPECT_EQ(raw.run("CREATE TABLE scratch (x); INSERT INTO scratch VALUES (1)"), SQLITE_OK);
        return std::stoi(raw.single("SELECT rootpage FROM sqlite_schema WHERE name = 'scratch'"));
    }();
    const auto damage = [&] {
        QFile opened(file);
        ASSERT_TRUE(opened.open(QIODevice::ReadWrite));
        opened.seek((page - 1) * 4096);
        opened.write(QByteArray(8, '\x7f'));
    };
    std::optional<RawSqlite> writer;
    const Result<> sound = checkWhole(file, [&](int, int) {
        if (!writer) {
            writer.emplace(file);
            writer->run("PRAGMA wal_autocheckpoint=0");
            EXPECT_EQ(writer->run("UPDATE scratch SET x = 2"), SQLITE_OK);
            damage();
        }
        return true;
    });
    EXPECT_TRUE(sound) << ui::inOneLine(sound.error());
    writer.reset(); // puts the page right
    EXPECT_TRUE(checkWhole(file));
    damage();
    EXPECT_FALSE(checkWhole(file));
}

/// Asked from time to time, it ends where it is told to.
TEST_F(Front, TheCheckSaysHowFarItIsAndCanBeStopped) {
    begun().reset();
    int last = 0;
    int whole = 0;
    EXPECT_TRUE(checkWhole(file, [&](int done, int of) {
        EXPECT_LE(last, done);
        last = done;
        whole = of;
        return true;
    }));
    EXPECT_EQ(last, whole);
    for (const int most : {1, 2, 3}) {
        int asked = 0;
        const Result<> stopped = checkWhole(file, [&](int, int) { return ++asked < most; });
        ASSERT_FALSE(stopped) << most;
        EXPECT_EQ(stopped.error().what, errors::stopped_as_asked());
        EXPECT_EQ(asked, most) << "nobody is asked after a no";
    }
    EXPECT_EQ(entries(), QStringList{"ship.db"});
}

} // namespace
} // namespace latchround
