#include "core/measure/conformity.h"

#include <algorithm>
#include <cmath>

#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>

namespace latchround {

namespace {

/// Probability that the true value is at or below the limit.
double belowLimit(double value, double u, double limit, double degrees_of_freedom) {
    if (!(u > 0))
        return value < limit ? 1.0 : (value > limit ? 0.0 : 0.5);
    const double distance = (limit - value) / u;
    if (!std::isfinite(degrees_of_freedom))
        return boost::math::cdf(boost::math::normal_distribution<double>(), distance);
    const boost::math::students_t_distribution<double> t(countedDegrees(degrees_of_freedom));
    return boost::math::cdf(t, distance);
}

} // namespace

double conformanceProbability(double value, double u, std::optional<double> low,
                              std::optional<double> high, double degrees_of_freedom) {
    const double under = high ? belowLimit(value, u, *high, degrees_of_freedom) : 1.0;
    const double beneath = low ? belowLimit(value, u, *low, degrees_of_freedom) : 0.0;
    return std::max(0.0, under - beneath);
}

double conformanceProbability(const Reading& reading, std::optional<double> low,
                              std::optional<double> high) {
    return conformanceProbability(reading.value, reading.u(), low, high,
                                  reading.degreesOfFreedom());
}

Conformity conformityOf(double probability, const DecisionLimits& limits) {
    if (probability >= limits.satisfactory_from)
        return Conformity::Inside;
    return probability <= limits.unsatisfactory_to ? Conformity::Outside : Conformity::TooClose;
}

} // namespace latchround
