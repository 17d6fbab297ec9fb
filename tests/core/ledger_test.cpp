#include <gtest/gtest.h>

#include "core/evidence/ledger.h"

using namespace latchround;

namespace {

Fact fact(const std::string& id, FactBody body, std::optional<FactId> supersedes = {}) {
    return {{id, {}, "p", "d", std::move(supersedes)}, std::move(body)};
}

std::vector<Fact> walk() {
    return {fact("01", WalkdownBegun{}),
            fact("02", Observation{"01", "5-31", "path-clear", Side::None, Answer::Yes}),
            fact("03", RunStarted{"01", "5-31", RunKind::Closing, Release::LetGo, 0}),
            fact("04", Mark{"03", MarkKind::LeafMoves, 1000, {}, InputDevice::Key, {}}),
            fact("05", Mark{"03", MarkKind::Shut, 2000, {}, InputDevice::Key, {}}),
            fact("06", TakenBack{"slip"}, "05"),
            fact("07", Mark{"03", MarkKind::Shut, 13000, {}, InputDevice::Key, {}}),
            fact("08", RunEnded{"03", RunOutcome::Complete, {}}),
            fact("09", Observation{"01", "5-31", "path-clear", Side::None, Answer::No}, "02")};
}

} // namespace

TEST(Ledger, SupersededFactsStopCounting) {
    Ledger ledger;
    for (const Fact& each : walk())
        ledger.add(each);
    const DoorEvidence evidence = ledger.evidenceOf("01", "5-31");
    EXPECT_EQ(evidence.observations.at({"path-clear", Side::None}).body.answer, Answer::No);
    ASSERT_EQ(evidence.runs.size(), 1u);
    ASSERT_EQ(evidence.runs[0].marks.size(), 2u);
    EXPECT_EQ(evidence.runs[0].marks[1].mark.event_ms, 13000u);
    EXPECT_TRUE(evidence.runs[0].end);
    ledger.add(fact("10", TakenBack{"run goes on"}, "08"));
    EXPECT_FALSE(ledger.evidenceOf("01", "5-31").runs[0].end);
}

TEST(Ledger, OrderOfArrivalDoesNotMatterAndTwiceIsOnce) {
    Ledger forward;
    for (const Fact& each : walk())
        forward.add(each);
    Ledger backward;
    const auto facts = walk();
    for (auto each = facts.rbegin(); each != facts.rend(); ++each) {
        backward.add(*each);
        backward.add(*each);
    }
    EXPECT_EQ(backward.size(), forward.size());
    const DoorEvidence one = forward.evidenceOf("01", "5-31");
    const DoorEvidence other = backward.evidenceOf("01", "5-31");
    ASSERT_EQ(one.runs.size(), other.runs.size());
    EXPECT_EQ(one.runs[0].marks[1].mark, other.runs[0].marks[1].mark);
    EXPECT_EQ(one.observations.at({"path-clear", Side::None}).body,
              other.observations.at({"path-clear", Side::None}).body);
}

TEST(Ledger, AnUnfinishedRunIsFoundAgain) {
    Ledger ledger;
    auto facts = walk();
    facts.erase(facts.begin() + 7);
    for (const Fact& each : facts)
        ledger.add(each);
    const DoorEvidence evidence = ledger.evidenceOf("01", "5-31");
    ASSERT_TRUE(unfinishedRun(evidence));
    EXPECT_EQ(unfinishedRun(evidence)->id, "03");
}

TEST(Ledger, TakenBackAnswerLeavesTheDoorUntouched) {
    Ledger ledger;
    ledger.add(fact("01", WalkdownBegun{}));
    ledger.add(fact("02", Note{"01", "5-31", "x"}));
    EXPECT_EQ(ledger.doorsTouched("01").size(), 1u);
    ledger.add(fact("03", TakenBack{"slip"}, "02"));
    EXPECT_TRUE(ledger.doorsTouched("01").empty());
    EXPECT_TRUE(ledger.evidenceOf("01", "5-31").empty());
}

TEST(Ledger, WalkdownIsUnderWayUntilItIsEnded) {
    Ledger ledger;
    ledger.add(fact("01", WalkdownBegun{}));
    EXPECT_FALSE(ledger.walkdown("01")->end);
    ledger.add(fact("02", WalkdownEnded{"01", ""}));
    EXPECT_TRUE(ledger.walkdown("01")->end);
    EXPECT_FALSE(ledger.walkdown("02"));
}

// Two tablets ended the same walkdown before they were merged.
TEST(Ledger, AWalkdownThatEndedTwiceIsUnderWayOnlyWhenBothEndsAreTakenBack) {
    Ledger ledger;
    ledger.add(fact("01", WalkdownBegun{}));
    ledger.add(fact("02", WalkdownEnded{"01", "here"}));
    ledger.add(fact("03", WalkdownEnded{"01", "there"}));
    ledger.add(fact("04", TakenBack{"undone"}, "03"));
    ASSERT_TRUE(ledger.walkdown("01")->end);
    EXPECT_EQ(ledger.walkdown("01")->end->body.remark, "here");
    ledger.add(fact("05", TakenBack{"undone"}, "02"));
    EXPECT_FALSE(ledger.walkdown("01")->end);
}
