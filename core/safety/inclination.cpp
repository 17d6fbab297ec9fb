#include "core/safety/inclination.h"

#include <cmath>
#include <numbers>

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
                                     std::optional<double> measured_N) {
    if (!door.leaf_mass_kg)
        return {};
    InclinationAnswer answer;
    answer.measured_N = measured_N;
    // The moment over the leaf's width: half the in-deck part of its weight, whatever the width.
    answer.needed_N = isHinged(door.kind) ? opposingMoment_Nm(*door.leaf_mass_kg, 1.0, angle_deg)
                                          : opposingForce_N(*door.leaf_mass_kg, 0, angle_deg);
    if (!measured_N)
        answer.could = CloserCould::NotGauged;
    else
        answer.could = *measured_N > answer.needed_N ? CloserCould::Exceeds : CloserCould::Falls;
    return answer;
}

} // namespace latchround
