#include <utility>
#include <vector>

#include <nlohmann/json.hpp>

#include "app/exchange/grade_json_parts.h"
#include "core/error/exchange_errors.h"
#include "core/vessel/arrangement_fields.h"

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
    object.complain("spaces", errors::not_two_spaces(last));
    return std::nullopt;
}

void readDimensions(JsonObject& object, Door& door) {
    if (const auto opening = object.number("opening_m", Need::Optional)) {
        door.opening_m = *opening;
        if (!(*opening > 0 && *opening <= widest_opening_m))
            object.complain("opening_m", errors::opening_out_of_range());
    }
    door.leaf_mass_kg = object.number("leaf_mass_kg", Need::Optional);
    if (door.leaf_mass_kg && !(*door.leaf_mass_kg > 0 && *door.leaf_mass_kg <= heaviest_leaf_kg))
        object.complain("leaf_mass_kg", errors::leaf_mass_out_of_range());
}

/// Every yes or no of a door, by its name in the register.
struct FittingReader {
    JsonObject& object;

    void operator()(const ArrangementColumn& column, Said& fitted) const {
        fitted.word = object.truth(column.name, Need::Optional);
    }
    void operator()(const ArrangementColumn&, const auto&) const {}
};

void readFittings(JsonObject& object, Door& door) {
    eachField(door, FittingReader{object});
    door.remote_release.word = object.truth("remote_release", Need::Optional);
    if (door.remote_release)
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
                        .value_or(positionIfNotSaid(door));
    door.installed = object.date("installed", Need::Optional);
    door.boundary = door.number;

    item.boundary.id = door.number;
    item.boundary.place =
        object.word<Place>("place", Need::Required, placeWords).value_or(Place::Other);
    item.boundary.spaces = spacesFrom(object, spaceCategories(vessel));
    // 46 CFR 116.435(c)(7) asks other things of a door in a deck.
    const Need division = vessel.regime == Regime::UsK ? Need::Required : Need::Optional;
    item.boundary.division =
        object.word<Division>("division", division, divisionWords).value_or(item.boundary.division);
    item.boundary.required =
        object.word<FireClass>("boundary_class", Need::Optional, fireClassWords);
}

} // namespace latchround
