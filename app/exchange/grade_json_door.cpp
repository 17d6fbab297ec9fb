#include <algorithm>
#include <array>

#include "app/exchange/grade_json_parts.h"

namespace latchround {

namespace {

enum class Division { Bulkhead, Deck };
constexpr std::array<Word<Division>, 2> divisionWords{
    {{Division::Bulkhead, "bulkhead"}, {Division::Deck, "deck"}}};

constexpr double widest_opening_m = 10;
constexpr double heaviest_leaf_kg = 5000;
/// Categories of spaces run from 1 to 14 at most (SOLAS II-2/9.2.2.3.2.2).
constexpr std::int64_t last_category = 14;

std::vector<std::int64_t> spacesFrom(JsonObject& object) {
    const Json* field = object.field("spaces", Need::Optional);
    if (!field)
        return {};
    std::vector<std::int64_t> spaces;
    if (field->is_array())
        for (const Json& space : *field)
            if (space.is_number_unsigned() && space.get<std::uint64_t>() >= 1 &&
                space.get<std::uint64_t>() <= last_category)
                spaces.push_back(space.get<std::int64_t>());
    if (field->is_array() && field->size() == 2 && spaces.size() == 2)
        return spaces;
    object.complain("spaces", "this must be the categories of the two spaces, 1 to 14",
                    "Write them like [3, 5].");
    return {};
}

/// A zone bulkhead of a SOLAS ship with more than 36 passengers is where a space of
/// category 5, 9 or 10 lies on one side (II-2/9.2.2.1.1.1). For other boundaries the class must be
/// given.
std::optional<FireClass> classByRule(const Particulars& vessel, Place place,
                                     const std::vector<std::int64_t>& spaces) {
    if (place != Place::ZoneBulkhead || vessel.regime != Regime::SolasPassenger ||
        vessel.passengers <= 36)
        return std::nullopt;
    const bool eased = std::ranges::any_of(
        spaces, [](std::int64_t space) { return space == 5 || space == 9 || space == 10; });
    return eased ? FireClass::A0 : FireClass::A60;
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
    const auto spaces = spacesFrom(object);
    object.word<Division>("division", Need::Optional, divisionWords);
    item.boundary.required =
        object.word<FireClass>("boundary_class", Need::Optional, fireClassWords);
    if (!item.boundary.required)
        item.boundary.required = classByRule(vessel, item.boundary.place, spaces);
}

} // namespace latchround
