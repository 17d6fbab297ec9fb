#include <cmath>

#include <nlohmann/json.hpp>

#include "app/exchange/grade_json.h"
#include "core/grading/as_found.h"
#include "core/reading/written_json.h"
#include "core/requirement/applicability.h"
#include "ui/words/grade_words.h"
#include "ui/words/phrase_words.h"

namespace latchround {

namespace {

using OrderedJson = nlohmann::ordered_json;

void setIfKnown(OrderedJson& object, const char* key, const std::optional<double>& value) {
    if (value)
        object[key] = *value;
}

void writeFigure(OrderedJson& object, const Reading& figure) {
    object["value"] = figure.value;
    object["u"] = figure.u();
    const double degrees = figure.degreesOfFreedom();
    if (std::isfinite(degrees))
        object["degrees_of_freedom"] = degrees;
    OrderedJson& budget = object["budget"] = OrderedJson::array();
    for (const Component& component : figure.budget)
        budget.push_back({{"part", word(component.part)}, {"u", component.u()}});
}

OrderedJson rowJson(const RowGrade& row, const std::string& because) {
    const Requirement& requirement = *row.requirement;
    OrderedJson object;
    object["requirement"] = requirement.id;
    object["verdict"] = word(row.verdict);
    // What an advice row would have been called if it were asked: advice never fails a door.
    if (row.underlying != row.verdict)
        object["underlying"] = word(row.underlying);
    if (row.figure)
        writeFigure(object, *row.figure);
    setIfKnown(object, "probability_inside", row.inside);
    const std::string unit = row.figure ? gaugeUnit(requirement) : requirement.unit;
    if (!unit.empty())
        object["unit"] = unit;
    setIfKnown(object, "low", requirement.low);
    setIfKnown(object, "high", requirement.high);
    setIfKnown(object, "low_also", requirement.low_also);
    setIfKnown(object, "high_also", requirement.high_also);
    object["cite"] = requirement.cite;
    object["issuer"] = requirement.issuer;
    object["severity"] = word(requirement.severity);
    const ReasonKind kind = row.reason.kind;
    object["why"] = kind == ReasonKind::NotAsked ? because : ui::reasonText(row.reason);
    const bool answered_not_asked = kind == ReasonKind::AnsweredNotAsked;
    if (answered_not_asked)
        object["answered_not_asked"] = true;
    if (!answered_not_asked && kind != ReasonKind::NotAsked && kind != ReasonKind::ExcusedByAnswer)
        object["asked_because"] = because;
    return object;
}

OrderedJson doorJson(const Particulars& vessel, const GradedDoor& graded) {
    const DoorGrade& door = graded.grade;
    const DoorLocation location = locationOf(graded.boundary, door.asked_class);
    const AsFound found(*graded.door, graded.evidence);
    OrderedJson object;
    object["id"] = door.door;
    object["verdict"] = word(door.verdict);
    object["rows"] = OrderedJson::array();
    for (const RowGrade& row : door.rows)
        object["rows"].push_back(
            rowJson(row, ui::phraseWords(askedBecause(*row.requirement, vessel,
                                                      found.of(*row.requirement), location))
                             .toStdString()));
    return object;
}

OrderedJson zoneJson(const ActingZone& zone, const char* through) {
    OrderedJson object;
    object["zones"] = zone.zones;
    object["through"] = through;
    object["length_m"] = zone.length_m;
    setIfKnown(object, "area_m2", zone.area_m2);
    object["doors"] = zone.doors;
    object["boundaries"] = zone.boundaries;
    return object;
}

OrderedJson repairJson(const Repair& repair) {
    OrderedJson object;
    object["boundary"] = repair.boundary;
    object["doors"] = repair.doors;
    object["longest_before_m"] = repair.longest_before_m;
    object["longest_after_m"] = repair.longest_after_m;
    return object;
}

} // namespace

std::vector<GradedDoor> gradedDoors(const GradeInput& input, const Catalogue& catalogue) {
    std::vector<GradedDoor> doors;
    doors.reserve(input.doors.size());
    for (const GradeInput::Item& item : input.doors)
        doors.push_back({&item.door, &item.boundary, item.evidence,
                         grade(input.vessel, item.door, &item.boundary, item.evidence, catalogue)});
    return doors;
}

std::string gradeOutputJson(const Catalogue& catalogue, const Particulars& vessel,
                            std::span<const GradedDoor> doors, const ZoneIntegrity& zones) {
    OrderedJson object;
    object["catalogue"]["edition"] = editionFor(catalogue, vessel);
    object["catalogue"]["deference"] = deferenceFor(catalogue, vessel);
    object["doors"] = OrderedJson::array();
    for (const GradedDoor& door : doors)
        object["doors"].push_back(doorJson(vessel, door));
    object["zones"] = OrderedJson::array();
    for (const ActingZone& zone : zones.failing)
        object["zones"].push_back(zoneJson(zone, "failing"));
    for (const ActingZone& zone : zones.not_shown)
        object["zones"].push_back(zoneJson(zone, "not-shown"));
    if (zones.best_repair)
        object["best_repair"] = repairJson(*zones.best_repair);
    return inLines(object);
}

} // namespace latchround
