// From raw marks to seconds. Event timestamps are used where both ends have one from the same kind
// of device; else the steady clock read in the handler; typed-in times are used as typed.
#pragma once

#include <optional>
#include <vector>

#include "core/evidence/door_evidence.h"
#include "core/measure/reaction_model.h"
#include "core/measure/reading.h"

namespace latchround {

/// Last digit of a time taken by key or touch, seconds (a touch screen reports about every 10 ms;
/// common practice, no source).
inline constexpr double keyed_step_s = 0.01;

enum class IntervalClock { InputEvent, Handler, TypedIn };

struct Interval {
    double seconds = 0; ///< negative where `to` came before `from`
    IntervalClock clock = IntervalClock::InputEvent;
    std::optional<double> disagreement_s; ///< event minus handler interval, where both are known
    double step_s = keyed_step_s;         ///< last digit of the reading
};

/// Between two marks of the same run; the 32-bit event time may have wrapped once between them
/// (49.7 days). Nothing where no clock is common to both.
std::optional<Interval> intervalBetween(const Mark& from, const Mark& to);

/// Between the first mark of one kind and the first of another; nothing where either is missing.
std::optional<Interval> intervalBetween(const RunRecord& run, MarkKind from, MarkKind to);

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
