#include "core/evidence/mark_interval.h"

#include <algorithm>

#include "core/evidence/run_sequence.h"

namespace latchround {

namespace {

const Mark* firstOf(const RunRecord& run, MarkKind kind) {
    const auto found = std::ranges::find_if(run.marks, [kind](const RunRecord::MarkRecord& record) {
        return record.mark.kind == kind;
    });
    return found == run.marks.end() ? nullptr : &found->mark;
}

bool haveEventTimes(const Mark& from, const Mark& to) {
    return from.event_ms && to.event_ms && *from.event_ms != 0 && *to.event_ms != 0 &&
           from.device == to.device;
}

double eventSeconds(const Mark& from, const Mark& to) {
    // Unsigned first, so that a wrap of the 32-bit clock between the marks does no harm.
    return static_cast<double>(static_cast<std::int32_t>(*to.event_ms - *from.event_ms)) / 1e3;
}

/// Tenths where nothing finer was typed, else hundredths; what a key took is as fine as a key is.
double typedStep(const Mark& mark) {
    constexpr std::int64_t tenth_ns = 100'000'000;
    const bool tenths =
        mark.by_hand_ns && *mark.by_hand_ns != 0 && *mark.by_hand_ns % tenth_ns == 0;
    return tenths ? 0.1 : keyed_step_s;
}

double handlerSeconds(const Mark& from, const Mark& to) {
    return static_cast<double>(*to.steady_ns - *from.steady_ns) / 1e9;
}

} // namespace

std::optional<Interval> intervalBetween(const Mark& from, const Mark& to) {
    const bool events = haveEventTimes(from, to);
    const bool handlers = from.steady_ns && to.steady_ns;
    if (events) {
        Interval interval{eventSeconds(from, to), IntervalClock::InputEvent, {}, keyed_step_s};
        if (handlers)
            interval.disagreement_s = interval.seconds - handlerSeconds(from, to);
        return interval;
    }
    if (handlers)
        return Interval{handlerSeconds(from, to), IntervalClock::Handler, {}, keyed_step_s};
    return std::nullopt;
}

std::optional<Interval> intervalBetween(const RunRecord& run, MarkKind from, MarkKind to) {
    const Mark* start = firstOf(run, from);
    const Mark* end = firstOf(run, to);
    if (!start || !end)
        return std::nullopt;
    if (!start->by_hand_ns && !end->by_hand_ns)
        return intervalBetween(*start, *end);
    // A typed time counts from the run's first mark, which may itself have been taken by the key.
    const Mark& first = run.marks.front().mark;
    const auto sinceFirst = [&](const Mark& mark) -> std::optional<double> {
        if (mark.by_hand_ns)
            return static_cast<double>(*mark.by_hand_ns) / 1e9;
        const auto keyed = intervalBetween(first, mark);
        return keyed ? std::optional(keyed->seconds) : std::nullopt;
    };
    const auto start_s = sinceFirst(*start);
    const auto end_s = sinceFirst(*end);
    if (!start_s || !end_s)
        return std::nullopt;
    return Interval{*end_s - *start_s,
                    IntervalClock::TypedIn,
                    {},
                    std::max(typedStep(*start), typedStep(*end))};
}

std::optional<std::pair<MarkKind, MarkKind>> reversedMarks(const RunRecord& run) {
    for (const auto& [first, second] : eventsInTurn) {
        const auto between = intervalBetween(run, first, second);
        if (between && between->seconds < 0)
            return std::pair(first, second);
    }
    return std::nullopt;
}

void voidIfReversed(RunRecord& run) {
    if (!isComplete(run))
        return;
    run.reversed = reversedMarks(run);
    if (run.reversed)
        run.end->outcome = RunOutcome::Void;
}

std::optional<MarkKind> unmarkedEvent(const RunRecord& run, DoorKind kind) {
    const bool contact = run.kind == RunKind::Contact;
    for (const MarkKind event : {contact ? MarkKind::Touched : MarkKind::LeafMoves,
                                 contact ? MarkKind::Stopped : homeMark(kind)})
        if (!firstOf(run, event))
            return event;
    return std::nullopt;
}

void voidIfUnmarked(RunRecord& run, DoorKind kind) {
    if (!isComplete(run))
        return;
    run.unmarked = unmarkedEvent(run, kind);
    if (run.unmarked)
        run.end->outcome = RunOutcome::Void;
}

} // namespace latchround
