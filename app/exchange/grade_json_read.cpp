#include <limits>
#include <map>

#include "app/exchange/grade_json.h"
#include "app/exchange/grade_json_parts.h"
#include "app/exchange/json_text.h"
#include "core/error/arrangement_errors.h"
#include "core/error/exchange_errors.h"

namespace latchround {

namespace {

Particulars vesselFrom(JsonObject& object) {
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
        object.complain("length_m", errors::length_negative());
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
        if (auto vessel = top.object("vessel", Need::Required))
            input.vessel = vesselFrom(*vessel);
        std::map<std::string, std::string> first;
        for (JsonObject& object :
             top.objects("doors", Need::Required, errors::not_a_list_of_doors())) {
            GradeInput::Item item;
            readDoor(object, input.vessel, item);
            item.evidence.door = item.door.number;
            readEvidence(object, item.door, catalogue, faults, item.evidence);
            object.complainOfTheRest();
            const auto [known, is_new] = first.emplace(item.door.number, object.pointerOf("id"));
            if (item.door.number.empty() && object.field("id", Need::Optional))
                object.complain("id", errors::door_needs_number());
            else if (!is_new && !item.door.number.empty())
                object.complain("id", errors::door_recorded_twice(item.door.number, known->second));
            input.doors.push_back(std::move(item));
        }
        top.complainOfTheRest();
    }
    if (!faults.empty())
        return tl::unexpected(faults.take());
    return input;
}

} // namespace latchround
