#include "app/exchange/register_rows.h"

namespace latchround {

namespace {

Particulars vesselFrom(CsvRowReader& row) {
    Particulars vessel;
    vessel.name = row.text("name");
    vessel.number = row.text("number");
    vessel.regime = row.wordOrNothing<Regime>("regime", regimeWords).value_or(vessel.regime);
    vessel.passengers = row.wholeNumber("passengers");
    vessel.keel_laid = row.date("keel_laid");
    vessel.sprinklers = row.yesNo("sprinklers", vessel.sprinklers);
    vessel.length_m = row.number("length_m", vessel.length_m);
    return vessel;
}

Deck deckFrom(CsvRowReader& row) {
    Deck deck;
    deck.number = row.name("number");
    deck.name = row.text("name");
    deck.height_m = row.number("height_m", deck.height_m);
    return deck;
}

Zone zoneFrom(CsvRowReader& row) {
    Zone zone;
    zone.number = row.name("number");
    zone.aft_m = row.number("aft_m", 0);
    zone.forward_m = row.number("forward_m", 0);
    zone.area_m2 = row.numberOrNothing("area_m2");
    return zone;
}

Boundary boundaryFrom(CsvRowReader& row) {
    Boundary boundary;
    boundary.id = row.name("id");
    boundary.place = row.wordOrNothing<Place>("place", placeWords).value_or(boundary.place);
    boundary.zone_aft = row.name("zone_aft");
    boundary.zone_forward = row.name("zone_forward");
    boundary.x_m = row.number("x_m", 0);
    boundary.required = row.wordOrNothing<FireClass>("required", fireClassWords);
    boundary.division =
        row.wordOrNothing<Division>("division", divisionWords).value_or(boundary.division);
    boundary.spaces = row.spaces("spaces");
    return boundary;
}

Door doorFrom(CsvRowReader& row) {
    Door door;
    door.number = row.name("number");
    door.deck = row.name("deck");
    door.x_m = row.number("x_m", 0);
    door.y_m = row.number("y_m", 0);
    door.boundary = row.name("boundary");
    door.kind = row.wordOrNothing<DoorKind>("kind", doorKindWords).value_or(door.kind);
    door.fire_class =
        row.wordOrNothing<FireClass>("class", fireClassWords).value_or(door.fire_class);
    door.plate = row.text("plate");
    door.opening_m = row.number("opening_m", 0);
    door.leaf_mass_kg = row.numberOrNothing("leaf_mass_kg");
    door.power_operated = row.yesNo("power", door.power_operated);
    door.hold_back = row.yesNo("hold_back", door.hold_back);
    door.release_groups = row.names("release_groups");
    door.alarm = row.yesNo("alarm", door.alarm);
    door.designed_to_reopen = row.yesNo("designed_to_reopen", door.designed_to_reopen);
    door.hose_port = row.yesNo("hose_port", door.hose_port);
    door.escape_route = row.yesNo("escape_route", door.escape_route);
    door.sill_in_frame = row.yesNo("sill_in_frame", door.sill_in_frame);
    door.latch = row.yesNo("latch", door.latch);
    door.watertight = row.yesNo("watertight", door.watertight);
    door.weathertight = row.yesNo("weathertight", door.weathertight);
    door.escape_trunk = row.yesNo("escape_trunk", door.escape_trunk);
    door.special_category = row.yesNo("special_category", door.special_category);
    door.faces_embarkation = row.yesNo("faces_embarkation", door.faces_embarkation);
    door.normally =
        row.wordOrNothing<NormalPosition>("normally", normalPositionWords).value_or(door.normally);
    door.installed = row.date("installed");
    door.maker = row.text("maker");
    return door;
}

} // namespace

void appendRow(ArrangementTable table, CsvRowReader& row, Arrangement& arrangement) {
    switch (table) {
    case ArrangementTable::Vessel:
        arrangement.particulars = vesselFrom(row);
        break;
    case ArrangementTable::Deck:
        arrangement.decks.push_back(deckFrom(row));
        break;
    case ArrangementTable::Zone:
        arrangement.zones.push_back(zoneFrom(row));
        break;
    case ArrangementTable::Boundary:
        arrangement.boundaries.push_back(boundaryFrom(row));
        break;
    case ArrangementTable::Door:
        arrangement.doors.push_back(doorFrom(row));
        break;
    }
}

const std::string& keyOf(const Arrangement& arrangement, ArrangementTable table, std::size_t row) {
    switch (table) {
    case ArrangementTable::Deck:
        return arrangement.decks[row].number;
    case ArrangementTable::Zone:
        return arrangement.zones[row].number;
    case ArrangementTable::Boundary:
        return arrangement.boundaries[row].id;
    case ArrangementTable::Door:
        return arrangement.doors[row].number;
    case ArrangementTable::Vessel:
        break;
    }
    return arrangement.particulars.name;
}

} // namespace latchround
