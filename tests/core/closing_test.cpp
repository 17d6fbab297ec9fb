#include <cmath>

#include <gtest/gtest.h>

#include "core/measure/closing.h"
#include "tests/core/given.h"

using namespace latchround;

// Computed by the law of propagation (JCGM 100, 5.1.2) to 60 digits with mpmath:
// 0.90 m (5 mm) in 6.00 s (0.10 s) is 0.150000 m/s, u = 0.00263523.
TEST(Rate, UncertaintyFollowsTheLawOfPropagation) {
    const Reading rate = *rateOf({0.90, 0, 0.005}, {6.00, 0.10, 0});
    EXPECT_NEAR(rate.value, 0.15, 1e-12);
    EXPECT_NEAR(rate.u(), 0.00263523, 5e-9);
}

// Budget of a start-stop time: 12.40 s with spread 0.1 s and bias half-width 0.05 s. The full
// budget with display and clock rate is 0.104133 s (computed); these two parts alone make sqrt(0.01
// + 0.0025/3).
TEST(ClosingTime, CarriesTheDefaultThumb) {
    const RunRecord run =
        given::run(Release::LetGo, {{MarkKind::LeafMoves, 0}, {MarkKind::Shut, 12.4}});
    const Reading time = *closingTime(run, DoorKind::SingleLeaf, ThumbError{});
    EXPECT_NEAR(time.value, 12.4, 1e-9);
    EXPECT_NEAR(time.u(), std::sqrt(0.01 + 0.0025 / 3), 1e-12);
    EXPECT_NEAR(time.u(), 0.104133, 1e-4);
}

TEST(Rate, OfNoTimeIsNoRate) {
    EXPECT_FALSE(rateOf({1, 0, 0}, {0, 0.1, 0}));
    EXPECT_FALSE(rateOf({1, 0, 0}, {-1, 0.1, 0}));
    Door unknown = given::slidingDoor();
    unknown.opening_m = 0;
    EXPECT_FALSE(closingRate(given::goodSlidingRun(), unknown, ThumbError{}));
}

TEST(Together, MeanShrinksOnlyTheRandomPart) {
    const Together all =
        together({{10, 0.1, 0.03}, {10.1, 0.1, 0.03}, {10.2, 0.1, 0.03}, {10.1, 0.1, 0.03}});
    EXPECT_TRUE(all.agree);
    EXPECT_EQ(all.count, 4);
    EXPECT_NEAR(all.mean.value, 10.1, 1e-12);
    EXPECT_NEAR(all.mean.u_random, 0.05, 1e-12);
    EXPECT_NEAR(all.mean.u_common, 0.03, 1e-12);
}

TEST(Together, ReadingsFurtherApartThanTheThumbDisagree) {
    EXPECT_TRUE(together({{10, 0.1, 0}, {10.28, 0.1, 0}}).agree);
    EXPECT_FALSE(together({{10, 0.1, 0}, {10.29, 0.1, 0}}).agree);
}

TEST(HalfRates, NeedTheHalfWayMark) {
    EXPECT_TRUE(halfRates(given::goodSlidingRun(), given::slidingDoor(), ThumbError{}).empty());
    const RunRecord run = given::run(
        Release::Remote, {{MarkKind::LeafMoves, 0}, {MarkKind::HalfWay, 4}, {MarkKind::Shut, 9}});
    const auto halves = halfRates(run, given::slidingDoor(), ThumbError{});
    ASSERT_EQ(halves.size(), 2u);
    EXPECT_NEAR(halves[0].value, 0.175, 1e-12);
    EXPECT_NEAR(halves[1].value, 0.14, 1e-12);
}
