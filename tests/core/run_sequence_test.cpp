// Sequences: common practice, no source; alarm before and until closing: SOLAS II-2/9.4.1.1.5.10.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/evidence/run_sequence.h"
#include "tests/core/given.h"

using namespace latchround;
using testing::ElementsAre;

namespace {

std::vector<MarkKind> kinds(const Door& door, Release release, RunKind kind = RunKind::Closing) {
    std::vector<MarkKind> result;
    for (const SequenceStep& step : sequenceOf(door, release, kind))
        result.push_back(step.mark);
    return result;
}

} // namespace

TEST(RunSequence, FollowsTheDoorsKindAndTheRelease) {
    using enum MarkKind;
    EXPECT_THAT(kinds(given::slidingDoor(), Release::Remote),
                ElementsAre(AlarmOn, LeafMoves, HalfWay, Shut, AlarmOff));
    EXPECT_THAT(kinds(given::slidingDoor(), Release::LocalSideOne),
                ElementsAre(LeafMoves, HalfWay, Shut));
    EXPECT_THAT(kinds(given::hingedDoor(), Release::Remote), ElementsAre(LeafMoves, Shut));
    EXPECT_THAT(kinds(given::hingedDoor(DoorKind::DoubleLeaf), Release::LetGo),
                ElementsAre(LeafMoves, FirstLeafHome, SecondLeafHome));
    EXPECT_THAT(kinds(given::slidingDoor(), Release::Remote, RunKind::Contact),
                ElementsAre(Touched, Stopped));
}

TEST(RunSequence, OptionalHalfWayIsPassedOverByTheNextMark) {
    const auto sequence = sequenceOf(given::slidingDoor(), Release::Remote, RunKind::Closing);
    std::vector<MarkKind> taken{MarkKind::AlarmOn, MarkKind::LeafMoves};
    EXPECT_EQ(nextStep(sequence, taken)->mark, MarkKind::HalfWay);
    EXPECT_TRUE(nextStep(sequence, taken)->optional);
    EXPECT_EQ(nextRequired(sequence, taken)->mark, MarkKind::Shut);
    taken.push_back(MarkKind::Shut);
    EXPECT_EQ(nextStep(sequence, taken)->mark, MarkKind::AlarmOff);
    taken.push_back(MarkKind::AlarmOff);
    EXPECT_EQ(nextStep(sequence, taken), nullptr);
}

TEST(RunSequence, AlarmThatStopsEarlyIsNotAskedForAgain) {
    const auto sequence = sequenceOf(given::slidingDoor(), Release::Remote, RunKind::Closing);
    std::vector<MarkKind> taken{MarkKind::AlarmOn, MarkKind::LeafMoves};
    EXPECT_EQ(alarmOutOfTurn(sequence, taken), MarkKind::AlarmOff);
    taken.push_back(MarkKind::AlarmOff);
    EXPECT_EQ(alarmOutOfTurn(sequence, taken), std::nullopt);
    EXPECT_EQ(nextStep(sequence, taken)->mark, MarkKind::HalfWay);
    EXPECT_EQ(nextRequired(sequence, taken)->mark, MarkKind::Shut);
    taken.push_back(MarkKind::Shut);
    EXPECT_EQ(nextStep(sequence, taken), nullptr);
    EXPECT_EQ(nextRequired(sequence, taken), nullptr);
}

TEST(RunSequence, FirstStepComesFirst) {
    const auto sequence = sequenceOf(given::hingedDoor(), Release::LetGo, RunKind::Closing);
    EXPECT_EQ(nextStep(sequence, {})->mark, MarkKind::LeafMoves);
    EXPECT_EQ(alarmOutOfTurn(sequence, {}), std::nullopt);
}

TEST(RunSequence, AlarmThatNeverComesOnIsNotAskedToGoOff) {
    const auto sequence = sequenceOf(given::slidingDoor(), Release::Remote, RunKind::Closing);
    EXPECT_EQ(alarmOutOfTurn(sequence, {}), MarkKind::LeafMoves);
    std::vector<MarkKind> taken{MarkKind::LeafMoves};
    EXPECT_EQ(nextRequired(sequence, taken)->mark, MarkKind::Shut);
    EXPECT_EQ(alarmOutOfTurn(sequence, taken), MarkKind::AlarmOn) << "it may still come late";
    taken.push_back(MarkKind::Shut);
    EXPECT_EQ(nextRequired(sequence, taken), nullptr);
    EXPECT_EQ(alarmOutOfTurn(sequence, taken), std::nullopt);
}

TEST(RunSequence, AlarmThatComesLateHasToGoOff) {
    const auto sequence = sequenceOf(given::slidingDoor(), Release::Remote, RunKind::Closing);
    std::vector<MarkKind> taken{MarkKind::LeafMoves, MarkKind::AlarmOn};
    EXPECT_EQ(nextRequired(sequence, taken)->mark, MarkKind::Shut);
    EXPECT_EQ(alarmOutOfTurn(sequence, taken), MarkKind::AlarmOff);
    taken.push_back(MarkKind::Shut);
    EXPECT_EQ(nextRequired(sequence, taken)->mark, MarkKind::AlarmOff);
}
