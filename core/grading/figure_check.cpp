#include "core/grading/figure_check.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "core/grading/gauge_check.h"
#include "core/grading/reason_phrases.h"
#include "core/measure/closing.h"
#include "core/measure/conformity.h"
#include "core/phrase/plain_figure.h"

namespace latchround {

namespace {

constexpr int runs_before_judgement = 3;

RowCheck untested(ReasonKind kind) {
    return {Verdict::Untested, {kind, {}, 0, 0}, {}, {}, false};
}

double probability(const Requirement& row, const Reading& reading) {
    return conformanceProbability(reading, row.low, row.high);
}

bool isFast(const Requirement& row, const Reading& reading) {
    // A short time is a fast leaf, a low rate is a slow one.
    const bool is_low = row.low && reading.value < *row.low;
    return is_low == (row.source == Source::ClosingTime);
}

/// Not shown to lie further out than the margin of a band that its text calls approximate.
bool isWithinMargin(const Requirement& row, const Reading& reading, const DecisionLimits& limits) {
    if (!row.approximate)
        return false;
    const auto& [slow, fast] = *row.approximate;
    const bool low_is_fast = row.source == Source::ClosingTime;
    const double low = *row.low * (1 - (low_is_fast ? fast : slow));
    const double high = *row.high * (1 + (low_is_fast ? slow : fast));
    return conformityOf(conformanceProbability(reading, low, high), limits) != Conformity::Outside;
}

Phrase marginOf(const Requirement& row, const Reading& reading) {
    return isFast(row, reading) ? reason::faster_by(plainFigure(100 * row.approximate->fast))
                                : reason::slower_by(plainFigure(100 * row.approximate->slow));
}

RowCheck against(const Requirement& row, const Reading& reading, int runs,
                 const DecisionLimits& limits) {
    const double inside = probability(row, reading);
    const auto figure = [&](Verdict verdict, ReasonKind kind, Phrase text = {}) {
        return RowCheck{verdict, {kind, std::move(text), runs, 0}, reading, inside, false};
    };
    switch (conformityOf(inside, limits)) {
    case Conformity::Inside:
        return figure(Verdict::Satisfactory, ReasonKind::InsideLimits);
    case Conformity::Outside:
        if (!isWithinMargin(row, reading, limits))
            return figure(Verdict::Unsatisfactory, ReasonKind::OutsideLimits);
        return figure(Verdict::Judge, ReasonKind::WithinMargin, marginOf(row, reading));
    case Conformity::TooClose:
        break;
    }
    if (runs < runs_before_judgement)
        return figure(Verdict::TimeAgain, ReasonKind::TooCloseToLimit);
    return figure(Verdict::Judge, row.approximate ? ReasonKind::StillCloseToApproximate
                                                  : ReasonKind::StillCloseAfterThree);
}

struct Measured {
    std::vector<Reading> readings;
    std::vector<Reading> halves;      ///< of sliding doors with half-way marks
    double heel_deg = 0;              ///< the largest of those runs
    bool alarm_after_closing = false; ///< in one of them it came on only then
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

enum class Ship { Upright, Heeled, Either };

bool isOf(Ship ship, const RunRecord& run) {
    const bool upright = std::abs(run.heel_deg) <= upright_within_deg;
    return ship == Ship::Either || (ship == Ship::Upright) == upright;
}

Measured measure(const Requirement& row, const Door& door, const DoorEvidence& evidence,
                 Ship ship) {
    Measured result;
    for (const RunRecord* run : countedRuns(evidence, door.kind)) {
        if (!isOf(ship, *run))
            continue;
        const ReactionModel thumb = ReactionModel::of(run->drill.get());
        const auto reading = readingOf(row, door, *run, thumb);
        if (!reading)
            continue;
        result.readings.push_back(*reading);
        result.heel_deg = std::max(result.heel_deg, std::abs(run->heel_deg));
        if (row.source == Source::AlarmAfterShut)
            result.alarm_after_closing =
                result.alarm_after_closing || alarmComesOnShut(*run, door.kind);
        if (row.source == Source::ClosingRate)
            for (const Reading& half : halfRates(*run, door, thumb))
                result.halves.push_back(half);
    }
    return result;
}

/// Of the runs one by one.
RowCheck worstOf(const Requirement& row, const Measured& measured, const DecisionLimits& limits) {
    const int runs = static_cast<int>(measured.readings.size());
    RowCheck worst = against(row, measured.readings.front(), runs, limits);
    for (const Reading& reading : measured.readings) {
        RowCheck check = against(row, reading, runs, limits);
        if (isWorse(check.verdict, worst.verdict) ||
            (check.verdict == worst.verdict && *check.inside < *worst.inside))
            worst = std::move(check);
    }
    return worst;
}

bool isOfClosing(const Requirement& row) {
    return row.source == Source::ClosingTime || row.source == Source::ClosingRate;
}

RowCheck band(const Requirement& row, const Measured& measured, const DecisionLimits& limits) {
    const PooledReading all = pooled(measured.readings, isOfClosing(row) ? door_repeatability : 0);
    RowCheck check =
        all.agree ? against(row, all.mean, all.count, limits) : worstOf(row, measured, limits);
    if (!all.agree &&
        (check.verdict == Verdict::Satisfactory || check.verdict == Verdict::Unsatisfactory))
        check.reason.kind =
            isOfClosing(row) ? ReasonKind::RunsDisagree : ReasonKind::AlarmsDisagree;
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
    if (measured.alarm_after_closing)
        return {
            Verdict::Unsatisfactory, {ReasonKind::AlarmAfterClosing, {}, runs, 0}, {}, {}, false};
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

/// A run that was marked faster than a leaf can move, of which this row would know.
const RunRecord* doubtedRun(const Requirement& row, const Door& door,
                            const DoorEvidence& evidence) {
    for (const RunRecord* run : completeRuns(evidence, RunKind::Closing))
        if (isTooFastForALeaf(*run, door.kind) &&
            (!isOfAlarm(row.source) || run->release == Release::Remote))
            return run;
    return nullptr;
}

RowCheck tooFast(const Requirement& row, const Door& door, const RunRecord& run) {
    RowCheck check{Verdict::Judge, {ReasonKind::FasterThanALeaf, {}, 0, 0}, {}, {}, false};
    check.figure = readingOf(row, door, run, ReactionModel::of(run.drill.get()));
    return check;
}

RowCheck nothingMeasured(const Requirement& row, const Door& door, const DoorEvidence& evidence) {
    const std::vector<const RunRecord*> runs = completeRuns(evidence, RunKind::Closing);
    if (runs.empty())
        return untested(whyNothingRun(evidence));
    if (row.source == Source::ClosingRate && !(door.opening_m > 0))
        return untested(ReasonKind::OpeningUnknown);
    if (const RunRecord* run = doubtedRun(row, door, evidence))
        return tooFast(row, door, *run);
    if (!isOfAlarm(row.source))
        return untested(ReasonKind::NotYetTested);
    if (std::ranges::find(runs, Release::Remote, &RunRecord::release) == runs.end())
        return untested(ReasonKind::NeedsRemoteRun);
    const bool sounded = std::ranges::any_of(runs, [](const RunRecord* run) {
        return run->release == Release::Remote && hasAlarmMark(*run);
    });
    return untested(sounded ? ReasonKind::MarkMissing : ReasonKind::AlarmNotMarked);
}

/// Beside a good run one whose marks are doubted is not passed over: who says that it was no slip
/// says that the leaf flew. Of the alarm it shows nothing only where it too was in order.
RowCheck unlessDoubted(RowCheck check, const Requirement& row, const Door& door,
                       const DoorEvidence& evidence) {
    if (check.verdict != Verdict::Satisfactory)
        return check;
    const RunRecord* run = doubtedRun(row, door, evidence);
    if (!run)
        return check;
    if (isOfAlarm(row.source)) {
        const auto reading = readingOf(row, door, *run, ReactionModel::of(run->drill.get()));
        if (!reading ||
            conformityOf(probability(row, *reading), evidence.limits) == Conformity::Inside)
            return check;
    }
    return tooFast(row, door, *run);
}

} // namespace

RowCheck checkFigure(const Requirement& requirement, const Door& door,
                     const DoorEvidence& evidence) {
    if (requirement.source == Source::Gauge)
        return checkGauge(requirement, evidence);
    const Measured counts =
        measure(requirement, door, evidence, requirement.upright ? Ship::Upright : Ship::Either);
    if (!counts.readings.empty())
        return unlessDoubted(decided(requirement, counts, evidence.limits), requirement, door,
                             evidence);
    const Measured heeled =
        requirement.upright ? measure(requirement, door, evidence, Ship::Heeled) : Measured{};
    if (heeled.readings.empty())
        return nothingMeasured(requirement, door, evidence);
    RowCheck check = decided(requirement, heeled, evidence.limits);
    check.indicative = true;
    check.reason = {ReasonKind::ShipNotUpright, {}, check.reason.runs, heeled.heel_deg};
    return check;
}

} // namespace latchround
