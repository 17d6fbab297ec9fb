// How a walk ended is told apart: by itself, by a fault, by computing for ever, or by the clock.
#include <csignal>
#include <ctime>

#include <unistd.h>

#include <QTemporaryDir>
#include <gmock/gmock.h>

#include "tests/walker/child.h"

namespace latchround::walker {
namespace {

using ::testing::HasSubstr;

struct Child : testing::Test {
    QTemporaryDir folder;

    ChildEnded ended(const std::function<void(int)>& work, const Limits& limits = {}) const {
        return inChild(work, folder.filePath(QStringLiteral("errors")), limits);
    }
};

TEST_F(Child, ThatIsDoneSaysSo) {
    const ChildEnded done = ended([](int into) {
        (void)!::write(into, "done", 4);
        _exit(0);
    });
    EXPECT_EQ(done.said, "done");
    EXPECT_EQ(done.broken, "");
}

TEST_F(Child, ThatIsKilledEndedTheProgram) {
    EXPECT_EQ(ended([](int) { ::raise(SIGKILL); }).broken, "the program ended");
}

TEST_F(Child, ThatComputesForEverDoesNotComeToAnEnd) {
    const ChildEnded hung = ended(
        [](int) {
            for (volatile int n = 0;;)
                n = n + 1;
        },
        {1, 300});
    EXPECT_THAT(hung.broken, HasSubstr("did not come to an end"));
    EXPECT_FALSE(hung.was_too_slow);
}

/// As on a machine that has no time for it.
TEST_F(Child, ThatIsSlowMayBeSlow) {
    const ChildEnded slow = ended(
        [](int) {
            ::sleep(3);
            _exit(0);
        },
        {1, 300});
    EXPECT_EQ(slow.broken, "");
}

TEST_F(Child, ThatIsTooSlowRanOutOfTime) {
    const ChildEnded late = ended([](int) { ::sleep(300); }, {240, 1});
    EXPECT_THAT(late.broken, HasSubstr("ran out of time"));
    EXPECT_TRUE(late.was_too_slow);
}

} // namespace
} // namespace latchround::walker
