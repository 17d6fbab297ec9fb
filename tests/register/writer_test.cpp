// One program at a time writes in a register; who comes second reads, sees what the first adds, and
// takes nothing away from it.
#include <chrono>
#include <csignal>
#include <thread>
#include <utility>

#include <sys/wait.h>
#include <unistd.h>

#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>
#include <gmock/gmock.h>

#include "app/register/sqlite_register.h"
#include "app/register/writer_lock.h"
#include "core/error/register_errors.h"
#include "tests/register/raw_sqlite.h"
#include "tests/register/sample_facts.h"
#include "ui/words/phrase_words.h"

namespace latchround {
namespace {

using ::testing::HasSubstr;

/// Another program, in a process of its own, that does one thing when it is told to.
class Other {
public:
    explicit Other(std::function<void()> work) {
        EXPECT_EQ(::pipe(m_go), 0);
        EXPECT_EQ(::pipe(m_done), 0);
        m_process = ::fork();
        if (m_process == 0) {
            char byte = 0;
            while (::read(m_go[0], &byte, 1) == 1) {
                work();
                (void)!::write(m_done[1], &byte, 1);
            }
            ::_exit(0);
        }
    }
    ~Other() { kill(); }
    Other(const Other&) = delete;
    Other& operator=(const Other&) = delete;

    void go() {
        char byte = 1;
        ASSERT_EQ(::write(m_go[1], &byte, 1), 1);
        ASSERT_EQ(::read(m_done[0], &byte, 1), 1);
    }
    /// As by kill -9.
    void kill() {
        if (m_process > 0) {
            ::kill(m_process, SIGKILL);
            ::waitpid(m_process, nullptr, 0);
            for (const int end : {m_go[0], m_go[1], m_done[0], m_done[1]})
                ::close(end);
        }
        m_process = 0;
    }
    pid_t process() const { return m_process; }

private:
    pid_t m_process = 0;
    int m_go[2]{};
    int m_done[2]{};
};

struct Writers : testing::Test {
    QTemporaryDir folder;
    QString file = folder.filePath(QStringLiteral("ship.db"));

    void SetUp() override {
        auto begun = SqliteRegister::open(file);
        ASSERT_TRUE(begun);
        ASSERT_TRUE((*begun)->adopt(sampleArrangement(), sampleMoment()));
        ASSERT_TRUE((*begun)->record(samplePersonAndWalkdown()));
    }
    static Fact note(int n) {
        return sampleFact(n, Note{sampleId(1), "5-32", "note " + std::to_string(n)});
    }
    /// Opens the register and keeps it, then records note 5, 6 and so on.
    std::function<void()> writing() const {
        return [at = file, n = 5, opened = std::shared_ptr<SqliteRegister>()]() mutable {
            if (!opened) {
                opened = std::move(SqliteRegister::open(at).value());
                return;
            }
            const Fact fact = note(n++);
            if (!opened->record({&fact, 1}))
                ::_exit(1);
        };
    }
};

TEST_F(Writers, TheSecondReadsSaysWhoWritesAndSeesWhatIsAdded) {
    Other first(writing());
    first.go();
    auto second = SqliteRegister::open(file);
    ASSERT_TRUE(second) << ui::inOneLine(second.error());
    EXPECT_THAT((*second)->otherWriter().text, HasSubstr(std::to_string(first.process())));
    const Fact fact = note(90);
    const Result<> refused = (*second)->record({&fact, 1});
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().what,
              errors::not_saved(errors::register_written_elsewhere((*second)->otherWriter())));
    EXPECT_FALSE((*second)->adopt(sampleArrangement(), sampleMoment()));
    ASSERT_TRUE((*second)->facts());
    EXPECT_FALSE((*second)->hasChanged());
    first.go();
    EXPECT_TRUE((*second)->hasChanged());
    EXPECT_TRUE((*second)->hasChanged()) << "nobody has read it yet";
    EXPECT_EQ((*second)->facts()->back(), note(5));
    EXPECT_FALSE((*second)->hasChanged());
}

/// One that only lists the vessels, or is just ending, is no second writer.
TEST_F(Writers, WhoLetsGoWithinASecondIsWaitedFor) {
    Other first([at = file, lock = std::shared_ptr<const WriterLock>()]() mutable {
        if (!lock) {
            lock = WriterLock::take(at);
            return;
        }
        std::thread([held = std::exchange(lock, nullptr)]() mutable {
            std::this_thread::sleep_for(std::chrono::milliseconds(300));
            held.reset();
        }).detach();
    });
    first.go();
    first.go();
    const auto second = SqliteRegister::open(file);
    ASSERT_TRUE(second);
    EXPECT_EQ((*second)->otherWriter(), "");
}

/// A tap must not wait for somebody else's long write, and is told that it may try again.
TEST_F(Writers, ABusyRegisterSaysSoAtOnce) {
    OpenOptions options;
    options.busy_timeout_ms = 10;
    const auto opened = SqliteRegister::open(file, options).value();
    RawSqlite other(file);
    ASSERT_EQ(other.run("BEGIN IMMEDIATE"), SQLITE_OK);
    const Fact fact = note(5);
    const auto begun = std::chrono::steady_clock::now();
    const Result<> held = opened->record({&fact, 1});
    EXPECT_LT(std::chrono::steady_clock::now() - begun, std::chrono::milliseconds(100));
    ASSERT_FALSE(held);
    EXPECT_EQ(opened->obstacle(), Register::Obstacle::Busy);
    EXPECT_EQ(other.run("ROLLBACK"), SQLITE_OK);
    EXPECT_TRUE(opened->record({&fact, 1})) << "without opening it anew";
}

/// The reader comes and goes; then the writer dies. Nothing that was said to be saved is gone.
TEST_F(Writers, AReaderTakesNothingAwayFromAWriterThatIsKilled) {
    Other first(writing());
    first.go();
    first.go();
    for (int i = 0; i < 3; ++i) {
        const auto second = SqliteRegister::open(file);
        ASSERT_TRUE(second) << ui::inOneLine(second.error());
        ASSERT_FALSE((*second)->otherWriter().empty());
    }
    EXPECT_TRUE(QFileInfo::exists(file + "-wal"));
    first.go();
    first.kill();
    const auto after = SqliteRegister::open(file);
    ASSERT_TRUE(after);
    EXPECT_EQ((*after)->otherWriter(), "") << "the lock ended with its program";
    EXPECT_EQ((*after)->facts()->back(), note(6));
}

TEST_F(Writers, TheSecondWritesOnceTheFirstHasGone) {
    Other first(writing());
    first.go();
    const auto second = SqliteRegister::open(file);
    ASSERT_TRUE(second);
    first.kill();
    ASSERT_TRUE((*second)->reopen());
    EXPECT_EQ((*second)->otherWriter(), "");
    const Fact fact = note(90);
    EXPECT_TRUE((*second)->record({&fact, 1}));
}

TEST_F(Writers, OneProgramMayOpenItTwice) {
    const auto one = SqliteRegister::open(file);
    const auto two = SqliteRegister::open(file);
    ASSERT_TRUE(one && two);
    EXPECT_EQ((*one)->otherWriter(), "");
    EXPECT_EQ((*two)->otherWriter(), "");
}

TEST_F(Writers, NothingIsLeftBesideTheRegister) {
    { const auto opened = SqliteRegister::open(file); }
    EXPECT_FALSE(QFileInfo::exists(file + ".writer"));
}

/// What any program that opens and closes the register in this process could bring about: the log
/// goes, and what is "saved" after that would be gone with the program.
TEST_F(Writers, ALogThatWasTakenAwayIsNoticedAndItsEntriesAreNotLost) {
    auto opened = SqliteRegister::open(file).value();
    const Fact before = note(5);
    ASSERT_TRUE(opened->record({&before, 1}));
    ASSERT_TRUE(QFile::remove(file + "-wal"));
    const Fact next = note(6);
    const Result<> noticed = opened->record({&next, 1});
    ASSERT_FALSE(noticed);
    EXPECT_EQ(noticed.error().what, errors::not_saved(errors::log_taken_away()));
    ASSERT_TRUE(opened->record({&next, 1})) << "again, as the screen offers";
    const auto other = SqliteRegister::open(file).value();
    EXPECT_EQ(other->facts()->back(), next);
    EXPECT_EQ(other->facts()->at(other->facts()->size() - 2), before);
    EXPECT_TRUE(other->examine());
}

/// Another program that removes the log and then writes: what was said to be saved is there in the
/// end, and so is what the other wrote.
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

} // namespace
} // namespace latchround
