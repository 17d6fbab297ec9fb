#include <gtest/gtest.h>

#include "core/deficiency/findings.h"
#include "core/deficiency/item.h"
#include "tests/core/recorded_ship.h"

using namespace latchround;

namespace {

struct Ship : given::RecordedShip {
    std::vector<Item> items() const { return itemsOf(arrangement, ledger, given::catalogue()); }
    Item item() const {
        const auto all = items();
        return all.empty() ? Item{} : all.back();
    }
    std::vector<GradedDoor> graded(const FactId& walkdown) const {
        return gradeWalkdown(arrangement, ledger, *ledger.walkdown(walkdown), given::catalogue());
    }
};

} // namespace

TEST(Item, GoesFromFoundToClosedByFacts) {
    Ship ship;
    const FactId walkdown = ship.begin();
    const FactId found = ship.find(walkdown);
    EXPECT_EQ(ship.item().state, ItemState::Found);
    EXPECT_EQ(ship.item().severity, given::row(ship.row).severity);
    const FactId mended = ship.mend(found);
    EXPECT_EQ(ship.item().state, ItemState::Rectified);
    ship.add(ship.mate, AwaitingRetest{found, ""});
    EXPECT_EQ(ship.item().state, ItemState::AwaitingRetest);
    const FactId retest = ship.begin(Purpose::AfterRepair);
    ship.answer(retest, Answer::Yes, ship.surveyor);
    const Item item = ship.item();
    EXPECT_EQ(item.state, ItemState::Closed);
    ASSERT_TRUE(item.retest);
    EXPECT_EQ(item.retest->walkdown, retest);
    EXPECT_EQ(item.retest->newest.person, ship.surveyor);
    EXPECT_EQ(item.rectifications.back().stamp.id, mended);
    EXPECT_FALSE(item.isOpen());
}

TEST(Item, IsNotClosedByWhoRectifiedIt) {
    Ship ship;
    const FactId found = ship.find(ship.begin());
    ship.mend(found, " ove  BRANDLUND ");
    const FactId retest = ship.begin();
    ship.answer(retest, Answer::Yes, ship.mate);
    EXPECT_EQ(ship.item().state, ItemState::Rectified);
    EXPECT_TRUE(ship.item().passed_by_own_hand);
    ship.answer(retest, Answer::Yes, ship.surveyor);
    EXPECT_EQ(ship.item().state, ItemState::Closed);
    EXPECT_FALSE(ship.item().passed_by_own_hand);
}

TEST(Item, MayBeRetestedOnTheSameWalkdownByWhatWasRecordedAfter) {
    Ship ship;
    const FactId walkdown = ship.begin();
    const FactId found = ship.find(walkdown);
    ship.mend(found);
    EXPECT_EQ(ship.item().state, ItemState::Rectified) << "the answer before it counts no more";
    ship.answer(walkdown, Answer::Yes, ship.surveyor);
    EXPECT_EQ(ship.item().state, ItemState::Closed);
}

TEST(Item, WhatStandsOnAPaperOfBeforeTheRepairIsNoRetest) {
    Ship ship;
    const FactId walkdown = ship.begin();
    const FactId found = ship.find(walkdown);
    const FactId mended = ship.mend(found);
    const Moment before{ship.ledger.find(mended)->stamp.when.utc_ms - 1, 60};
    ship.ledger.add({{"999", before, ship.surveyor, "tablet-1", {}},
                     Observation{walkdown, ship.door, ship.row, Side::None, Answer::Yes}});
    EXPECT_EQ(ship.item().state, ItemState::Rectified);
}

TEST(Item, AFailedRetestNeedsAnotherRectification) {
    Ship ship;
    const FactId found = ship.find(ship.begin());
    ship.mend(found);
    ship.answer(ship.begin(), Answer::No, ship.surveyor);
    EXPECT_EQ(ship.item().state, ItemState::Found);
    ASSERT_TRUE(ship.item().retest);
    EXPECT_FALSE(ship.item().retest->passed);
    const FactId by_luck = ship.begin();
    ship.answer(by_luck, Answer::Yes, ship.surveyor);
    EXPECT_EQ(ship.item().state, ItemState::Found) << "nothing was mended in between";
    ship.mend(found);
    EXPECT_EQ(ship.item().state, ItemState::Rectified);
    ship.answer(by_luck, Answer::Yes, ship.surveyor);
    EXPECT_EQ(ship.item().state, ItemState::Closed);
    EXPECT_EQ(ship.item().rectifications.size(), 2u);
}

TEST(Item, AWalkThatPassesWithoutARectificationIsShownAndClosesNothing) {
    Ship ship;
    ship.find(ship.begin());
    EXPECT_FALSE(ship.item().passed_since);
    const FactId later = ship.begin();
    ship.answer(later, Answer::Yes, ship.surveyor);
    EXPECT_EQ(ship.item().state, ItemState::Found);
    EXPECT_EQ(ship.item().passed_since, later);
}

TEST(Item, AJudgementOrAnotherRowDoesNotCloseIt) {
    Ship ship;
    const FactId found = ship.find(ship.begin());
    ship.mend(found);
    const FactId retest = ship.begin();
    ship.add(ship.surveyor, Observation{retest, ship.door, "path-clear", Side::None, Answer::Yes});
    ship.add(ship.surveyor, Judgement{retest, ship.door, ship.row, true, "looks fine"});
    EXPECT_EQ(ship.item().state, ItemState::Rectified);
}

TEST(Item, WithdrawalStandsUntilItIsTakenBackOrTheDefectIsFoundAgain) {
    Ship ship;
    const FactId found = ship.find(ship.begin());
    const FactId withdrawal = ship.add(ship.surveyor, Withdrawal{found, "door taken out"});
    EXPECT_EQ(ship.item().state, ItemState::Withdrawn);
    ship.add(ship.surveyor, TakenBack{"slip"}, "tablet-1", withdrawal);
    EXPECT_EQ(ship.item().state, ItemState::Found);
    ship.add(ship.surveyor, Withdrawal{found, "door taken out"});
    const FactId again = ship.find(ship.begin(), found);
    ASSERT_EQ(ship.items().size(), 2u);
    EXPECT_EQ(ship.item().id, again);
    EXPECT_EQ(ship.item().repeat_of, found);
}

TEST(Item, EachTermStandsAsItWasSetLast) {
    Ship ship;
    const FactId found = ship.find(ship.begin());
    const auto due = calendarDateFrom("2026-12-09").value();
    DeficiencyTerms terms{found};
    terms.severity = Severity::Minor;
    terms.action = PortAction::Within14Days;
    terms.due = due;
    terms.interim = "fire patrol";
    terms.interim_phrase = "fire-patrol";
    ship.add(ship.surveyor, terms);
    EXPECT_EQ(ship.item().interim, Wording("fire patrol", "fire-patrol"));
    DeficiencyTerms later{found};
    later.assigned = "Ove Brandlund";
    later.ground_for_detention = false;
    later.interim = "";
    ship.add(ship.mate, later);
    const Item item = ship.item();
    EXPECT_EQ(item.severity, Severity::Minor);
    EXPECT_EQ(item.action, PortAction::Within14Days);
    EXPECT_EQ(item.ground_for_detention, false);
    EXPECT_EQ(item.due, due);
    EXPECT_EQ(item.assigned, "Ove Brandlund");
    EXPECT_EQ(item.interim, "");
}

TEST(Item, FoundAgainWhileOpenIsOneItem) {
    Ship ship;
    const FactId first = ship.find(ship.begin());
    ship.mend(first);
    const FactId second = ship.find(ship.begin(), first);
    ASSERT_EQ(ship.items().size(), 1u);
    EXPECT_EQ(ship.item().findings.size(), 2u);
    EXPECT_EQ(ship.item().state, ItemState::Found);
    ship.mend(second);
    EXPECT_EQ(ship.item().state, ItemState::Rectified) << "recorded against either finding";
    ship.answer(ship.begin(), Answer::Yes, ship.surveyor);
    EXPECT_EQ(ship.item().state, ItemState::Closed);
    const FactId third = ship.find(ship.begin(), second);
    ASSERT_EQ(ship.items().size(), 2u);
    EXPECT_EQ(ship.items()[0].state, ItemState::Closed);
    EXPECT_EQ(ship.item().id, third);
    EXPECT_EQ(ship.item().repeat_of, first);
}

TEST(Item, WrittenUpByTwoPeopleOnOneWalkIsOneItem) {
    Ship ship;
    const FactId walkdown = ship.begin();
    ship.find(walkdown);
    ship.add(ship.mate, Deficiency{walkdown, ship.door, ship.row, "Cart in the path"}, "tablet-2");
    ASSERT_EQ(ship.items().size(), 1u);
    EXPECT_EQ(ship.item().text(), "Cart in the path");
}

TEST(Item, OfTheWholeDoorClosesWhenTheWholeDoorPasses) {
    Ship ship;
    const FactId found =
        ship.add(ship.surveyor, Deficiency{ship.begin(), ship.door, "", "Leaf bent by a forklift"});
    EXPECT_EQ(ship.item().row, nullptr);
    ship.mend(found);
    const FactId retest = ship.begin();
    ship.answer(retest, Answer::Yes, ship.surveyor);
    EXPECT_EQ(ship.item().state, ItemState::Rectified) << "the rest is untested";
}

TEST(Item, PhotographsOfFindingAndRectificationBelongToIt) {
    Ship ship;
    const FactId walkdown = ship.begin();
    const FactId found = ship.find(walkdown);
    const FactId mended = ship.mend(found);
    ship.add(ship.mate, Photograph{walkdown, ship.door, "a", "image/png", "cleared", "", mended});
    ship.add(ship.mate, Photograph{walkdown, ship.door, "b", "image/png", "other", ""});
    ASSERT_EQ(ship.item().photographs.size(), 1u);
    EXPECT_EQ(ship.item().photographs[0].body.sha256, "a");
}

TEST(Item, SaysWhichZonesActAsOne) {
    Ship ship;
    ship.find(ship.begin());
    const auto items = ship.items();
    const ActingZone effect = zoneEffect(ship.arrangement, items, items[0]);
    EXPECT_EQ(effect.zones, (std::vector<std::string>{"2", "3"}));
    EXPECT_DOUBLE_EQ(effect.length_m, 78);
}

// Codes of the published lists of port State control: 16 within 14 days, 18 within three months.
TEST(Item, ActionsThatNameATimeNameADay) {
    const auto given = calendarDateFrom("2026-11-30").value();
    EXPECT_EQ(dueBy(PortAction::Within14Days, given), calendarDateFrom("2026-12-14"));
    EXPECT_EQ(dueBy(PortAction::Within3Months, given), calendarDateFrom("2027-02-28"));
    EXPECT_EQ(dueBy(PortAction::BeforeDeparture, given), std::nullopt);
    EXPECT_EQ(word(PortAction::Detained), "30");
    EXPECT_EQ(word(PortAction::Rectified), "10");
    EXPECT_EQ(word(PortAction::NextPort), "15");
    EXPECT_EQ(port_state_code, "07105");
}

TEST(Findings, UnsatisfactoryRowsWithoutADeficiencyAreOffered) {
    Ship ship;
    const FactId first = ship.begin();
    const FactId found = ship.find(first);
    EXPECT_TRUE(toWriteUp(ship.graded(first), ship.items()).empty());
    const FactId second = ship.begin();
    ship.answer(second, Answer::No, ship.surveyor);
    const auto doors = ship.graded(second);
    const auto offered = toWriteUp(doors, ship.items());
    ASSERT_EQ(offered.size(), 1u);
    EXPECT_EQ(offered[0].door->door->number, ship.door);
    EXPECT_EQ(offered[0].row->requirement->id, ship.row);
    EXPECT_EQ(offered[0].repeats, found);
}
