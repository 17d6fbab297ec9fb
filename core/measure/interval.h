// From raw marks to seconds. Event timestamps are used where both ends have one from the same kind
// of device; else the steady clock read in the handler; typed-in times are used as typed.
#pragma once

#include <optional>
#include <vector>

#include "core/evidence/door_evidence.h"
#include "core/measure/reading.h"

namespace latchround {

enum class IntervalClock { InputEvent, Handler, TypedIn };

struct Interval {
    double seconds = 0; ///< negative where `to` came before `from`
    IntervalClock clock = IntervalClock::InputEvent;
    std::optional<double> disagreement_s; ///< event minus handler interval, where both are known
};

/// Between two marks of the same run; the 32-bit event time may have wrapped once between them
/// (49.7 days). Nothing where no clock is common to both.
std::optional<Interval> intervalBetween(const Mark& from, const Mark& to);

/// Between the first mark of one kind and the first of another; nothing where either is missing.
std::optional<Interval> intervalBetween(const RunRecord& run, MarkKind from, MarkKind to);

/// The interval as a reading with the thumb's uncertainty (bias rectangular: half-width / sqrt 3).
Reading timed(const Interval& interval, const ThumbError& thumb);

} // namespace latchround
