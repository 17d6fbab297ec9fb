// Leaves drawn at random for the properties of practice: usual ones, and some that stall, swing
// open or are blocked.
#pragma once

#include <rapidcheck.h>

#include "core/practice/mechanism.h"

namespace latchround::given {

/// Of these two, or between them in steps of a thousandth of the way.
inline double someBetween(double low, double high) {
    return low + (high - low) * *rc::gen::inRange(0, 1001) / 1000;
}

inline bool oneIn(int times) {
    return *rc::gen::inRange(0, times) == 0;
}

/// A leaf that closes: no heel to speak of, nothing in its way, spring enough.
inline practice::HingedLeaf usualHinged() {
    practice::HingedLeaf leaf;
    leaf.mass_kg = someBetween(30, 130);
    leaf.width_m = someBetween(0.6, 1.1);
    leaf.open_rad = someBetween(1.3, 1.9);
    leaf.spring_Nm = someBetween(12, 30);
    leaf.spring_rate_Nm = someBetween(0, 10);
    leaf.sweep_damping_Nms = someBetween(20, 600);
    leaf.latch_damping_Nms = someBetween(20, 600);
    leaf.latch_angle_rad = someBetween(0.1, 0.4);
    leaf.friction_Nm = someBetween(0, 2);
    leaf.latch_Nm = someBetween(0, 6);
    leaf.latch_from_rad = someBetween(0.01, 0.05);
    leaf.heel_Nm = someBetween(-3, 3);
    return leaf;
}

inline practice::HingedLeaf anyHinged() {
    practice::HingedLeaf leaf = usualHinged();
    if (oneIn(3))
        leaf.heel_Nm = someBetween(-40, 40);
    if (oneIn(3))
        leaf.latch_Nm = someBetween(0, 40);
    if (oneIn(4))
        leaf.sweep_damping_Nms = someBetween(0, 10);
    if (oneIn(4))
        leaf.latch_damping_Nms = someBetween(0, 10);
    if (oneIn(4))
        leaf.latch_from_rad = someBetween(0, 1);
    if (oneIn(4))
        leaf.spring_rate_Nm = someBetween(0, 60);
    if (oneIn(4))
        leaf.blocked_rad = someBetween(0, leaf.open_rad);
    return leaf;
}

inline practice::SlidingLeaf anySliding() {
    practice::SlidingLeaf leaf;
    leaf.mass_kg = someBetween(80, 400);
    leaf.travel_m = someBetween(0.8, 2);
    leaf.rate_m_s = someBetween(0.03, 0.5);
    leaf.ramp_s = someBetween(0.05, 1.5);
    leaf.creep_from_m = someBetween(0, 0.2);
    leaf.creep_rate_m_s = someBetween(0.02, 0.2);
    if (oneIn(4))
        leaf.blocked_m = someBetween(0, leaf.travel_m);
    return leaf;
}

inline practice::DoubleLeaf anyDouble() {
    practice::DoubleLeaf leaves;
    leaves.first = oneIn(3) ? anyHinged() : usualHinged();
    leaves.second = oneIn(3) ? anyHinged() : usualHinged();
    leaves.selector_rad = someBetween(0, 2);
    leaves.selector_works = !oneIn(4);
    return leaves;
}

} // namespace latchround::given
