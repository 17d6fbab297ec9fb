// The decision rule against JCGM 106 and guard bands as ISO 14253-1 and ILAC-G8 use them.
#include <array>
#include <utility>

#include <gtest/gtest.h>

#include "core/measure/conformity.h"

using namespace latchround;

namespace {

constexpr std::optional<double> none;

} // namespace

// JCGM 106:2012, breakdown voltage of a Zener diode, from memory: y -5.47, u 0.05, limit -5.40;
// printed 0.92.
TEST(Jcgm106, ZenerDiode) {
    EXPECT_NEAR(conformanceProbability(-5.47, 0.05, none, -5.40), 0.9192433407662289, 1e-12);
    EXPECT_NEAR(conformanceProbability(-5.47, 0.05, none, -5.40), 0.92, 0.005);
}

// JCGM 106:2012 table 1: z for 80, 90, 95, 99 and 99.9 %, from memory.
TEST(Jcgm106, DistanceFromALimitForAProbability) {
    constexpr std::array<std::pair<double, double>, 5> printed{
        {{0.80, 0.84}, {0.90, 1.28}, {0.95, 1.64}, {0.99, 2.33}, {0.999, 3.09}}};
    for (const auto& [probability, z] : printed)
        EXPECT_NEAR(conformanceProbability(z, 1, 0, none), probability, 0.0015);
    EXPECT_NEAR(conformanceProbability(1.6448536269514726, 1, 0, none), 0.95, 1e-14);
}

// JCGM 106:2012, guarded rejection of a speed, from memory: limit 100, u 2 %, 99.9 %: 106.59,
// printed 107.
TEST(Jcgm106, GuardedRejection) {
    const double threshold = 106.5876094853783;
    EXPECT_NEAR(conformanceProbability(threshold, 0.02 * threshold, 100, none), 0.999, 1e-9);
}

// Guard band r U (k = 2): chance of wrong acceptance on the acceptance limit; bounds below 50, 5,
// 2.5 and 0.16 % and 1 in a million read, exact values computed apart.
TEST(GuardBand, RiskOnTheAcceptanceLimit) {
    constexpr std::array<std::array<double, 3>, 5> rows{{{0, 0.5, 0.5},
                                                         {0.83, 0.048457226266722817, 0.05},
                                                         {1, 0.02275013194817921, 0.025},
                                                         {1.5, 0.0013498980316300946, 0.0016},
                                                         {3, 9.86587645037698e-10, 1e-6}}};
    for (const auto& [r, risk, bound] : rows) {
        const double inside = conformanceProbability(-2 * r, 1, none, 0);
        EXPECT_NEAR(1 - inside, risk, 1e-15);
        EXPECT_LE(1 - inside, bound);
    }
}

// Closing time 10 to 40 s, normal distribution, computed apart.
TEST(ClosingTimeLimits, NormalDistribution) {
    EXPECT_NEAR(conformanceProbability(10.0, 0.1, 10, 40), 0.5, 1e-12);
    EXPECT_NEAR(conformanceProbability(10.3, 0.1, 10, 40), 0.9986501019683699, 1e-12);
    EXPECT_NEAR(conformanceProbability(9.8, 0.1, 10, 40), 0.02275013194817921, 1e-12);
    EXPECT_NEAR(conformanceProbability(39.7, 0.2, 10, 40), 0.9331927987311419, 1e-12);
    EXPECT_NEAR(conformanceProbability(40.15, 0.1, 10, 40), 0.066807201269, 1e-12);
}

// The same by Student's t, computed apart.
TEST(ClosingTimeLimits, FewDegreesOfFreedom) {
    EXPECT_NEAR(conformanceProbability(10.3, 0.2, 10, 40, 4), 0.895999993832855, 1e-12);
    EXPECT_NEAR(conformanceProbability(10.3, 0.2, 10, 40, 9), 0.916074671971, 1e-12);
    EXPECT_NEAR(conformanceProbability(39.5, 0.3, 10, 40, 2), 0.8811947245727351, 1e-12);
}

// 1.20 m in 11.80 s, u = 0.000960355 m/s, against 0.1 to 0.2 m/s: 0.961208, computed apart.
TEST(ClosingRateLimits, JustAboveTheLower) {
    EXPECT_NEAR(conformanceProbability(0.101694915, 0.000960355, 0.1, 0.2), 0.961208, 1e-6);
}

// With a wide u both tails matter: 0.15 m/s with u = 0.05 m/s is 1 u from either limit.
TEST(ClosingRateLimits, BothTailsCount) {
    EXPECT_NEAR(conformanceProbability(0.15, 0.05, 0.1, 0.2), 0.682689492137085897, 1e-12);
}
