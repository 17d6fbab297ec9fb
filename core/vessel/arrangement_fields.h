// The one description of the rows of an arrangement: their fields by the name each bears as a
// column of the register's CSV and of its tables, in the order in which they are written. A visitor
// is called as visit(column, member).
#pragma once

#include <string_view>

#include "core/vessel/arrangement.h"
#include "core/vessel/described.h"

namespace latchround {

struct ArrangementColumn {
    enum class Role {
        Says,  ///< a text as it stands, a figure, a word
        Name,  ///< what other rows call this row
        Refers ///< the name of another row
    };
    std::string_view name; ///< of a literal
    bool is_required;      ///< a header of CSV without it is a fault, and so is an empty cell
    Role role = Role::Says;

    constexpr operator const char*() const { return name.data(); }
};

namespace column {

constexpr ArrangementColumn name(const char* column) {
    return {column, true, ArrangementColumn::Role::Name};
}
constexpr ArrangementColumn refers(const char* column) {
    return {column, true, ArrangementColumn::Role::Refers};
}
constexpr ArrangementColumn must(const char* column) {
    return {column, true};
}
constexpr ArrangementColumn may(const char* column) {
    return {column, false};
}

} // namespace column

template <class Visit>
void eachField(OneOf<Particulars> auto& vessel, Visit&& visit) {
    visit(column::must("name"), vessel.name);
    visit(column::may("number"), vessel.number);
    visit(column::must("regime"), vessel.regime);
    visit(column::must("passengers"), vessel.passengers);
    visit(column::may("keel_laid"), vessel.keel_laid);
    visit(column::may("sprinklers"), vessel.sprinklers);
    visit(column::may("length_m"), vessel.length_m);
}

template <class Visit>
void eachField(OneOf<Deck> auto& deck, Visit&& visit) {
    visit(column::name("number"), deck.number);
    visit(column::may("name"), deck.name);
    visit(column::may("height_m"), deck.height_m);
}

template <class Visit>
void eachField(OneOf<Zone> auto& zone, Visit&& visit) {
    visit(column::name("number"), zone.number);
    visit(column::must("aft_m"), zone.aft_m);
    visit(column::must("forward_m"), zone.forward_m);
    visit(column::may("area_m2"), zone.area_m2);
}

template <class Visit>
void eachField(OneOf<Boundary> auto& boundary, Visit&& visit) {
    visit(column::name("id"), boundary.id);
    visit(column::must("place"), boundary.place);
    visit(column::refers("zone_aft"), boundary.zone_aft);
    visit(column::refers("zone_forward"), boundary.zone_forward);
    visit(column::must("x_m"), boundary.x_m);
    visit(column::may("required"), boundary.required);
    visit(column::may("division"), boundary.division);
    visit(column::may("spaces"), boundary.spaces);
}

template <class Visit>
void eachField(OneOf<Door> auto& door, Visit&& visit) {
    visit(column::name("number"), door.number);
    visit(column::refers("deck"), door.deck);
    visit(column::must("x_m"), door.x_m);
    visit(column::must("y_m"), door.y_m);
    visit(column::refers("boundary"), door.boundary);
    visit(column::must("kind"), door.kind);
    visit(column::must("class"), door.fire_class);
    visit(column::may("plate"), door.plate);
    visit(column::must("opening_m"), door.opening_m);
    visit(column::may("leaf_mass_kg"), door.leaf_mass_kg);
    visit(column::may("power_operated"), door.power_operated);
    visit(column::may("hold_back"), door.hold_back);
    visit(column::may("release_groups"), door.release_groups);
    visit(column::may("alarm"), door.alarm);
    visit(column::may("designed_to_reopen"), door.designed_to_reopen);
    visit(column::may("hose_port"), door.hose_port);
    visit(column::may("escape_route"), door.escape_route);
    visit(column::may("sill_in_frame"), door.sill_in_frame);
    visit(column::may("latch"), door.latch);
    visit(column::may("watertight"), door.watertight);
    visit(column::may("weathertight"), door.weathertight);
    visit(column::may("escape_trunk"), door.escape_trunk);
    visit(column::may("special_category"), door.special_category);
    visit(column::may("faces_embarkation"), door.faces_embarkation);
    visit(column::may("normally"), door.normally);
    visit(column::may("installed"), door.installed);
    visit(column::may("maker"), door.maker);
}

} // namespace latchround
