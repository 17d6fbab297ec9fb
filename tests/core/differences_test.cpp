#include <gtest/gtest.h>

#include "core/evidence/differences.h"
#include "tests/core/recorded_ship.h"

using namespace latchround;

namespace {

Answer shown(const given::RecordedShip& ship, const FactId& walkdown) {
    return ship.ledger.evidenceOf(walkdown, ship.door)
        .observations.at({ship.row, Side::None})
        .body.answer;
}

} // namespace

TEST(Differences, TwoPeopleWhoAnswerDifferentlyAreListedAndTheLaterShows) {
    given::RecordedShip ship;
    const FactId walkdown = ship.begin();
    const FactId no = ship.answer(walkdown, Answer::No, ship.surveyor, "tablet-1");
    const FactId yes = ship.answer(walkdown, Answer::Yes, ship.mate, "tablet-2");
    const auto differences = differencesOf(ship.ledger);
    ASSERT_EQ(differences.size(), 1u);
    EXPECT_EQ(differences[0].door, ship.door);
    EXPECT_EQ(differences[0].requirement, ship.row);
    ASSERT_EQ(differences[0].facts.size(), 2u);
    EXPECT_EQ(differences[0].facts[1]->stamp.id, yes);
    EXPECT_EQ(shown(ship, walkdown), Answer::Yes);

    ship.add(ship.surveyor, DifferenceSettled{no, {yes}, "seen together"});
    EXPECT_TRUE(differencesOf(ship.ledger).empty());
    EXPECT_EQ(shown(ship, walkdown), Answer::No);
}

TEST(Differences, AgreementAndCorrectionsAreNone) {
    given::RecordedShip ship;
    const FactId walkdown = ship.begin();
    const FactId first = ship.answer(walkdown, Answer::No, ship.surveyor);
    ship.answer(walkdown, Answer::No, ship.mate, "tablet-2");
    EXPECT_TRUE(differencesOf(ship.ledger).empty());
    given::RecordedShip corrected;
    const FactId other = corrected.begin();
    const FactId slip = corrected.answer(other, Answer::No, corrected.surveyor);
    corrected.add(corrected.mate,
                  Observation{other, corrected.door, corrected.row, Side::None, Answer::Yes},
                  "tablet-2", slip);
    EXPECT_TRUE(differencesOf(corrected.ledger).empty());
}

TEST(Differences, TheNewestDecisionHoldsAndTwoDecisionsAreADifferenceThemselves) {
    given::RecordedShip ship;
    const FactId walkdown = ship.begin();
    const FactId no = ship.answer(walkdown, Answer::No, ship.surveyor, "tablet-1");
    const FactId yes = ship.answer(walkdown, Answer::Yes, ship.mate, "tablet-2");
    const FactId one = ship.add(ship.surveyor, DifferenceSettled{no, {yes}, "?"}, "tablet-1");
    const FactId other = ship.add(ship.mate, DifferenceSettled{yes, {no}, "?"}, "tablet-2");
    EXPECT_EQ(shown(ship, walkdown), Answer::Yes);
    const auto differences = differencesOf(ship.ledger);
    ASSERT_EQ(differences.size(), 1u);
    EXPECT_EQ(differences[0].facts[0]->stamp.id, one);
    ship.add(ship.surveyor, DifferenceSettled{one, {other}, "the surveyor decides"});
    EXPECT_TRUE(differencesOf(ship.ledger).empty());
    EXPECT_EQ(shown(ship, walkdown), Answer::No);
}

TEST(Differences, ATakenBackDecisionOpensTheDifferenceAgain) {
    given::RecordedShip ship;
    const FactId walkdown = ship.begin();
    const FactId no = ship.answer(walkdown, Answer::No, ship.surveyor, "tablet-1");
    const FactId yes = ship.answer(walkdown, Answer::Yes, ship.mate, "tablet-2");
    const FactId decision = ship.add(ship.surveyor, DifferenceSettled{no, {yes}, "?"});
    ship.add(ship.surveyor, TakenBack{"slip"}, "tablet-1", decision);
    EXPECT_EQ(differencesOf(ship.ledger).size(), 1u);
    EXPECT_EQ(shown(ship, walkdown), Answer::Yes);
}

TEST(Differences, DecisionsThatNameEachOtherEndTheSearch) {
    given::RecordedShip ship;
    const FactId walkdown = ship.begin();
    const FactId no = ship.answer(walkdown, Answer::No, ship.surveyor);
    ship.ledger.add(
        {{"900", {}, ship.mate, "x", {}}, DifferenceSettled{"901", {"900", "901"}, ""}});
    ship.ledger.add({{"901", {}, ship.mate, "x", {}}, DifferenceSettled{"900", {no, "901"}, ""}});
    EXPECT_TRUE(ship.ledger.isSuperseded(no));
    EXPECT_FALSE(ship.ledger.isSuperseded("901"));
}

TEST(Differences, MeasuresPlatesJudgementsAndWordsDifferToo) {
    given::RecordedShip ship;
    const FactId w = ship.begin();
    const std::string& d = ship.door;
    for (const auto& [person, device, x] :
         {std::tuple{ship.surveyor, "t1", 1.0}, std::tuple{ship.mate, "t2", 2.0}}) {
        ship.add(person, MeasuredValue{w, d, "undercut-a", x, "mm"}, device);
        ship.add(person, PlateRead{w, d, PlateState::Read, x > 1 ? FireClass::A0 : FireClass::A60},
                 device);
        ship.add(person, Judgement{w, d, "no-hook", x > 1, "so"}, device);
        ship.add(person, CouldNotTest{w, d, "hose-port", x > 1 ? "locked" : "cargo"}, device);
        ship.add(person, Deficiency{w, d, "no-hook", x > 1 ? "hook" : "rope"}, device);
        ship.add(person, Note{w, d, x > 1 ? "one" : "two"}, device);
    }
    EXPECT_EQ(differencesOf(ship.ledger).size(), 5u) << "notes differ by nature";
}
