// What an interval between marks is worth as a reading. The interval itself:
// evidence/mark_interval.h.
#pragma once

#include "core/evidence/mark_interval.h"
#include "core/measure/reaction_model.h"
#include "core/measure/reading.h"

namespace latchround {

/// What the thumb answers to when it marks this event.
Cue cueOf(MarkKind kind);

/// A field watch keeps time to 0.02 % of the interval (NIST SOP 24, NISTIR 8250 (2019)); taken as
/// rectangular.
inline constexpr double clock_rate_tolerance = 2e-4;

/// The interval between these events as a reading: corrected by the person's own bias where it is
/// known, with spread, bias, resolution and clock rate. A typed-in time comes from another watch:
/// it keeps the published figures, and counts by the last digit that was typed.
Reading timed(const Interval& interval, MarkKind from, MarkKind to, const ReactionModel& thumb);

} // namespace latchround
