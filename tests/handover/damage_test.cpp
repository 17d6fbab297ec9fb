// A handover file damaged anywhere is refused or reads as it was; a take that is cut short leaves
// the register old or new. Neither ever crashes.
#include <cstdint>
#include <random>

#include <QFile>
#include <gmock/gmock.h>
#include <sys/wait.h>
#include <unistd.h>

#include "tests/handover/tablet.h"
#include "tests/long_form.h"
#include "tests/register/fault_vfs.h"
#include "ui/words/phrase_words.h"

namespace latchround::test {
namespace {

Tablet tabletWithAWalk() {
    Tablet tablet = Tablet::ofSampleVessel();
    const FactId ahn = tablet.join("A. Ahn");
    const FactId walk = tablet.beginWalk(ahn);
    for (int i = 0; i < 20; ++i)
        tablet.record(Observation{walk, "5-32", "r" + std::to_string(i), Side::None, Answer::No},
                      ahn);
    tablet.photograph(walk, ahn, std::string(9000, 'x'));
    return tablet;
}

TEST(DamagedHandover, IsRefusedOrReadsAsItWas) {
    const Tablet tablet = tabletWithAWalk();
    const std::string bytes = tablet.give();
    const Handover whole = readHandover(bytes);
    std::mt19937 random(7);
    int refused = 0;
    for (int i = 0; i < 3000 * timesAsMany(); ++i) {
        std::string damaged = bytes;
        const int changes = 1 + i % 3;
        for (int change = 0; change < changes; ++change)
            damaged[random() % damaged.size()] ^= static_cast<char>(1u << (random() % 8));
        if (i % 10 == 0)
            damaged.resize(random() % damaged.size());
        if (i % 10 == 1)
            damaged.insert(random() % damaged.size(), 1 + random() % 40, '\x50');
        const auto read = Handover::read(damaged, "h.zip", nullptr);
        if (!read) {
            ++refused;
            EXPECT_NE(ui::phraseWords(read.error().what), "");
            continue;
        }
        EXPECT_EQ(read->facts, whole.facts);
        EXPECT_EQ(read->issues, whole.issues);
        EXPECT_EQ(read->sheet, whole.sheet);
        EXPECT_EQ(read->photographs(), whole.photographs());
    }
    EXPECT_GT(refused, 2000);
}

OpenOptions onFaultyDisk() {
    OpenOptions options;
    options.vfs = QStringLiteral("fault");
    return options;
}

/// The child's whole life: exit 0 where the file was taken, 99 where the power went.
int takeInChild(const QString& path, const Handover& handover, const FaultPlan& plan) {
    const pid_t child = ::fork();
    if (child == 0) {
        arm(plan);
        auto opened = SqliteRegister::open(path, onFaultyDisk());
        if (!opened)
            _exit(2);
        const bool taken = take(handover, **opened, {}).has_value();
        opened->reset();
        _exit(taken ? 0 : 3);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

TEST(HandoverTakenWhileThePowerGoes, LeavesTheRegisterOldOrNew) {
    installFaultVfs();
    const Tablet giver = tabletWithAWalk();
    const Handover handover = readHandover(giver.give());
    Tablet base;
    base.accept(giver, base.join("Mate"));
    const std::string before = base.exported();
    std::string after;
    {
        Tablet copy = base.copy();
        ASSERT_TRUE(take(handover, copy.file(), {}));
        after = copy.exported();
    }
    int came = 0;
    int kept = 0;
    for (int at = 1;; ++at) {
        Tablet cut = base.copy();
        const QString path = cut.path();
        cut.close();
        const int exit =
            takeInChild(path, handover, {Fault::PowerCut, at, false, static_cast<unsigned>(at)});
        ASSERT_THAT(exit, ::testing::AnyOf(0, power_cut_exit)) << "cut " << at;
        cut.open();
        EXPECT_TRUE(cut.file().examine()) << "cut " << at;
        const std::string now = cut.exported();
        ASSERT_TRUE(now == after || (now == before && exit != 0)) << "cut " << at;
        kept += now == before ? 1 : 0;
        if (exit == 0)
            break;
        ++came;
    }
    EXPECT_GT(came, 10);
    EXPECT_GT(kept, 3);
}

} // namespace
} // namespace latchround::test
