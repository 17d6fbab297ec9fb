// From raw marks to seconds. Event timestamps are used where both ends have one from the same kind
// of device; else the steady clock read in the handler; typed-in times are used as typed.
#pragma once

#include <optional>
#include <utility>

#include "core/evidence/door_evidence.h"

namespace latchround {

/// Last digit of a time taken by key or touch, seconds (a touch screen reports about every 10 ms;
/// common practice, no published source).
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

/// Two events of this run that were marked against their order, which no door can do: the leaf home
/// before it moved, the alarm off before it was on. The one that comes first by its nature is
/// first. A leaf that moves before its alarm is a fault of the door, not of the marks.
std::optional<std::pair<MarkKind, MarkKind>> reversedMarks(const RunRecord& run);

/// A complete run with such marks is no measurement.
void voidIfReversed(RunRecord& run);

/// The event that a run of such a door cannot be without and that was not marked: its first
/// movement or the leaf home; of a contact run, that it touched or stopped.
std::optional<MarkKind> unmarkedEvent(const RunRecord& run, DoorKind kind);

/// A complete run without it is no measurement.
void voidIfUnmarked(RunRecord& run, DoorKind kind);

} // namespace latchround
