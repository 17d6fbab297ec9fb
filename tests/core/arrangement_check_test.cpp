// Every way in which an arrangement can fail to hang together is found, and all of them in one
// pass.
#include "core/vessel/arrangement_check.h"

#include <limits>
#include <string>
#include <vector>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/error/arrangement_errors.h"
#include "core/error/reading_errors.h"

namespace latchround {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

Arrangement soundVessel() {
    Arrangement vessel;
    vessel.particulars.name = "Tern of Skerry";
    vessel.particulars.passengers = 1200;
    vessel.decks = {{"5", "Car deck", 14.2}, {"6", "", 17}};
    vessel.zones = {{"3", 60, 100}, {"4", 100, 140}};
    vessel.boundaries = {{"3/4", Place::ZoneBulkhead, "3", "4", 100, FireClass::A60},
                         {"stair 2", Place::Stairway, "3", "3", 71, {}}};
    Door door;
    door.number = "5-32";
    door.deck = "5";
    door.x_m = 100;
    door.y_m = -2;
    door.boundary = "3/4";
    door.opening_m = 1.4;
    vessel.doors = {door, door};
    vessel.doors[1].number = "6-04";
    vessel.doors[1].boundary = "stair 2";
    return vessel;
}

/// Faults as "table row field", after `spoil` has had its way with a sound vessel.
template <class Spoil>
std::vector<std::string> faultsAfter(Spoil spoil) {
    Arrangement vessel = soundVessel();
    spoil(vessel);
    std::vector<std::string> found;
    constexpr const char* tables[] = {"vessel", "deck", "zone", "boundary", "door"};
    for (const ArrangementFault& fault : faultsOf(vessel)) {
        EXPECT_FALSE(fault.what.code.empty()) << fault.what.text;
        found.push_back(std::string(tables[static_cast<int>(fault.table)]) + " " +
                        std::to_string(fault.row) + " " + fault.field);
    }
    return found;
}

TEST(ArrangementCheck, SoundVesselHasNoFaults) {
    EXPECT_THAT(faultsAfter([](Arrangement&) {}), IsEmpty());
}

TEST(ArrangementCheck, VesselNeedsANameAndCannotCarryFewerThanNone) {
    EXPECT_THAT(faultsAfter([](Arrangement& v) { v.particulars.name = " "; }),
                ElementsAre("vessel 0 name"));
    EXPECT_THAT(faultsAfter([](Arrangement& v) { v.particulars.passengers = -1; }),
                ElementsAre("vessel 0 passengers"));
    EXPECT_THAT(faultsAfter([](Arrangement& v) { v.particulars.passengers = 0; }), IsEmpty());
    EXPECT_THAT(faultsAfter([](Arrangement& v) { v.particulars.length_m = -1; }),
                ElementsAre("vessel 0 length_m"));
}

TEST(ArrangementCheck, NumbersAreThereAndUniqueInEveryTable) {
    EXPECT_THAT(faultsAfter([](Arrangement& v) {
                    v.decks.push_back({"5", "", 0});
                }),
                ElementsAre("deck 2 number"));
    EXPECT_THAT(faultsAfter([](Arrangement& v) {
                    v.decks.push_back({"", "", 0});
                }),
                ElementsAre("deck 2 number"));
    EXPECT_THAT(faultsAfter([](Arrangement& v) {
                    v.decks.push_back({" 7", "", 0});
                }),
                ElementsAre("deck 2 number"));
    EXPECT_THAT(faultsAfter([](Arrangement& v) {
                    v.zones.push_back({"3", 150, 160});
                }),
                ElementsAre("zone 2 number"));
    EXPECT_THAT(faultsAfter([](Arrangement& v) { v.boundaries.push_back(v.boundaries[0]); }),
                ElementsAre("boundary 2 id"));
    EXPECT_THAT(faultsAfter([](Arrangement& v) { v.doors[1].number = "5-32"; }),
                ElementsAre("door 1 number"));
    EXPECT_THAT(faultsAfter([](Arrangement& v) { v.doors[1].number = ""; }),
                ElementsAre("door 1 number"));
}

TEST(ArrangementCheck, ZoneRunsForwardFromItsAfterLimit) {
    EXPECT_THAT(faultsAfter([](Arrangement& v) {
                    v.zones.push_back({"5", 150, 150});
                }),
                ElementsAre("zone 2 forward_m"));
    EXPECT_THAT(faultsAfter([](Arrangement& v) {
                    v.zones.push_back({"5", 150, 140});
                }),
                ElementsAre("zone 2 forward_m"));
}

TEST(ArrangementCheck, ZonesMayTouchOrLeaveAGapButNotOverlap) {
    EXPECT_THAT(faultsAfter([](Arrangement& v) { v.zones.push_back({"5", 150, 180}); }), IsEmpty());
    EXPECT_THAT(faultsAfter([](Arrangement& v) {
                    v.zones.push_back({"5", 139.5, 180});
                }),
                ElementsAre("zone 2 aft_m"));
    EXPECT_THAT(faultsAfter([](Arrangement& v) {
                    v.zones.push_back({"5", 70, 80});
                }),
                ElementsAre("zone 2 aft_m"))
        << "one inside another";
    EXPECT_THAT(faultsAfter([](Arrangement& v) {
                    v.zones = {{"4", 100, 140}, {"3", 60, 100.5}};
                }),
                ElementsAre("zone 0 aft_m"))
        << "whatever the order of the rows";
    EXPECT_THAT(faultsAfter([](Arrangement& v) {
                    v.zones = {{"3", 60, 130}, {"4", 100, 110}, {"5", 120, 140}};
                }),
                ElementsAre("zone 1 aft_m", "zone 2 aft_m"))
        << "measured against the zone that reaches furthest";
}

TEST(ArrangementCheck, ReferencesAreThereWithNearNamesSuggested) {
    EXPECT_THAT(faultsAfter([](Arrangement& v) { v.doors[0].deck = "7"; }),
                ElementsAre("door 0 deck"));
    EXPECT_THAT(faultsAfter([](Arrangement& v) { v.doors[0].boundary = ""; }),
                ElementsAre("door 0 boundary"));
    EXPECT_THAT(faultsAfter([](Arrangement& v) { v.boundaries[1].zone_aft = "9"; }),
                ElementsAre("boundary 1 zone_aft"));
    EXPECT_THAT(faultsAfter([](Arrangement& v) { v.boundaries[1].zone_forward = "9"; }),
                ElementsAre("boundary 1 zone_forward"));
    Arrangement vessel = soundVessel();
    vessel.doors[1].boundary = "Stair2";
    ASSERT_EQ(faultsOf(vessel).size(), 1u);
    EXPECT_EQ(faultsOf(vessel).front().what,
              errors::unknown_boundary("Stair2", errors::did_you_mean_one("stair 2")));
    vessel.doors[1].boundary = "funnel";
    EXPECT_EQ(faultsOf(vessel).front().what,
              errors::unknown_boundary("funnel", errors::correct_or_add_boundary()));
}

TEST(ArrangementCheck, ZoneBulkheadStandsBetweenTwoZonesInTheirOrder) {
    EXPECT_THAT(faultsAfter([](Arrangement& v) { v.boundaries[0].zone_forward = "3"; }),
                ElementsAre("boundary 0 zone_forward"));
    EXPECT_THAT(faultsAfter([](Arrangement& v) {
                    v.boundaries[0].zone_aft = "4";
                    v.boundaries[0].zone_forward = "3";
                }),
                ElementsAre("boundary 0 zone_forward"));
}

TEST(ArrangementCheck, BoundaryStandsWithinThreeMetresOfItsZones) {
    EXPECT_THAT(faultsAfter([](Arrangement& v) { v.boundaries[1].x_m = 57; }), IsEmpty());
    EXPECT_THAT(faultsAfter([](Arrangement& v) { v.boundaries[1].x_m = 56.9; }),
                ElementsAre("boundary 1 x_m"));
    EXPECT_THAT(faultsAfter([](Arrangement& v) { v.boundaries[1].x_m = 103; }), IsEmpty());
    EXPECT_THAT(faultsAfter([](Arrangement& v) { v.boundaries[1].x_m = 103.1; }),
                ElementsAre("boundary 1 x_m"));
}

TEST(ArrangementCheck, DimensionsOfADoorArePossible) {
    const auto opening = [](double metres) {
        return faultsAfter([=](Arrangement& v) { v.doors[0].opening_m = metres; });
    };
    EXPECT_THAT(opening(0), ElementsAre("door 0 opening_m"));
    EXPECT_THAT(opening(-1), ElementsAre("door 0 opening_m"));
    EXPECT_THAT(opening(10), IsEmpty());
    EXPECT_THAT(opening(10.01), ElementsAre("door 0 opening_m"));
    const auto mass = [](double kilograms) {
        return faultsAfter([=](Arrangement& v) { v.doors[0].leaf_mass_kg = kilograms; });
    };
    EXPECT_THAT(mass(0), ElementsAre("door 0 leaf_mass_kg"));
    EXPECT_THAT(mass(5000), IsEmpty());
    EXPECT_THAT(mass(5001), ElementsAre("door 0 leaf_mass_kg"));
}

TEST(ArrangementCheck, PlaceOfADoorIsAboard) {
    const auto place = [](double x, double y) {
        return faultsAfter([=](Arrangement& v) {
            v.doors[0].x_m = x;
            v.doors[0].y_m = y;
        });
    };
    EXPECT_THAT(place(-20, -40), IsEmpty());
    EXPECT_THAT(place(400, 40), IsEmpty());
    EXPECT_THAT(place(-20.1, 40.1), ElementsAre("door 0 x_m", "door 0 y_m"));
    EXPECT_THAT(place(400.1, -40.1), ElementsAre("door 0 x_m", "door 0 y_m"));
}

TEST(ArrangementCheck, NotANumberIsAFaultOnceAndNothingFollows) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    EXPECT_THAT(faultsAfter([=](Arrangement& v) { v.zones[0].aft_m = nan; }),
                ElementsAre("zone 0 aft_m"));
    EXPECT_THAT(faultsAfter([=](Arrangement& v) { v.doors[0].opening_m = nan; }),
                ElementsAre("door 0 opening_m"));
    EXPECT_THAT(faultsAfter([=](Arrangement& v) { v.boundaries[0].x_m = nan; }),
                ElementsAre("boundary 0 x_m"));
}

TEST(ArrangementCheck, DoorsAreNotOlderThan1900) {
    const auto installed = [](const char* day) {
        return faultsAfter([=](Arrangement& v) { v.doors[0].installed = calendarDateFrom(day); });
    };
    EXPECT_THAT(installed("1900-01-01"), IsEmpty());
    EXPECT_THAT(installed("1899-12-31"), ElementsAre("door 0 installed"));
}

TEST(ArrangementCheck, ReleaseGroupNamesHaveNoBlanks) {
    EXPECT_THAT(faultsAfter([](Arrangement& v) {
                    v.doors[0].release_groups = {"MVZ3", "A B"};
                }),
                ElementsAre("door 0 release_groups"));
}

TEST(ArrangementCheck, UnusualIsNotAFault) {
    EXPECT_THAT(faultsAfter([](Arrangement& v) {
                    v.doors[0].kind = DoorKind::Sliding;
                    v.doors[0].alarm = true; // and no release group
                    v.doors[0].hold_back = true;
                    v.doors[0].watertight = true;
                }),
                IsEmpty());
}

TEST(ArrangementCheck, AllFaultsComeInOnePassByTableAndRow) {
    EXPECT_THAT(faultsAfter([](Arrangement& v) {
                    v.doors[1].opening_m = 0;
                    v.doors[0].deck = "9";
                    v.boundaries[0].zone_forward = "3";
                    v.zones[1].aft_m = 90;
                    v.decks[1].number = "5";
                    v.particulars.name = "";
                }),
                ElementsAre("vessel 0 name", "deck 1 number", "zone 1 aft_m",
                            "boundary 0 zone_forward", "door 0 deck", "door 1 opening_m"));
}

} // namespace
} // namespace latchround
