#include "core/grading/figure_check.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "core/measure/closing.h"
#include "core/measure/conformity.h"

namespace latchround {

namespace {

constexpr int runs_before_judgement = 3;

RowCheck untested(ReasonKind kind) {
    return {Verdict::Untested, {kind, {}, 0, 0}, {}, {}, false};
}

double probability(const Requirement& row, const Reading& reading) {
    return conformanceProbability(reading, row.low, row.high);
}

RowCheck against(const Requirement& row, const Reading& reading, int runs,
                 const DecisionLimits& limits) {
    const double inside = probability(row, reading);
    const auto figure = [&](Verdict verdict, ReasonKind kind) {
        return RowCheck{verdict, {kind, {}, runs, 0}, reading, inside, false};
    };
    switch (conformityOf(inside, limits)) {
    case Conformity::Inside:
        return figure(Verdict::Satisfactory, ReasonKind::InsideLimits);
    case Conformity::Outside:
        return figure(Verdict::Unsatisfactory, ReasonKind::OutsideLimits);
    case Conformity::TooClose:
        break;
    }
    return runs >= runs_before_judgement ? figure(Verdict::Judge, ReasonKind::StillCloseAfterThree)
                                         : figure(Verdict::TimeAgain, ReasonKind::TooCloseToLimit);
}

struct Measured {
    std::vector<Reading> readings;
    std::vector<Reading> halves; ///< of sliding doors with half-way marks
    double heel_deg = 0;         ///< the largest of those runs
};

std::optional<Reading> readingOf(const Requirement& row, const Door& door, const RunRecord& run,
                                 const ReactionModel& thumb) {
    switch (row.source) {
    case Source::ClosingTime:
        return closingTime(run, door.kind, thumb);
    case Source::ClosingRate:
        return closingRate(run, door, thumb);
    case Source::AlarmLead:
        return run.release == Release::Remote ? alarmLead(run, thumb) : std::nullopt;
    case Source::AlarmAfterShut:
        return run.release == Release::Remote ? alarmAfterShut(run, door.kind, thumb)
                                              : std::nullopt;
    default:
        return std::nullopt;
    }
}

Measured measure(const Requirement& row, const Door& door, const DoorEvidence& evidence,
                 bool upright) {
    Measured result;
    for (const RunRecord* run : completeRuns(evidence, RunKind::Closing)) {
        if ((std::abs(run->heel_deg) <= upright_within_deg) != upright)
            continue;
        const ReactionModel thumb = ReactionModel::of(run->drill.get());
        const auto reading = readingOf(row, door, *run, thumb);
        if (!reading)
            continue;
        result.readings.push_back(*reading);
        result.heel_deg = std::max(result.heel_deg, std::abs(run->heel_deg));
        if (row.source == Source::ClosingRate)
            for (const Reading& half : halfRates(*run, door, thumb))
                result.halves.push_back(half);
    }
    return result;
}

RowCheck band(const Requirement& row, const Measured& measured, const DecisionLimits& limits) {
    const PooledReading all = pooled(measured.readings);
    if (!all.agree) {
        const Reading worst =
            *std::ranges::min_element(measured.readings, {}, [&](const Reading& reading) {
                return probability(row, reading);
            });
        RowCheck check = against(row, worst, all.count, limits);
        if (check.verdict == Verdict::Satisfactory || check.verdict == Verdict::Unsatisfactory)
            check.reason.kind = ReasonKind::RunsDisagree;
        return check;
    }
    RowCheck check = against(row, all.mean, all.count, limits);
    const bool uneven = std::ranges::any_of(measured.halves, [&](const Reading& half) {
        return conformityOf(probability(row, half), limits) == Conformity::Outside;
    });
    if (check.verdict == Verdict::Satisfactory && uneven) {
        check.verdict = Verdict::Judge;
        check.reason.kind = ReasonKind::UnevenHalves;
    }
    return check;
}

/// The order of two events is seen, not worked out: an alarm marked off after the door was marked
/// shut has held. One marked off before fails only where the difference is more than the thumb can
/// explain.
RowCheck order(const Requirement& row, const Measured& measured, const DecisionLimits& limits) {
    const Reading worst = std::ranges::min(measured.readings, {}, &Reading::value);
    const int runs = static_cast<int>(measured.readings.size());
    RowCheck check = against(row, worst, runs, limits);
    if (worst.value > *row.low) {
        check.verdict = Verdict::Satisfactory;
        check.reason.kind = ReasonKind::EventsInOrder;
    } else if (check.verdict == Verdict::Unsatisfactory)
        check.reason.kind = ReasonKind::EventsOutOfOrder;
    return check;
}

RowCheck decided(const Requirement& row, const Measured& measured, const DecisionLimits& limits) {
    return row.check == CheckKind::Order ? order(row, measured, limits)
                                         : band(row, measured, limits);
}

RowCheck gauge(const Requirement& row, const DoorEvidence& evidence) {
    const auto found = evidence.measured.find(row.id);
    if (found == evidence.measured.end())
        return untested(ReasonKind::NotYetTested);
    const Reading reading{
        found->second.body.value,
        {{Influence::Resolution, rectangular(gaugeStep(row.unit) / 2), 1, known_exactly, true}}};
    return against(row, reading, 1, evidence.limits);
}

RowCheck nothingMeasured(const Requirement& row, const Door& door, const DoorEvidence& evidence) {
    if (completeRuns(evidence, RunKind::Closing).empty())
        return untested(ReasonKind::NotYetTested);
    if (row.source == Source::AlarmLead || row.source == Source::AlarmAfterShut)
        return untested(ReasonKind::NeedsRemoteRun);
    if (row.source == Source::ClosingRate && !(door.opening_m > 0))
        return untested(ReasonKind::OpeningUnknown);
    return untested(ReasonKind::NotYetTested);
}

} // namespace

double gaugeStep(std::string_view unit) {
    return unit == "mm" || unit == "N" ? 1.0 : unit == "m" ? 0.01 : unit == "m2" ? 0.0005 : 0.0;
}

RowCheck checkFigure(const Requirement& requirement, const Door& door,
                     const DoorEvidence& evidence) {
    if (requirement.source == Source::Gauge)
        return gauge(requirement, evidence);
    const Measured upright = measure(requirement, door, evidence, true);
    if (!upright.readings.empty())
        return decided(requirement, upright, evidence.limits);
    const Measured heeled = measure(requirement, door, evidence, false);
    if (heeled.readings.empty())
        return nothingMeasured(requirement, door, evidence);
    RowCheck check = decided(requirement, heeled, evidence.limits);
    check.indicative = true;
    check.reason = {ReasonKind::ShipNotUpright, {}, check.reason.runs, heeled.heel_deg};
    return check;
}

} // namespace latchround
