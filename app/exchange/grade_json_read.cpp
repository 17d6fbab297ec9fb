#include <limits>
#include <map>

#include "app/exchange/grade_json.h"
#include "app/exchange/grade_json_parts.h"

namespace latchround {

namespace {

Particulars vesselFrom(const Json& value, JsonFaults& faults) {
    JsonObject object(value, "/vessel", faults);
    Particulars vessel;
    vessel.name = object.text("name", Need::Optional).value_or("");
    vessel.number = object.text("number", Need::Optional).value_or("");
    vessel.regime =
        object.word<Regime>("regime", Need::Required, regimeWords).value_or(vessel.regime);
    vessel.passengers = static_cast<int>(
        object.wholeNumber("passengers", Need::Required, 0, std::numeric_limits<int>::max())
            .value_or(0));
    vessel.keel_laid = object.date("built", Need::Optional);
    vessel.sprinklers = object.truth("sprinklers", Need::Optional).value_or(vessel.sprinklers);
    vessel.length_m = object.number("length_m", Need::Optional).value_or(vessel.length_m);
    if (vessel.length_m < 0)
        object.complain("length_m", "a length cannot be negative", "Give metres.");
    object.complainOfTheRest();
    return vessel;
}

} // namespace

Checked<GradeInput> gradeInputFrom(std::string_view json, const std::string& name,
                                   const Catalogue& catalogue) {
    const Checked<Json> document = jsonFrom(json, name);
    if (!document)
        return tl::unexpected(document.error());
    JsonFaults faults(name);
    JsonObject top(*document, "", faults);
    GradeInput input;
    if (document->is_object()) {
        if (const Json* vessel = top.field("vessel", Need::Required))
            input.vessel = vesselFrom(*vessel, faults);
        const Json* doors = top.field("doors", Need::Required);
        if (doors && !doors->is_array())
            top.complain("doors", "this must be a list of doors", "Write it in brackets.");
        std::map<std::string, std::size_t> first;
        for (std::size_t i = 0; doors && doors->is_array() && i < doors->size(); ++i) {
            JsonObject object((*doors)[i], pointerTo("/doors", i), faults);
            GradeInput::Item item;
            if ((*doors)[i].is_object()) {
                readDoor(object, input.vessel, item);
                item.evidence.door = item.door.number;
                readEvidence(object, item.door, catalogue, faults, item.evidence);
                object.complainOfTheRest();
                const auto [known, is_new] = first.emplace(item.door.number, i);
                if (item.door.number.empty() && object.field("id", Need::Optional))
                    object.complain("id", "a door needs a number", "Give the one painted on it.");
                else if (!is_new && !item.door.number.empty())
                    object.complain("id",
                                    "door \"" + item.door.number + "\" is there twice, first at " +
                                        pointerTo(pointerTo("/doors", known->second), "id"),
                                    "Give every door its own id, or put both records in one.");
            }
            input.doors.push_back(std::move(item));
        }
        top.complainOfTheRest();
    }
    if (!faults.empty())
        return tl::unexpected(faults.take());
    return input;
}

} // namespace latchround
