// How the rows stand at a door and aboard: where they bind, and why not.
#include <algorithm>

#include <gtest/gtest.h>

#include "core/grading/rule_aboard.h"
#include "core/requirement/applicability_phrases.h"
#include "tests/core/given.h"

using namespace latchround;

namespace {

Arrangement shipOf(std::vector<Door> doors, const Particulars& vessel = given::solasVessel()) {
    Arrangement ship;
    ship.particulars = vessel;
    ship.boundaries = {given::zoneBulkhead()};
    ship.doors = std::move(doors);
    return ship;
}

std::size_t indexOf(std::string_view id) {
    const auto& rows = given::catalogue().rows;
    return std::size_t(std::ranges::find(rows, id, &Requirement::id) - rows.begin());
}

RuleAboard aboard(const Arrangement& ship, std::string_view id) {
    return rulesAboard(given::catalogue(), ship).at(indexOf(id));
}

RuleAtDoor atDoor(const GradedDoor& graded, const Arrangement& ship, std::string_view id) {
    return rulesAtDoor(graded, ship.particulars).at(indexOf(id));
}

GradedDoor seen(const Arrangement& ship, DoorEvidence evidence) {
    GradedDoor graded = asRegistered(ship, ship.doors.front(), given::catalogue());
    graded.evidence = std::move(evidence);
    graded.grade = grade(ship.particulars, ship.doors.front(), graded.boundary, graded.evidence,
                         given::catalogue());
    return graded;
}

} // namespace

TEST(RuleAboard, NamesTheDoorsThatItBinds) {
    const Arrangement ship = shipOf({given::slidingDoor(), given::hingedDoor()});
    const RuleAboard rate = aboard(ship, "sliding-rate");
    ASSERT_EQ(rate.binding.size(), 1u);
    EXPECT_EQ(rate.binding.front()->number, "5-32");
    EXPECT_TRUE(rate.because.empty());
    EXPECT_EQ(aboard(ship, "self-closing").binding.size(), 2u);
}

TEST(RuleAboard, OfAShipWithoutADateLeavesFailuresToTheInspectorOrIsAdvice) {
    Particulars undated = given::solasVessel();
    undated.keel_laid.reset();
    const Arrangement ship = shipOf({given::slidingDoor()}, undated);
    const RuleAboard rate = aboard(ship, "sliding-rate");
    EXPECT_TRUE(rate.binding.empty());
    EXPECT_EQ(rate.advised.size(), 1u);
    const RuleAboard rating = aboard(ship, "rating");
    EXPECT_EQ(rating.binding.size(), 1u) << "every text seen says so";
}

TEST(RuleAboard, OfCommonPracticeAndWhatATextLeavesOpenBindsNoDoor) {
    const Arrangement ship = shipOf({given::slidingDoor()});
    const RuleAboard practice = aboard(ship, "sill-sound");
    EXPECT_TRUE(practice.binding.empty());
    EXPECT_EQ(practice.left_to_inspector.size(), 1u);
    Requirement row = given::row("self-closing");
    EXPECT_EQ(comesTo(row, Asked::Yes), Asked::Yes);
    row.left_open = "what is roughly uniform";
    EXPECT_EQ(comesTo(row, Asked::Yes), Asked::Judge);
    EXPECT_EQ(comesTo(row, Asked::Advice), Asked::Advice);
    EXPECT_EQ(comesTo(row, Asked::No), Asked::No);
    row.status = Status::Advice;
    EXPECT_EQ(comesTo(row, Asked::Judge), Asked::Advice);
}

TEST(RuleAboard, SaysWhyItIsAskedOfNoDoor) {
    const Arrangement ship = shipOf({given::hingedDoor()});
    EXPECT_EQ(aboard(ship, "k-latch-throw").because, applies::text_of_other_ships("46 CFR"));
    EXPECT_EQ(aboard(ship, "sliding-rate").because, applies::no_door_aboard());
    EXPECT_FALSE(aboard(ship, "sliding-rate").isAsked());
    Particulars old_ship = given::solasVessel();
    old_ship.keel_laid = calendarDateFrom("1985-02-01");
    Arrangement old = shipOf({given::hingedDoor()}, old_ship);
    old.boundaries.front().place = Place::Exterior;
    old.doors.front().faces_embarkation = true;
    EXPECT_EQ(aboard(old, "exterior").because, applies::text_of_other_dates("1985-02-01"));
}

/// The book and the grade never say different things of one door.
TEST(RuleAboard, AgreesWithTheGradeOfEveryDoor) {
    const Arrangement ship = shipOf(
        {given::slidingDoor(), given::hingedDoor(), given::hingedDoor(DoorKind::DoubleLeaf)});
    const std::vector<RuleAboard> rules = rulesAboard(given::catalogue(), ship);
    int asked = 0;
    for (const Door& door : ship.doors) {
        const GradedDoor graded = asRegistered(ship, door, given::catalogue());
        for (std::size_t i = 0; i < rules.size(); ++i) {
            const auto names = [&](const std::vector<const Door*>& doors) {
                return std::ranges::find(doors, &door) != doors.end();
            };
            const bool here = names(rules[i].binding) || names(rules[i].left_to_inspector) ||
                              names(rules[i].advised);
            EXPECT_EQ(here, isAsked(graded.grade.rows[i])) << given::catalogue().rows[i].id;
            asked += here ? 1 : 0;
        }
    }
    EXPECT_GT(asked, 60);
}

TEST(RuleAtDoor, SaysWhyItBindsAndWhyNot) {
    const Arrangement ship = shipOf({given::slidingDoor()});
    const GradedDoor graded = asRegistered(ship, ship.doors.front(), given::catalogue());
    const RuleAtDoor rate = atDoor(graded, ship, "sliding-rate");
    EXPECT_EQ(rate.asked, Asked::Yes);
    EXPECT_EQ(rate.in_force, &given::row("sliding-rate"));
    EXPECT_EQ(rate.because,
              joined(phrase::with_commas,
                     {joined(phrase::with_commas, {applies::zone_bulkhead(), applies::sliding()}),
                      applies::keel_laid("2012-05-01")}));
    const RuleAtDoor time = atDoor(graded, ship, "hinged-time");
    EXPECT_EQ(time.asked, Asked::No);
    EXPECT_EQ(time.because, applies::sliding());
}

TEST(RuleAtDoor, NamesTheVariantThatStandsForAnOlderShip) {
    Particulars old_ship = given::solasVessel();
    old_ship.keel_laid = calendarDateFrom("1985-02-01");
    const Arrangement ship = shipOf({given::hingedDoor()}, old_ship);
    const GradedDoor graded = asRegistered(ship, ship.doors.front(), given::catalogue());
    const RuleAtDoor rule = atDoor(graded, ship, "self-closing");
    EXPECT_NE(rule.in_force, &given::row("self-closing"));
    EXPECT_EQ(rule.in_force->keel_before, calendarDateFrom("2002-07-01"));
    EXPECT_EQ(rule.asked, Asked::Yes);
}

TEST(RuleAtDoor, SaysWhichAnswerTookItAway) {
    const auto& rows = given::catalogue().rows;
    const auto hangs = std::ranges::find(rows, std::vector<std::string>{"exterior-stair"},
                                         &Requirement::unless_yes);
    ASSERT_NE(hangs, rows.end());
    Arrangement ship = shipOf({given::hingedDoor()});
    ship.boundaries.front().place = Place::Exterior;
    ship.doors.front().faces_embarkation = true;
    EXPECT_FALSE(atDoor(seen(ship, {}), ship, hangs->id).excused.has_value());
    DoorEvidence evidence;
    given::answer(evidence, "exterior-stair", Answer::Yes);
    const RuleAtDoor rule = atDoor(seen(ship, evidence), ship, hangs->id);
    EXPECT_EQ(rule.asked, Asked::No);
    ASSERT_TRUE(rule.excused.has_value());
    EXPECT_EQ(rule.excused->kind, ReasonKind::ExcusedByAnswer);
}
