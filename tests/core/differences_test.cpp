#include <gtest/gtest.h>

#include "core/evidence/differences.h"
#include "core/evidence/terms.h"
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

TEST(Differences, OneFigureReadOffTwoInstrumentsIsNone) {
    given::RecordedShip ship;
    const FactId w = ship.begin();
    ship.add(ship.surveyor, MeasuredValue{w, ship.door, "a-gap", 11, "mm", 1.0}, "t1");
    ship.add(ship.mate, MeasuredValue{w, ship.door, "a-gap", 11, "mm", 0.1}, "t2");
    EXPECT_TRUE(differencesOf(ship.ledger).empty());
}

TEST(Differences, TermsOfOneItemSetOnTwoTabletsDiffer) {
    given::RecordedShip ship;
    const FactId w = ship.begin();
    const FactId found = ship.add(ship.surveyor, Deficiency{w, ship.door, "no-hook", "hook"});
    const FactId other = ship.add(ship.surveyor, Deficiency{w, ship.door, "sill", "worn"});
    const auto add = [&](const FactId& of, const auto& set, const std::string& device,
                         std::optional<FactId> before = {}) {
        DeficiencyTerms terms;
        terms.deficiency = of;
        set(terms);
        return ship.add(ship.mate, terms, device, before);
    };
    const auto due = [](const char* day) {
        return [day](DeficiencyTerms& terms) { terms.due = calendarDateFrom(day); };
    };
    const auto interim = [](const char* words) {
        return [words](DeficiencyTerms& terms) { terms.interim = words; };
    };
    add(found, due("2026-12-05"), "t1");
    add(found, due("2026-12-06"), "t1");
    add(other, due("2026-12-07"), "t2");
    add(found, interim("fire watch"), "t2");
    EXPECT_TRUE(differencesOf(ship.ledger).empty()) << "later, of another item, or something else";
    const FactId on_other = add(found, due("2026-12-09"), "t2");
    ASSERT_EQ(differencesOf(ship.ledger).size(), 1u);
    EXPECT_EQ(differencesOf(ship.ledger)[0].requirement, "no-hook");
    for (const auto& set : {interim("kept shut"), interim("")})
        add(found, set, "t1");
    EXPECT_EQ(differencesOf(ship.ledger).size(), 2u);
    add(found, due("2026-12-10"), "t1", on_other); // who has seen it and sets it anew
    EXPECT_EQ(differencesOf(ship.ledger).size(), 1u) << "as on one tablet";
}

TEST(Differences, EveryTermOfAnItemIsOne) {
    using Set = void (*)(DeficiencyTerms&, bool here);
    const std::vector<std::pair<TermsField, Set>> every = {
        {TermsField::Severity,
         [](DeficiencyTerms& terms, bool here) {
             terms.severity = here ? Severity::Critical : Severity::Minor;
         }},
        {TermsField::Action,
         [](DeficiencyTerms& terms, bool here) {
             terms.action = here ? PortAction::Detained : PortAction::NextPort;
         }},
        {TermsField::Ground,
         [](DeficiencyTerms& terms, bool here) { terms.ground_for_detention = here; }},
        {TermsField::Due,
         [](DeficiencyTerms& terms, bool here) {
             terms.due = calendarDateFrom(here ? "2026-12-05" : "2026-12-06");
         }},
        {TermsField::Interim,
         [](DeficiencyTerms& terms, bool here) { terms.interim = here ? "kept shut" : ""; }},
        {TermsField::Assigned,
         [](DeficiencyTerms& terms, bool here) { terms.assigned = here ? "bosun" : "mate"; }}};
    for (const auto& [field, set] : every) {
        given::RecordedShip ship;
        const FactId found =
            ship.add(ship.surveyor, Deficiency{ship.begin(), ship.door, "no-hook", "hook"});
        for (const bool here : {true, false}) {
            DeficiencyTerms terms;
            terms.deficiency = found;
            set(terms, here);
            ASSERT_EQ(onlyFieldOf(terms), field);
            EXPECT_TRUE(differencesOf(ship.ledger).empty());
            ship.add(ship.mate, terms, here ? "t1" : "t2");
        }
        EXPECT_EQ(differencesOf(ship.ledger).size(), 1u) << "field " << int(field);
    }
}

TEST(Differences, PickedOrWrittenTheSameWordsSayTheSame) {
    given::RecordedShip ship;
    const FactId w = ship.begin();
    const auto judged = [&](const FactId& person, const std::string& device, Wording reason) {
        ship.add(person, Judgement{w, ship.door, "sill", true, std::move(reason)}, device);
    };
    judged(ship.surveyor, "t1", Wording("as built", "as-built"));
    judged(ship.mate, "t2", "as built");
    EXPECT_TRUE(differencesOf(ship.ledger).empty());
    judged(ship.mate, "t2", Wording("as drawn", "as-drawn"));
    EXPECT_EQ(differencesOf(ship.ledger).size(), 1u);
}

TEST(Differences, AFieldIsSetByAFactOfItsOwn) {
    DeficiencyTerms all;
    all.deficiency = "d";
    all.severity = Severity::Critical;
    all.due = calendarDateFrom("2026-12-05");
    all.interim = "kept shut";
    all.interim_phrase = "kept-shut";
    all.assigned = "bosun";
    EXPECT_FALSE(onlyFieldOf(all));
    const std::vector<DeficiencyTerms> apart = fieldByField(all);
    ASSERT_EQ(apart.size(), 4u);
    EXPECT_EQ(onlyFieldOf(apart[0]), TermsField::Severity);
    EXPECT_EQ(onlyFieldOf(apart[1]), TermsField::Due);
    EXPECT_EQ(apart[1].due, all.due);
    EXPECT_EQ(onlyFieldOf(apart[2]), TermsField::Interim);
    EXPECT_EQ(apart[2].interim, all.interim);
    EXPECT_EQ(apart[2].interim_phrase, all.interim_phrase) << "the phrase goes with its words";
    EXPECT_EQ(apart[2].assigned, std::nullopt);
    EXPECT_EQ(onlyFieldOf(apart[3]), TermsField::Assigned);
    EXPECT_EQ(apart[3].interim_phrase, std::nullopt);
    EXPECT_EQ(apart[3].deficiency, "d");
}
