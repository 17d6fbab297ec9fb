#include <utility>
#include <vector>

#include "app/exchange/grade_json_parts.h"

namespace latchround {

namespace {

constexpr double widest_opening_m = 10;
constexpr double heaviest_leaf_kg = 5000;

std::optional<std::pair<int, int>> spacesFrom(JsonObject& object, int last) {
    const Json* field = object.field("spaces", Need::Optional);
    if (!field)
        return std::nullopt;
    std::vector<int> spaces;
    if (field->is_array())
        for (const Json& space : *field)
            if (space.is_number_unsigned() && space.get<std::uint64_t>() >= 1 &&
                space.get<std::uint64_t>() <= static_cast<std::uint64_t>(last))
                spaces.push_back(space.get<int>());
    if (field->is_array() && field->size() == 2 && spaces.size() == 2)
        return std::pair(spaces[0], spaces[1]);
    object.complain("spaces",
                    "this must be the categories of the two spaces, 1 to " + std::to_string(last) +
                        " by the fire tables of this vessel",
                    "Write them like [3, 5].");
    return std::nullopt;
}

void readDimensions(JsonObject& object, Door& door) {
    if (const auto opening = object.number("opening_m", Need::Optional)) {
        door.opening_m = *opening;
        if (!(*opening > 0 && *opening <= widest_opening_m))
            object.complain("opening_m", "a clear opening must be more than 0 and at most 10 m",
                            "Give the clear width in metres.");
    }
    door.leaf_mass_kg = object.number("leaf_mass_kg", Need::Optional);
    if (door.leaf_mass_kg && !(*door.leaf_mass_kg > 0 && *door.leaf_mass_kg <= heaviest_leaf_kg))
        object.complain("leaf_mass_kg", "a leaf must weigh more than 0 and at most 5000 kg",
                        "Give the mass of the heaviest leaf in kilograms.");
}

void readFittings(JsonObject& object, Door& door) {
    const auto read = [&](const char* key, bool& member) {
        member = object.truth(key, Need::Optional).value_or(member);
    };
    read("power_operated", door.power_operated);
    read("hold_back", door.hold_back);
    read("alarm", door.alarm);
    read("designed_to_reopen", door.designed_to_reopen);
    read("hose_port", door.hose_port);
    read("escape_route", door.escape_route);
    read("sill_in_frame", door.sill_in_frame);
    read("latch", door.latch);
    read("watertight", door.watertight);
    read("weathertight", door.weathertight);
    read("escape_trunk", door.escape_trunk);
    read("special_category", door.special_category);
    read("faces_embarkation", door.faces_embarkation);
    if (object.truth("remote_release", Need::Optional).value_or(false))
        door.release_groups = {"remote"};
}

} // namespace

void readDoor(JsonObject& object, const Particulars& vessel, GradeInput::Item& item) {
    Door& door = item.door;
    door.number = object.text("id", Need::Required).value_or("");
    door.kind = object.word<DoorKind>("kind", Need::Required, doorKindWords).value_or(door.kind);
    door.fire_class =
        object.word<FireClass>("class", Need::Required, fireClassWords).value_or(door.fire_class);
    door.plate = object.text("plate", Need::Optional).value_or("");
    readDimensions(object, door);
    readFittings(object, door);
    door.normally = object.word<NormalPosition>("normally", Need::Optional, normalPositionWords)
                        .value_or(door.normally);
    door.installed = object.date("installed", Need::Optional);
    door.boundary = door.number;

    item.boundary.id = door.number;
    item.boundary.place =
        object.word<Place>("place", Need::Required, placeWords).value_or(Place::Other);
    item.boundary.spaces = spacesFrom(object, spaceCategories(vessel));
    item.boundary.division = object.word<Division>("division", Need::Optional, divisionWords)
                                 .value_or(item.boundary.division);
    item.boundary.required =
        object.word<FireClass>("boundary_class", Need::Optional, fireClassWords);
}

} // namespace latchround
