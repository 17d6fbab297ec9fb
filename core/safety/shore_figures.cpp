#include "core/safety/shore_figures.h"

#include <algorithm>
#include <cmath>

namespace latchround {

namespace {

constexpr double metres_per_inch = 0.0254;
constexpr double kilograms_per_pound = 0.45359237;
constexpr double swing_constant = 133; // inch, pound
constexpr double shortest_swing_s = 3;

/// A value that is a whole step but for rounding is not lifted to the next.
double roundedUp(double value, double step) {
    return std::ceil(value / step - 1e-9) * step;
}

} // namespace

double leastSwing_s(double width_m, double mass_kg) {
    const double time =
        width_m / metres_per_inch * std::sqrt(mass_kg / kilograms_per_pound) / swing_constant;
    return std::max(shortest_swing_s, roundedUp(time, 0.5));
}

double leastStroke_s(double stroke_m, double mass_kg) {
    return roundedUp(0.9 * stroke_m * std::sqrt(mass_kg / (2 * shore_low_energy_J)), 0.1);
}

} // namespace latchround
