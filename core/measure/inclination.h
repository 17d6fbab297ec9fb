// What the closing gear of a door has to overcome when the ship is inclined against closing, by 3.5
// degrees (SOLAS II-2/9.4.1.1.5.1). Uniform rigid leaf, hinge square to the deck, standard gravity;
// friction of hinges, seals and air is left out, so that arithmetic can say no but never yes.
#pragma once

#include <optional>

#include "core/measure/reading.h"
#include "core/vessel/door.h"

namespace latchround {

inline constexpr double standard_gravity_m_s2 = 9.80665; ///< CGPM 1901

/// Largest moment of a hinged leaf's weight about its hinge, N m: m g (w / 2) sin(angle), leaf
/// square to the slope.
double opposingMoment_Nm(double mass_kg, double width_m, double angle_deg);

/// Force along the track that a sliding leaf's weight and its rollers' friction oppose, N: m g
/// (sin(angle) + mu cos(angle)).
double opposingForce_N(double mass_kg, double friction, double angle_deg);

enum class CloserCould {
    NotKnown,  ///< no leaf mass in the register
    NotGauged, ///< no spring gauge was used: only what is needed can be said
    Falls,     ///< by more than its uncertainty below what the weight alone asks for
    TooClose,  ///< the uncertainty covers that
    Exceeds    ///< above; seals, friction and latch still have to be shown at the door
};

struct InclinationAnswer {
    CloserCould could = CloserCould::NotKnown;
    /// At the closing edge of the leaf, where a spring gauge is held, N; 0 where not known.
    double needed_N = 0;
    std::optional<Reading> measured; ///< N
};

/// `measured`, N: closing force at the edge by spring gauge, ship upright, leaf just held back at a
/// right angle or short of the stop.
InclinationAnswer couldCloseInclined(const Door& door, double angle_deg,
                                     std::optional<Reading> measured);

} // namespace latchround
