// What undo reaches and what counts afterwards: as if the tap had never been; and what was taken
// back can be put back.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/evidence/taps.h"

using namespace latchround;
using testing::ElementsAre;

namespace {

const Hand hand{"p", "d"};
const Observation yes{"01", "5-31", "path-clear", Side::None, Answer::Yes};
const Observation no{"01", "5-31", "path-clear", Side::None, Answer::No};

/// Records as a program does: each call one action, of one moment.
struct Taps : testing::Test {
    Ledger ledger;
    int last = 0;

    void SetUp() override { record(WalkdownBegun{}); }

    FactId add(FactBody body, const Hand& by, std::optional<FactId> supersedes = {}) {
        ++last;
        FactId id = (last < 10 ? "0" : "") + std::to_string(last);
        ledger.add(
            {{id, {last, 60}, by.person, by.device, std::move(supersedes)}, std::move(body)});
        return id;
    }
    FactId record(FactBody body, std::optional<FactId> supersedes = {}) {
        return add(std::move(body), hand, std::move(supersedes));
    }
    void undo(const std::optional<Tap>& tap) {
        ASSERT_TRUE(tap);
        const Moment now{++last, 60};
        for (const FactId& id : tap->facts) {
            const FactId undo = std::to_string(last++);
            ledger.add({{undo, now, hand.person, hand.device, id}, Undone{}});
        }
    }
    void takeBack(const std::string& door = {}) { undo(tapToTakeBack(ledger, hand, door)); }
    void putBack(const std::string& door = {}) { undo(tapToPutBack(ledger, hand, door)); }
    std::optional<Answer> answer() const {
        const auto seen = ledger.evidenceOf("01", "5-31").observations;
        const auto found = seen.find({"path-clear", Side::None});
        return found == seen.end() ? std::nullopt : std::optional(found->second.body.answer);
    }
    FactId aRun() {
        const FactId run = record(RunStarted{"01", "5-31", RunKind::Closing, Release::LetGo, 0});
        record(Mark{run, MarkKind::LeafMoves, 1000, {}, InputDevice::Key, {}});
        record(RunEnded{run, RunOutcome::Complete, {}});
        return run;
    }
};

} // namespace

TEST_F(Taps, AnAnswerIsGoneAndComesAgain) {
    last = 9;
    record(yes);
    takeBack();
    EXPECT_FALSE(answer());
    putBack();
    EXPECT_EQ(answer(), Answer::Yes);
    takeBack();
    EXPECT_FALSE(answer());
}

TEST_F(Taps, TheAnswerBeforeCountsAgainAndSoOnBackwardsAndForwards) {
    last = 9;
    const FactId first = record(yes);
    const FactId second = record(no, first);
    record(yes, second);
    for (const auto& stands :
         {std::optional(Answer::No), std::optional(Answer::Yes), std::optional<Answer>()}) {
        takeBack();
        EXPECT_EQ(answer(), stands);
    }
    EXPECT_FALSE(tapToTakeBack(ledger, hand, "5-31"));
    for (const Answer stands : {Answer::Yes, Answer::No, Answer::Yes}) {
        putBack();
        EXPECT_EQ(answer(), stands);
    }
    EXPECT_FALSE(tapToPutBack(ledger, hand, {}));
}

TEST_F(Taps, AnAnswerThatWasClearedCountsAgain) {
    last = 9;
    record(TakenBack{"answer taken back"}, record(yes));
    takeBack();
    EXPECT_EQ(answer(), Answer::Yes);
    putBack();
    EXPECT_FALSE(answer());
}

TEST_F(Taps, ARunGoesAndComesAsAWhole) {
    last = 9;
    const FactId run = aRun();
    takeBack();
    EXPECT_TRUE(ledger.evidenceOf("01", "5-31").runs.empty());
    putBack();
    const DoorEvidence evidence = ledger.evidenceOf("01", "5-31");
    ASSERT_EQ(evidence.runs.size(), 1U);
    EXPECT_EQ(evidence.runs.front().id, run);
    EXPECT_EQ(evidence.runs.front().marks.size(), 1U);
    EXPECT_TRUE(evidence.runs.front().end);
}

TEST_F(Taps, ARunThatGoesOnIsNoTap) {
    last = 9;
    const FactId run = record(RunStarted{"01", "5-31", RunKind::Closing, Release::LetGo, 0});
    const FactId end = record(RunEnded{run, RunOutcome::Complete, {}});
    record(TakenBack{"run goes on"}, end);
    EXPECT_FALSE(tapToTakeBack(ledger, hand, "5-31"));
}

TEST_F(Taps, AWalkdownThatEndedGoesOnAndNothingInAnEndedOneIsReached) {
    last = 9;
    record(yes);
    record(WalkdownEnded{"01", {}});
    EXPECT_FALSE(tapToTakeBack(ledger, hand, "5-31")) << "its walkdown has ended";
    takeBack();
    EXPECT_FALSE(ledger.walkdown("01")->end);
    EXPECT_TRUE(tapToTakeBack(ledger, hand, "5-31"));
    putBack();
    EXPECT_TRUE(ledger.walkdown("01")->end);
}

TEST_F(Taps, AWalkdownInWhichSomebodyRecordedStays) {
    EXPECT_TRUE(tapToTakeBack(ledger, hand, {}));
    add(yes, {"q", "d"});
    EXPECT_FALSE(tapToTakeBack(ledger, hand, {}));
}

TEST_F(Taps, ADeficiencyIsNoItemAnyMoreAndComesAgainUnderItsOwnId) {
    last = 9;
    const FactId written = record(Deficiency{"01", "5-31", "", "seal torn", {}});
    takeBack("5-31");
    EXPECT_TRUE(ledger.deficiencies().empty());
    putBack("5-31");
    EXPECT_THAT(ledger.deficiencies(), ElementsAre(written));
}

TEST_F(Taps, OneActionIsOneTap) {
    last = 9;
    const Moment now{77, 60};
    for (const char* question : {"a", "b", "c"})
        ledger.add({{std::to_string(++last), now, "p", "d", {}},
                    CautionAnswered{"01", "5-31", question, true}});
    EXPECT_EQ(tapToTakeBack(ledger, hand, "5-31")->facts.size(), 3U);
    takeBack();
    EXPECT_TRUE(ledger.evidenceOf("01", "5-31").cautions.empty());
    putBack();
    EXPECT_EQ(ledger.evidenceOf("01", "5-31").cautions.size(), 3U);
}

TEST_F(Taps, StayWithTheDoorThatIsAskedFor) {
    last = 9;
    const FactId here = record(yes);
    const FactId there = record(Note{"01", "5-32", "seal torn"});
    EXPECT_THAT(tapToTakeBack(ledger, hand, "5-31")->facts, ElementsAre(here));
    EXPECT_THAT(tapToTakeBack(ledger, hand, {})->facts, ElementsAre(there));
    takeBack("5-31");
    EXPECT_FALSE(tapToTakeBack(ledger, hand, "5-31"));
    EXPECT_FALSE(tapToPutBack(ledger, hand, "5-32"));
    EXPECT_EQ(tapToPutBack(ledger, hand, "5-31")->named_by->stamp.id, here);
}

TEST_F(Taps, NothingIsPutBackOverWhatWasTappedSince) {
    last = 9;
    record(yes);
    takeBack();
    record(Note{"01", "5-32", "seal torn"});
    EXPECT_TRUE(tapToPutBack(ledger, hand, "5-31")) << "that was another door";
    record(no);
    EXPECT_FALSE(tapToPutBack(ledger, hand, "5-31"));
}

TEST_F(Taps, OfOthersAndOfOtherTabletsAreNotReached) {
    last = 9;
    add(yes, {"q", "d"});
    add(Note{"01", "5-31", "x"}, {"p", "e"});
    EXPECT_FALSE(tapToTakeBack(ledger, hand, "5-31"));
}

TEST_F(Taps, WhatSomebodyElseReplacedIsNotReached) {
    last = 9;
    add(no, {"q", "d"}, record(yes));
    EXPECT_FALSE(tapToTakeBack(ledger, hand, "5-31"));
    EXPECT_EQ(answer(), Answer::No);
}

TEST_F(Taps, NothingThatWasSignedIsReached) {
    last = 9;
    record(Deficiency{"01", "5-31", "", "seal torn", {}});
    takeBack();
    const FactId seal = record(Deficiency{"01", "5-31", "", "seal torn", {}});
    add(WalkdownSigned{"01", Capacity::Inspector, {{"d", seal, 1}}, {}, {}, {}}, {"q", "e"});
    EXPECT_FALSE(tapToTakeBack(ledger, hand, {}));
    EXPECT_FALSE(tapToPutBack(ledger, hand, {}));
    const FactId after = record(Deficiency{"01", "5-32", "", "hinge worn", {}});
    EXPECT_THAT(tapToTakeBack(ledger, hand, {})->facts, ElementsAre(after));
    record(WalkdownSigned{"01", Capacity::Inspector, {}, {}, {}, {}});
    EXPECT_FALSE(tapToTakeBack(ledger, hand, {}));
}

TEST_F(Taps, MarksSignaturesKeysPapersAndPeopleAreNotReached) {
    last = 9;
    const FactId run = record(RunStarted{"01", "5-31", RunKind::Closing, Release::LetGo, 0});
    const FactId mark = record(Mark{run, MarkKind::LeafMoves, 1000, {}, InputDevice::Key, {}});
    record(TakenBack{"mark taken back"}, mark);
    record(PersonJoined{"Maren Tollefsby", "surveyor"});
    record(TakenBack{"trusted no more"}, record(KeyAccepted{}));
    record(ReportMade{});
    EXPECT_FALSE(tapToTakeBack(ledger, hand, {}));
}

TEST_F(Taps, OfATapAtManyDoorsOnlyWhatWasAtTheDoorAskedFor) {
    last = 9;
    const Moment now{77, 60};
    FactId here;
    for (const char* door : {"5-02", "5-31", "5-32"}) {
        const FactId id = std::to_string(++last);
        ledger.add({{id, now, "p", "d", {}}, Deficiency{"01", door, "", "seal torn", {}}});
        if (door == std::string("5-31"))
            here = id;
    }
    const auto tap = tapToTakeBack(ledger, hand, "5-31");
    EXPECT_EQ(tap->named_by->stamp.id, here);
    EXPECT_THAT(tap->facts, ElementsAre(here));
    EXPECT_EQ(tapToTakeBack(ledger, hand, {})->facts.size(), 3U);
    takeBack();
    EXPECT_EQ(tapToPutBack(ledger, hand, "5-31")->facts.size(), 1U);
    putBack("5-31");
    EXPECT_THAT(ledger.deficiencies(), ElementsAre(here));
}

TEST_F(Taps, AreKnownByTheirRun) {
    last = 9;
    const Moment now{77, 60};
    const auto add_now = [&](FactBody body) {
        FactId id = std::to_string(++last);
        ledger.add({{id, now, "p", "d", {}}, std::move(body)});
        return id;
    };
    add_now(Note{"01", "5-31", "by hand"});
    const FactId run = add_now(RunStarted{"01", "5-31", RunKind::Closing, Release::LetGo, 0});
    const FactId end = add_now(RunEnded{run, RunOutcome::Complete, {}});
    EXPECT_EQ(tapToTakeBack(ledger, hand, "5-31")->named_by->stamp.id, end);
    takeBack();
    EXPECT_EQ(tapToPutBack(ledger, hand, "5-31")->named_by->stamp.id, run);
}

TEST_F(Taps, ACautionThatAReleaseWentByStays) {
    last = 9;
    record(CautionAnswered{"01", "5-31", "announced", true});
    const FactId run = record(RunStarted{"01", "5-31", RunKind::Closing, Release::Remote, 0});
    EXPECT_FALSE(tapToTakeBack(ledger, hand, "5-31")) << "the run was cut short";
    record(RunEnded{run, RunOutcome::Void, {}});
    takeBack("5-31");
    EXPECT_FALSE(tapToTakeBack(ledger, hand, "5-31"));
    const FactId fresh = record(CautionAnswered{"01", "5-31", "announced", true});
    EXPECT_THAT(tapToTakeBack(ledger, hand, "5-31")->facts, ElementsAre(fresh));
}

TEST_F(Taps, WhatSomethingMoreWasRecordedOfIsNotReached) {
    last = 9;
    const FactId written = record(Deficiency{"01", "5-31", "", "seal torn", {}});
    add(Rectification{written, "new seal", "Bo"}, {"q", "d"});
    EXPECT_FALSE(tapToTakeBack(ledger, hand, "5-31"));
}

TEST_F(Taps, WhatOthersRestedOnMeanwhileCountsAsIfItHadNotBeenUndone) {
    const FactId undo = "90";
    ledger.add({{undo, {90, 60}, "p", "d", "01"}, Undone{}});
    EXPECT_TRUE(ledger.walkdowns().empty());
    add(yes, {"q", "e"}); // on another tablet, before the two were put together
    EXPECT_EQ(ledger.walkdowns().size(), 1U);
    EXPECT_FALSE(tapToPutBack(ledger, hand, {})) << "it counts already";

    last = 9;
    const FactId written = record(Deficiency{"01", "5-31", "", "seal torn", {}});
    ledger.add({{"91", {91, 60}, "p", "d", written}, Undone{}});
    EXPECT_TRUE(ledger.deficiencies().empty());
    add(Withdrawal{written, "as built"}, {"q", "e"});
    EXPECT_THAT(ledger.deficiencies(), ElementsAre(written));
}

TEST_F(Taps, BehindTheEndOfAWalkdownNothingIsReached) {
    last = 9;
    record(ThumbDrill{});
    aRun();
    add(WalkdownEnded{"01", {}}, {"q", "d"});
    EXPECT_FALSE(tapToTakeBack(ledger, hand, {})) << "the drill is what its times are read by";
    const FactId after = record(ThumbDrill{});
    EXPECT_THAT(tapToTakeBack(ledger, hand, {})->facts, ElementsAre(after));
}

TEST_F(Taps, WhatYieldedCountsAgainWhenWhatStoodIsUndone) {
    last = 9;
    const FactId stood = record(yes);
    const FactId yielded = add(no, {"q", "e"});
    add(DifferenceSettled{stood, {yielded}, "better light"}, {"r", "d"});
    EXPECT_EQ(answer(), Answer::Yes);
    takeBack("5-31");
    EXPECT_EQ(answer(), Answer::No);
    putBack("5-31");
    EXPECT_EQ(answer(), Answer::Yes);
}
