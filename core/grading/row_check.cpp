#include "core/grading/row_check.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "core/grading/closing_force.h"
#include "core/grading/facts_read.h"
#include "core/grading/figure_check.h"
#include "core/grading/reason_phrases.h"
#include "core/measure/closing.h"

namespace latchround {

namespace {

RowCheck verdictOf(Verdict verdict, ReasonKind kind, Phrase text = {}) {
    return {verdict, {kind, std::move(text), 0, 0}, {}, {}, false};
}

/// A plain No: fails where a text was read, is the inspector's to decide where it is common
/// practice.
RowCheck answeredNo(const Requirement& requirement) {
    if (requirement.tells)
        return verdictOf(Verdict::Satisfactory, ReasonKind::ToldNo);
    return requirement.status == Status::Usage
               ? verdictOf(Verdict::Judge, ReasonKind::UsageNotMet)
               : verdictOf(Verdict::Unsatisfactory, ReasonKind::AnsweredNo);
}

using Answered = Recorded<Observation>;

/// Where a row is asked once but was answered side by side, a yes of either is enough; else a no
/// stands.
const Answered* answerOnce(const DoorEvidence& evidence, const std::string& id) {
    const Answered* best = observationOf(evidence, id, Side::None);
    if (best)
        return best;
    for (const Side side : {Side::One, Side::Two})
        if (const Answered* given = observationOf(evidence, id, side);
            given && (!best || given->body.answer < best->body.answer))
            best = given;
    return best;
}

/// By its runs alone. One whose marks are doubted shows nothing, and is not passed over; nor is one
/// with heel where the text asks against an inclination: nobody can tell which way the ship helped.
RowCheck shownByRuns(const Requirement& row, const Door& door, const DoorEvidence& evidence) {
    RowCheck open = verdictOf(Verdict::Untested, ReasonKind::NotYetTested);
    if (row.source == Source::None)
        return open;
    for (const RunRecord* run : completeRuns(evidence, RunKind::Closing)) {
        if (!readsRun(row.source, run->release))
            continue;
        if (isTooFastForALeaf(*run, door.kind))
            open.reason.kind = ReasonKind::FasterThanALeaf;
        else if (row.incline_deg && std::abs(run->heel_deg) > upright_within_deg)
            open.reason = {ReasonKind::ShipNotUpright, {}, 1, std::abs(run->heel_deg)};
        else
            return verdictOf(Verdict::Satisfactory, ReasonKind::ShownByRun);
    }
    if (open.reason.kind == ReasonKind::NotYetTested)
        open.reason.kind = whyNothingRun(evidence);
    return open;
}

/// One run that sounded no alarm is enough to ask, whatever the others did.
RowCheck shownByAlarm(const DoorEvidence& evidence) {
    bool was_heard = false;
    for (const RunRecord* run : completeRuns(evidence, RunKind::Closing)) {
        if (run->release != Release::Remote)
            continue;
        if (!hasAlarmMark(*run))
            return verdictOf(Verdict::Judge, ReasonKind::AlarmNotMarked);
        was_heard = true;
    }
    return was_heard ? verdictOf(Verdict::Satisfactory, ReasonKind::ShownByRun)
                     : verdictOf(Verdict::Untested, ReasonKind::NeedsRemoteRun);
}

/// An answer that an alarm sounded, or need not, speaks of no silent run that came after it.
bool isOvertakenBySilence(const Answered& given, const DoorEvidence& evidence) {
    return !given.stamp.id.empty() &&
           std::ranges::any_of(completeRuns(evidence, RunKind::Closing), [&](const RunRecord* run) {
               return run->release == Release::Remote && !hasAlarmMark(*run) &&
                      given.stamp.id < run->newest;
           });
}

RowCheck seen(const Requirement& requirement, const Door& door, const DoorEvidence& evidence) {
    if (const Answered* given = answerOnce(evidence, requirement.id)) {
        if (given->body.answer == Answer::No)
            return answeredNo(requirement);
        if (requirement.source == Source::AlarmMark && isOvertakenBySilence(*given, evidence)) {
            RowCheck check = verdictOf(Verdict::Judge, ReasonKind::AlarmNotMarked);
            check.reason.overtaken = Overtaken::Answer;
            return check;
        }
        if (given->body.answer == Answer::NotApplicable)
            return verdictOf(Verdict::NotApplicable, ReasonKind::AnsweredNotApplicable);
        return verdictOf(Verdict::Satisfactory, ReasonKind::AnsweredYes);
    }
    return requirement.source == Source::AlarmMark ? shownByAlarm(evidence)
                                                   : shownByRuns(requirement, door, evidence);
}

RowCheck seenBothSides(const Requirement& requirement, const Door& door,
                       const DoorEvidence& evidence) {
    std::vector<const RunRecord*> runs;
    if (requirement.source == Source::LocalRuns)
        runs = countedRuns(evidence, door.kind);
    int good = 0;
    int open = 0;
    int left_out = 0;
    for (const Side side : {Side::One, Side::Two}) {
        const Answered* given = observationOf(evidence, requirement.id, side);
        if (!given)
            given = observationOf(evidence, requirement.id, Side::None);
        const Release local = side == Side::One ? Release::LocalSideOne : Release::LocalSideTwo;
        if (given && given->body.answer == Answer::No)
            return answeredNo(requirement);
        const bool shown = given
                               ? given->body.answer == Answer::Yes
                               : std::ranges::find(runs, local, &RunRecord::release) != runs.end();
        if (shown)
            ++good;
        else if (given)
            ++left_out;
        else
            ++open;
    }
    if (open == 2)
        return requirement.source == Source::LocalRuns
                   ? shownByRuns(requirement, door, evidence)
                   : verdictOf(Verdict::Untested, ReasonKind::NotYetTested);
    if (open == 1)
        return verdictOf(Verdict::Untested, ReasonKind::OneSideMissing);
    if (good == 0)
        return verdictOf(Verdict::NotApplicable, ReasonKind::AnsweredNotApplicable);
    return left_out == 0 ? verdictOf(Verdict::Satisfactory, ReasonKind::AnsweredYes)
                         : verdictOf(Verdict::Judge, ReasonKind::OneSideLeftOut);
}

/// "boundary A-60 (SOLAS II-2 table 9.1, 2-12)".
Phrase boundaryAsked(const DoorClass& asked) {
    const RequiredClass& rule = asked.by_rule;
    const std::string by = rule.cell ? rule.table->name + ", " + std::to_string(rule.spaces.first) +
                                           "-" + std::to_string(rule.spaces.second)
                                     : citeOf(rule);
    const bool beyond_rule = rule.required && isStronger(*rule.required, *asked.division);
    Phrase boundary =
        !asked.from_plan ? reason::boundary_by(word(*asked.division), by)
        : beyond_rule    ? reason::boundary_by_plan(word(*asked.division), word(*rule.required), by)
        : isPlanBelowTables(asked) ? reason::boundary_below_a(word(*asked.division), citeOf(rule))
                                   : reason::boundary(word(*asked.division));
    return *asked.door == *asked.division
               ? boundary
               : reason::whose_door_needs(std::move(boundary), word(*asked.door));
}

/// Where a plan without an A class leaves a door to the inspector. One that suits the plan: where a
/// rule asks for the A class, for such a rule leaves the minutes to plan and tables, never the
/// class. One too low even for the plan: by 46 CFR, which prints no class for the door of a lower
/// boundary (72.05-25(c), 116.435(d)).
bool isPlanDoubted(const DoorClass& asked, bool suits_plan) {
    return isPlanBelowTables(asked) &&
           (suits_plan ? asked.by_rule.a_class_by_rule : isOfUs(asked.ship));
}

/// A failure only by the approved plan or by the ship's own tables.
RowCheck tooLow(FireClass has, const DoorClass& asked, const Phrase& text) {
    const RequiredClass& rule = asked.by_rule;
    if (!asked.from_plan && rule.older_tables)
        return verdictOf(Verdict::Judge, ReasonKind::ClassNotOfShip, text);
    if (!asked.from_plan && rule.over_tanks && suits(has, *rule.over_tanks))
        return verdictOf(Verdict::Judge, ReasonKind::ClassOverTanks, text);
    return verdictOf(Verdict::Unsatisfactory, ReasonKind::ClassTooLow, text);
}

RowCheck classAtLeast(const Door& door, const DoorClass& asked, const DoorEvidence& evidence) {
    const bool plate_read = evidence.plate && evidence.plate->body.fire_class;
    const FireClass has = plate_read ? *evidence.plate->body.fire_class : door.fire_class;
    const Phrase said = plate_read ? reason::plate(word(has)) : reason::in_register(word(has));
    switch (asked.kind) {
    case DoorClass::Kind::NotKnown:
        return verdictOf(Verdict::Judge, ReasonKind::BoundaryClassUnknown, said);
    case DoorClass::Kind::NotPrinted:
        return verdictOf(Verdict::Judge, ReasonKind::NoValuePrinted, said);
    case DoorClass::Kind::Free:
        return verdictOf(Verdict::Satisfactory, ReasonKind::NoClassAsked, said);
    case DoorClass::Kind::Class:
        break;
    }
    const Phrase text = joined(phrase::with_commas, {said, boundaryAsked(asked)});
    // A watertight door needs no insulation (SOLAS II-2/9.4.1.1.3): any A class will do.
    const bool enough = suits(has, *asked.door) || (door.watertight && isAClass(has));
    if (isPlanDoubted(asked, enough))
        return verdictOf(Verdict::Judge, ReasonKind::PlanBelowRule, text);
    return enough ? verdictOf(Verdict::Satisfactory, ReasonKind::ClassSuits, text)
                  : tooLow(has, asked, text);
}

RowCheck plateAgrees(const Door& door, const DoorEvidence& evidence) {
    if (!evidence.plate)
        return verdictOf(Verdict::Untested, ReasonKind::NotYetTested);
    const PlateRead& plate = evidence.plate->body;
    if (!plate.fire_class)
        return verdictOf(Verdict::Judge, ReasonKind::PlateMissing,
                         plate.state == PlateState::None ? reason::no_plate()
                                                         : reason::plate_illegible());
    const Phrase text = joined(phrase::with_commas, {reason::plate(word(*plate.fire_class)),
                                                     reason::in_register(word(door.fire_class))});
    return *plate.fire_class == door.fire_class
               ? verdictOf(Verdict::Satisfactory, ReasonKind::PlateAgrees, text)
               : verdictOf(Verdict::Judge, ReasonKind::PlateDiffers, text);
}

} // namespace

ReasonKind whyNothingRun(const DoorEvidence& evidence) {
    const bool begun =
        std::ranges::find(evidence.runs, RunKind::Closing, &RunRecord::kind) != evidence.runs.end();
    return begun && completeRuns(evidence, RunKind::Closing).empty() ? ReasonKind::NoRunComplete
                                                                     : ReasonKind::NotYetTested;
}

RowCheck checkRow(const Requirement& requirement, const Door& door, const DoorClass& asked,
                  const DoorEvidence& evidence) {
    switch (requirement.check) {
    case CheckKind::Seen:
        return weighed(seen(requirement, door, evidence), requirement, door, evidence);
    case CheckKind::SeenBothSides:
        return seenBothSides(requirement, door, evidence);
    case CheckKind::ClassAtLeast:
        return classAtLeast(door, asked, evidence);
    case CheckKind::PlateAgrees:
        return plateAgrees(door, evidence);
    case CheckKind::WithinBand:
    case CheckKind::AtMost:
    case CheckKind::AtLeast:
    case CheckKind::Order:
        break;
    }
    return checkFigure(requirement, door, evidence);
}

} // namespace latchround
