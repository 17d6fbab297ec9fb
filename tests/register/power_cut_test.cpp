// Loss of power, again and again, while a walk is recorded in a child process. Every action the
// child was told is saved must be there afterwards; what it was not told is there whole or not at
// all.
#include <cstdint>
#include <functional>
#include <string>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <gmock/gmock.h>
#include <sqlite3.h>
#include <sys/wait.h>
#include <unistd.h>

#include "app/register/sqlite_register.h"
#include "tests/register/fault_vfs.h"
#include "tests/register/recorded_walk.h"

namespace latchround {
namespace {

using Weaken = std::function<void(sqlite3*)>;
enum class Acknowledge { AfterRecord, BeforeRecord };

void pragma(sqlite3* handle, const char* sql) {
    sqlite3_exec(handle, sql, nullptr, nullptr, nullptr);
}

OpenOptions faulty(const Weaken& after_open = {}) {
    OpenOptions options;
    options.vfs = QStringLiteral("fault");
    options.after_open = after_open;
    return options;
}

/// The child's whole life. Exit 0: walked to the end; 99: the power went; else: an error nobody
/// caused.
[[noreturn]] void walkAlone(const QString& file, const std::vector<Action>& walk, int acknowledge,
                            const FaultPlan& plan, const Weaken& after_open, Acknowledge when) {
    const char saved = 1;
    const auto tell = [&] {
        if (::write(acknowledge, &saved, 1) != 1)
            _exit(4);
    };
    arm(plan);
    auto opened = SqliteRegister::open(file, faulty(after_open));
    if (!opened)
        _exit(2);
    for (const Action& action : walk) {
        if (when == Acknowledge::BeforeRecord)
            tell();
        Result<> done = perform(**opened, action);
        for (int i = 0; i < plan.io_faults && !done && plan.io_fault_before > 0; ++i)
            done = perform(**opened, action); // the person tries again
        if (!done)
            _exit(3);
        if (when == Acknowledge::AfterRecord)
            tell();
    }
    opened->reset();
    _exit(0);
}

struct Ended {
    int exit = -1;
    std::size_t acknowledged = 0;
};

Ended walkInChild(const QString& file, const std::vector<Action>& walk, const FaultPlan& plan,
                  const Weaken& after_open, Acknowledge when = Acknowledge::AfterRecord) {
    int ends[2];
    if (::pipe(ends) != 0)
        return {};
    const pid_t child = ::fork();
    if (child == 0)
        walkAlone(file, walk, ends[1], plan, after_open, when);
    ::close(ends[1]);
    Ended ended;
    char byte = 0;
    while (::read(ends[0], &byte, 1) == 1)
        ++ended.acknowledged;
    ::close(ends[0]);
    int status = 0;
    ::waitpid(child, &status, 0);
    ended.exit = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    return ended;
}

/// Empty: nothing acknowledged was lost and nothing is half.
std::string verdict(const Found& found, const Ended& ended) {
    if (!found.fault.empty())
        return found.fault;
    if (found.actions < ended.acknowledged)
        return "lost: " + std::to_string(ended.acknowledged) + " acknowledged, " +
               std::to_string(found.actions) + " there";
    if (found.actions > ended.acknowledged + 1)
        return "more there than was ever recorded";
    return {};
}

class PowerCut : public ::testing::Test {
protected:
    void SetUp() override {
        installFaultVfs();
        ASSERT_TRUE(m_folder.isValid());
        makeRegister(m_blank, QStringLiteral("fault"));
        ASSERT_FALSE(HasFatalFailure());
    }

    /// Operations of one undisturbed walk, opening and closing included.
    int operationsOfWalk(const Weaken& after_open) {
        placeCopy(m_blank, m_file);
        arm({});
        auto opened = SqliteRegister::open(m_file, faulty(after_open));
        EXPECT_TRUE(opened);
        for (const Action& action : m_walk)
            EXPECT_TRUE(perform(**opened, action));
        opened->reset();
        return operationsSeen();
    }

    Ended cut(const FaultPlan& plan, const Weaken& after_open,
              Acknowledge when = Acknowledge::AfterRecord) {
        placeCopy(m_blank, m_file);
        return walkInChild(m_file, m_walk, plan, after_open, when);
    }
    Ended cut(int at, std::uint32_t seed, const Weaken& after_open,
              Acknowledge when = Acknowledge::AfterRecord) {
        return cut({Fault::PowerCut, at, false, seed}, after_open, when);
    }

    /// How many of `cuts` cuts, spread over the whole walk, end in loss or damage.
    int badCuts(int cuts, const Weaken& after_open, Acknowledge when) {
        const int operations = operationsOfWalk(after_open);
        int bad = 0;
        for (int i = 0; i < cuts; ++i) {
            const Ended ended =
                cut(1 + i * operations / cuts, static_cast<std::uint32_t>(i), after_open, when);
            EXPECT_THAT(ended.exit, ::testing::AnyOf(0, power_cut_exit));
            bad +=
                verdict(lookInto(m_file, m_walk, QStringLiteral("fault")), ended).empty() ? 0 : 1;
        }
        return bad;
    }

    QTemporaryDir m_folder;
    QString m_blank = m_folder.filePath(QStringLiteral("blank.db"));
    QString m_file = m_folder.filePath(QStringLiteral("walked.db"));
    std::vector<Action> m_walk = sampleWalk(3);
};

const Weaken as_shipped;
const Weaken small_log = [](sqlite3* handle) { pragma(handle, "PRAGMA wal_autocheckpoint=8"); };

TEST_F(PowerCut, TwoHundredCutsLoseNothingThatWasSaidToBeSaved) {
    constexpr int cuts = 200;
    const int plain = operationsOfWalk(as_shipped);
    const int folding = operationsOfWalk(small_log);
    ASSERT_GT(plain, cuts);
    ASSERT_GT(folding, plain) << "a small log is folded into the file more often";
    int came = 0;
    for (int i = 0; i < cuts; ++i) {
        const bool small = i % 3 == 0;
        const int at = 1 + i * (small ? folding : plain) / cuts;
        const Ended ended = cut(at, static_cast<std::uint32_t>(i), small ? small_log : as_shipped);
        ASSERT_THAT(ended.exit, ::testing::AnyOf(0, power_cut_exit)) << "cut " << i;
        came += ended.exit == power_cut_exit ? 1 : 0;
        ASSERT_EQ(verdict(lookInto(m_file, m_walk, QStringLiteral("fault")), ended), "")
            << "cut " << i << " at operation " << at << (small ? ", small log" : "");
    }
    EXPECT_GE(came, cuts - 5) << "the cuts must really come";
}

TEST_F(PowerCut, AFaultWhileRecoveringFromACutIsRecoveredFromToo) {
    const int operations = operationsOfWalk(small_log);
    int faults = 0;
    for (int i = 0; i < 12; ++i) {
        const Ended ended =
            cut(operations * (2 * i + 1) / 24, 77u + static_cast<std::uint32_t>(i), small_log);
        ASSERT_EQ(ended.exit, power_cut_exit);
        for (int at = 1; at < 40; ++at) {
            arm({Fault::Io, at, true, 0});
            static_cast<void>(SqliteRegister::open(m_file, faulty()));
            disarm();
            if (!faultCame())
                break;
            ++faults;
        }
        ASSERT_EQ(verdict(lookInto(m_file, m_walk, QStringLiteral("fault")), ended), "")
            << "cut " << i;
    }
    EXPECT_GT(faults, 0);
}

TEST_F(PowerCut, AnActionSavedOnTheSecondAttemptIsNotLostEither) {
    // A failed flush may leave the action in the log, unflushed: finding it there is not saving it.
    const int operations = operationsOfWalk(as_shipped);
    int tried_again = 0;
    for (int fault = 2; fault < operations - 20; fault += 2) {
        const int faults =
            1 + fault / 2 % 3; // closing may meet one as well and leave the log behind
        FaultPlan plan{Fault::PowerCut, fault + faults + 1 + fault % 7};
        plan.seed = static_cast<std::uint32_t>(fault);
        plan.io_fault_before = fault;
        plan.io_faults = faults;
        const Ended ended = cut(plan, as_shipped);
        if (ended.exit == 2)
            continue; // the fault came while opening
        ASSERT_THAT(ended.exit, ::testing::AnyOf(0, power_cut_exit)) << "fault " << fault;
        tried_again += ended.exit == power_cut_exit ? 1 : 0;
        ASSERT_EQ(verdict(lookInto(m_file, m_walk, QStringLiteral("fault")), ended), "")
            << "fault at operation " << fault << ", cut at " << plan.at;
    }
    EXPECT_GT(tried_again, 80);
}

/// At every operation there is; in parts, since that takes long.
constexpr int parts = 3;
class PowerCutOf : public PowerCut, public ::testing::WithParamInterface<int> {};

TEST_P(PowerCutOf, ANewRegisterIsThereWholeOrNotAtAll) {
    const std::vector<Action> nothing;
    int cuts = 0;
    for (int at = 1 + GetParam();; at += parts) {
        placeCopy(m_blank, m_file);
        QFile::remove(m_file);
        const Ended ended =
            walkInChild(m_file, nothing, {Fault::PowerCut, at, false, 5u}, as_shipped);
        ASSERT_THAT(ended.exit, ::testing::AnyOf(0, power_cut_exit)) << "cut " << at;
        if (ended.exit == 0)
            break;
        ++cuts;
        ASSERT_EQ(lookInto(m_file, nothing, QStringLiteral("fault")).fault, "") << "cut " << at;
    }
    EXPECT_GT(cuts, 20);
}

INSTANTIATE_TEST_SUITE_P(Part, PowerCutOf, ::testing::Range(0, parts));

// The harness has teeth: each of these does what the register must not do, and has to be caught.

TEST_F(PowerCut, WithoutFlushingTheHarnessFindsLoss) {
    const Weaken no_flush = [](sqlite3* handle) { pragma(handle, "PRAGMA synchronous=OFF"); };
    EXPECT_GT(badCuts(20, no_flush, Acknowledge::AfterRecord), 0);
}

TEST_F(PowerCut, FlushingOnlyNowAndThenTheHarnessFindsLoss) {
    const Weaken normal = [](sqlite3* handle) { pragma(handle, "PRAGMA synchronous=NORMAL"); };
    EXPECT_GT(badCuts(20, normal, Acknowledge::AfterRecord), 0);
}

TEST_F(PowerCut, SayingSavedBeforeItIsTheHarnessFindsLoss) {
    EXPECT_GT(badCuts(20, as_shipped, Acknowledge::BeforeRecord), 0);
}

} // namespace
} // namespace latchround
