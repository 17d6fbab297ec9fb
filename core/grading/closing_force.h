// A closing force read off a spring gauge, for a row that asks a door to close against an
// inclination (SOLAS II-2/9.4.1.1.5.1; 46 CFR 72.05-25(b)(9)(i), 116.435(c)(6)(i)): no upright ship
// shows that, and arithmetic can say no, never yes (core/measure/inclination.h).
#pragma once

#include "core/grading/row_check.h"

namespace latchround {

/// `check`, with the force that was read off. One below what the weight of the leaf alone takes, by
/// more than its uncertainty, leaves to the inspector what a run, a yes or an n/a shows; a No
/// stands. Where the register does not give the leaf's mass, a force says nothing.
RowCheck weighed(RowCheck check, const Requirement& requirement, const Door& door,
                 const DoorEvidence& evidence);

} // namespace latchround
