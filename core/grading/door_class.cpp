#include "core/grading/door_class.h"

namespace latchround {

DoorClass doorClassAsked(const Particulars& vessel, const Boundary* boundary,
                         const FireTables& tables) {
    DoorClass asked;
    if (!boundary)
        return asked;
    const DivisionQuestion question = questionOf(vessel, *boundary);
    asked.ship = question.ship;
    asked.by_rule = requiredClass(tables, question);
    asked.from_plan = boundary->required.has_value();
    asked.division = asked.from_plan ? boundary->required : asked.by_rule.required;
    if (asked.division) {
        asked.kind = DoorClass::Kind::Class;
        asked.door = doorClassIn(question.ship, *asked.division);
        return asked;
    }
    const RequiredClass::Kind kind = asked.by_rule.kind;
    if (kind == RequiredClass::Kind::Steel || kind == RequiredClass::Kind::Nothing)
        asked.kind = DoorClass::Kind::Free;
    else if (kind == RequiredClass::Kind::NotPrinted)
        asked.kind = DoorClass::Kind::NotPrinted;
    return asked;
}

bool isPlanBelowTables(const DoorClass& asked) {
    const RequiredClass& rule = asked.by_rule;
    const bool of_a_class = rule.a_class_by_rule || rule.a_class_by_table ||
                            (rule.required && isAClass(*rule.required));
    return asked.from_plan && of_a_class && !isAClass(*asked.division);
}

DoorLocation locationOf(const Boundary* boundary, const DoorClass& asked) {
    DoorLocation location(boundary ? boundary->place : Place::Other,
                          boundary ? boundary->division : Division::Bulkhead);
    if (boundary)
        location.spaces = boundary->spaces;
    const RequiredClass& rule = asked.by_rule;
    const bool c_prime = !asked.from_plan && rule.rule == DivisionRule::Table && rule.cell &&
                         rule.cell->kind == PrintedCell::Kind::Noncombustible;
    if (c_prime)
        location.family = BoundaryFamily::CPrime;
    else if (rule.a_class_by_rule && !rule.older_tables)
        location.family = BoundaryFamily::A;
    else if (asked.division)
        location.family = familyOf(*asked.division);
    else if (location.place == Place::ZoneBulkhead || location.place == Place::Stairway)
        location.family = BoundaryFamily::A;
    location.plan_below_tables = isPlanBelowTables(asked);
    return location;
}

DoorLocation locationOf(const Particulars& vessel, const Boundary* boundary,
                        const FireTables& tables) {
    return locationOf(boundary, doorClassAsked(vessel, boundary, tables));
}

} // namespace latchround
