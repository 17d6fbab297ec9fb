// Undo adds facts and deletes none: what the tap replaced counts again, or that it was a slip.
#include <gtest/gtest.h>

#include "core/evidence/undo.h"

using namespace latchround;

namespace {

Fact fact(const std::string& id, FactBody body, std::optional<FactId> supersedes = {}) {
    return {{id, {}, "p", "d", std::move(supersedes)}, std::move(body)};
}

const Observation yes{"01", "5-31", "path-clear", Side::None, Answer::Yes};
const Observation no{"01", "5-31", "path-clear", Side::None, Answer::No};

/// Records the facts, then the undo of the last; answers the ledger.
Ledger undone(std::vector<Fact> facts) {
    Ledger ledger;
    for (const Fact& each : facts)
        ledger.add(each);
    const std::optional<Undo> undo = undoOf(facts.back(), ledger);
    if (undo)
        ledger.add(fact("99", undo->body, undo->supersedes));
    return ledger;
}

} // namespace

TEST(Undo, AnAnswerIsGone) {
    const Ledger ledger = undone({fact("01", WalkdownBegun{}), fact("02", yes)});
    EXPECT_TRUE(ledger.evidenceOf("01", "5-31").empty());
}

TEST(Undo, TheAnswerBeforeCountsAgain) {
    const Ledger ledger =
        undone({fact("01", WalkdownBegun{}), fact("02", yes), fact("03", no, "02")});
    EXPECT_EQ(ledger.evidenceOf("01", "5-31").observations.at({"path-clear", Side::None}).body,
              yes);
}

TEST(Undo, AnAnswerThatWasClearedCountsAgain) {
    const Ledger ledger = undone(
        {fact("01", WalkdownBegun{}), fact("02", yes), fact("03", TakenBack{"cleared"}, "02")});
    EXPECT_EQ(ledger.evidenceOf("01", "5-31").observations.at({"path-clear", Side::None}).body,
              yes);
}

TEST(Undo, ARunGoesAsAWhole) {
    const Ledger ledger =
        undone({fact("01", WalkdownBegun{}),
                fact("02", RunStarted{"01", "5-31", RunKind::Closing, Release::LetGo, 0}),
                fact("03", Mark{"02", MarkKind::LeafMoves, 1000, {}, InputDevice::Key, {}}),
                fact("04", RunEnded{"02", RunOutcome::Complete, {}})});
    EXPECT_TRUE(ledger.evidenceOf("01", "5-31").runs.empty());
}

TEST(Undo, AWalkdownThatEndedGoesOn) {
    const Ledger ledger =
        undone({fact("01", WalkdownBegun{}), fact("02", WalkdownEnded{"01", {}})});
    EXPECT_FALSE(ledger.walkdown("01")->end);
}

TEST(Undo, ADeficiencyIsNoItemAnyMore) {
    const Ledger ledger = undone(
        {fact("01", WalkdownBegun{}), fact("02", Deficiency{"01", "5-31", "", "seal torn", {}})});
    EXPECT_TRUE(ledger.deficiencies().empty());
}

TEST(Undo, DoesNotReachMarksSignaturesKeysPapersAndPeople) {
    Ledger ledger;
    const std::vector<Fact> out_of_reach{
        fact("02", PersonJoined{"Maren Tollefsby", "surveyor"}),
        fact("03", RunStarted{"01", "5-31", RunKind::Closing, Release::LetGo, 0}),
        fact("04", Mark{"03", MarkKind::LeafMoves, 1000, {}, InputDevice::Key, {}}),
        fact("05", TakenBack{"mark taken back"}, "04"),
        fact("06", KeyAccepted{}),
        fact("07", WalkdownSigned{}),
        fact("08", ReportMade{})};
    for (const Fact& each : out_of_reach)
        ledger.add(each);
    for (const Fact& each : out_of_reach)
        EXPECT_FALSE(undoOf(each, ledger)) << each.stamp.id;
}
