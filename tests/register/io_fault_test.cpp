// The disk reports a fault at the first operation, at the second, and so on until a walk meets
// none. Each time the person is told that the action is NOT saved, nothing is half, and the next
// attempt works.
#include <cstddef>
#include <vector>

#include <QFile>
#include <QTemporaryDir>
#include <gmock/gmock.h>

#include "app/register/sqlite_register.h"
#include "core/error/register_errors.h"
#include "tests/register/fault_vfs.h"
#include "tests/register/recorded_walk.h"
#include "ui/words/phrase_words.h"

namespace latchround {
namespace {

/// The code of what stood in the way, whether or not something was to be saved.
std::string_view causeOf(const Phrase& what) {
    return errors::not_saved.isOf(what) ? causeOf(what.parts.front()) : what.code;
}

class DiskFault : public ::testing::Test {
protected:
    void SetUp() override {
        installFaultVfs();
        makeRegister(m_blank, QStringLiteral("fault"));
        ASSERT_FALSE(HasFatalFailure());
    }
    void TearDown() override { disarm(); }

    std::unique_ptr<SqliteRegister> openFresh() {
        placeCopy(m_blank, m_file);
        OpenOptions options;
        options.vfs = QStringLiteral("fault");
        auto opened = SqliteRegister::open(m_file, options);
        EXPECT_TRUE(opened);
        return opened ? std::move(*opened) : nullptr;
    }

    /// After a refused action: the fault is over, the register is opened again, nothing is half,
    /// and the same action can be recorded.
    void recover(SqliteRegister& opened, std::size_t action, bool reopen_aloud) {
        disarm();
        if (reopen_aloud) {
            const Result<> reopened = opened.reopen();
            ASSERT_TRUE(reopened) << ui::inOneLine(reopened.error());
            const Found found = lookInto(m_file, m_walk, QStringLiteral("fault"));
            ASSERT_EQ(found.fault, "");
            // A failed flush leaves open whether the disk took the action: none of it, or all of
            // it.
            ASSERT_THAT(found.actions, ::testing::AnyOf(action, action + 1));
        }
        const Result<> again = perform(opened, m_walk[action]);
        ASSERT_TRUE(again) << ui::inOneLine(again.error());
    }

    /// One walk with a fault planned; the answer is how many actions were refused.
    int walkThrough(const FaultPlan& plan, bool reopen_aloud, std::string_view cause) {
        const auto opened = openFresh();
        if (!opened)
            return -1;
        int refused = 0;
        arm(plan);
        for (std::size_t i = 0; i < m_walk.size(); ++i) {
            const Result<> done = perform(*opened, m_walk[i]);
            if (done)
                continue;
            ++refused;
            EXPECT_TRUE(errors::not_saved.isOf(done.error().what));
            EXPECT_EQ(causeOf(done.error().what), cause) << ui::inOneLine(done.error());
            EXPECT_EQ(opened->obstacle(), Register::Obstacle::Fault);
            EXPECT_NE(ui::remedyWords(done.error().what), "");
            if (plan.persistent) {
                const Result<> still = perform(*opened, m_walk[i]);
                EXPECT_FALSE(still) << "the fault is still there";
                if (!still) {
                    EXPECT_TRUE(errors::not_saved.isOf(still.error().what));
                }
            }
            recover(*opened, i, reopen_aloud);
        }
        return refused;
    }

    void loop(Fault fault, bool persistent, bool reopen_aloud, std::string_view cause) {
        int refused = 0;
        int at = 1;
        for (;; ++at) {
            refused += walkThrough({fault, at, persistent, 0}, reopen_aloud, cause);
            ASSERT_FALSE(HasFailure()) << "fault at operation " << at;
            const bool clean = !faultCame();
            disarm();
            const Found found = lookInto(m_file, m_walk, QStringLiteral("fault"));
            ASSERT_EQ(found.fault, "") << "fault at operation " << at;
            ASSERT_EQ(found.actions, m_walk.size()) << "fault at operation " << at;
            if (clean)
                break;
        }
        EXPECT_GT(at, 40) << "a walk has more operations than that";
        EXPECT_GT(refused, 20);
    }

    QTemporaryDir m_folder;
    QString m_blank = m_folder.filePath(QStringLiteral("blank.db"));
    QString m_file = m_folder.filePath(QStringLiteral("walked.db"));
    std::vector<Action> m_walk = sampleWalk(1);
};

TEST_F(DiskFault, OnceAtAnyOperationNothingIsHalfAndTheNextAttemptWorks) {
    loop(Fault::Io, false, true, errors::disk_fault.code);
}

TEST_F(DiskFault, ThatStaysIsToldEachTimeAndNothingIsHalf) {
    loop(Fault::Io, true, true, errors::disk_fault.code);
}

TEST_F(DiskFault, TheNextActionOpensTheRegisterAfreshByItself) {
    loop(Fault::Io, false, false, errors::disk_fault.code);
}

TEST_F(DiskFault, AfterItNothingMoreIsWrittenThroughTheSameConnection) {
    // After a failed flush the system may have thrown the pages away; only a new opening reads the
    // disk.
    placeCopy(m_blank, m_file);
    int openings = 0;
    OpenOptions options;
    options.vfs = QStringLiteral("fault");
    options.after_open = [&](sqlite3*) { ++openings; };
    const auto opened = SqliteRegister::open(m_file, options);
    ASSERT_TRUE(opened);
    ASSERT_TRUE(perform(**opened, m_walk[0]));
    arm({Fault::Io, 1, false, 0});
    ASSERT_FALSE(perform(**opened, m_walk[1]));
    disarm();
    EXPECT_EQ(openings, 1);
    EXPECT_TRUE(perform(**opened, m_walk[1]));
    EXPECT_EQ(openings, 2);
    EXPECT_TRUE(perform(**opened, m_walk[2]));
    EXPECT_EQ(openings, 2);
}

TEST_F(DiskFault, FullOnceAtAnyWriteSaysSoAndTheNextAttemptWorks) {
    loop(Fault::DiskFull, false, false, errors::disk_full.code);
}

TEST_F(DiskFault, FullForGoodSaysSoUntilThereIsSpace) {
    loop(Fault::DiskFull, true, true, errors::disk_full.code);
}

TEST_F(DiskFault, WhileAdoptingLeavesTheEarlierIssue) {
    Arrangement changed = sampleArrangement();
    changed.doors.front().plate = "A-30";
    int refused = 0;
    for (int at = 1;; ++at) {
        const auto opened = openFresh();
        ASSERT_TRUE(opened);
        arm({Fault::Io, at, true, 0});
        const Result<> adopted = opened->adopt(changed, sampleMoment());
        const bool clean = !faultCame();
        disarm();
        if (!adopted) {
            ++refused;
            EXPECT_TRUE(errors::not_saved.isOf(adopted.error().what));
            ASSERT_TRUE(opened->reopen());
            const auto kept = opened->arrangement();
            ASSERT_TRUE(kept);
            EXPECT_TRUE(*kept == sampleArrangement() || *kept == changed);
            ASSERT_TRUE(opened->adopt(changed, sampleMoment()));
        }
        EXPECT_EQ(opened->arrangement(), changed);
        ASSERT_TRUE(opened->examine());
        if (clean)
            break;
    }
    EXPECT_GT(refused, 3);
}

TEST_F(DiskFault, WhileBeginningARegisterLeavesNoFile) {
    OpenOptions options;
    options.vfs = QStringLiteral("fault");
    int refused = 0;
    for (int at = 1;; ++at) {
        const QString file = m_folder.filePath(QStringLiteral("new-%1.db").arg(at));
        arm({Fault::DiskFull, at, true, 0});
        const auto opened = SqliteRegister::open(file, options);
        const bool clean = !faultCame();
        disarm();
        if (!opened) {
            ++refused;
            EXPECT_EQ(causeOf(opened.error().what), errors::disk_full.code);
        }
        const auto again = SqliteRegister::open(file);
        ASSERT_TRUE(again) << ui::inOneLine(again.error());
        if (clean)
            break;
    }
    EXPECT_GT(refused, 10);
}

} // namespace
} // namespace latchround
