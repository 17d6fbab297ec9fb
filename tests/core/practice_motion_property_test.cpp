// What holds of every practice leaf: energy is kept, half the step moves no event, a closer can be
// adjusted to any usual time.
#include <cmath>

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "core/practice/motion.h"
#include "tests/core/practice_mechanisms.h"

using namespace latchround;
using namespace latchround::practice;

namespace {

void expectSameTime(std::optional<double> one_s, std::optional<double> other_s) {
    RC_ASSERT(one_s.has_value() == other_s.has_value());
    if (one_s)
        RC_ASSERT(std::abs(*one_s - *other_s) < 0.001);
}

void expectSameEvents(const Motion& one, const Motion& other) {
    expectSameTime(one.shut_s(), other.shut_s());
    expectSameTime(one.rests_s(), other.rests_s());
    RC_ASSERT(std::abs(one.samples().back().open - other.samples().back().open) < 1e-6);
    for (int times = 0; times < 5; ++times) {
        const double open = given::someBetween(0, 1) * 0.998 + 0.001;
        // What the leaf turns back from within a hair it may or may not meet.
        const bool at_the_end = std::abs(one.samples().back().open - open) < 1e-4;
        if (!at_the_end)
            expectSameTime(one.passes_s(open), other.passes_s(open));
    }
}

void expectEnergyKept(const Motion& motion) {
    Sample before = motion.samples().front();
    for (const Sample& sample : motion.samples()) {
        RC_ASSERT(std::abs(sample.given_J - sample.spent_J - sample.kinetic_J) <
                  1e-7 * (1 + std::abs(sample.given_J)));
        RC_ASSERT(sample.spent_J >= before.spent_J - 1e-7);
        RC_ASSERT(sample.kinetic_J >= 0);
        before = sample;
    }
    RC_ASSERT(before.kinetic_J == 0);
}

void expectInOrder(const Motion& motion) {
    for (std::size_t i = 1; i < motion.samples().size(); ++i)
        RC_ASSERT(motion.samples()[i - 1].t_s < motion.samples()[i].t_s);
    for (const Sample& sample : motion.samples())
        RC_ASSERT(sample.open >= 0 && sample.open <= 1);
}

} // namespace

RC_GTEST_PROP(HalfTheStep, MovesNoEventOfAHingedLeafByAMillisecond, ()) {
    const HingedLeaf leaf = given::anyHinged();
    const double from = given::someBetween(0.2, 1);
    expectSameEvents(closing(leaf, from), closing(leaf, from, usual_step_s / 2));
}

RC_GTEST_PROP(HalfTheStep, MovesNoEventOfADoubleLeafByAMillisecond, ()) {
    const DoubleLeaf leaves = given::anyDouble();
    const TwoMotions one = closing(leaves);
    const TwoMotions other = closing(leaves, usual_step_s / 2);
    expectSameEvents(one.first, other.first);
    expectSameEvents(one.second, other.second);
}

RC_GTEST_PROP(HalfTheStep, MovesNoEventOfASlidingLeafByAMillisecond, ()) {
    const SlidingLeaf leaf = given::anySliding();
    const double from = given::someBetween(0.2, 1);
    const double back_m = given::someBetween(0, 1);
    expectSameEvents(closing(leaf, from), closing(leaf, from, usual_step_s / 2));
    expectSameEvents(reopening(leaf, from, back_m),
                     reopening(leaf, from, back_m, usual_step_s / 2));
}

RC_GTEST_PROP(Energy, GivenIsSpentOrCarried, ()) {
    const DoubleLeaf leaves = given::anyDouble();
    const TwoMotions both = closing(leaves);
    const SlidingLeaf sliding = given::anySliding();
    const Motion slides = closing(sliding);
    const double at_s = given::someBetween(0, 12);
    const Motion stopped = slides.stoppedAt(at_s);
    const Motion back = slides.followedBy(at_s, reopening(sliding, slides.open(at_s), 0.3));
    for (const Motion& motion : {both.first, both.second, slides, stopped, back, back.later(3)}) {
        expectEnergyKept(motion);
        expectInOrder(motion);
    }
}

RC_GTEST_PROP(DoubleLeafProperty, WithASelectorThatWorksTheSecondIsNotHomeFirst, ()) {
    DoubleLeaf leaves = given::anyDouble();
    leaves.selector_works = true;
    leaves.selector_rad = given::someBetween(0.1, 1);
    const TwoMotions both = closing(leaves);
    if (both.second.shut_s()) {
        RC_ASSERT(both.first.shut_s().has_value());
        RC_ASSERT(*both.first.shut_s() < *both.second.shut_s());
    }
}

RC_GTEST_PROP(Adjusted, AClosingTimeIsMetToAMillisecond, ()) {
    const HingedLeaf leaf = given::usualHinged();
    HingedLeaf loose = leaf;
    loose.sweep_damping_Nms = loose.latch_damping_Nms = 0;
    const double shortest_s = closing(loose).shut_s().value_or(1000);
    const double wanted_s = given::someBetween(3, 60);
    const std::optional<HingedLeaf> made = adjusted(leaf, wanted_s);
    if (wanted_s < shortest_s - 0.001)
        RC_ASSERT(!made);
    if (wanted_s < shortest_s)
        return;
    RC_ASSERT(made.has_value());
    RC_ASSERT(std::abs(closing(*made).shut_s().value_or(0) - wanted_s) <= 0.001);
    const double factor = made->sweep_damping_Nms / leaf.sweep_damping_Nms;
    HingedLeaf expected = leaf;
    expected.sweep_damping_Nms *= factor;
    expected.latch_damping_Nms = made->latch_damping_Nms;
    RC_ASSERT(*made == expected);
    RC_ASSERT(std::abs(made->latch_damping_Nms / leaf.latch_damping_Nms - factor) < 1e-12 * factor);
}

RC_GTEST_PROP(Adjusted, TwoLeavesMeetTheirTimeTogether, ()) {
    const HingedLeaf leaf = given::usualHinged();
    const double wanted_s = given::someBetween(12, 55);
    const std::optional<DoubleLeaf> made = adjusted(DoubleLeaf{leaf, leaf}, wanted_s);
    if (!made)
        return; // a latch that is passed with speed only
    const TwoMotions both = closing(*made);
    RC_ASSERT(both.first.shut_s().has_value());
    RC_ASSERT(std::abs(both.second.shut_s().value_or(0) - wanted_s) <= 0.001);
    RC_ASSERT(made->first == made->second);
}

RC_GTEST_PROP(Adjusted, AMeanRateIsMetToATenthOfAMillimetreASecond, ()) {
    SlidingLeaf leaf = given::anySliding();
    leaf.travel_m = given::someBetween(1, 2);
    leaf.blocked_m.reset();
    const double wanted_m_s = given::someBetween(0.05, 0.35);
    const std::optional<SlidingLeaf> made = adjusted(leaf, wanted_m_s);
    RC_ASSERT(made.has_value());
    RC_ASSERT(std::abs(leaf.travel_m / closing(*made).shut_s().value_or(1e9) - wanted_m_s) <=
              0.0001);
    RC_ASSERT(made->rate_m_s > wanted_m_s);
    leaf.rate_m_s = made->rate_m_s;
    RC_ASSERT(*made == leaf);
}

TEST(Adjusted, NothingWhereNoSettingGivesIt) {
    HingedLeaf hinged;
    EXPECT_FALSE(adjusted(hinged, 0.5)) << "quicker than it falls";
    EXPECT_FALSE(adjusted(hinged, 0));
    EXPECT_FALSE(adjusted(hinged, 5000));
    EXPECT_FALSE(adjusted(hinged, std::nan("")));
    hinged.blocked_rad = 0.5;
    EXPECT_FALSE(adjusted(hinged, 10));
    hinged = {};
    hinged.sweep_damping_Nms = hinged.latch_damping_Nms = 0;
    EXPECT_FALSE(adjusted(hinged, 10)) << "no damper to adjust";
    hinged = {};
    hinged.latch_Nm = 20;
    EXPECT_TRUE(adjusted(hinged, 2.5)) << "quick enough for the latch";
    EXPECT_FALSE(adjusted(hinged, 20)) << "too slow for it";
    SlidingLeaf sliding;
    EXPECT_FALSE(adjusted(sliding, 0.0));
    EXPECT_FALSE(adjusted(sliding, -1.0));
    sliding.blocked_m = 0.2;
    EXPECT_FALSE(adjusted(sliding, 0.2));
}
