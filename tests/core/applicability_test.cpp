#include <gtest/gtest.h>

#include "core/grading/grade.h"
#include "core/requirement/applicability.h"
#include "core/requirement/applicability_phrases.h"
#include "tests/core/given.h"

using namespace latchround;

namespace {

Asked asked(const char* id, const Door& door, Place place = Place::ZoneBulkhead,
            const Particulars& vessel = given::solasVessel()) {
    return howAsked(given::row(id), vessel, door, place);
}

} // namespace

// SOLAS II-2/9.4.1.1.5; 20.2.2.3 for the boundaries of horizontal zones.
TEST(ListedDoor, StandsInZoneBulkheadGalleyStairwayOrAtASpecialCategorySpace) {
    Door door = given::hingedDoor();
    EXPECT_TRUE(isListed(door, Place::ZoneBulkhead));
    EXPECT_TRUE(isListed(door, Place::Galley));
    EXPECT_TRUE(isListed(door, Place::Stairway));
    EXPECT_TRUE(isListed(door, Place::SpecialCategory));
    for (const Place place : {Place::Machinery, Place::Cabin, Place::Exterior, Place::Other})
        EXPECT_FALSE(isListed(door, place));
    door.special_category = true;
    for (const Place place : {Place::Machinery, Place::Cabin, Place::Exterior, Place::Other})
        EXPECT_TRUE(isListed(door, place)) << "it gives access to such a space";
    door.special_category = Said();
    for (const Place place : {Place::Machinery, Place::Cabin, Place::Exterior, Place::Other}) {
        EXPECT_FALSE(isListed(door, place).isKnown());
        EXPECT_EQ(asked("self-closing", door, place), Asked::Judge) << "nor is it shown to be";
    }
}

TEST(ListedDoor, IsNotLockedAndNotPowerOperatedWatertight) {
    Door door = given::slidingDoor();
    door.watertight = true;
    EXPECT_FALSE(isListed(door, Place::ZoneBulkhead));
    door.power_operated = false;
    EXPECT_TRUE(isListed(door, Place::ZoneBulkhead));
    door.normally = NormalPosition::Locked;
    EXPECT_FALSE(isListed(door, Place::ZoneBulkhead));
}

TEST(Applicability, TimeIsForHingedAndRateForSlidingDoors) {
    EXPECT_EQ(asked("hinged-time", given::hingedDoor()), Asked::Yes);
    EXPECT_EQ(asked("hinged-time", given::slidingDoor()), Asked::No);
    EXPECT_EQ(asked("sliding-rate", given::slidingDoor()), Asked::Yes);
    EXPECT_EQ(asked("sliding-rate", given::hingedDoor()), Asked::No);
}

// A sliding door that is listed has to be released remotely: without a word on it, it is asked.
TEST(Applicability, AlarmIsForSlidingAndForPowerOperatedDoors) {
    Door sliding = given::slidingDoor();
    sliding.power_operated = false;
    EXPECT_EQ(asked("alarm-lead", sliding), Asked::Yes);
    sliding.release_groups.clear();
    EXPECT_EQ(asked("alarm-lead", sliding), Asked::Yes);
    sliding.escape_trunk = true;
    EXPECT_EQ(asked("alarm-lead", sliding), Asked::No);
    Door hinged = given::hingedDoor();
    EXPECT_EQ(asked("alarm-lead", hinged), Asked::No);
    hinged.power_operated = true;
    EXPECT_EQ(asked("alarm-lead", hinged), Asked::Yes);
}

TEST(Applicability, InstalledDateDecidesTheGapRows) {
    Door door = given::hingedDoor();
    door.sill_in_frame = false;
    door.installed = calendarDateFrom("2010-06-30");
    EXPECT_EQ(asked("a-gap", door), Asked::No);
    door.installed = calendarDateFrom("2010-07-01");
    EXPECT_EQ(asked("a-gap", door), Asked::Yes);
    door.installed.reset();
    EXPECT_EQ(asked("a-gap", door), Asked::Yes) << "no door is older than its ship, of 2012";
    door.sill_in_frame = true;
    EXPECT_EQ(asked("a-gap", door), Asked::No);
}

// II-2/9.4.1.1.2: doors installed on or after 1 July 2010, in a ship that may be older.
TEST(Applicability, WithoutADayOfInstallationTheKeelsDaySettlesItOrTheInspector) {
    Door door = given::hingedDoor();
    door.sill_in_frame = false;
    door.installed.reset();
    Particulars vessel = given::solasVessel();
    const auto gap_asked = [&] {
        return howAsked(given::row("a-gap"), vessel, door, Place::ZoneBulkhead);
    };
    vessel.keel_laid = calendarDateFrom("2010-07-01");
    EXPECT_EQ(gap_asked(), Asked::Yes);
    vessel.keel_laid = calendarDateFrom("2010-06-30");
    EXPECT_EQ(gap_asked(), Asked::Judge);
    DoorEvidence evidence;
    evidence.door = door.number;
    given::measured(evidence, "a-gap", 30);
    const Boundary boundary = given::zoneBulkhead();
    EXPECT_EQ(
        findRow(grade(vessel, door, &boundary, evidence, given::catalogue()), "a-gap")->verdict,
        Verdict::Judge);
}

TEST(Applicability, SaysWhyAndWhyNot) {
    EXPECT_EQ(askedBecause(given::row("sliding-rate"), given::solasVessel(), given::slidingDoor(),
                           Place::ZoneBulkhead),
              joined(phrase::with_commas,
                     {joined(phrase::with_commas, {applies::zone_bulkhead(), applies::sliding()}),
                      applies::keel_laid("2012-05-01")}));
    Door locked = given::slidingDoor();
    locked.normally = NormalPosition::Locked;
    EXPECT_EQ(
        askedBecause(given::row("sliding-rate"), given::solasVessel(), locked, Place::ZoneBulkhead),
        applies::normally_locked());
}

TEST(Applicability, SaysThatTheDoorsOwnClassStoodForTheBoundarys) {
    Particulars vessel = given::solasVessel();
    vessel.regime = Regime::UsH;
    Door door = given::hingedDoor();
    const auto because = [&](FireClass of_door, std::optional<BoundaryFamily> of_boundary) {
        door.fire_class = of_door;
        DoorLocation location(Place::Other);
        location.family = of_boundary;
        return askedBecause(given::row("h-has-latch"), vessel, door, location);
    };
    EXPECT_EQ(because(FireClass::C, {}), applies::by_own_class());
    EXPECT_EQ(because(FireClass::C, BoundaryFamily::C), applies::c_class_boundary());
    EXPECT_EQ(because(FireClass::A60, {}).parts.front().parts.front(), applies::by_own_class());
    EXPECT_EQ(because(FireClass::A60, BoundaryFamily::A).parts.front().parts.front(),
              applies::a_class_boundary());
}

TEST(Applicability, SaysOfAdviceWhetherTheFlagHasATextOfItsOwn) {
    Particulars vessel = given::solasVessel();
    const auto why_advice = [&](Regime regime, const char* id) {
        vessel.regime = regime;
        return askedBecause(given::row(id), vessel, given::hingedDoor(), Place::ZoneBulkhead)
            .parts.back();
    };
    EXPECT_EQ(why_advice(Regime::Other, "no-hook"), applies::no_text_binds());
    EXPECT_EQ(why_advice(Regime::Other, "hinged-time"), applies::no_text_binds());
    for (const Regime regime : {Regime::UsH, Regime::UsK, Regime::CanadaDay, Regime::EuInland})
        EXPECT_EQ(why_advice(regime, "hinged-time"), applies::flag_has_own_text());
}

TEST(Applicability, HosePortInEscapeRoutesOnly) {
    Door door = given::hingedDoor();
    EXPECT_EQ(asked("hose-port", door), Asked::Yes);
    door.escape_route = false;
    EXPECT_EQ(asked("hose-port", door), Asked::No);
    door.escape_route = true;
    door.watertight = true;
    EXPECT_EQ(asked("hose-port", door), Asked::No);
}

TEST(Applicability, ExteriorDoorsAreNotRated) {
    EXPECT_EQ(asked("rating", given::hingedDoor(), Place::Exterior), Asked::No);
    EXPECT_EQ(asked("rating", given::hingedDoor(), Place::Machinery), Asked::Yes);
    Door facing = given::hingedDoor();
    facing.faces_embarkation = true;
    EXPECT_EQ(asked("exterior", facing, Place::Exterior), Asked::Yes);
    EXPECT_EQ(asked("exterior", given::hingedDoor(), Place::Exterior), Asked::No);
}
