// What follows from a probability; the probabilities themselves stand in tests/reference.
#include <gtest/gtest.h>

#include "core/measure/conformity.h"

using namespace latchround;

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
