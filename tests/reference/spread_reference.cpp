// Mean and standard deviation against NIST/ITL StRD, univariate summary statistics (certified
// values read in verbatim copies of the .dat files).
#include <vector>

#include <gtest/gtest.h>

#include "core/measure/spread.h"

using namespace latchround;

namespace {

std::vector<double> series(double first, double low, double high) {
    std::vector<double> values{first};
    for (int i = 0; i < 500; ++i) {
        values.push_back(low);
        values.push_back(high);
    }
    return values;
}

} // namespace

TEST(Strd, NumAcc1) {
    const std::vector<double> values{10000001, 10000003, 10000002};
    EXPECT_EQ(meanOf(values), 10000002);
    EXPECT_EQ(standardDeviation(values), 1);
}

TEST(Strd, NumAcc2) {
    const auto values = series(1.2, 1.1, 1.3);
    EXPECT_NEAR(meanOf(values), 1.2, 1.2e-15);
    EXPECT_NEAR(standardDeviation(values), 0.1, 1e-15);
}

// The rest cannot be had to 15 digits in double: the data themselves are rounded.
TEST(Strd, NumAcc3ToEightDigits) {
    const auto values = series(1000000.2, 1000000.1, 1000000.3);
    EXPECT_NEAR(meanOf(values), 1000000.2, 1e-9);
    EXPECT_NEAR(standardDeviation(values), 0.1, 1e-9);
}

TEST(Strd, NumAcc4ToEightDigits) {
    const auto values = series(10000000.2, 10000000.1, 10000000.3);
    EXPECT_NEAR(meanOf(values), 10000000.2, 1e-8);
    EXPECT_NEAR(standardDeviation(values), 0.1, 1e-9);
}
