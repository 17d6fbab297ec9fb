#include "core/measure/inclination.h"

#include <cmath>
#include <numbers>
#include <utility>

namespace latchround {

namespace {

double radians(double degrees) {
    return degrees * std::numbers::pi / 180;
}

} // namespace

double opposingMoment_Nm(double mass_kg, double width_m, double angle_deg) {
    return mass_kg * standard_gravity_m_s2 * width_m / 2 * std::sin(radians(angle_deg));
}

double opposingForce_N(double mass_kg, double friction, double angle_deg) {
    return mass_kg * standard_gravity_m_s2 *
           (std::sin(radians(angle_deg)) + friction * std::cos(radians(angle_deg)));
}

InclinationAnswer couldCloseInclined(const Door& door, double angle_deg,
                                     std::optional<Reading> measured) {
    if (!door.leaf_mass_kg)
        return {};
    InclinationAnswer answer;
    // The moment over the leaf's width: half the in-deck part of its weight, whatever the width.
    answer.needed_N = isHinged(door.kind) ? opposingMoment_Nm(*door.leaf_mass_kg, 1.0, angle_deg)
                                          : opposingForce_N(*door.leaf_mass_kg, 0, angle_deg);
    answer.measured = std::move(measured);
    if (!answer.measured) {
        answer.could = CloserCould::NotGauged;
        return answer;
    }
    const double above_N = answer.measured->value - answer.needed_N;
    const double covered_N = expanded(*answer.measured);
    answer.could = above_N < -covered_N  ? CloserCould::Falls
                   : above_N > covered_N ? CloserCould::Exceeds
                                         : CloserCould::TooClose;
    return answer;
}

} // namespace latchround
