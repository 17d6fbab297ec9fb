// Doors by where they stand: machinery spaces, escape trunks, special category spaces, outside.
#include <gtest/gtest.h>

#include "core/grading/grade.h"
#include "core/requirement/applicability.h"
#include "tests/core/given.h"

using namespace latchround;

namespace {

Boundary at(Place place) {
    Boundary boundary = given::zoneBulkhead();
    boundary.place = place;
    return boundary;
}

Verdict answered(std::string_view id, Answer answer, const Door& door, const Boundary& boundary,
                 const Particulars& vessel = given::solasVessel()) {
    DoorEvidence evidence;
    evidence.door = door.number;
    given::answer(evidence, std::string(id), answer);
    return findRow(grade(vessel, door, &boundary, evidence, given::catalogue()), id)->verdict;
}

DoorGrade graded(const Door& door, const Boundary& boundary, const DoorEvidence& evidence) {
    return grade(given::solasVessel(), door, &boundary, evidence, given::catalogue());
}

} // namespace

// SOLAS II-2/9.5.2.5: a trunk's door is excused from hold-back and remote release alone.
TEST(EscapeTrunk, DoorMustStillClose) {
    Door door = given::hingedDoor();
    const Boundary engine_room = at(Place::Machinery);
    for (const bool trunk : {false, true}) {
        door.escape_trunk = trunk;
        EXPECT_EQ(answered("machinery-closes", Answer::No, door, engine_room),
                  Verdict::Unsatisfactory);
        EXPECT_EQ(answered("machinery-closes", Answer::Yes, door, engine_room),
                  Verdict::Satisfactory);
        EXPECT_EQ(answered("machinery-release", Answer::No, door, engine_room),
                  trunk ? Verdict::NotApplicable : Verdict::Unsatisfactory);
    }
    door.escape_trunk.word.reset();
    EXPECT_EQ(answered("machinery-release", Answer::No, door, engine_room), Verdict::Unsatisfactory)
        << "what the register does not say excuses nothing";
}

// SOLAS II-2/9.5.2.5: doors other than power-operated watertight doors.
TEST(MachineryDoor, PowerOperatedWatertightIsOutside) {
    Door door = given::slidingDoor();
    const Boundary engine_room = at(Place::Machinery);
    for (const char* id : {"machinery-closes", "machinery-release", "machinery-controls"}) {
        door.watertight = true;
        door.power_operated = true;
        EXPECT_EQ(answered(id, Answer::No, door, engine_room), Verdict::NotApplicable) << id;
        door.watertight = false;
        EXPECT_EQ(answered(id, Answer::No, door, engine_room), Verdict::Unsatisfactory) << id;
        door.watertight = true;
        door.power_operated = false;
        EXPECT_EQ(answered(id, Answer::No, door, engine_room), Verdict::Unsatisfactory) << id;
        door.power_operated.word.reset();
        EXPECT_EQ(answered(id, Answer::No, door, engine_room), Verdict::Unsatisfactory) << id;
    }
}

// Category 12 of tables 9.1 and 9.2, 6 of tables 9.3 and 9.4.
TEST(MachineryDoor, OnlyOfCategoryA) {
    const Door door = given::hingedDoor();
    Particulars few = given::solasVessel();
    few.passengers = 36;
    Particulars many = given::solasVessel();
    many.passengers = 37;
    const auto verdict = [&](const Particulars& vessel, std::optional<std::pair<int, int>> spaces) {
        Boundary boundary = at(Place::Machinery);
        boundary.spaces = spaces;
        return answered("machinery-closes", Answer::No, door, boundary, vessel);
    };
    EXPECT_EQ(verdict(many, std::pair(3, 12)), Verdict::Unsatisfactory);
    EXPECT_EQ(verdict(many, std::pair(12, 3)), Verdict::Unsatisfactory);
    EXPECT_EQ(verdict(many, std::pair(3, 11)), Verdict::NotApplicable);
    EXPECT_EQ(verdict(many, std::pair(3, 6)), Verdict::NotApplicable);
    EXPECT_EQ(verdict(few, std::pair(3, 6)), Verdict::Unsatisfactory);
    EXPECT_EQ(verdict(few, std::pair(3, 7)), Verdict::NotApplicable);
    EXPECT_EQ(verdict(many, std::nullopt), Verdict::Unsatisfactory) << "unknown counts as asked";
}

TEST(MachineryDoor, NothingHeldOpenNeedsNoRelease) {
    Door door = given::hingedDoor();
    door.hold_back = false;
    EXPECT_EQ(answered("machinery-release", Answer::No, door, at(Place::Machinery)),
              Verdict::NotApplicable);
    door.hold_back.word.reset();
    EXPECT_EQ(answered("machinery-release", Answer::No, door, at(Place::Machinery)),
              Verdict::Unsatisfactory);
}

// SOLAS II-2/9.6.2, 20.2.2.3.
TEST(SpecialCategoryDoor, WithoutIndicatorOpenAndHookedFails) {
    Door door = given::hingedDoor();
    const Boundary car_deck = at(Place::SpecialCategory);
    for (const char* id : {"bridge-indicator", "self-closing", "no-hook"}) {
        EXPECT_EQ(answered(id, Answer::No, door, car_deck), Verdict::Unsatisfactory) << id;
        EXPECT_EQ(answered(id, Answer::Yes, door, car_deck), Verdict::Satisfactory) << id;
    }
    EXPECT_EQ(graded(door, car_deck, {}).verdict, Verdict::Untested);
    EXPECT_EQ(answered("bridge-indicator", Answer::No, door, at(Place::Stairway)),
              Verdict::NotApplicable);
    door.special_category = true;
    EXPECT_EQ(answered("bridge-indicator", Answer::No, door, at(Place::Stairway)),
              Verdict::Unsatisfactory);
    for (const Place place : {Place::Other, Place::Machinery, Place::Cabin, Place::Exterior})
        EXPECT_EQ(answered("self-closing", Answer::No, door, at(place)), Verdict::Unsatisfactory)
            << "a door from a vehicle deck, whatever lies behind it";
}

TEST(SpecialCategoryDoor, IsListedInBulkheadAndDeckAlike) {
    Boundary deck = at(Place::SpecialCategory);
    deck.division = Division::Deck;
    EXPECT_EQ(answered("self-closing", Answer::No, given::hingedDoor(), deck),
              Verdict::Unsatisfactory);
    Door locked = given::hingedDoor();
    locked.normally = NormalPosition::Locked;
    EXPECT_FALSE(isListed(locked, Place::SpecialCategory));
    Door watertight = given::slidingDoor();
    watertight.watertight = true;
    EXPECT_FALSE(isListed(watertight, Place::SpecialCategory));
}

// SOLAS II-2/9.6.1: A-60, over oil fuel tanks A-0; no category tells such a tank from a hold.
TEST(SpecialCategoryDoor, OverAFuelTankMayBeA0) {
    Boundary deck = at(Place::SpecialCategory);
    deck.required.reset();
    deck.division = Division::Deck;
    deck.spaces = std::pair(11, 11);
    Door door = given::hingedDoor();
    const auto rated = [&](FireClass has) {
        door.fire_class = has;
        return findRow(graded(door, deck, {}), "rating")->verdict;
    };
    EXPECT_EQ(rated(FireClass::A60), Verdict::Satisfactory);
    EXPECT_EQ(rated(FireClass::A30), Verdict::Judge);
    EXPECT_EQ(rated(FireClass::A0), Verdict::Judge);
    EXPECT_EQ(rated(FireClass::B15), Verdict::Unsatisfactory);
    deck.spaces = std::pair(7, 11);
    EXPECT_EQ(rated(FireClass::A0), Verdict::Unsatisfactory) << "cabins below";
    deck.spaces = std::pair(11, 11);
    deck.division = Division::Bulkhead;
    EXPECT_EQ(rated(FireClass::A0), Verdict::Unsatisfactory) << "no tank lies below a bulkhead";
}

// SOLAS II-2/9.4.1.1.7, last sentence.
TEST(ExteriorDoor, OfAStairwayEnclosureIsFreeAgain) {
    Door door = given::hingedDoor();
    door.fire_class = FireClass::A0;
    door.faces_embarkation = true;
    DoorEvidence evidence;
    evidence.door = door.number;
    const auto verdict = [&](std::string_view id) {
        return findRow(graded(door, at(Place::Exterior), evidence), id)->verdict;
    };
    EXPECT_EQ(verdict("exterior"), Verdict::Unsatisfactory) << "unknown frees nothing";
    EXPECT_EQ(verdict("exterior-stair"), Verdict::Untested);
    given::answer(evidence, "exterior-stair", Answer::No);
    EXPECT_EQ(verdict("exterior"), Verdict::Unsatisfactory);
    EXPECT_EQ(verdict("exterior-stair"), Verdict::Satisfactory) << "no is no fault";
    given::answer(evidence, "exterior-stair", Answer::Yes);
    EXPECT_EQ(verdict("exterior"), Verdict::NotApplicable);
    EXPECT_EQ(verdict("material"), Verdict::NotApplicable);
    EXPECT_EQ(findRow(graded(door, at(Place::Stairway), {}), "material")->verdict,
              Verdict::NotApplicable);
    EXPECT_EQ(findRow(graded(door, at(Place::Stairway), {}), "rating")->verdict,
              Verdict::NotApplicable);
    door.faces_embarkation = false;
    EXPECT_EQ(findRow(graded(door, at(Place::Exterior), {}), "exterior")->verdict,
              Verdict::NotApplicable);
}

// SOLAS II-2/9.4.1.2.3.
TEST(ExteriorDoor, OfBClassIsFree) {
    Door door = given::hingedDoor();
    door.fire_class = FireClass::B15;
    for (const char* id : {"b-material", "b-vent-low"}) {
        EXPECT_EQ(answered(id, Answer::No, door, at(Place::Exterior)), Verdict::NotApplicable)
            << id;
        EXPECT_EQ(answered(id, Answer::No, door, at(Place::Cabin)), Verdict::Unsatisfactory) << id;
    }
}

// SOLAS II-2/7.9.3: ships of more than 36 passengers.
TEST(CentralPanel, IsOfShipsOfMoreThan36Passengers) {
    Particulars vessel = given::solasVessel();
    vessel.passengers = 36;
    EXPECT_EQ(
        answered("central-panel", Answer::No, given::hingedDoor(), at(Place::ZoneBulkhead), vessel),
        Verdict::NotApplicable);
    vessel.passengers = 37;
    EXPECT_EQ(
        answered("central-panel", Answer::No, given::hingedDoor(), at(Place::ZoneBulkhead), vessel),
        Verdict::Unsatisfactory);
}

// SOLAS II-1/42.2.3.3, 42.4.1.2: the holding and release system.
TEST(Blackout, IsTriedOfDoorsThatAreHeldOrDriven) {
    Door door = given::hingedDoor();
    EXPECT_EQ(answered("blackout", Answer::No, door, at(Place::ZoneBulkhead)),
              Verdict::Unsatisfactory);
    door.hold_back = false;
    EXPECT_EQ(answered("blackout", Answer::No, door, at(Place::ZoneBulkhead)),
              Verdict::NotApplicable);
    door.power_operated = true;
    EXPECT_EQ(answered("blackout", Answer::No, door, at(Place::ZoneBulkhead)),
              Verdict::Unsatisfactory);
}
