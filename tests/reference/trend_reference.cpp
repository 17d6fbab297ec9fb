// Straight lines against NIST StRD Norris and GUM H.3.
#include <vector>

#include <gtest/gtest.h>

#include "core/trend/line.h"
#include "tests/reference/published.h"

using namespace latchround;

namespace {

template <class Table>
Line lineOf(const Table& table, double origin = 0) {
    std::vector<Point> points;
    for (const published::Xy& point : table)
        points.push_back({point.x - origin, point.y});
    return *lineThrough(points);
}

void expectDigits(double value, double certified, double relative = 1e-10) {
    EXPECT_NEAR(value / certified, 1, relative) << value << " for " << certified;
}

} // namespace

// Certified values, lower level of difficulty.
TEST(Norris, CertifiedValues) {
    const Line line = lineOf(published::norris);
    expectDigits(line.intercept, -0.262323073774029);
    expectDigits(line.slope, 1.00211681802045, 1e-14);
    expectDigits(line.sd_intercept, 0.232818234301152);
    expectDigits(line.sd_slope, 0.429796848199937e-03);
    expectDigits(line.residual_sd, 0.884796396144373);
    expectDigits(line.r_squared, 0.999993745883712, 1e-14);
    EXPECT_EQ(line.degreesOfFreedom(), 34);
}

TEST(Norris, IntervalsComputedApart) {
    const Line line = lineOf(published::norris);
    for (const auto& expected : published::norris_expected) {
        EXPECT_NEAR(line.at(expected.x), expected.fit, 1e-9);
        EXPECT_NEAR(uncertaintyAt(line, expected.x), expected.sd_of_line, 1e-10);
        const Band mean = meanBand(line, expected.x, 0.95);
        EXPECT_NEAR(mean.low, expected.line_95[0], 1e-9);
        EXPECT_NEAR(mean.high, expected.line_95[1], 1e-9);
        const Band point = Prediction(line, 0.95).at(expected.x);
        EXPECT_NEAR(point.low, expected.point_95[0], 1e-9);
        EXPECT_NEAR(point.high, expected.point_95[1], 1e-9);
        EXPECT_NEAR(Prediction(line, 0.99).at(expected.x).low, expected.point_99[0], 1e-9);
        EXPECT_NEAR(Prediction(line, 0.99).at(expected.x).high, expected.point_99[1], 1e-9);
    }
}

// JCGM 100:2008 H.3, thermometer calibrated over t - 20: -0.1712(29), 0.00218(67), s 0.0035,
// b(30) -0.1494(41); digits beyond computed apart with R 4.2.2.
TEST(GumH3, CalibrationOfAThermometer) {
    const Line line = lineOf(published::gum_h3, 20);
    EXPECT_NEAR(line.intercept, -0.17120379013135, 1e-13);
    EXPECT_NEAR(line.sd_intercept, 0.0028775978351599585, 1e-13);
    EXPECT_NEAR(line.slope, 0.002182697739887282, 1e-13);
    EXPECT_NEAR(line.sd_slope, 0.0006679387732278328, 1e-13);
    EXPECT_NEAR(line.residual_sd, 0.003497563963505289, 1e-13);
    EXPECT_EQ(line.degreesOfFreedom(), 9);
    EXPECT_NEAR(line.at(10), -0.1493768127324772, 1e-13);
    EXPECT_NEAR(uncertaintyAt(line, 10), 0.004138595752854953, 1e-13);
    EXPECT_NEAR(meanBand(line, 10, 0.95).low, -0.1587389667587243, 1e-12);
    EXPECT_NEAR(meanBand(line, 10, 0.95).high, -0.1400146587062301, 1e-12);
    EXPECT_NEAR(Prediction(line, 0.95).at(10).low, -0.1616344754395922, 1e-12);
    EXPECT_NEAR(Prediction(line, 0.95).at(10).high, -0.1371191500253622, 1e-12);
    // As printed.
    EXPECT_NEAR(line.intercept, -0.1712, 5e-5);
    EXPECT_NEAR(line.sd_intercept, 0.0029, 5e-5);
    EXPECT_NEAR(line.slope, 0.00218, 5e-6);
    EXPECT_NEAR(line.sd_slope, 0.00067, 5e-6);
    EXPECT_NEAR(line.at(10), -0.1494, 5e-5);
    EXPECT_NEAR(uncertaintyAt(line, 10), 0.0041, 5e-5);
}

// Trap 7: R squared is about the mean of y, since the line has an intercept: points far from the
// origin without slope give 0, not nearly 1.
TEST(Line, RSquaredIsAboutTheMean) {
    const std::vector<Point> points{{1, 100}, {2, 101}, {3, 101}, {4, 100}};
    EXPECT_NEAR(lineThrough(points)->r_squared, 0, 1e-12);
}

TEST(Line, NeedsThreePointsAtTwoPlaces) {
    EXPECT_FALSE(lineThrough(std::vector<Point>{{1, 2}, {2, 3}}));
    EXPECT_FALSE(lineThrough(std::vector<Point>{{1, 2}, {1, 3}, {1, 4}}));
    EXPECT_FALSE(lineThrough(std::vector<Point>{{0, 1e200}, {1, -1e200}, {2, 3}}));
    EXPECT_EQ(lineThrough(std::vector<Point>{{0, 3}, {1, 3}, {2, 3}})->r_squared, 1);
}
