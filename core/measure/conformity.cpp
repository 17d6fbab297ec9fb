#include "core/measure/conformity.h"

#include <algorithm>

#include <boost/math/distributions/normal.hpp>

namespace latchround {

namespace {

/// Probability that the true value is at or below the limit.
double belowLimit(double value, double u, double limit) {
    if (!(u > 0))
        return value < limit ? 1.0 : (value > limit ? 0.0 : 0.5);
    return boost::math::cdf(boost::math::normal_distribution<double>(), (limit - value) / u);
}

} // namespace

double conformanceProbability(double value, double u, std::optional<double> low,
                              std::optional<double> high) {
    const double under = high ? belowLimit(value, u, *high) : 1.0;
    const double beneath = low ? belowLimit(value, u, *low) : 0.0;
    return std::max(0.0, under - beneath);
}

Conformity conformityOf(double probability) {
    if (probability >= inside_from)
        return Conformity::Inside;
    return probability <= outside_to ? Conformity::Outside : Conformity::TooClose;
}

} // namespace latchround
