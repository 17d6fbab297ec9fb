// Lengths of main vertical zones: SOLAS II-2/9.2.2.1.2 (40 m as a rule, 48 m at most).
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/integrity/zones.h"
#include "tests/core/given.h"

using namespace latchround;
using testing::ElementsAre;

namespace {

Arrangement threeZones() {
    Arrangement arrangement;
    arrangement.zones = {{"1", 0, 35}, {"2", 35, 70}, {"3", 70, 104}};
    arrangement.boundaries = {{"1/2", Place::ZoneBulkhead, "1", "2", 35, FireClass::A60},
                              {"2/3", Place::ZoneBulkhead, "2", "3", 70, FireClass::A60},
                              {"stair", Place::Stairway, "2", "2", 50, FireClass::A60}};
    for (const char* number : {"a", "b", "c"}) {
        Door door = given::hingedDoor();
        door.number = number;
        arrangement.doors.push_back(door);
    }
    arrangement.doors[0].boundary = "1/2";
    arrangement.doors[1].boundary = "2/3";
    arrangement.doors[2].boundary = "stair";
    return arrangement;
}

} // namespace

TEST(ActingZones, NoneWhileEveryBulkheadHolds) {
    EXPECT_TRUE(actingZones(threeZones(), [](const Door&) { return false; }).empty());
}

TEST(ActingZones, TwoZonesJoinedByOneDoorAreAsLongAsBoth) {
    const auto acting =
        actingZones(threeZones(), [](const Door& door) { return door.number == "b"; });
    ASSERT_EQ(acting.size(), 1u);
    EXPECT_THAT(acting[0].zones, ElementsAre("2", "3"));
    EXPECT_DOUBLE_EQ(acting[0].length_m, 69);
    EXPECT_THAT(acting[0].doors, ElementsAre("b"));
    EXPECT_GT(acting[0].length_m, zone_length_most_m);
}

TEST(ActingZones, ChainOfDoorsJoinsAChainOfZones) {
    const auto acting = actingZones(threeZones(), [](const Door&) { return true; });
    ASSERT_EQ(acting.size(), 1u);
    EXPECT_THAT(acting[0].zones, ElementsAre("1", "2", "3"));
    EXPECT_DOUBLE_EQ(acting[0].length_m, 104);
    EXPECT_THAT(acting[0].boundaries, ElementsAre("1/2", "2/3"));
}

TEST(IfItStaysOpen, CountsWhatIsOpenAlready) {
    const Arrangement arrangement = threeZones();
    const auto open = [](const Door& door) { return door.number == "b"; };
    EXPECT_THAT(ifItStaysOpen(arrangement, open, arrangement.doors[0]).zones,
                ElementsAre("1", "2", "3"));
    EXPECT_TRUE(ifItStaysOpen(arrangement, open, arrangement.doors[2]).zones.empty());
}
