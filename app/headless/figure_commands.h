// trend and conformity: the two sums behind a verdict, open to anybody's own figures.
#pragma once

#include <optional>
#include <string>

#include "app/headless/answer.h"

namespace latchround::headless {

struct TrendAsked {
    std::string csv;
    std::optional<double> at;
    double confidence = 0.95;
};

/// JSON: the straight line through the points of a CSV file (x, y) and, where asked, what is to be
/// expected at another x.
Answer trendOf(const TrendAsked& asked);

struct ConformityAsked {
    double value = 0;
    double u = 0;
    std::optional<double> low;
    std::optional<double> high;
    std::optional<double> degrees_of_freedom;
};

/// JSON: the probability that the true value lies inside the limits, and the verdict by the usual
/// limits of probability.
Answer conformityOfFigure(const ConformityAsked& asked);

} // namespace latchround::headless
