#include "core/measure/interval.h"

namespace latchround {

Cue cueOf(MarkKind kind) {
    switch (kind) {
    case MarkKind::AlarmOn:
    case MarkKind::AlarmOff:
        return Cue::AlarmHeard;
    case MarkKind::LeafMoves:
        return Cue::LeafStarts;
    default:
        return Cue::LeafStops;
    }
}

Reading timed(const Interval& interval, MarkKind from, MarkKind to, const ReactionModel& thumb) {
    const Cue start = cueOf(from);
    const Cue end = cueOf(to);
    const ReactionModel published; // a drill speaks of the tablet's key, not of another watch
    const ReactionModel& hand = interval.clock == IntervalClock::TypedIn ? published : thumb;
    Reading reading{interval.seconds + hand.correction(start, end), hand.budget(start, end)};
    reading.budget.push_back(
        {Influence::Resolution, rectangular(interval.step_s / 2), 1, known_exactly, true});
    reading.budget.push_back({Influence::ClockRate, rectangular(clock_rate_tolerance),
                              interval.seconds, known_exactly, false});
    return reading;
}

} // namespace latchround
