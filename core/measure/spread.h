// Mean, standard deviation and median of a series.
#pragma once

#include <span>
#include <vector>

namespace latchround {

/// Arithmetic mean; the series must not be empty.
double meanOf(std::span<const double> series);

/// Sample standard deviation (n - 1), safe against cancellation; needs two values.
double standardDeviation(std::span<const double> series);

/// Middle value, or the mean of the two in the middle; the series must not be empty.
double medianOf(std::vector<double> series);

} // namespace latchround
