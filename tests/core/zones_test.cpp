// Lengths of main vertical zones: SOLAS II-2/9.2.2.1.2 (40 m as a rule, 48 m at most), 46 CFR
// 72.05-10(b) (131 ft), 116.415(d)(1) (40 m, 44 m), Directive 2006/87/EC (40 m in cabin areas).
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/integrity/zone_integrity.h"
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
}

namespace {

ZoneLimits limitsOf(Regime regime, const char* keel, int passengers = 600) {
    Arrangement ship = threeZones();
    ship.particulars.regime = regime;
    ship.particulars.passengers = passengers;
    ship.particulars.keel_laid = calendarDateFrom(keel);
    return actingZones(ship, [](const Door&) { return true; }).at(0).limits;
}

} // namespace

TEST(ActingZones, AreHeldAgainstTheTextOfTheShip) {
    const ZoneLimits solas = limitsOf(Regime::SolasPassenger, "2002-07-01");
    EXPECT_EQ(solas, (ZoneLimits{40, 48, 1600, false, "SOLAS II-2/9.2.2.1.2"}));
    EXPECT_EQ(limitsOf(Regime::CanadaConvention, "2002-07-01"), solas);
    const ZoneLimits canada = limitsOf(Regime::Canada, "2017-02-03");
    EXPECT_EQ(canada.most_m, 48);
    EXPECT_EQ(canada.cite, "SOLAS II-2/9.2.2.1.2; SOR/2017-14, s. 102(1)");
    const ZoneLimits h = limitsOf(Regime::UsH, "1965-05-26");
    EXPECT_NEAR(*h.rule_m, 39.93, 0.005) << "131 ft";
    EXPECT_EQ(h.most_m, std::nullopt) << "no extension is printed";
    EXPECT_EQ(h.area_m2, std::nullopt) << "nor an area";
    EXPECT_EQ(h.cite, "46 CFR 72.05-10(b)");
    EXPECT_EQ(limitsOf(Regime::UsK, "1996-03-11"),
              (ZoneLimits{40, 44, {}, false, "46 CFR 116.415(d)(1)"}))
        << "neither SOLAS's 1600 m2 nor another";
    for (const char* keel : {"2008-12-30", "2018-10-06"})
        EXPECT_EQ(limitsOf(Regime::EuInland, keel),
                  (ZoneLimits{40, {}, {}, true, "Directive 2006/87/EC, annex II, art. 15.11(10)"}));
}

// 48 m and 1600 m2 came with MSC.27(61) on 1 October 1994.
TEST(ActingZones, OfAShipBefore2002AreHeldAgainstWhatWasReadOfItsDay) {
    for (const char* keel : {"1994-10-01", "2002-06-30"}) {
        const ZoneLimits limits = limitsOf(Regime::SolasPassenger, keel);
        EXPECT_EQ(limits.rule_m, std::nullopt) << "40 m are from memory";
        EXPECT_EQ(limits.most_m, 48);
        EXPECT_EQ(limits.area_m2, 1600);
        EXPECT_THAT(std::string(limits.cite), testing::HasSubstr("MSC.27(61)"));
    }
}

TEST(ActingZones, AreHeldAgainstNothingThatWasNotReadForTheShip) {
    const std::pair<Regime, const char*> ships[] = {{Regime::SolasPassenger, "1994-09-30"},
                                                    {Regime::SolasPassenger, ""},
                                                    {Regime::CanadaConvention, "2002-06-30"},
                                                    {Regime::Canada, "2017-02-02"},
                                                    {Regime::Canada, ""},
                                                    {Regime::CanadaDay, "2019-01-01"},
                                                    {Regime::LargeYacht, "2019-01-01"},
                                                    {Regime::Other, "2019-01-01"},
                                                    {Regime::UsH, "1965-05-25"},
                                                    {Regime::UsK, "1996-03-10"},
                                                    {Regime::EuInland, "2008-12-29"},
                                                    {Regime::EuInland, "2018-10-07"}};
    for (const auto& [regime, keel] : ships)
        EXPECT_EQ(limitsOf(regime, keel), ZoneLimits()) << word(regime) << " " << keel;
    EXPECT_EQ(limitsOf(Regime::UsK, "2012-01-01", 49), ZoneLimits()) << "outside its reach";
}

TEST(ActingZones, ChainOfDoorsJoinsAChainOfZones) {
    const auto acting = actingZones(threeZones(), [](const Door&) { return true; });
    ASSERT_EQ(acting.size(), 1u);
    EXPECT_THAT(acting[0].zones, ElementsAre("1", "2", "3"));
    EXPECT_DOUBLE_EQ(acting[0].length_m, 104);
    EXPECT_THAT(acting[0].boundaries, ElementsAre("1/2", "2/3"));
}

TEST(ActingZones, AreaIsTheSumWhereAllAreKnown) {
    Arrangement ship = threeZones();
    const auto all = [](const Door&) { return true; };
    ship.zones[0].area_m2 = 700;
    ship.zones[1].area_m2 = 800;
    EXPECT_EQ(actingZones(ship, all)[0].area_m2, std::nullopt);
    ship.zones[2].area_m2 = 300;
    EXPECT_EQ(actingZones(ship, all)[0].area_m2, 1800);
}

namespace {

ZoneIntegrity integrityWith(const Arrangement& ship, const std::string& failing,
                            const std::string& not_shown) {
    return zoneIntegrity(ship, [&](const Door& door) {
        if (failing.find(door.number) != std::string::npos)
            return Holding::Fails;
        return not_shown.find(door.number) != std::string::npos ? Holding::NotShown
                                                                : Holding::Holds;
    });
}

} // namespace

TEST(ZoneIntegrityOf, UntestedDoorsLeaveZonesNotShownToStandApart) {
    const ZoneIntegrity integrity = integrityWith(threeZones(), "a", "b");
    ASSERT_EQ(integrity.failing.size(), 1u);
    EXPECT_THAT(integrity.failing[0].zones, ElementsAre("1", "2"));
    ASSERT_EQ(integrity.not_shown.size(), 1u);
    EXPECT_THAT(integrity.not_shown[0].zones, ElementsAre("1", "2", "3"));
    EXPECT_TRUE(integrityWith(threeZones(), "", "").not_shown.empty());
    EXPECT_TRUE(integrityWith(threeZones(), "ab", "").not_shown.empty()) << "failing already";
}

TEST(ZoneIntegrityOf, BestRepairLeavesTheShortestZones) {
    Arrangement ship = threeZones();
    EXPECT_FALSE(integrityWith(ship, "", "ab").best_repair);
    // Zones of 35, 35 and 34 m: mending 1/2 leaves 69 m, mending 2/3 leaves 70 m.
    const auto both = integrityWith(ship, "ab", "").best_repair;
    ASSERT_TRUE(both);
    EXPECT_EQ(both->boundary, "1/2");
    EXPECT_THAT(both->doors, ElementsAre("a"));
    EXPECT_DOUBLE_EQ(both->longest_before_m, 104);
    EXPECT_DOUBLE_EQ(both->longest_after_m, 69);
    // A second failing door in 1/2: one door of 2/3 is quicker mended than two of 1/2.
    ship.doors.push_back(ship.doors[0]);
    ship.doors.back().number = "d";
    const auto quicker = integrityWith(ship, "abd", "").best_repair;
    ASSERT_TRUE(quicker);
    EXPECT_THAT(quicker->doors, ElementsAre("b"));
}

TEST(IfItStaysOpen, CountsWhatIsOpenAlready) {
    const Arrangement arrangement = threeZones();
    const auto open = [](const Door& door) { return door.number == "b"; };
    EXPECT_THAT(ifItStaysOpen(arrangement, open, arrangement.doors[0]).zones,
                ElementsAre("1", "2", "3"));
    EXPECT_TRUE(ifItStaysOpen(arrangement, open, arrangement.doors[2]).zones.empty());
}
