#include "core/grading/grade.h"

#include <algorithm>

#include "core/grading/as_found.h"
#include "core/grading/row_check.h"
#include "core/requirement/applicability.h"

namespace latchround {

namespace {

/// A judgement settles only what was left to judgement; it never overrules a figure or a plain No.
void applyJudgement(RowCheck& check, const Requirement& row, const DoorEvidence& evidence) {
    const auto found = evidence.judgements.find(row.id);
    if (check.verdict != Verdict::Judge || found == evidence.judgements.end())
        return;
    const Judgement& judgement = found->second.body;
    check.verdict = judgement.satisfactory ? Verdict::Satisfactory : Verdict::Unsatisfactory;
    check.reason = {ReasonKind::InspectorDecided, {}, check.reason.runs, 0, judgement.reason};
}

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

/// An n/a to a grave row, or to one of both sides, where its text knows no such case.
void doubtNotApplicable(RowCheck& check, const Requirement& row, const Asking& asking) {
    const bool weighs = row.severity == Severity::Grave || row.check == CheckKind::SeenBothSides;
    if (check.verdict != Verdict::NotApplicable || row.status != Status::Read || row.tells ||
        !weighs)
        return;
    if (!isShownToMeetOneOf(row.na_where, asking.found.of(row), asking.location))
        check = {Verdict::Judge, {ReasonKind::NoSuchCase, {}, 0, 0}, {}, {}, false};
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

/// The row whose answer at the door takes this one away: asked of this door itself, and not against
/// what runs have shown. What takes a row away by n/a takes those away that hang on it so.
const Requirement* excusing(const Requirement& row, const RowCheck& check, const Asking& asking,
                            const DoorEvidence& evidence) {
    const std::string_view by = excusedBy(row, evidence);
    if (by.empty() && row.unless_na.empty())
        return nullptr;
    const bool by_yes = !by.empty() && by == row.unless_yes;
    if (!by_yes && check.verdict != Verdict::Untested && !isAnswered(row, evidence))
        return nullptr; // it was timed
    if (!by.empty())
        return askedRow(by, asking);
    const Requirement* other = askedRow(row.unless_na, asking);
    if (!other || other->unless_na.empty())
        return nullptr;
    return excusedBy(*other, evidence) == other->unless_na ? askedRow(other->unless_na, asking)
                                                           : nullptr;
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
    applyJudgement(check, row, evidence);
    applyCouldNotTest(check, row, evidence);
    grade.underlying = check.verdict;
    grade.figure = std::move(check.figure);
    grade.inside = check.inside;
    grade.reason = std::move(check.reason);
    const bool advice_row = asked == Asked::Advice || row.status == Status::Advice;
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
