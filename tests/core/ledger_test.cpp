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

/// 09 replaced 02; in whatever order they come.
TEST(Ledger, WhatIsUndoneNeverWasUntilTheUndoIsUndone) {
    std::vector<Fact> facts = walk();
    const auto answer = [&] {
        Ledger ledger;
        for (auto each = facts.rbegin(); each != facts.rend(); ++each)
            ledger.add(*each);
        return ledger.evidenceOf("01", "5-31")
            .observations.at({"path-clear", Side::None})
            .body.answer;
    };
    facts.push_back(fact("10", Undone{}, "09"));
    EXPECT_EQ(answer(), Answer::Yes);
    facts.push_back(fact("11", Undone{}, "10"));
    EXPECT_EQ(answer(), Answer::No);
    facts.push_back(fact("12", Undone{}, "09"));
    EXPECT_EQ(answer(), Answer::Yes);
}

/// None of these is written by a program of ours; none may keep the ledger busy for ever.
TEST(Ledger, UndoesThatWaitForEachOtherOrComeTooEarlyUndoNothing) {
    Ledger ledger;
    for (const Fact& each : walk())
        ledger.add(each);
    ledger.add(fact("10", Undone{}, "11"));
    ledger.add(fact("11", Undone{}, "10"));
    ledger.add(fact("015", Undone{}, "02"));
    EXPECT_FALSE(ledger.isUndone("02"));
    EXPECT_EQ(ledger.subjectOf(*ledger.find("11")), nullptr);
    EXPECT_EQ(ledger.doorOf(*ledger.find("11")), "");
}

TEST(Ledger, DoorsAreKnownByWayOfWhatAFactNames) {
    Ledger ledger;
    for (const Fact& each : walk())
        ledger.add(each);
    ledger.add(fact("10", Deficiency{"01", "5-32", "", "seal torn", {}}));
    ledger.add(fact("11", Rectification{"10", "renewed", "bosun"}));
    ledger.add(fact("12", Undone{}, "11"));
    const std::map<FactId, std::string> doors{{"01", ""},     {"02", "5-31"}, {"04", "5-31"},
                                              {"06", "5-31"}, {"08", "5-31"}, {"10", "5-32"},
                                              {"11", "5-32"}, {"12", "5-32"}};
    for (const auto& [id, door] : doors)
        EXPECT_EQ(ledger.doorOf(*ledger.find(id)), door) << id;
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
    ledger.add(fact("04", TakenBack{"slip"}, "03"));
    ASSERT_TRUE(ledger.walkdown("01")->end);
    EXPECT_EQ(ledger.walkdown("01")->end->body.remark, "here");
    ledger.add(fact("05", TakenBack{"slip"}, "02"));
    EXPECT_FALSE(ledger.walkdown("01")->end);
}
