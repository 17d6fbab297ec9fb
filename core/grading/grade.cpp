#include "core/grading/grade.h"

#include <algorithm>

#include "core/grading/as_found.h"
#include "core/grading/facts_read.h"
#include "core/grading/row_check.h"
#include "core/requirement/applicability.h"

namespace latchround {

namespace {

void applyCouldNotTest(RowCheck& check, const Requirement& row, const DoorEvidence& evidence) {
    if (check.verdict != Verdict::Untested)
        return;
    auto found = evidence.could_not_test.find(row.id);
    if (found == evidence.could_not_test.end())
        found = evidence.could_not_test.find(std::string{});
    if (found != evidence.could_not_test.end())
        check.reason = {ReasonKind::CouldNotTest, {}, 0, 0, found->second.body.reason};
}

struct Asking {
    const Particulars& vessel;
    AsFound found;
    DoorLocation location;
    const DoorClass& fire_class;
    const Upkeep* only;
    const Catalogue& catalogue;
};

/// Not asked; where something was recorded for it all the same, it says so instead of dropping it.
void leaveOut(RowGrade& grade, const Asking& asking, const DoorEvidence& evidence, Reason why) {
    grade.verdict = grade.underlying = Verdict::NotApplicable;
    if (isAnswered(*grade.requirement, evidence)) {
        Phrase because = why.kind == ReasonKind::NotAsked
                             ? askedBecause(*grade.requirement, asking.vessel,
                                            asking.found.of(*grade.requirement), asking.location)
                             : std::move(why.text);
        why = {ReasonKind::AnsweredNotAsked, std::move(because), 0, 0};
    }
    grade.reason = std::move(why);
}

/// An n/a to a critical row, or to one of both sides, where its text knows no such case, or the
/// register does not show it: a case of its own, or a door that the row is not for.
void doubtNotApplicable(RowCheck& check, const Requirement& row, const Asking& asking) {
    const bool weighs = row.severity == Severity::Critical || row.check == CheckKind::SeenBothSides;
    if (check.verdict != Verdict::NotApplicable || row.status != Status::Read || row.tells ||
        !weighs)
        return;
    const Door& door = asking.found.of(row);
    if (isShownToMeetOneOf(row.na_where, door, asking.location))
        return;
    const bool may_be =
        (!row.na_where.empty() && meetsOneOf(row.na_where, door, asking.location)) ||
        !isShownToBeAsked(row, asking.vessel, door, asking.location);
    check.verdict = Verdict::Judge;
    check.reason = {may_be ? ReasonKind::CaseNotShown : ReasonKind::NoSuchCase, {}, 0, 0};
}

/// A text that was not read for ships of this date, or does not settle it, fails none of them.
void leaveToInspector(RowCheck& check, ReasonKind kind, Phrase because) {
    if (check.verdict != Verdict::Unsatisfactory)
        return;
    check.verdict = Verdict::Judge;
    check.reason = {kind, std::move(because), check.reason.runs, 0};
}

bool tries(const Upkeep& upkeep, const std::string& id) {
    return upkeep.covers.empty() || std::ranges::find(upkeep.covers, id) != upkeep.covers.end();
}

/// The row of this id, where it is asked of this very door.
const Requirement* askedRow(std::string_view id, const Asking& asking) {
    const Requirement* row = id.empty() ? nullptr : findRequirement(asking.catalogue, id);
    if (!row)
        return nullptr;
    const Door& door = asking.found.of(*row);
    const Requirement& asked = inForce(*row, asking.vessel, door, asking.location);
    return howAsked(asked, asking.vessel, door, asking.location) == Asked::No ? nullptr : row;
}

template <class Ids>
bool isAmong(const Ids& ids, std::string_view id) {
    return !id.empty() && std::ranges::find(ids, id) != ids.end();
}

/// The row whose answer at the door takes this one away: asked of this door itself, and not against
/// what runs have shown; nor, where the other is common practice, whose n/a is never doubted,
/// against what was measured. What takes a row away by n/a takes those away that hang on it so.
const Requirement* excusing(const Requirement& row, const RowCheck& check, const Asking& asking,
                            const DoorEvidence& evidence) {
    const bool is_shown = check.verdict != Verdict::Untested;
    const bool was_timed = is_shown && !isAnswered(row, evidence);
    for (const std::string_view by : excusedBy(row, evidence)) {
        const bool by_yes = isAmong(row.unless_yes, by);
        const Requirement* other = by_yes || !was_timed ? askedRow(by, asking) : nullptr;
        if (other && !(is_shown && other->status == Status::Usage))
            return other;
    }
    const Requirement* other = was_timed ? nullptr : askedRow(row.unless_na, asking);
    return other && isAmong(excusedBy(*other, evidence), other->unless_na)
               ? askedRow(other->unless_na, asking)
               : nullptr;
}

/// Since the judgement the row reads other facts, or another variant of it is in force.
bool isOvertaken(const Requirement& base, const Requirement& row, const Asking& asking,
                 const DoorEvidence& evidence) {
    const auto found = evidence.when_judged.find(row.id);
    if (found == evidence.when_judged.end())
        return false;
    const DoorEvidence& then = *found->second;
    const AsFound as_found(asking.found.registered(), then);
    return factsRead(row, then) != factsRead(row, evidence) ||
           &inForce(base, asking.vessel, as_found.of(base), asking.location) != &row;
}

/// A judgement settles only what was left to judgement; it never overrules a figure or a plain No.
/// That a row is satisfactory speaks only of what was on record then; that it is not stands until
/// somebody decides anew, or evidence settles it.
void applyJudgement(RowCheck& check, const Requirement& base, const Requirement& row,
                    const Asking& asking, const DoorEvidence& evidence) {
    const auto found = evidence.judgements.find(row.id);
    if (check.verdict != Verdict::Judge || found == evidence.judgements.end())
        return;
    const Judgement& judgement = found->second.body;
    const bool overtaken = isOvertaken(base, row, asking, evidence);
    if (overtaken && judgement.satisfactory) {
        check.reason.said = judgement.reason;
    } else {
        check.verdict = judgement.satisfactory ? Verdict::Satisfactory : Verdict::Unsatisfactory;
        check.reason = {ReasonKind::InspectorDecided, {}, check.reason.runs, 0, judgement.reason};
    }
    if (overtaken)
        check.reason.overtaken = Overtaken::Decision;
}

RowGrade gradeRow(const Requirement& base, const Asking& asking, const DoorEvidence& evidence) {
    RowGrade grade;
    const Requirement& row = inForce(base, asking.vessel, asking.found.of(base), asking.location);
    grade.requirement = &row;
    const Door& door = asking.found.of(row);
    const Asked asked = howAsked(row, asking.vessel, door, asking.location);
    if (asked == Asked::No) {
        leaveOut(grade, asking, evidence, {ReasonKind::NotAsked, {}, 0, 0});
        return grade;
    }
    RowCheck check = checkRow(row, door, asking.fire_class, evidence);
    if (const Requirement* other = excusing(row, check, asking, evidence)) {
        leaveOut(grade, asking, evidence, {ReasonKind::ExcusedByAnswer, other->words, 0, 0});
        return grade;
    }
    if (check.verdict == Verdict::Untested && asking.only && !tries(*asking.only, row.id)) {
        grade.verdict = grade.underlying = Verdict::NotApplicable;
        grade.reason = {ReasonKind::OutsideThisWalk, asking.only->words, 0, 0};
        return grade;
    }
    if (asked == Asked::Judge && check.verdict == Verdict::Unsatisfactory)
        leaveToInspector(check, ReasonKind::OtherDates,
                         askedBecause(row, asking.vessel, door, asking.location));
    doubtNotApplicable(check, row, asking);
    if (!row.left_open.empty() && !isSettled(row, evidence))
        leaveToInspector(check, ReasonKind::TextLeavesOpen, row.left_open);
    applyJudgement(check, base, row, asking, evidence);
    applyCouldNotTest(check, row, evidence);
    grade.underlying = check.verdict;
    grade.figure = std::move(check.figure);
    grade.inside = check.inside;
    grade.reason = std::move(check.reason);
    const bool advice_row = asked == Asked::Advice || row.status == Status::Advice;
    grade.reason.of_advice = advice_row;
    grade.indicative = check.indicative && !advice_row;
    grade.verdict = advice_row || check.indicative ? Verdict::Advice : check.verdict;
    return grade;
}

} // namespace

Verdict countsAs(const RowGrade& row) {
    if (row.indicative)
        return Verdict::Untested;
    return row.verdict == Verdict::Advice ? Verdict::NotApplicable : row.verdict;
}

bool isAsked(const RowGrade& row) {
    return row.reason.kind != ReasonKind::NotAsked &&
           row.reason.kind != ReasonKind::ExcusedByAnswer &&
           row.reason.kind != ReasonKind::OutsideThisWalk;
}

DoorGrade grade(const Particulars& vessel, const Door& door, const Boundary* boundary,
                const DoorEvidence& evidence, const Catalogue& catalogue, const Upkeep* only) {
    DoorGrade result;
    result.door = door.number;
    result.verdict = Verdict::NotApplicable;
    result.rows.reserve(catalogue.rows.size());
    result.asked_class = doorClassAsked(vessel, boundary, catalogue.divisions);
    const Asking asking{vessel,
                        AsFound(door, evidence),
                        locationOf(boundary, result.asked_class),
                        result.asked_class,
                        only,
                        catalogue};
    for (const Requirement& row : catalogue.rows) {
        result.rows.push_back(gradeRow(row, asking, evidence));
        result.verdict = std::min(result.verdict, countsAs(result.rows.back()));
    }
    return result;
}

std::vector<const RowGrade*> askedWorstFirst(const DoorGrade& grade) {
    std::vector<const RowGrade*> rows;
    for (const RowGrade& row : grade.rows)
        if (isAsked(row))
            rows.push_back(&row);
    std::ranges::stable_sort(rows, {}, [](const RowGrade* row) {
        return std::pair(row->verdict, row->requirement->severity);
    });
    return rows;
}

int countOf(const DoorGrade& grade, Verdict verdict) {
    return static_cast<int>(std::ranges::count(grade.rows, verdict, &RowGrade::verdict));
}

const RowGrade* findRow(const DoorGrade& grade, std::string_view requirement) {
    const auto found = std::ranges::find_if(
        grade.rows, [&](const RowGrade& row) { return row.requirement->id == requirement; });
    return found == grade.rows.end() ? nullptr : &*found;
}

} // namespace latchround
