// A straight line through points by ordinary least squares, and what it lets one expect elsewhere.
// Formulas: Draper and Smith, Applied Regression Analysis (from memory); checked against NIST StRD
// Norris and GUM H.3 in tests/reference.
#pragma once

#include <optional>
#include <span>

namespace latchround {

struct Point {
    double x = 0;
    double y = 0;
};

struct Line {
    int count = 0; ///< of points
    double slope = 0;
    double intercept = 0;
    double sd_slope = 0;
    double sd_intercept = 0;
    double residual_sd = 0; ///< with count - 2 degrees of freedom
    double r_squared = 0;   ///< about the mean of y; 1 where all y are the same
    double mean_x = 0;
    double sum_xx = 0; ///< of squares of x about its mean

    int degreesOfFreedom() const { return count - 2; }
    double at(double x) const { return intercept + slope * x; }
};

/// Nothing for fewer than three points, or where all x are the same, or a figure is not finite.
std::optional<Line> lineThrough(std::span<const Point> points);

struct Band {
    double low = 0;
    double high = 0;
};

/// Standard uncertainty of the line's value at x (GUM H.3.4).
double uncertaintyAt(const Line& line, double x);

/// Where the line's value at x lies with this confidence (0 to 1, two-sided).
Band meanBand(const Line& line, double x, double confidence);

/// Where one more point is to be expected with this confidence.
class Prediction {
public:
    Prediction(const Line& line, double confidence);
    Band at(double x) const;

private:
    Line m_line;
    double m_quantile;
};

} // namespace latchround
