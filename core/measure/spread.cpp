#include "core/measure/spread.h"

#include <cmath>

#include <boost/math/statistics/univariate_statistics.hpp>

namespace latchround {

double meanOf(std::span<const double> series) {
    return boost::math::statistics::mean(series.begin(), series.end());
}

double standardDeviation(std::span<const double> series) {
    return std::sqrt(boost::math::statistics::sample_variance(series.begin(), series.end()));
}

double medianOf(std::vector<double> series) {
    return boost::math::statistics::median(series.begin(), series.end());
}

} // namespace latchround
