// Another program that removes the log of a register in which this one writes, and then writes
// itself: what was said to be saved is there in the end, and so is what the other wrote.
#include <QFile>
#include <QFileInfo>
#include <gmock/gmock.h>

#include "core/error/register_errors.h"
#include "tests/register/raw_sqlite.h"
#include "tests/register/two_programs.h"
#include "ui/words/phrase_words.h"

namespace latchround {
namespace {

struct LogTaken : Writers {
    /// Does it with SQLite alone, a row more each time.
    std::function<void()> takingTheLogAndWriting() const {
        return [at = file] {
            QFile::remove(at + "-wal");
            QFile::remove(at + "-shm");
            RawSqlite raw(at);
            if (raw.run("CREATE TABLE IF NOT EXISTS of_others (word TEXT);"
                        "INSERT INTO of_others VALUES ('theirs'), (hex(zeroblob(9000)))") !=
                SQLITE_OK)
                ::_exit(1);
        };
    }
    /// The same by SQLite's own hand: who closes a file that nobody seems to have open puts the
    /// log into it and removes it.
    std::function<void()> closingAsTheLast() const {
        return [at = file] {
            RawSqlite raw(at);
            if (raw.run("CREATE TABLE IF NOT EXISTS of_others (word TEXT);"
                        "INSERT INTO of_others VALUES ('theirs'), (hex(zeroblob(9000)))") !=
                SQLITE_OK)
                ::_exit(1);
        };
    }
    /// What a file dialog does: this program's locks on the register are gone after that.
    void dropTheLocks() const {
        QFile opened_and_closed(file);
        ASSERT_TRUE(opened_and_closed.open(QIODevice::ReadOnly));
    }
    void expectAll(int first, int last, const char* theirs) const {
        RawSqlite raw(file);
        EXPECT_EQ(raw.single("PRAGMA integrity_check"), "ok");
        EXPECT_EQ(raw.single("SELECT count(*) FROM of_others WHERE word = 'theirs'"), theirs);
        for (int n = first; n <= last; ++n)
            EXPECT_EQ(raw.single("SELECT text FROM note WHERE fact = '" + sampleId(n) + "'"),
                      "note " + std::to_string(n));
        const auto after = SqliteRegister::open(file);
        ASSERT_TRUE(after) << ui::inOneLine(after.error());
        EXPECT_TRUE((*after)->examine());
    }
    /// As a worker does, of what its program has looked through already.
    static Result<std::unique_ptr<SqliteRegister>> openedByWorker(const QString& file) {
        OpenOptions options;
        options.is_checked = true;
        return SqliteRegister::open(file, options);
    }
    static Result<> recorded(SqliteRegister& into, int n) {
        const Fact fact = note(n);
        return into.record({&fact, 1});
    }
};

TEST_F(LogTaken, AndWrittenAnew_TheNextWriteIsToldAndNothingIsLost) {
    Other other(takingTheLogAndWriting());
    auto opened = SqliteRegister::open(file).value();
    for (int n = 5; n <= 60; ++n)
        ASSERT_TRUE(recorded(*opened, n));
    other.go();
    const Result<> noticed = recorded(*opened, 61);
    ASSERT_FALSE(noticed);
    EXPECT_EQ(noticed.error().what, errors::not_saved(errors::log_taken_away()));
    const Result<> again = recorded(*opened, 61);
    ASSERT_TRUE(again) << ui::inOneLine(again.error());
    EXPECT_EQ(opened->facts()->size(), samplePersonAndWalkdown().size() + 57);
    opened.reset();
    other.kill();
    expectAll(5, 61, "1");
}

TEST_F(LogTaken, AndNothingMoreIsWritten_ClosingBringsBackWhatWasSaved) {
    Other other(takingTheLogAndWriting());
    auto opened = SqliteRegister::open(file).value();
    for (int n = 5; n <= 60; ++n)
        ASSERT_TRUE(recorded(*opened, n));
    other.go();
    opened.reset();
    other.kill();
    expectAll(5, 60, "1");
}

TEST_F(LogTaken, ByWhoClosesTheFileAsTheLast_TimeAndAgain) {
    Other other(closingAsTheLast());
    auto opened = SqliteRegister::open(file).value();
    int n = 5;
    for (int times = 0; times < 3; ++times) {
        for (int notes = 0; notes < 20; ++notes)
            ASSERT_TRUE(recorded(*opened, n++));
        dropTheLocks();
        other.go();
        ASSERT_FALSE(QFileInfo::exists(file + "-wal")) << "it was not the last";
        ASSERT_FALSE(recorded(*opened, n));
        other.go(); // over what it has put in by now
        const Result<> again = recorded(*opened, n++);
        ASSERT_TRUE(again) << ui::inOneLine(again.error());
    }
    opened.reset();
    other.kill();
    expectAll(5, n - 1, "6");
}

/// What cannot be written again is in the register itself as soon as it is said to be saved.
TEST_F(LogTaken, APhotographAndAnIssueAreNotInTheLogAlone) {
    Other other(takingTheLogAndWriting());
    auto opened = SqliteRegister::open(file).value();
    const std::vector<std::byte> bytes(5000, std::byte{7});
    const Fact photograph = sampleFact(
        5, Photograph{sampleId(1), "5-32", sha256Of(bytes), "image/png", "sill", "leaf-gap"});
    ASSERT_TRUE(opened->recordPhotograph(photograph, bytes));
    ASSERT_TRUE(opened->adopt(sampleArrangement(), sampleMoment()));
    ASSERT_TRUE(recorded(*opened, 6));
    other.go();
    opened.reset();
    other.kill();
    expectAll(6, 6, "1");
    const auto after = SqliteRegister::open(file).value();
    EXPECT_EQ(after->photograph(sha256Of(bytes)), bytes);
    EXPECT_EQ(after->issues()->size(), 2u);
}

/// While this program has it open elsewhere too, SQLite would take the new log for the old one.
TEST_F(LogTaken, WhileItIsOpenTwice_IsWrittenAgainOnceTheSecondIsClosed) {
    Other other(takingTheLogAndWriting());
    auto opened = SqliteRegister::open(file).value();
    auto second = SqliteRegister::open(file).value();
    ASSERT_TRUE(recorded(*opened, 5));
    other.go();
    ASSERT_FALSE(recorded(*opened, 6));
    const Result<> still = recorded(*opened, 6);
    ASSERT_FALSE(still);
    EXPECT_EQ(still.error().what, errors::not_saved(errors::log_taken_away()));
    second.reset();
    ASSERT_TRUE(recorded(*opened, 6));
    opened.reset();
    other.kill();
    expectAll(5, 6, "1");
}

/// A worker's own connection, while nobody has noticed yet: it would take what lies there now for
/// the log that the first one has, and put rubbish into the register.
TEST_F(LogTaken, AndOpenedASecondTimeBeforeItIsNoticed_IsRefusedAndNothingIsLost) {
    Other other(takingTheLogAndWriting());
    auto opened = SqliteRegister::open(file).value();
    for (int n = 5; n <= 60; ++n)
        ASSERT_TRUE(recorded(*opened, n));
    other.go();
    for (int times = 0; times < 2; ++times) {
        const auto second = openedByWorker(file);
        EXPECT_FALSE(second);
        if (!second)
            EXPECT_EQ(second.error().what, errors::log_taken_away());
    }
    EXPECT_EQ(opened->facts()->size(), samplePersonAndWalkdown().size() + 56);
    ASSERT_FALSE(recorded(*opened, 61));
    ASSERT_TRUE(recorded(*opened, 61));
    EXPECT_TRUE(SqliteRegister::open(file)) << "as before";
    opened.reset();
    other.kill();
    expectAll(5, 61, "1");
}

/// Then nothing seems to be wrong with the file, and two would write into two logs by one index.
TEST_F(LogTaken, JustEmptiedAndOpenedASecondTimeBeforeItIsNoticed_IsRefusedToo) {
    Other other(takingTheLogAndWriting());
    auto opened = SqliteRegister::open(file).value();
    ASSERT_TRUE(recorded(*opened, 5));
    ASSERT_TRUE(opened->adopt(sampleArrangement(), sampleMoment()));
    other.go();
    auto second = openedByWorker(file);
    EXPECT_FALSE(second);
    std::vector<int> saved{5};
    for (int n = 6; n < 40; ++n)
        if (SqliteRegister* by = second && n % 3 ? second->get() : opened.get(); recorded(*by, n))
            saved.push_back(n);
    second = tl::unexpected(Error{});
    opened.reset();
    other.kill();
    for (const int n : saved)
        expectAll(n, n, "1");
}

/// The same without a tap: once a second the program looks.
TEST_F(LogTaken, AndLookedFor_IsOpenedAnewWithoutAWrite) {
    Other other(takingTheLogAndWriting());
    auto opened = SqliteRegister::open(file).value();
    for (int n = 5; n <= 60; ++n)
        ASSERT_TRUE(recorded(*opened, n));
    ASSERT_TRUE(opened->lookAfterLog()) << "nothing to do";
    other.go();
    ASSERT_TRUE(opened->lookAfterLog());
    EXPECT_TRUE(SqliteRegister::open(file));
    ASSERT_TRUE(recorded(*opened, 61)) << "and the next tap is not refused";
    opened.reset();
    other.kill();
    expectAll(5, 61, "1");
}

/// By kill -9, right after it was noticed.
TEST_F(LogTaken, AndTheProgramKilled_WhatWasSaidToBeSavedIsThere) {
    Other program([at = file, n = 5, opened = std::shared_ptr<SqliteRegister>()]() mutable {
        if (!opened) {
            opened = std::move(SqliteRegister::open(at).value());
            for (; n <= 60; ++n)
                if (!recorded(*opened, n))
                    ::_exit(1);
            return;
        }
        if (openedByWorker(at) || !opened->lookAfterLog() || !recorded(*opened, n++))
            ::_exit(1);
    });
    program.go();
    takingTheLogAndWriting()();
    program.go();
    program.kill();
    expectAll(5, 61, "1");
}

/// One of two connections goes before the other has noticed: what it recorded is held by both.
TEST_F(LogTaken, WhileItIsOpenTwice_WhatTheFirstRecordedIsWrittenAgainByTheSecond) {
    Other other(takingTheLogAndWriting());
    auto first = SqliteRegister::open(file).value();
    auto second = SqliteRegister::open(file).value();
    ASSERT_TRUE(recorded(*first, 5));
    ASSERT_TRUE(recorded(*second, 6));
    other.go();
    first.reset();
    ASSERT_FALSE(recorded(*second, 7));
    ASSERT_TRUE(recorded(*second, 7));
    second.reset();
    other.kill();
    expectAll(5, 7, "1");
}

/// What one connection put into the file is let go of; what another has added since is not.
TEST_F(LogTaken, WhileItIsOpenTwice_OnlyWhatIsInTheFileIsLetGoOf) {
    Other other(takingTheLogAndWriting());
    auto first = SqliteRegister::open(file).value();
    auto second = SqliteRegister::open(file).value();
    ASSERT_TRUE(recorded(*first, 5));
    ASSERT_TRUE(second->adopt(sampleArrangement(), sampleMoment())); // empties the log
    ASSERT_TRUE(recorded(*first, 6));
    other.go();
    second.reset();
    first.reset();
    other.kill();
    expectAll(5, 6, "1");
}

TEST_F(LogTaken, OfARegisterInAFolderThatIsNamedByALink_IsKnownByBothNames) {
    const QTemporaryDir elsewhere;
    const QString link = elsewhere.filePath(QStringLiteral("ships"));
    ASSERT_TRUE(QFile::link(folder.path(), link));
    Other other(takingTheLogAndWriting());
    auto by_link = SqliteRegister::open(link + "/ship.db");
    ASSERT_TRUE(by_link) << ui::inOneLine(by_link.error());
    auto opened = std::move(*by_link);
    for (int n = 5; n <= 60; ++n)
        ASSERT_TRUE(recorded(*opened, n));
    other.go();
    EXPECT_FALSE(SqliteRegister::open(file));
    ASSERT_FALSE(recorded(*opened, 61));
    ASSERT_TRUE(recorded(*opened, 61));
    opened.reset();
    other.kill();
    expectAll(5, 61, "1");
}

} // namespace
} // namespace latchround
