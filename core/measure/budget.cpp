#include "core/measure/budget.h"

#include <algorithm>
#include <cmath>

#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>

namespace latchround {

double rectangular(double half_width) {
    return half_width / std::sqrt(3.0);
}

double combinedUncertainty(const Budget& budget) {
    double squares = 0;
    for (const Component& component : budget)
        squares += component.u() * component.u();
    return std::sqrt(squares);
}

double effectiveDegreesOfFreedom(const Budget& budget) {
    double squares = 0;
    double weighted = 0;
    for (const Component& component : budget) {
        const double square = component.u() * component.u();
        squares += square;
        weighted += square * square / component.degrees_of_freedom;
    }
    return weighted > 0 ? squares * squares / weighted : known_exactly;
}

double countedDegrees(double degrees_of_freedom) {
    return std::max(1.0, std::floor(degrees_of_freedom));
}

double coverageFactor(double degrees_of_freedom, double level) {
    const double upper = (1 + level) / 2;
    if (!std::isfinite(degrees_of_freedom))
        return boost::math::quantile(boost::math::normal_distribution<double>(), upper);
    const boost::math::students_t_distribution<double> t(countedDegrees(degrees_of_freedom));
    return boost::math::quantile(t, upper);
}

} // namespace latchround
