// The same facts by two catalogues: which doors are graded otherwise, and by which rows.
#include <gmock/gmock.h>

#include "core/evidence/newest_walkdown.h"
#include "core/grading/changed_verdicts.h"
#include "core/grading/graded_walkdown.h"
#include "core/requirement/flag_rules.h"
#include "tests/core/edited_catalogue.h"
#include "tests/core/recorded_ship.h"

using namespace latchround;
using nlohmann::json;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

namespace {

/// A walkdown in which all that is asked of both doors was found good; figures are left to the
/// test.
struct GoodShip : given::RecordedShip {
    FactId walkdown = begin();

    GoodShip() {
        for (Door& each : arrangement.doors) {
            each.sill_in_frame = false; // so that the gap below it is asked
            good(each);
        }
    }
    void good(const Door& each) {
        for (const Requirement& row : given::catalogue().rows) {
            if (row.tells)
                continue; // it says what the door is, and may excuse it
            if (row.check == CheckKind::Seen)
                add(surveyor, Observation{walkdown, each.number, row.id, Side::None, Answer::Yes});
            if (row.check == CheckKind::SeenBothSides)
                for (const Side side : {Side::One, Side::Two})
                    add(surveyor, Observation{walkdown, each.number, row.id, side, Answer::Yes});
        }
    }
    void gap(double mm) { add(surveyor, MeasuredValue{walkdown, door, "a-gap", mm, "mm"}); }
    std::vector<ChangedVerdict> between(const Catalogue& before, const Catalogue& now) const {
        return changedVerdicts(arrangement, ledger, before, now);
    }
};

Catalogue gapOf(double limit_mm) {
    return given::edited("a-gap", [=](json& row) { row["high"] = limit_mm; });
}

} // namespace

TEST(ChangedVerdicts, OneCatalogueGradesAsItself) {
    GoodShip ship;
    ship.gap(14);
    EXPECT_THAT(ship.between(given::catalogue(), given::catalogue()), IsEmpty());
}

TEST(ChangedVerdicts, AWiderLimitChangesTheDoorThatHadFailedByItAndNoOther) {
    GoodShip ship;
    ship.gap(20);
    const Catalogue now = gapOf(25);
    const auto changes = ship.between(given::catalogue(), now);
    ASSERT_THAT(changes, SizeIs(1));
    const ChangedVerdict& change = changes.front();
    EXPECT_EQ(change.door->number, "5-31");
    EXPECT_EQ(change.walkdown, ship.walkdown);
    EXPECT_EQ(change.before, Verdict::Unsatisfactory);
    EXPECT_NE(change.now, Verdict::Unsatisfactory);
    ASSERT_THAT(change.rows, SizeIs(1));
    EXPECT_EQ(change.rows.front().id, "a-gap");
    ASSERT_TRUE(change.rows.front().before && change.rows.front().now);
    EXPECT_EQ(change.rows.front().before->requirement->high, 12);
    EXPECT_EQ(change.rows.front().before->verdict, Verdict::Unsatisfactory);
    EXPECT_EQ(change.rows.front().now->requirement->high, 25);
    EXPECT_EQ(change.rows.front().now->verdict, Verdict::Satisfactory);
}

TEST(ChangedVerdicts, AndTheOtherWayRoundTheSameRowMakesIt) {
    GoodShip ship;
    ship.gap(20);
    const Catalogue before = gapOf(25);
    const auto changes = ship.between(before, given::catalogue());
    ASSERT_THAT(changes, SizeIs(1));
    EXPECT_EQ(changes.front().now, Verdict::Unsatisfactory);
    ASSERT_THAT(changes.front().rows, SizeIs(1));
    EXPECT_EQ(changes.front().rows.front().now->verdict, Verdict::Unsatisfactory);
}

// On the limit, one step inside and one outside it: only what the new limit leaves outside changes.
TEST(ChangedVerdicts, AtTheLimitNothingChangesBeyondAStepItDoes) {
    const Catalogue now = gapOf(20);
    for (const auto& [gap, changed] : std::vector<std::pair<double, std::size_t>>{
             {11, 0}, {12, 0}, {13, 1}, {20, 1}, {21.5, 0}}) {
        GoodShip ship;
        ship.gap(gap);
        EXPECT_THAT(ship.between(given::catalogue(), now), SizeIs(changed)) << gap;
    }
}

TEST(ChangedVerdicts, ARowThatIsGoneHasOnlyASideBefore) {
    GoodShip ship;
    ship.gap(20);
    const Catalogue now = given::without("a-gap");
    const auto changes = ship.between(given::catalogue(), now);
    ASSERT_THAT(changes, SizeIs(1));
    ASSERT_THAT(changes.front().rows, SizeIs(1));
    EXPECT_TRUE(changes.front().rows.front().before);
    EXPECT_FALSE(changes.front().rows.front().now);
}

TEST(ChangedVerdicts, ARowThatIsNewHasOnlyASideNow) {
    GoodShip ship;
    ship.gap(20);
    const Catalogue before = given::without("a-gap");
    const auto changes = ship.between(before, given::catalogue());
    ASSERT_THAT(changes, SizeIs(1));
    EXPECT_FALSE(changes.front().rows.front().before);
    EXPECT_TRUE(changes.front().rows.front().now);
}

TEST(ChangedVerdicts, AFaultThatHidesTheChangeChangesNoVerdict) {
    GoodShip ship;
    ship.gap(20);
    ship.answer(ship.walkdown, Answer::No, ship.surveyor); // hooked open, by either edition
    EXPECT_THAT(ship.between(given::catalogue(), gapOf(25)), IsEmpty());
}

TEST(ChangedVerdicts, RulesOfAFlagPutInAreAnotherCatalogue) {
    GoodShip ship;
    ship.gap(11);
    const auto now = withFlagRules(given::catalogue(), R"({"edition":"Order 7","issuer":"Skerry",
        "rows":[{"id":"a-gap","change":"tighten","high":6,"cite":"para 2"}]})",
                                   "flag");
    ASSERT_TRUE(now);
    const auto changes = ship.between(given::catalogue(), *now);
    ASSERT_THAT(changes, SizeIs(1));
    EXPECT_EQ(changes.front().rows.front().now->requirement->issuer, "Skerry");
    EXPECT_EQ(changes.front().rows.front().before->requirement->issuer, given::row("a-gap").issuer);
}

TEST(ChangedVerdicts, TheWorstNowComesFirst) {
    GoodShip ship;
    ship.gap(20);
    ship.door = "5-32";
    ship.gap(20);
    ship.add(ship.surveyor, Observation{ship.walkdown, "5-31", "no-hook", Side::None, Answer::No});
    const Catalogue none;
    const auto changes = ship.between(none, given::catalogue());
    ASSERT_FALSE(changes.empty());
    for (std::size_t i = 1; i < changes.size(); ++i)
        EXPECT_FALSE(isWorse(changes[i].now, changes[i - 1].now));
}

TEST(ChangedVerdicts, ADoorIsTakenAsItWasSeenLast) {
    GoodShip ship;
    ship.gap(20);
    const FactId later = ship.begin();
    EXPECT_EQ(newestWalkdownOf(ship.ledger, "5-31")->id, ship.walkdown); // planned, not yet seen
    ship.add(ship.surveyor, MeasuredValue{later, "5-31", "a-gap", 10, "mm"});
    EXPECT_EQ(newestWalkdownOf(ship.ledger, "5-31")->id, later);
    EXPECT_THAT(ship.between(given::catalogue(), gapOf(25)), IsEmpty());
}

TEST(ChangedVerdicts, ADoorThatNoWalkdownHasIsLeftOut) {
    given::RecordedShip ship;
    const Catalogue none;
    EXPECT_THAT(changedVerdicts(ship.arrangement, ship.ledger, none, given::catalogue()),
                IsEmpty());
}
