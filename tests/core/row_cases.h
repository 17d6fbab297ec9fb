// For every row of the catalogue a door that it is asked of, one that it is not asked of, and
// figures either side of its limits, typed here anew from the texts that the rows cite.
#pragma once

#include "tests/core/given.h"

namespace latchround::given {

/// A door where it stands, on a ship whose flag binds the row.
struct Site {
    Regime regime = Regime::SolasPassenger;
    Door door;
    Boundary boundary = zoneBulkhead();
    const char* keel = "2012-05-01";
};

using Change = void (*)(Site&);

/// Figures of a row with limits; a yes/no row has none.
struct Figures {
    std::vector<double> good; ///< well inside, then just inside each limit
    std::vector<double> bad;  ///< well outside, then just outside what is left to the inspector
};

struct RowCase {
    const char* id;
    Change asked;     ///< makes a door that the row is asked of
    Change not_asked; ///< then takes away what made it so
    Figures figures{};
    bool left_open = false; ///< the text does not settle it: a failure is the inspector's
};

inline Site site(Regime regime, DoorKind kind) {
    Site made;
    made.regime = regime;
    made.door = kind == DoorKind::Sliding ? slidingDoor() : hingedDoor(kind);
    return made;
}

inline void solasHinged(Site& s) {
    s = site(Regime::SolasPassenger, DoorKind::SingleLeaf);
}
inline void solasSliding(Site& s) {
    s = site(Regime::SolasPassenger, DoorKind::Sliding);
}
inline void solasDouble(Site& s) {
    s = site(Regime::SolasPassenger, DoorKind::DoubleLeaf);
}
inline void usH(Site& s) {
    s = site(Regime::UsH, DoorKind::SingleLeaf);
}
inline void usK(Site& s) {
    s = site(Regime::UsK, DoorKind::SingleLeaf);
}
inline void newlyHungA(Site& s) {
    solasHinged(s);
    s.door.installed = calendarDateFrom("2010-07-01");
    s.door.sill_in_frame = false;
}
inline void newlyHungB(Site& s) {
    newlyHungA(s);
    s.door.fire_class = FireClass::B15;
}
inline void usHB(Site& s) {
    usH(s);
    s.boundary.required = s.door.fire_class = FireClass::B15;
}
inline void usKB(Site& s) {
    usK(s);
    s.boundary.required = s.door.fire_class = FireClass::B15;
}
inline void inADeck(Site& s) {
    usK(s);
    s.boundary.division = Division::Deck;
}

inline void locked(Site& s) {
    s.door.normally = NormalPosition::Locked;
}
inline void normallyClosed(Site& s) {
    s.door.normally = NormalPosition::Closed;
}
inline void inACabin(Site& s) {
    s.boundary.place = Place::Cabin;
}
inline void outside(Site& s) {
    s.boundary.place = Place::Exterior;
}
inline void toTheCarDeck(Site& s) {
    s.door.special_category = true;
}
inline void ofAnEscapeTrunk(Site& s) {
    s.door.escape_trunk = true;
}
inline void watertight(Site& s) {
    s.door.watertight = true;
}
inline void weathertight(Site& s) {
    s.door.weathertight = true;
}
inline void powerWatertight(Site& s) {
    s.door.watertight = s.door.power_operated = true;
}
inline void bClass(Site& s) {
    s.boundary.place = Place::Other;
    s.boundary.required = s.door.fire_class = FireClass::B15;
}
inline void aClass(Site& s) {
    s.door.fire_class = FireClass::A30;
}
inline void cClass(Site& s) {
    s.boundary.place = Place::Other;
    s.boundary.required = s.door.fire_class = FireClass::C;
}
inline void sliding(Site& s) {
    s.door.kind = DoorKind::Sliding;
}
inline void hinged(Site& s) {
    s.door.kind = DoorKind::SingleLeaf;
}
inline void byHand(Site& s) {
    s.door.power_operated = false;
}
inline void notRemote(Site& s) {
    s.door.release_groups.clear();
}
inline void noReopening(Site& s) {
    s.door.designed_to_reopen = false;
}
inline void noLatch(Site& s) {
    s.door.latch = false;
}
inline void noHosePort(Site& s) {
    s.door.hose_port = false;
}
inline void hungEarlier(Site& s) {
    s.door.installed = calendarDateFrom("2010-06-30");
}
inline void upright(Site& s) {
    s.boundary.division = Division::Bulkhead;
}
inline void otherShip(Site& s) {
    s.regime = s.regime == Regime::SolasPassenger ? Regime::UsH : Regime::SolasPassenger;
}
inline void latching(Site& s) {
    solasHinged(s);
    s.door.latch = true;
}
inline void latchingDouble(Site& s) {
    solasDouble(s);
    s.door.latch = true;
}
inline void cabinDoor(Site& s) {
    solasHinged(s);
    s.door.fire_class = FireClass::B15;
    s.boundary.place = Place::Cabin;
}
inline void engineRoom(Site& s) {
    solasHinged(s);
    s.boundary.place = Place::Machinery;
}
inline void trunkOfTheEngineRoom(Site& s) {
    engineRoom(s);
    s.boundary.spaces = std::pair(12, 3);
    ofAnEscapeTrunk(s);
}
inline void trunkElsewhere(Site& s) {
    solasHinged(s);
    s.boundary.place = Place::Other;
    ofAnEscapeTrunk(s);
}
inline void noTrunk(Site& s) {
    s.door.escape_trunk = false;
}
inline void bDoor(Site& s) {
    solasHinged(s);
    s.door.fire_class = FireClass::B15;
}
inline void facingOutside(Site& s) {
    solasHinged(s);
    s.boundary.place = Place::Exterior;
    s.door.faces_embarkation = true;
}
inline void lockedDoor(Site& s) {
    solasHinged(s);
    s.door.normally = NormalPosition::Locked;
}
inline void carDeck(Site& s) {
    solasHinged(s);
    s.boundary.place = Place::SpecialCategory;
}
inline void noWayOut(Site& s) {
    s.door.escape_route = false;
}
inline void nothingHolds(Site& s) {
    s.door.hold_back = s.door.power_operated = false;
}
inline void usHPort(Site& s) {
    usH(s);
    s.door.hose_port = true;
}

inline const RowCase cases[] = {
    // SOLAS II-2/9.4.1 and 9.5.2.5, English text consolidated April 2015.
    {"rating", solasHinged, outside},
    {"one-person", solasHinged, bClass},
    {"self-closing", solasHinged, locked},
    {"hinged-time", solasHinged, sliding, {{20, 10.2, 39.8}, {50, 9.3, 44.2}}},
    {"sliding-rate", solasSliding, hinged, {{0.15, 0.103, 0.194}, {0.3, 0.088, 0.218}}},
    {"remote-release", solasSliding, ofAnEscapeTrunk},
    {"local-release", solasSliding, ofAnEscapeTrunk},
    {"switch-on-off", solasSliding, toTheCarDeck},
    {"no-hook", solasHinged, inACabin},
    {"reopen-local", solasHinged, powerWatertight},
    {"indicator", solasHinged, locked},
    {"fail-safe", solasHinged, locked},
    {"accumulator", solasSliding, byHand},
    {"independence", solasHinged, locked},
    {"alarm-sounds", solasSliding, toTheCarDeck},
    {"alarm-lead", solasSliding, toTheCarDeck, {{7, 5.4, 9.6}, {12, 4.6, 10.4}}},
    {"alarm-holds", solasSliding, toTheCarDeck, {{0.5, 0.01}, {-2, -0.4}}},
    {"reopen-distance", solasSliding, noReopening, {{0.6, 0.99}, {1.5, 1.01}}},
    {"auto-latch", latchingDouble, noLatch},
    {"accessible", solasHinged, inACabin},
    {"control-heat", solasSliding, byHand},
    {"hose-port", solasHinged, weathertight},
    {"a-gap", newlyHungA, hungEarlier, {{8, 11.4}, {20, 13}}},
    {"a-sill", newlyHungA, hungEarlier},
    {"b-gap", newlyHungB, hungEarlier, {{10, 24.4}, {40, 26}}},
    {"b-vent", bDoor, aClass, {{0.02, 0.0497}, {0.2, 0.0505}}},
    {"b-cabin", cabinDoor, aClass},
    {"machinery-closes", engineRoom, powerWatertight},
    {"trunk-closes", trunkOfTheEngineRoom, noTrunk},
    {"trunk-closes", trunkElsewhere, noTrunk, {}, true},
    {"machinery-release", engineRoom, ofAnEscapeTrunk},
    {"machinery-controls", engineRoom, nothingHolds},
    {"exterior", facingOutside, inACabin},
    {"exterior-stair", facingOutside, inACabin},
    {"material", solasHinged, bClass},
    {"b-material", bDoor, outside},
    {"b-vent-low", bDoor, outside},
    {"central-panel", solasHinged, ofAnEscapeTrunk},
    {"safety-centre", solasHinged, inACabin},
    {"blackout", solasHinged, nothingHolds},
    // SOLAS II-2/9.6.2, 13.3.2.6.1, 13.3.2.6.2, 14.2, the same text.
    {"bridge-indicator", carDeck, inACabin},
    {"found-locked", lockedDoor, normallyClosed},
    {"escape-key", solasHinged, noWayOut},
    {"quick-release", solasHinged, noLatch},
    {"release-height", solasHinged, noLatch, {{940, 763, 1117}, {500, 757, 1123}}},
    {"release-force", solasHinged, noWayOut, {{40, 65}, {120, 69}}},
    {"condition", solasHinged, cClass},
    {"plan-has-door", solasHinged, cClass},
    // Common practice, no source: asked of every door but where the build has no such part.
    {"plate", solasHinged, nullptr},
    {"sill-sound", solasHinged, nullptr},
    {"path-clear", solasHinged, nullptr},
    {"pocket-clear", solasSliding, hinged},
    {"not-held", solasHinged, nullptr},
    {"seals-whole", solasHinged, nullptr},
    {"hinges-tight", solasHinged, sliding},
    {"closer-sound", solasHinged, sliding},
    {"rails-clean", solasSliding, hinged},
    {"leaf-whole", solasHinged, nullptr},
    {"smooth", solasHinged, nullptr},
    {"leaf-order", solasDouble, hinged},
    {"latches", latching, noLatch},
    {"edge-stops", solasSliding, noReopening},
};

} // namespace latchround::given
