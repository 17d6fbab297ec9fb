#include <gtest/gtest.h>

#include "core/grading/live_band.h"
#include "tests/core/given.h"

using namespace latchround;

namespace {

std::optional<LiveBand> band(const Door& door, MarkKind since) {
    return liveBand(given::catalogue(), given::solasVessel(), door, Place::ZoneBulkhead, since);
}

} // namespace

// 0.1 to 0.2 m/s over a clear opening of 1.40 m: 7 to 14 s (SOLAS II-2/9.4.1.1.5.2).
TEST(LiveBand, OfASlidingDoorIsItsRateTurnedIntoSeconds) {
    const auto closing = band(given::slidingDoor(), MarkKind::LeafMoves);
    ASSERT_TRUE(closing);
    EXPECT_NEAR(*closing->low_s, 7.0, 1e-12);
    EXPECT_NEAR(*closing->high_s, 14.0, 1e-12);
    EXPECT_NEAR(closing->expanded_s, 0.208, 1e-3);
    EXPECT_EQ(closing->requirement->id, "sliding-rate");
}

TEST(LiveBand, OfTheAlarmIsFiveToTenSeconds) {
    const auto alarm = band(given::slidingDoor(), MarkKind::AlarmOn);
    ASSERT_TRUE(alarm);
    EXPECT_EQ(alarm->low_s, 5.0);
    EXPECT_EQ(alarm->high_s, 10.0);
    EXPECT_FALSE(band(given::hingedDoor(), MarkKind::AlarmOn));
}

TEST(LiveBand, OfAHingedDoorIsTenToFortySeconds) {
    const auto closing = band(given::hingedDoor(), MarkKind::LeafMoves);
    ASSERT_TRUE(closing);
    EXPECT_EQ(closing->low_s, 10.0);
    EXPECT_EQ(closing->high_s, 40.0);
    EXPECT_FALSE(closing->advice);
}

TEST(LiveBand, NeedsAnOpeningForARate) {
    Door unknown = given::slidingDoor();
    unknown.opening_m = 0;
    EXPECT_FALSE(band(unknown, MarkKind::LeafMoves));
}
