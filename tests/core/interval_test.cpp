#include <gtest/gtest.h>

#include "core/measure/interval.h"
#include "tests/core/given.h"

using namespace latchround;

namespace {

Mark mark(std::optional<std::uint32_t> event_ms, std::optional<std::int64_t> steady_ns,
          InputDevice device = InputDevice::Touch) {
    return {"run", MarkKind::Shut, event_ms, steady_ns, device, {}};
}

} // namespace

TEST(Interval, ComesFromTheEventClockEvenWhenTheHandlerWasLate) {
    const auto interval = intervalBetween(mark(1000, 1'000'000'000), mark(3000, 3'200'000'000));
    ASSERT_TRUE(interval);
    EXPECT_NEAR(interval->seconds, 2.0, 1e-12);
    EXPECT_EQ(interval->clock, IntervalClock::InputEvent);
    EXPECT_NEAR(*interval->disagreement_s, -0.2, 1e-12);
}

TEST(Interval, SurvivesTheWrapOfThe32BitClock) {
    const auto interval = intervalBetween(mark(4'294'967'000u, {}), mark(704u, {}));
    ASSERT_TRUE(interval);
    EXPECT_NEAR(interval->seconds, 1.0, 1e-12);
}

TEST(Interval, FallsBackToTheHandlerWhereDevicesDifferOrAnEventHasNoTime) {
    const auto other = intervalBetween(mark(1000, 0, InputDevice::Touch),
                                       mark(9000, 2'000'000'000, InputDevice::Key));
    EXPECT_EQ(other->clock, IntervalClock::Handler);
    EXPECT_NEAR(other->seconds, 2.0, 1e-12);
    EXPECT_EQ(intervalBetween(mark(0u, 0), mark(9000, 1'000'000'000))->clock,
              IntervalClock::Handler);
    EXPECT_FALSE(intervalBetween(mark({}, 0), mark(9000, {})));
}

TEST(Interval, IsNegativeWhereTheOrderIsReversed) {
    EXPECT_NEAR(intervalBetween(mark(5000, {}), mark(3000, {}))->seconds, -2.0, 1e-12);
}

TEST(Interval, TakesTypedTimesFromTheFirstMark) {
    RunRecord run = given::run(Release::LetGo, {{MarkKind::AlarmOn, 0}, {MarkKind::LeafMoves, 6}});
    Mark typed{"run", MarkKind::Shut, {}, {}, InputDevice::Hand, 21'500'000'000};
    run.marks.push_back({"m", typed});
    const auto interval = intervalBetween(run, MarkKind::LeafMoves, MarkKind::Shut);
    ASSERT_TRUE(interval);
    EXPECT_NEAR(interval->seconds, 15.5, 1e-9);
    EXPECT_EQ(interval->clock, IntervalClock::TypedIn);
}

TEST(Interval, IsNothingWhereAMarkIsMissing) {
    EXPECT_FALSE(intervalBetween(given::goodSlidingRun(), MarkKind::LeafMoves, MarkKind::HalfWay));
}
