#include "core/measure/closing.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/evidence/run_sequence.h"
#include "core/measure/interval.h"
#include "core/measure/spread.h"

namespace latchround {

namespace {

constexpr double opening_u_m = 0.005;

Reading openingOf(const Door& door) {
    return {door.opening_m, {{Influence::Opening, opening_u_m, 1, known_exactly, false}}};
}

std::optional<Reading> rateOf(const Reading& length_m, const Reading& time_s) {
    return time_s.value > 0 ? std::optional(quotient(length_m, time_s)) : std::nullopt;
}

/// One part of every reading, as a part of their mean: the widest and least well known stands for
/// what they have in common.
Component meanComponent(const std::vector<Reading>& readings, const Component& like) {
    double squares = 0;
    Component widest = like;
    for (const Reading& reading : readings)
        for (const Component& component : reading.budget) {
            if (component.part != like.part)
                continue;
            squares += component.u() * component.u();
            const double known = std::min(widest.degrees_of_freedom, component.degrees_of_freedom);
            if (component.u() > widest.u())
                widest = component;
            widest.degrees_of_freedom = known;
        }
    if (widest.falls_with_runs && widest.input_u > 0)
        widest.sensitivity =
            std::sqrt(squares) / static_cast<double>(readings.size()) / widest.input_u;
    return widest;
}

Reading meanReading(const std::vector<Reading>& readings, double mean) {
    Reading result{mean, {}};
    for (const Reading& reading : readings)
        for (const Component& component : reading.budget)
            if (std::ranges::find(result.budget, component.part, &Component::part) ==
                result.budget.end())
                result.budget.push_back(meanComponent(readings, component));
    return result;
}

std::optional<Reading> timedBetween(const RunRecord& run, MarkKind from, MarkKind to,
                                    const ReactionModel& thumb) {
    const auto interval = intervalBetween(run, from, to);
    return interval ? std::optional(timed(*interval, from, to, thumb)) : std::nullopt;
}

} // namespace

std::optional<Reading> closingTime(const RunRecord& run, DoorKind kind,
                                   const ReactionModel& thumb) {
    return timedBetween(run, MarkKind::LeafMoves, homeMark(kind), thumb);
}

std::optional<Reading> closingRate(const RunRecord& run, const Door& door,
                                   const ReactionModel& thumb) {
    const auto time = closingTime(run, door.kind, thumb);
    if (!time || !(door.opening_m > 0))
        return std::nullopt;
    return rateOf(openingOf(door), *time);
}

std::vector<Reading> halfRates(const RunRecord& run, const Door& door, const ReactionModel& thumb) {
    std::vector<Reading> halves;
    const auto first = timedBetween(run, MarkKind::LeafMoves, MarkKind::HalfWay, thumb);
    const auto second = timedBetween(run, MarkKind::HalfWay, homeMark(door.kind), thumb);
    if (!first || !second || !(door.opening_m > 0))
        return halves;
    // Where the half-way point is judged by eye, so its place is uncertain by some 5 % of the
    // opening (our choice, no source).
    Reading half{door.opening_m / 2, openingOf(door).budget};
    half.budget.push_back({Influence::HalfWay, door.opening_m * 0.05, 1, known_exactly, true});
    for (const Reading& time : {*first, *second})
        if (const auto rate = rateOf(half, time))
            halves.push_back(*rate);
    return halves;
}

bool hasAlarmMark(const RunRecord& run) {
    return std::ranges::any_of(run.marks, [](const auto& taken) {
        return taken.mark.kind == MarkKind::AlarmOn || taken.mark.kind == MarkKind::AlarmOff;
    });
}

std::optional<Reading> alarmLead(const RunRecord& run, const ReactionModel& thumb) {
    return timedBetween(run, MarkKind::AlarmOn, MarkKind::LeafMoves, thumb);
}

std::optional<Reading> alarmAfterShut(const RunRecord& run, DoorKind kind,
                                      const ReactionModel& thumb) {
    return timedBetween(run, homeMark(kind), MarkKind::AlarmOff, thumb);
}

bool alarmComesOnShut(const RunRecord& run, DoorKind kind) {
    const auto since = intervalBetween(run, homeMark(kind), MarkKind::AlarmOn);
    return since && since->seconds > 0;
}

bool isTooFastForALeaf(const RunRecord& run, DoorKind kind) {
    const auto closing = intervalBetween(run, MarkKind::LeafMoves, homeMark(kind));
    return closing && closing->seconds < fastest_closing_s;
}

std::vector<const RunRecord*> countedRuns(const DoorEvidence& evidence, DoorKind kind) {
    std::vector<const RunRecord*> runs = completeRuns(evidence, RunKind::Closing);
    std::erase_if(runs, [kind](const RunRecord* run) { return isTooFastForALeaf(*run, kind); });
    return runs;
}

PooledReading pooled(const std::vector<Reading>& readings, double repeatability) {
    PooledReading result;
    result.count = static_cast<int>(readings.size());
    if (readings.empty())
        return result;
    std::vector<double> values;
    const Reading* widest = &readings.front();
    for (const Reading& reading : readings) {
        values.push_back(reading.value);
        if (reading.uRandom() > widest->uRandom())
            widest = &reading;
    }
    result.mean = meanReading(readings, meanOf(values));
    const auto [lowest, highest] = std::ranges::minmax(values);
    const double of_clock = std::numbers::sqrt2 * expanded(widest->randomPart());
    const double of_door = repeatability * std::abs(result.mean.value);
    result.agree = highest - lowest <= std::hypot(of_clock, of_door);
    return result;
}

} // namespace latchround
