#include "core/trend/line.h"

#include <cmath>

#include <boost/math/distributions/students_t.hpp>

namespace latchround {

namespace {

double quantileOf(const Line& line, double confidence) {
    const boost::math::students_t_distribution<double> t(line.degreesOfFreedom());
    return boost::math::quantile(t, (1 + confidence) / 2);
}

/// Variance of the line's value at x, in units of the residual variance.
double leverage(const Line& line, double x) {
    const double distance = x - line.mean_x;
    return 1.0 / line.count + distance * distance / line.sum_xx;
}

} // namespace

std::optional<Line> lineThrough(std::span<const Point> points) {
    if (points.size() < 3)
        return std::nullopt;
    Line line;
    line.count = static_cast<int>(points.size());
    double mean_y = 0;
    for (const Point& point : points) {
        line.mean_x += point.x / line.count;
        mean_y += point.y / line.count;
    }
    // About the means, so that nothing is lost by cancellation.
    double sum_xy = 0;
    double sum_yy = 0;
    for (const Point& point : points) {
        line.sum_xx += (point.x - line.mean_x) * (point.x - line.mean_x);
        sum_xy += (point.x - line.mean_x) * (point.y - mean_y);
        sum_yy += (point.y - mean_y) * (point.y - mean_y);
    }
    if (!(line.sum_xx > 0) || !std::isfinite(line.sum_xx) || !std::isfinite(sum_yy))
        return std::nullopt;
    line.slope = sum_xy / line.sum_xx;
    line.intercept = mean_y - line.slope * line.mean_x;
    double residuals = 0;
    for (const Point& point : points) {
        const double off = (point.y - mean_y) - line.slope * (point.x - line.mean_x);
        residuals += off * off;
    }
    line.residual_sd = std::sqrt(residuals / line.degreesOfFreedom());
    line.sd_slope = line.residual_sd / std::sqrt(line.sum_xx);
    line.sd_intercept = line.residual_sd * std::sqrt(leverage(line, 0));
    line.r_squared = sum_yy > 0 ? 1 - residuals / sum_yy : 1;
    return line;
}

double uncertaintyAt(const Line& line, double x) {
    return line.residual_sd * std::sqrt(leverage(line, x));
}

Band meanBand(const Line& line, double x, double confidence) {
    const double half = quantileOf(line, confidence) * uncertaintyAt(line, x);
    return {line.at(x) - half, line.at(x) + half};
}

Prediction::Prediction(const Line& line, double confidence)
    : m_line(line)
    , m_quantile(quantileOf(line, confidence)) {}

Band Prediction::at(double x) const {
    const double half = m_quantile * m_line.residual_sd * std::sqrt(1 + leverage(m_line, x));
    return {m_line.at(x) - half, m_line.at(x) + half};
}

} // namespace latchround
