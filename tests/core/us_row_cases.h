// The cases of row_cases.h for vessels of the United States, typed here anew from 46 CFR 72.05-25
// (H), 116.435 and 116.500 (K), 116.438(a), 111.99-5, annual edition of 2015.
#pragma once

#include <iterator>

#include "tests/core/row_cases.h"

namespace latchround::given {

inline constexpr Regime H = Regime::UsH;
inline constexpr Regime K = Regime::UsK;
inline constexpr Place zone = Place::ZoneBulkhead;
inline constexpr Place stair = Place::Stairway;
inline constexpr Place outdoors = Place::Exterior;

/// A door of the class of its boundary, as the approved plan has it.
template <Regime R, FireClass C, Place P = Place::Other, DoorKind Leaves = DoorKind::SingleLeaf>
void us(Site& s) {
    s = site(R, Leaves);
    s.boundary.place = P;
    s.boundary.required = s.door.fire_class = C;
}
template <Regime R, Place P = Place::Other, DoorKind Leaves = DoorKind::SingleLeaf>
void usA(Site& s) {
    us<R, FireClass::A60, P, Leaves>(s);
}
template <Regime R, DoorKind Leaves = DoorKind::SingleLeaf>
void usB(Site& s) {
    us<R, FireClass::B15, Place::Other, Leaves>(s);
}
template <Regime R>
void usC(Site& s) {
    us<R, FireClass::C>(s);
}
template <Regime R>
void closedStair(Site& s) {
    usA<R, stair>(s);
    s.door.normally = NormalPosition::Closed;
    s.door.hold_back = false;
}
inline void deckDoor(Site& s) {
    usA<K, stair>(s);
    s.boundary.division = Division::Deck;
}

inline void inB(Site& s) {
    s.boundary.required = s.door.fire_class = FireClass::B15;
}
inline void inA(Site& s) {
    s.boundary.required = s.door.fire_class = FireClass::A60;
}
inline void inC(Site& s) {
    s.boundary.required = s.door.fire_class = FireClass::C;
}
inline void doubleSwing(Site& s) {
    s.door.kind = DoorKind::DoubleSwing;
}
inline void ofAMachinerySpace(Site& s) {
    s.boundary.place = Place::Machinery;
}
inline void notInAnEscapeRoute(Site& s) {
    s.door.escape_route = false;
}

inline constexpr DoorKind two_leaves = DoorKind::DoubleLeaf;
inline constexpr DoorKind both_ways = DoorKind::DoubleSwing;
inline constexpr bool left_open = true;

inline const RowCase us_cases[] = {
    {"h-rating", usA<H>, inB},
    {"k-rating", usA<K>, inB},
    {"h-construction", usA<H>, inB},
    {"k-construction", usA<K>, inB},
    {"h-b-construction", usB<H>, inA},
    {"k-b-construction", usB<K>, inA},
    {"h-c-material", usC<H>, inB},
    {"k-c-material", usC<K>, inB},
    {"h-hardwood", usA<H, outdoors>, inACabin},
    {"k-hardwood", usA<K, outdoors>, inACabin},
    {"h-exterior-stair", usA<H, outdoors>, inACabin},
    {"k-exterior-stair", usA<K, outdoors>, inACabin},
    {"h-one-person", usC<H>, watertight},
    {"k-one-person", usC<K>, watertight},
    {"h-escape-way", usA<H, stair>, ofAMachinerySpace},
    {"k-escape-way", usA<K, stair>, inACabin},
    {"k-way-out", usA<K, Place::Cabin>, notInAnEscapeRoute},
    {"k-way-out-direction", usA<K>, inACabin},
    {"k-crew-only", usA<K>, notInAnEscapeRoute},
    {"k-way-out-width", usA<K>, notInAnEscapeRoute, {{900, 810}, {600, 808}}},
    {"k-way-out-crew", usA<K>, notInAnEscapeRoute, {{900, 710}, {600, 708}}},
    {"h-locks", usB<H>, watertight},
    {"h-self-closing", usA<H, stair>, inACabin},
    {"k-self-closing", usA<K, zone>, inACabin},
    {"h-number", usA<H, zone>, inACabin},
    {"k-stair-number", usA<K, stair>, inACabin, {}, left_open},
    {"h-release", usA<H, zone>, normallyClosed},
    {"k-release", usA<K, zone>, inACabin},
    {"h-no-hook", usA<H, zone>, inACabin},
    {"h-no-hook", closedStair<H>, inB, {}, left_open},
    {"k-no-hook", closedStair<K>, inB},
    {"h-leaves", usA<H, zone, two_leaves>, hinged},
    {"k-stair-leaves", usA<K, stair, two_leaves>, hinged, {}, left_open},
    {"h-swing-auto-latch", usA<H, stair, both_ways>, hinged},
    {"h-stair-width", usA<H, stair>, inACabin, {{900, 711.2}, {500, 710}}},
    {"k-stair-width", usA<K, stair>, inACabin, {{900, 711.2}, {500, 710}}, left_open},
    {"h-stair-served", usA<H, stair>, inACabin},
    {"k-stair-served", usA<K, stair>, inACabin, {}, left_open},
    {"k-order", us<K, FireClass::C, Place::Other, two_leaves>, hinged},
    {"h-any-order", usA<H, Place::Other, two_leaves>, inC},
    {"h-second-stop", usA<H, zone, two_leaves>, hinged, {{20, 12.7}, {5, 11.6}}},
    {"h-second-stop", usB<H, two_leaves>, inC, {{20, 12.7}, {5, 11.6}}},
    {"h-has-latch", usA<H>, inC},
    {"h-has-latch", usB<H>, watertight},
    {"k-has-latch", usA<K>, inC},
    {"k-has-latch", usA<K, outdoors>, inC, {}, left_open},
    {"k-has-latch", usB<K>, watertight},
    {"h-latch-both", usA<H>, inC},
    {"h-latch-both", usB<H>, inC},
    {"h-latch-throw", usA<H>, inC, {{25, 19.05}, {5, 18.0}}},
    {"h-latch-throw", usB<H>, inC, {{12, 9.525}, {5, 8.5}}},
    {"k-latch-throw", usA<K>, inC, {{25, 20}, {5, 18.0}}},
    {"k-latch-throw", usA<K, outdoors>, inC, {{25, 20}, {5, 18.0}}, left_open},
    {"k-latch-throw", usB<K>, inC, {{12, 9.5}, {5, 8.5}}},
    {"h-undercut", usA<H>, inC, {{5, 12.7}, {30, 13.8}}},
    {"h-undercut", usB<H>, watertight, {{5, 25.4}, {30, 26.5}}},
    {"k-undercut", usA<K>, inC, {{5, 12.7}, {30, 13.8}}},
    {"k-undercut", usB<K>, watertight, {{5, 25}, {30, 26.5}}},
    {"h-no-carpet", usA<H>, inC},
    {"h-no-carpet", usB<H>, inC},
    {"k-no-carpet", usA<K>, inC},
    {"k-no-carpet", usB<K>, inC},
    {"h-meeting-gap", usA<H, zone, two_leaves>, hinged, {{1, 3.175}, {8, 3.8}}},
    {"h-meeting-gap", usB<H, both_ways>, inC, {{1, 3.175}, {8, 3.8}}},
    {"k-meeting-gap", us<K, FireClass::C, Place::Other, two_leaves>, hinged, {{1, 3.2}, {8, 3.8}}},
    {"h-frame-stop", usA<H, zone, two_leaves>, doubleSwing, {{20, 12.7}, {5, 11.6}}},
    {"h-frame-stop", usB<H>, inC, {{20, 12.7}, {5, 11.6}}},
    {"k-frame-stop", usC<K>, doubleSwing, {{20, 12.7}, {5, 11.6}}},
    {"h-frame-rigid", usA<H>, inC},
    {"h-frame-rigid", usB<H>, inC},
    {"k-frame-rigid", usC<K>, watertight},
    {"h-no-louver", usA<H>, inB},
    {"k-no-louver", usA<K>, inB},
    {"h-b-louver", usB<H>, inA, {{0, 0.186}, {0.3, 0.1866}}},
    {"h-b-louver-low", usB<H>, otherShip},
    {"h-swing-where", usB<H, both_ways>, hinged},
    {"k-swing-where", usA<K, Place::Other, both_ways>, inB},
    {"leaf-width", usC<K>, watertight, {{900, 1200}, {1500, 1225}}},
    {"h-hose-port", usHPort, noHosePort},
    {"k-hose-port", usC<K>, noHosePort},
    {"k-upright", deckDoor, upright, {}, left_open},
    {"k-horizontal-where", deckDoor, upright},
    {"k-horizontal", deckDoor, upright, {{7, 5.4, 9.6}, {20, 4.6, 10.4}}},
    {"k-horizontal-list", deckDoor, upright},
    {"k-horizontal-no-hook", deckDoor, inB},
    {"k-horizontal-release", deckDoor, inB},
    {"k-horizontal-unlatch", deckDoor, upright, {{10, 17.8}, {30, 23.3}}},
    {"k-horizontal-start", deckDoor, upright, {{20, 44.5}, {80, 45.6}}},
    {"k-horizontal-open", deckDoor, upright, {{10, 17.8}, {30, 23.3}}},
    {"k-horizontal-pressure", deckDoor, upright},
    {"no-glass", usC<H>, watertight},
    {"no-glass", usC<K>, watertight},
    {"h-glass", usA<H>, inB, {{0.01, 0.0645}, {0.2, 0.0651}}},
    {"h-glass", usA<H>, outside, {{0}, {0.2}}},
    {"k-glass", usA<K>, outside, {{0.01, 0.065}, {0.2, 0.0656}}},
    {"h-wired-glass", usA<H>, outside},
    {"h-wired-glass", usB<H>, inC},
    {"k-wired-glass", usA<K>, inB},
    {"k-wired-glass", usA<K, outdoors>, inB},
    {"h-weather-glass", usA<H, outdoors>, inACabin},
    {"h-glass-thick", usC<H>, watertight, {{10, 6.35}, {3, 6.2}}},
    {"h-glass-held", usC<H>, watertight},
    {"h-wire", usB<H>, inC, {{0, 50.8}, {80, 52}}},
    {"k-windows", usC<K>, watertight, {}, left_open},
    {"k-window-shutters", usC<K>, watertight, {}, left_open},
    {"h-veneer", usC<H>, watertight},
    {"k-veneer", usC<K>, watertight},
    {"h-decorative", usC<H>, watertight},
    {"k-decorative", usC<K>, watertight},
    {"release-system", usH, notRemote},
    {"release-system", usK, notRemote},
};

} // namespace latchround::given
