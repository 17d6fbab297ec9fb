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
};

using Change = void (*)(Site&);

/// Figures of a row with limits; a yes/no row has none.
struct Figures {
    std::vector<double> good; ///< well inside, then just inside each limit
    std::vector<double> bad;  ///< well outside, then just outside each limit
};

struct RowCase {
    const char* id;
    Change asked;     ///< makes a door that the row is asked of
    Change not_asked; ///< then takes away what made it so
    Figures figures{};
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
inline void usHDouble(Site& s) {
    s = site(Regime::UsH, DoorKind::DoubleLeaf);
}
inline void usKDouble(Site& s) {
    s = site(Regime::UsK, DoorKind::DoubleLeaf);
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
    s.door.fire_class = FireClass::B15;
}
inline void usKB(Site& s) {
    usK(s);
    s.door.fire_class = FireClass::B15;
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
    s.door.fire_class = FireClass::B15;
}
inline void aClass(Site& s) {
    s.door.fire_class = FireClass::A30;
}
inline void cClass(Site& s) {
    s.door.fire_class = FireClass::C;
}
inline void sliding(Site& s) {
    s.door.kind = DoorKind::Sliding;
}
inline void hinged(Site& s) {
    s.door.kind = DoorKind::SingleLeaf;
}
inline void doubleLeaf(Site& s) {
    s.door.kind = DoorKind::DoubleLeaf;
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
inline void bDoor(Site& s) {
    solasHinged(s);
    s.door.fire_class = FireClass::B15;
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
    {"hinged-time", solasHinged, sliding, {{20, 10.2, 39.8}, {50, 9.8, 40.2}}},
    {"sliding-rate", solasSliding, hinged, {{0.15, 0.103, 0.194}, {0.3, 0.097, 0.206}}},
    {"remote-release", solasSliding, ofAnEscapeTrunk},
    {"local-release", solasSliding, ofAnEscapeTrunk},
    {"switch-on-off", solasSliding, toTheCarDeck},
    {"no-hook", solasHinged, inACabin},
    {"reopen-local", solasHinged, powerWatertight},
    {"indicator", solasHinged, locked},
    {"fail-safe", solasHinged, locked},
    {"accumulator", solasSliding, byHand},
    {"independence", solasHinged, locked},
    {"alarm-lead", solasSliding, toTheCarDeck, {{7, 5.4, 9.6}, {12, 4.6, 10.4}}},
    {"alarm-holds", solasSliding, toTheCarDeck, {{0.5, 0.01}, {-2, -0.4}}},
    {"reopen-distance", solasSliding, noReopening, {{0.6, 0.99}, {1.5, 1.01}}},
    {"auto-latch", latchingDouble, noLatch},
    {"accessible", solasHinged, inACabin},
    {"control-heat", solasSliding, byHand},
    {"hose-port", solasHinged, weathertight},
    {"a-gap", newlyHungA, hungEarlier, {{8, 11.4}, {20, 12.6}}},
    {"a-sill", newlyHungA, hungEarlier},
    {"b-gap", newlyHungB, hungEarlier, {{10, 24.4}, {40, 25.6}}},
    {"b-vent", bDoor, aClass, {{0.02, 0.0497}, {0.2, 0.0503}}},
    {"b-cabin", cabinDoor, aClass},
    {"machinery", engineRoom, ofAnEscapeTrunk},
    // 46 CFR 72.05-25, 116.435, 111.99-5, annual edition of 2015.
    {"h-rating", usH, watertight},
    {"k-rating", usK, outside},
    {"h-self-closing", usH, locked},
    {"k-self-closing", usK, inACabin},
    {"h-number", usH, locked},
    {"h-release", usH, normallyClosed},
    {"k-release", usK, normallyClosed},
    {"h-leaves", usHDouble, hinged},
    {"k-order", usKDouble, hinged},
    {"latch-throw", usH, noLatch, {{25, 19.6}, {5, 18.4}}},
    {"latch-throw", usHB, noLatch, {{12, 10.1}, {5, 8.9}}},
    {"latch-throw", usK, noLatch, {{25, 20.6}, {5, 19.4}}},
    {"latch-throw", usKB, noLatch, {{12, 10.1}, {5, 8.9}}},
    {"undercut", usH, cClass, {{5, 12.1}, {30, 13.3}}},
    {"undercut", usHB, watertight, {{5, 24.4}, {30, 25.6}}},
    {"undercut", usK, otherShip, {{5, 12.1}, {30, 13.3}}},
    {"undercut", usKB, otherShip, {{5, 24.4}, {30, 25.6}}},
    {"meeting-gap", usHDouble, hinged, {{1, 2.6}, {8, 3.8}}},
    {"meeting-gap", usKDouble, hinged, {{1, 2.6}, {8, 3.8}}},
    {"frame-stop", usH, doubleLeaf, {{20, 13.3}, {5, 12.1}}},
    {"frame-stop", usK, doubleLeaf, {{20, 13.3}, {5, 12.1}}},
    {"no-louver", usH, bClass},
    {"no-louver", usK, bClass},
    {"leaf-width", usK, otherShip, {{900, 1199.4}, {1500, 1200.6}}},
    {"us-hose-port", usHPort, noHosePort},
    {"k-horizontal", inADeck, upright, {{7, 5.4, 9.6}, {20, 4.6, 10.4}}},
    {"k-horizontal-unlatch", inADeck, upright, {{10, 17.2}, {30, 18.4}}},
    {"k-horizontal-start", inADeck, upright, {{20, 43.9}, {80, 45.1}}},
    {"k-horizontal-open", inADeck, upright, {{10, 17.2}, {30, 18.4}}},
    {"glass", usH, bClass, {{0.01, 0.0647}, {0.2, 0.0653}}},
    {"glass", usK, bClass, {{0.01, 0.0647}, {0.2, 0.0653}}},
    {"release-system", usH, notRemote},
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
