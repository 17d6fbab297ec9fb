// How practice leaves move: where they stall and stop, who waits for whom, what a motion that is
// stopped or continued says. Against closed forms: tests/reference/practice_reference.cpp.
#include <gtest/gtest.h>

#include "core/practice/motion.h"

using namespace latchround::practice;

namespace {

double endOf(const Motion& motion) {
    return motion.samples().back().open;
}

/// From 1 at 1 s to 0.4 at 4 s, evenly; 6 J are given, 2 of them spent, and it is let stand.
Motion evenly() {
    return Motion({{1, 1, 0, 0, 0}, {2, 0.8, 4, 0, 4}, {4, 0.4, 0, 6, 6}}, std::nullopt);
}

} // namespace

TEST(HingedLeaf, ComesHomeAndStaysThere) {
    const Motion motion = closing(HingedLeaf{});
    ASSERT_TRUE(motion.shut_s());
    EXPECT_EQ(motion.open(0), 1);
    EXPECT_EQ(motion.open(*motion.shut_s()), 0);
    EXPECT_EQ(motion.open(*motion.shut_s() + 100), 0);
    EXPECT_EQ(motion.rests_s(), *motion.shut_s());
    EXPECT_EQ(motion.samples().back().kinetic_J, 0);
}

TEST(HingedLeaf, WhoseSpringIsWeakerThanFrictionStandsWhereItIsLetGo) {
    HingedLeaf leaf;
    leaf.spring_rate_Nm = 0;
    leaf.friction_Nm = leaf.spring_Nm + 0.1;
    const Motion motion = closing(leaf, 0.7);
    EXPECT_FALSE(motion.shut_s());
    EXPECT_EQ(motion.rests_s(), 0);
    EXPECT_EQ(endOf(motion), 0.7);
}

TEST(HingedLeaf, StallsInTheLatchThatIsTooStiff) {
    HingedLeaf leaf;
    leaf.latch_Nm = 20;
    const Motion motion = closing(leaf);
    EXPECT_FALSE(motion.shut_s());
    EXPECT_GT(endOf(motion), 0);
    EXPECT_LT(endOf(motion) * leaf.open_rad, leaf.latch_from_rad);
}

TEST(HingedLeaf, WithSpeedEnoughGoesThroughALatchThatHoldsItFromRest) {
    HingedLeaf leaf;
    leaf.latch_Nm = 20;
    leaf.sweep_damping_Nms = leaf.latch_damping_Nms = 5;
    EXPECT_TRUE(closing(leaf).shut_s());
    EXPECT_FALSE(closing(leaf, 0.02 / leaf.open_rad).shut_s());
}

TEST(HingedLeaf, ComesToRestAtWhatBlocksIt) {
    HingedLeaf leaf;
    leaf.blocked_rad = 0.6;
    const Motion motion = closing(leaf);
    EXPECT_FALSE(motion.shut_s());
    EXPECT_DOUBLE_EQ(endOf(motion) * leaf.open_rad, 0.6);
    EXPECT_EQ(motion.samples().back().kinetic_J, 0);
    EXPECT_DOUBLE_EQ(*motion.passes_s(endOf(motion)), motion.rests_s());
    EXPECT_EQ(closing(leaf, endOf(motion)).rests_s(), 0) << "let go again it stands";
    EXPECT_TRUE(closing(leaf, 0.3).shut_s()) << "what lies behind it blocks nothing";
}

TEST(HingedLeaf, IsSlowerAgainstTheHeelAndSwingsOpenBeforeAStrongOne) {
    HingedLeaf leaf;
    const double level_s = *closing(leaf).shut_s();
    leaf.heel_Nm = 3;
    EXPECT_GT(*closing(leaf).shut_s(), level_s);
    leaf.heel_Nm = -3;
    EXPECT_LT(*closing(leaf).shut_s(), level_s);
    leaf.heel_Nm = 30;
    const Motion swings = closing(leaf, 0.5);
    EXPECT_FALSE(swings.shut_s());
    EXPECT_EQ(endOf(swings), 1);
    EXPECT_EQ(swings.samples().back().kinetic_J, 0);
}

/// No friction, no damping: it would swing for ever about 0.4 rad.
TEST(HingedLeaf, ThatNeverComesToRestIsWatchedForTenMinutes) {
    HingedLeaf leaf;
    leaf.friction_Nm = leaf.sweep_damping_Nms = leaf.latch_damping_Nms = 0;
    leaf.heel_Nm = leaf.spring_Nm + 0.4 * leaf.spring_rate_Nm;
    const Motion motion = closing(leaf, 0.3);
    EXPECT_FALSE(motion.shut_s());
    EXPECT_GE(motion.rests_s(), 600);
    EXPECT_LT(motion.rests_s(), 610);
}

TEST(HingedLeaf, LetGoShutIsHomeAtOnce) {
    EXPECT_EQ(closing(HingedLeaf{}, 0).shut_s(), 0);
    EXPECT_EQ(closing(SlidingLeaf{}, 0).shut_s(), 0);
}

TEST(SlidingLeaf, GoesAtItsRateAndCreepsIntoTheFrame) {
    const SlidingLeaf leaf;
    const Motion motion = closing(leaf);
    const auto at_m = [&](double place_m) { return *motion.passes_s(place_m / leaf.travel_m); };
    EXPECT_NEAR(0.5 / (at_m(0.3) - at_m(0.8)), leaf.rate_m_s, 1e-3);
    EXPECT_NEAR(0.005 / (at_m(0.005) - at_m(0.01)), leaf.creep_rate_m_s, 0.02);
    EXPECT_LT(0.005 / (at_m(0.005) - at_m(0.01)), leaf.rate_m_s - 0.02);
    EXPECT_EQ(endOf(motion), 0);
}

TEST(SlidingLeaf, CreepsNoFasterThanItIsSet) {
    SlidingLeaf leaf;
    leaf.rate_m_s = 0.05;
    const Motion motion = closing(leaf);
    EXPECT_NEAR(*motion.shut_s(), leaf.travel_m / leaf.rate_m_s + leaf.ramp_s, 1e-6);
}

TEST(SlidingLeaf, StandsWithoutADriveAndAtWhatBlocksIt) {
    SlidingLeaf leaf;
    leaf.blocked_m = 0.9;
    EXPECT_DOUBLE_EQ(endOf(closing(leaf)) * leaf.travel_m, 0.9);
    EXPECT_FALSE(closing(leaf).shut_s());
    leaf.rate_m_s = 0;
    EXPECT_EQ(closing(leaf).rests_s(), 0);
    EXPECT_EQ(endOf(closing(leaf)), 1);
}

TEST(SlidingLeaf, ReopensByItsDistanceButNoFurtherThanItGoes) {
    const SlidingLeaf leaf;
    const Motion back = reopening(leaf, 0.25, 0.4);
    EXPECT_DOUBLE_EQ(endOf(back), 0.25 + 0.4 / leaf.travel_m);
    EXPECT_NEAR(back.rests_s(), 0.4 / leaf.rate_m_s + leaf.ramp_s, 1e-3);
    EXPECT_EQ(endOf(reopening(leaf, 0.9, 2)), 1);
    EXPECT_EQ(reopening(leaf, 0.9, 0).rests_s(), 0);
    EXPECT_FALSE(reopening(leaf, 0, 0.4).shut_s());
}

TEST(DoubleLeaf, TheSelectorHoldsTheSecondUntilTheFirstIsHome) {
    DoubleLeaf leaves;
    leaves.second.sweep_damping_Nms = 50;
    const auto [first, second] = closing(leaves);
    ASSERT_TRUE(first.shut_s());
    ASSERT_TRUE(second.shut_s());
    const double held = leaves.selector_rad / leaves.second.open_rad;
    ASSERT_LT(*second.passes_s(held), *first.shut_s());
    EXPECT_DOUBLE_EQ(second.open(*second.passes_s(held) + 0.5), held);
    EXPECT_DOUBLE_EQ(second.open(*first.shut_s()), held);
    EXPECT_EQ(first.samples(), closing(leaves.first).samples());
    EXPECT_NEAR(*second.shut_s() - *first.shut_s(), *closing(leaves.second, held).shut_s(), 1e-9);
}

TEST(DoubleLeaf, WithAFailedSelectorTheQuickerLeafIsHomeFirst) {
    DoubleLeaf leaves;
    leaves.second.sweep_damping_Nms = 50;
    leaves.selector_works = false;
    const auto [first, second] = closing(leaves);
    EXPECT_LT(*second.shut_s(), *first.shut_s());
    EXPECT_EQ(second.samples(), closing(leaves.second).samples());
}

TEST(DoubleLeaf, ASecondLeafThatComesLateNeverKnowsOfTheSelector) {
    DoubleLeaf leaves;
    leaves.first.sweep_damping_Nms = 30;
    leaves.second.sweep_damping_Nms = 400;
    EXPECT_EQ(closing(leaves).second.samples(), closing(leaves.second).samples());
}

TEST(DoubleLeaf, BehindAFirstLeafThatStallsTheSecondStandsAtTheSelector) {
    DoubleLeaf leaves;
    leaves.first.blocked_rad = 1;
    const auto [first, second] = closing(leaves);
    EXPECT_FALSE(first.shut_s());
    EXPECT_FALSE(second.shut_s());
    EXPECT_DOUBLE_EQ(endOf(second), leaves.selector_rad / leaves.second.open_rad);
}

TEST(DoubleLeaf, ASelectorThatHoldsWideOpenLetsGoWhenTheFirstIsHome) {
    DoubleLeaf leaves;
    leaves.selector_rad = 3;
    const auto [first, second] = closing(leaves);
    EXPECT_EQ(second.open(*first.shut_s()), 1);
    EXPECT_NEAR(*second.shut_s(), 2 * *first.shut_s(), 1e-9);
}

TEST(Motion, ThatStandsIsNeverShutUnlessItStandsShut) {
    EXPECT_EQ(Motion(0.3).open(7), 0.3);
    EXPECT_EQ(Motion(0.3).rests_s(), 0);
    EXPECT_FALSE(Motion(0.3).shut_s());
    EXPECT_EQ(Motion(0).shut_s(), 0);
}

TEST(Motion, GoesStraightBetweenSamplesAndStandsOutsideThem) {
    const Motion motion = evenly();
    EXPECT_EQ(motion.open(-3), 1);
    EXPECT_DOUBLE_EQ(motion.open(1.5), 0.9);
    EXPECT_DOUBLE_EQ(motion.open(3), 0.6);
    EXPECT_EQ(motion.open(9), 0.4);
    EXPECT_DOUBLE_EQ(*motion.passes_s(0.6), 3);
    EXPECT_EQ(motion.passes_s(1), 1);
    EXPECT_EQ(motion.passes_s(0.4), 4);
    EXPECT_FALSE(motion.passes_s(0.39));
    EXPECT_EQ(motion.rests_s(), 4);
}

TEST(Motion, RestsWhenItLastMoved) {
    const Motion motion({{0, 1, 0, 0, 0}, {1, 0.5, 0, 0, 0}, {9, 0.5, 0, 0, 0}}, std::nullopt);
    EXPECT_EQ(motion.rests_s(), 1);
}

TEST(Motion, BegunLaterIsTheSameLater) {
    const Motion later = Motion({{0, 1, 0, 0, 0}, {2, 0, 0, 0, 0}}, 2).later(5);
    EXPECT_EQ(later.open(5), 1);
    EXPECT_DOUBLE_EQ(later.open(6), 0.5);
    EXPECT_EQ(later.shut_s(), 7);
}

TEST(Motion, StoppedStandsThereAndIsNotShut) {
    const Motion shuts({{0, 1, 0, 0, 0}, {1, 0.5, 2, 1, 3}, {2, 0, 0, 4, 4}}, 2);
    const Motion stopped = shuts.stoppedAt(1.5);
    EXPECT_DOUBLE_EQ(stopped.open(1.5), 0.25);
    EXPECT_DOUBLE_EQ(stopped.open(99), 0.25);
    EXPECT_EQ(stopped.rests_s(), 1.5);
    EXPECT_FALSE(stopped.shut_s());
    EXPECT_EQ(stopped.samples().back().kinetic_J, 0);
    EXPECT_DOUBLE_EQ(stopped.samples().back().spent_J, 3.5);
    EXPECT_EQ(shuts.stoppedAt(3).samples(), shuts.samples());
    EXPECT_EQ(shuts.stoppedAt(3).shut_s(), 2);
    EXPECT_EQ(shuts.later(4).stoppedAt(1).open(9), 1) << "before it began";
}

TEST(Motion, FollowedGoesOnFromWhereItIs) {
    const Motion goes = evenly().followedBy(3, Motion({{0, 0.6, 0, 0, 0}, {3, 0, 0, 1, 1}}, 3));
    EXPECT_DOUBLE_EQ(goes.open(3), 0.6);
    EXPECT_DOUBLE_EQ(goes.open(4.5), 0.3);
    EXPECT_EQ(goes.shut_s(), 6);
    EXPECT_DOUBLE_EQ(goes.samples().back().given_J, goes.samples().back().spent_J);
    const Motion waits = evenly().followedBy(8, Motion({{0, 0.4, 0, 0, 0}, {1, 0, 0, 0, 0}}, 1));
    EXPECT_EQ(waits.open(6), 0.4);
    EXPECT_EQ(waits.shut_s(), 9);
}
