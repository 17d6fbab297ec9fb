#include "core/grading/rule_aboard.h"

#include <algorithm>

#include "core/grading/as_found.h"
#include "core/requirement/applicability_phrases.h"

namespace latchround {

namespace {

/// A door of the register where it stands.
struct DoorInPlace {
    const Door* door;
    AsFound found; ///< nothing was seen of it yet
    DoorLocation location;

    const Door& of(const Requirement& row) const { return found.of(row); }
};

std::vector<DoorInPlace> doorsInPlace(const Catalogue& catalogue, const Arrangement& arrangement) {
    std::vector<DoorInPlace> doors;
    for (const Door& door : arrangement.doors)
        doors.push_back(
            {&door, AsFound(door, {}),
             locationOf(arrangement.particulars, findBoundary(arrangement, door.boundary),
                        catalogue.divisions)});
    return doors;
}

std::vector<const Door*>* placeFor(RuleAboard& aboard, Asked asked) {
    switch (asked) {
    case Asked::Yes:
        return &aboard.binding;
    case Asked::Judge:
        return &aboard.left_to_inspector;
    case Asked::Advice:
        return &aboard.advised;
    case Asked::No:
        break;
    }
    return nullptr;
}

/// One that is asked of no door: its text may be of ships of other dates.
Phrase whyOfNone(const Requirement& row, const Particulars& vessel,
                 const std::vector<DoorInPlace>& doors) {
    for (const DoorInPlace& each : doors)
        if (Phrase why = askedBecause(inForce(row, vessel, each.of(row), each.location), vessel,
                                      each.of(row), each.location);
            applies::text_of_other_dates.isOf(why))
            return why;
    return applies::no_door_aboard();
}

RuleAboard ruleAboard(const Requirement& row, const Particulars& vessel,
                      const std::vector<DoorInPlace>& doors) {
    RuleAboard aboard;
    if (!speaksTo(row, vessel)) {
        aboard.because = applies::text_of_other_ships(row.issuer);
        return aboard;
    }
    for (const DoorInPlace& each : doors) {
        const Door& door = each.of(row);
        const Requirement& in_force = inForce(row, vessel, door, each.location);
        if (auto* place = placeFor(
                aboard, comesTo(in_force, howAsked(in_force, vessel, door, each.location))))
            place->push_back(each.door);
    }
    if (!aboard.isAsked())
        aboard.because = whyOfNone(row, vessel, doors);
    return aboard;
}

} // namespace

Asked comesTo(const Requirement& in_force, Asked asked) {
    if (asked == Asked::No || asked == Asked::Advice)
        return asked;
    if (in_force.status == Status::Advice)
        return Asked::Advice;
    const bool left_open = in_force.status == Status::Usage || !in_force.left_open.empty();
    return left_open ? Asked::Judge : asked;
}

GradedDoor asRegistered(const Arrangement& arrangement, const Door& door,
                        const Catalogue& catalogue) {
    GradedDoor graded;
    graded.door = &door;
    graded.boundary = findBoundary(arrangement, door.boundary);
    graded.evidence.door = door.number;
    graded.grade =
        grade(arrangement.particulars, door, graded.boundary, graded.evidence, catalogue);
    return graded;
}

std::vector<RuleAtDoor> rulesAtDoor(const GradedDoor& graded, const Particulars& vessel) {
    const AsFound found(*graded.door, graded.evidence);
    const DoorLocation location = locationOf(graded.boundary, graded.grade.asked_class);
    std::vector<RuleAtDoor> rules;
    rules.reserve(graded.grade.rows.size());
    for (const RowGrade& row : graded.grade.rows) {
        const Requirement& in_force = *row.requirement;
        const Door& door = found.of(in_force);
        RuleAtDoor rule{&in_force, comesTo(in_force, howAsked(in_force, vessel, door, location)),
                        askedBecause(in_force, vessel, door, location)};
        const bool not_asked = row.reason.kind == ReasonKind::ExcusedByAnswer ||
                               row.reason.kind == ReasonKind::AnsweredNotAsked;
        if (not_asked && rule.asked != Asked::No) {
            rule.asked = Asked::No;
            rule.excused = row.reason;
        }
        rules.push_back(std::move(rule));
    }
    return rules;
}

std::vector<RuleAboard> rulesAboard(const Catalogue& catalogue, const Arrangement& arrangement) {
    const std::vector<DoorInPlace> doors = doorsInPlace(catalogue, arrangement);
    std::vector<RuleAboard> rules;
    rules.reserve(catalogue.rows.size());
    for (const Requirement& row : catalogue.rows)
        rules.push_back(ruleAboard(row, arrangement.particulars, doors));
    return rules;
}

} // namespace latchround
