// One program at a time writes in a register; who comes second reads, sees what the first adds, and
// takes nothing away from it.
#include <chrono>
#include <thread>

#include <QFile>
#include <QFileInfo>
#include <QSysInfo>
#include <gmock/gmock.h>

#include "app/register/writer_lock.h"
#include "core/error/register_errors.h"
#include "tests/register/raw_sqlite.h"
#include "tests/register/two_programs.h"
#include "ui/words/phrase_words.h"

namespace latchround {
namespace {

TEST_F(Writers, TheSecondReadsSaysWhoWritesAndSeesWhatIsAdded) {
    Other first(writing());
    first.go();
    auto second = SqliteRegister::open(file);
    ASSERT_TRUE(second) << ui::inOneLine(second.error());
    EXPECT_EQ((*second)->otherWriter(),
              errors::process_on_machine(std::to_string(first.process()),
                                         QSysInfo::machineHostName().toStdString()));
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

} // namespace
} // namespace latchround
