// Coverage factors against printed tables.
#include <gtest/gtest.h>

#include "core/measure/budget.h"
#include "core/measure/conformity.h"
#include "tests/reference/published.h"

using namespace latchround;

TEST(StudentT, QuantilesComputedApart) {
    for (const auto& row : published::t_quantiles)
        for (std::size_t i = 0; i < row.t.size(); ++i) {
            const double level = 2 * published::t_columns[i] - 1;
            const double t = coverageFactor(row.degrees_of_freedom, level);
            EXPECT_NEAR(t / row.t[i], 1, 1e-12)
                << row.degrees_of_freedom << " degrees, " << published::t_columns[i];
        }
}

// NIST TN 1297 table B.1. One cell is off (trap 6): 35 degrees, 90 %.
TEST(StudentT, TableB1OfTn1297) {
    int cells = 0;
    for (const auto& row : published::tn1297_b1)
        for (std::size_t i = 0; i < row.t.size(); ++i) {
            const double degrees =
                row.degrees_of_freedom == 0 ? known_exactly : row.degrees_of_freedom;
            const double t = coverageFactor(degrees, published::tn1297_levels[i]);
            const bool known_slip = row.degrees_of_freedom == 35 && i == 1;
            // Printed to two places, the largest cell to one.
            const double half_a_digit = row.t[i] > 100 ? 0.0501 : 0.00501;
            EXPECT_NEAR(t, row.t[i], known_slip ? 0.011 : half_a_digit)
                << row.degrees_of_freedom << " degrees, column " << i;
            ++cells;
        }
    EXPECT_EQ(cells, 162);
}

// Tables with three places: 10 degrees, one-sided 0.90 to 0.995 (10 CFR 429 subpart B app. A and a
// textbook table, read).
TEST(StudentT, TablesWithThreePlaces) {
    const double printed[] = {1.372, 1.812, 2.228, 2.764, 3.169};
    const double levels[] = {0.80, 0.90, 0.95, 0.98, 0.99};
    for (std::size_t i = 0; i < 5; ++i)
        EXPECT_NEAR(coverageFactor(10, levels[i]), printed[i], 0.0005);
}

// Degrees of freedom are cut to a whole number, not interpolated (GUM G.4.1): 16.7 counts as 16.
TEST(StudentT, BrokenDegreesAreTruncated) {
    EXPECT_EQ(coverageFactor(16.7, 0.95), coverageFactor(16, 0.95));
    EXPECT_GT(coverageFactor(16.7, 0.95), 2.11270642065959); // what 16.7 itself would give
}

// Cumulative t, computed apart: 2.228 with 10 degrees 0.9749941140914443, and others.
TEST(StudentT, CumulativeValuesComputedApart) {
    const auto below = [](double t, double degrees) {
        return conformanceProbability(t, 1, 0, std::nullopt, degrees);
    };
    EXPECT_NEAR(below(2.228, 10), 0.9749941140914443, 1e-13);
    EXPECT_NEAR(below(-3, 1), 0.10241638234956674, 1e-13);
    EXPECT_NEAR(below(-2, 4), 0.058058261758407795, 1e-13);
    EXPECT_NEAR(below(0.5, 3), 0.6742760175759245, 1e-13);
    EXPECT_NEAR(below(4, 30), 0.9998090771819581, 1e-13);
    EXPECT_NEAR(below(10, 5), 0.9999145262121285, 1e-13);
}

TEST(Normal, FactorsOfUsualLevels) {
    EXPECT_NEAR(coverageFactor(known_exactly, 0.95), 1.9599639845400543, 1e-13);
    EXPECT_NEAR(coverageFactor(known_exactly, 0.99), 2.575829303548901, 1e-13);
    EXPECT_NEAR(coverageFactor(known_exactly, level_of_k2), 2, 1e-13);
}
