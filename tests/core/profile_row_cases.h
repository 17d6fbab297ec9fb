// The rows of the texts of other flags and of older ships: Canada, EU inland waterways, large
// yachts, SOLAS before 1 July 2002. Each with a door that it is asked of and one that it is not.
#pragma once

#include "tests/core/us_row_cases.h"

namespace latchround::given {

inline constexpr Regime convention = Regime::CanadaConvention;
inline constexpr Regime canada = Regime::Canada;
inline constexpr Regime day_boat = Regime::CanadaDay;
inline constexpr Regime inland = Regime::EuInland;
inline constexpr Regime yacht = Regime::LargeYacht;
inline constexpr Place machinery = Place::Machinery;

/// On a ship of the text's own dates.
template <Regime R, Place P = zone, FireClass C = FireClass::A60>
inline void on(Site& s) {
    s = site(R, DoorKind::SingleLeaf);
    s.keel = R == canada || R == day_boat ? "2018-04-01" : "2012-05-01";
    s.boundary.place = P;
    s.door.fire_class = C;
}
template <Regime R>
inline void slidingOn(Site& s) {
    s = site(R, DoorKind::Sliding);
}
template <Regime R>
inline void portOn(Site& s) {
    on<R>(s);
    s.door.escape_route = false; // nobody asks for a port there, but one is fitted
}
template <Regime R>
inline void beforeTheRegulations(Site& s) {
    on<R>(s);
    s.keel = "2017-02-02";
}
inline void before2002(Site& s) {
    solasHinged(s);
    s.keel = "2002-06-30";
}
inline void from2002(Site& s) {
    s.keel = "2002-07-01";
}
inline void corridorOfADayBoat(Site& s) {
    on<day_boat, Place::Other, FireClass::B15>(s);
}

inline const RowCase profile_cases[] = {
    // A national transposition of the 1981/83 wording, art. 27(4).
    {"old-speed", before2002, from2002, {}, left_open},
    // SOR/2017-14, ss. 120, 212, 218, consolidated to 25 July 2025.
    {"ca-plate", on<convention>, cClass},
    {"ca-plate", on<canada, zone, FireClass::B15>, cClass},
    {"ca-plate", on<day_boat>, cClass},
    {"ca-plate", beforeTheRegulations<canada>, cClass, {}, left_open},
    {"ca-gap", on<convention>, bClass},
    {"ca-gap", on<canada>, otherShip},
    {"ca-gap", on<day_boat>, bClass, {}, left_open},
    {"ca-louvre", on<convention>, bClass},
    {"ca-louvre", on<canada>, bClass},
    {"ca-louvre", on<day_boat>, bClass},
    {"ca-louvre", beforeTheRegulations<day_boat>, bClass, {}, left_open},
    {"ca-gastight", on<day_boat>, bClass},
    {"ca-machinery-gastight", on<day_boat, machinery>, inACabin},
    {"ca-overlap", on<day_boat>, bClass},
    {"ca-stair-vent", on<day_boat, stair>, inACabin},
    {"hose-port", portOn<convention>, noHosePort},
    {"hose-port", portOn<canada>, noHosePort},
    {"hose-port", portOn<day_boat>, noHosePort},
    {"machinery-closes", on<day_boat, machinery>, inACabin},
    {"b-vent", corridorOfADayBoat, aClass, {{0.02, 0.0497}, {0.2, 0.0505}}},
    {"b-vent-low", corridorOfADayBoat, aClass},
    // Hull Construction Regulations, s. 158, which older ships may keep.
    {"self-closing", beforeTheRegulations<day_boat>, inACabin, {}, left_open},
    {"self-closing", beforeTheRegulations<canada>, inACabin, {}, left_open},
    {"no-hook", beforeTheRegulations<day_boat>, inACabin, {}, left_open},
    {"fail-safe", beforeTheRegulations<day_boat>, inACabin, {}, left_open},
    {"local-release", beforeTheRegulations<day_boat>, inACabin, {}, left_open},
    {"remote-release", beforeTheRegulations<day_boat>, inACabin, {}, left_open},
    // Directive 2006/87/EC, annex II, art. 15.11(8).
    {"rating", on<inland>, outside},
    {"self-closing", on<inland, machinery>, inACabin},
    {"local-release", on<inland>, inACabin},
    {"remote-release", on<inland>, inACabin},
    {"reopen-local", on<inland, stair>, inACabin},
    // LY3 14B.2.7.4, read to (e); "should".
    {"self-closing", on<yacht>, inACabin, {}, left_open},
    {"hinged-time", on<yacht>, sliding, {{20, 10.2, 39.8}, {50, 9.3, 44.2}}, left_open},
    {"sliding-rate",
     slidingOn<yacht>,
     hinged,
     {{0.15, 0.103, 0.194}, {0.3, 0.088, 0.218}},
     left_open},
    {"local-release", on<yacht>, inACabin, {}, left_open},
};

/// Of every catalogue.
inline std::vector<RowCase> allCases() {
    std::vector<RowCase> all(std::begin(cases), std::end(cases));
    all.insert(all.end(), std::begin(us_cases), std::end(us_cases));
    all.insert(all.end(), std::begin(profile_cases), std::end(profile_cases));
    return all;
}

} // namespace latchround::given
