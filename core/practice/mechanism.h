// What moves a leaf that is not there: the masses, springs and dampers of a hinged leaf with a
// closer and of a sliding leaf with its drive. The figures are believable, not measured (common
// practice, no source). Masses, widths and ways are more than 0, dampings and friction not less.
#pragma once

#include <optional>

namespace latchround::practice {

/// One leaf on hinges with a hydraulic closer. Angles in radians from shut, moments in N m.
struct HingedLeaf {
    double mass_kg = 40;
    double width_m = 0.9;           ///< hinge to edge; inertia of a uniform leaf, m w^2 / 3
    double open_rad = 1.57;         ///< where it is held or let go
    double spring_Nm = 14;          ///< the closer's moment with the leaf shut
    double spring_rate_Nm = 5;      ///< and more of it for each radian of opening
    double sweep_damping_Nms = 150; ///< the closer against each rad/s, down to the latch angle
    double latch_damping_Nms = 150; ///< and from there to shut
    double latch_angle_rad = 0.2;
    double friction_Nm = 1; ///< of hinges and seals, against any movement
    double latch_Nm = 3;    ///< what the latch takes over the last bit
    double latch_from_rad = 0.03;
    double heel_Nm = 0;                  ///< the ship's heel against closing; negative: with it
    std::optional<double> blocked_rad{}; ///< something stops it here

    bool operator==(const HingedLeaf&) const = default;
};

/// A sliding leaf with its drive. Places in metres that are still open.
struct SlidingLeaf {
    double mass_kg = 180;
    double travel_m = 1.4;             ///< clear opening
    double rate_m_s = 0.15;            ///< to which the drive brings it
    double ramp_s = 0.3;               ///< time constant in which it does
    double creep_from_m = 0.05;        ///< from here it goes at the creep rate
    double creep_rate_m_s = 0.1;       ///< before it meets the frame; never more than rate_m_s
    std::optional<double> blocked_m{}; ///< something stops it here

    bool operator==(const SlidingLeaf&) const = default;
};

/// Two hinged leaves; the first one home must be `first`, which the selector sees to.
struct DoubleLeaf {
    HingedLeaf first;
    HingedLeaf second;
    double selector_rad = 0.5; ///< at which the selector holds the second until the first is home
    bool selector_works = true;

    bool operator==(const DoubleLeaf&) const = default;
};

/// The leaf with the closer adjusted so that it takes this time from `open_rad` to shut, to 1 ms:
/// both dampings are multiplied by one factor. Nothing where no damping gives it; a leaf that is
/// blocked never shuts.
std::optional<HingedLeaf> adjusted(HingedLeaf leaf, double closing_s);

/// The same of both leaves, from the first movement until the door as a whole is shut; what is
/// multiplied is the damping of both by one factor.
std::optional<DoubleLeaf> adjusted(DoubleLeaf leaves, double closing_s);

/// The leaf with its drive set so that travel divided by closing time is this rate, to 0.0001 m/s.
/// Nothing where no setting gives it.
std::optional<SlidingLeaf> adjusted(SlidingLeaf leaf, double mean_rate_m_s);

} // namespace latchround::practice
