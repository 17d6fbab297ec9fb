// Values printed in, or computed from, JCGM 106:2012; the two examples are from memory, reproduced.
#include <gtest/gtest.h>

#include "core/measure/conformity.h"

using namespace latchround;

TEST(Conformity, ZenerExampleOfJcgm106) {
    EXPECT_NEAR(conformanceProbability(-5.47, 0.05, std::nullopt, -5.40), 0.919243340766, 1e-12);
}

// Closing time 10 to 40 s, u = 0.1 s: computed to 60 digits with mpmath.
TEST(Conformity, ClosingTimesNearTheLimits) {
    EXPECT_NEAR(conformanceProbability(10.3, 0.1, 10, 40), 0.998650101968, 1e-12);
    EXPECT_NEAR(conformanceProbability(10.0, 0.1, 10, 40), 0.5, 1e-12);
    EXPECT_NEAR(conformanceProbability(9.8, 0.1, 10, 40), 0.022750131948, 1e-12);
    EXPECT_NEAR(conformanceProbability(40.15, 0.1, 10, 40), 0.066807201269, 1e-12);
}

// Speed 1.20 m in 11.80 s, u = 0.000960355 m/s against 0.1 to 0.2 m/s: computed likewise.
TEST(Conformity, RateJustAboveTheLowerLimit) {
    EXPECT_NEAR(conformanceProbability(0.101694915, 0.000960355, 0.1, 0.2), 0.961208, 1e-6);
}

TEST(Conformity, ExactlyOnALimitIsTooClose) {
    EXPECT_EQ(conformityOf(conformanceProbability(10, 0.104, 10, 40)), Conformity::TooClose);
    EXPECT_EQ(conformityOf(conformanceProbability(10, 0, 10, 40)), Conformity::TooClose);
}

TEST(Conformity, LimitsOfProbabilityBelongToTheDecision) {
    EXPECT_EQ(conformityOf(0.95), Conformity::Inside);
    EXPECT_EQ(conformityOf(0.9499), Conformity::TooClose);
    EXPECT_EQ(conformityOf(0.0501), Conformity::TooClose);
    EXPECT_EQ(conformityOf(0.05), Conformity::Outside);
}
