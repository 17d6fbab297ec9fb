// What may be recorded beside what is on record.
#include <gtest/gtest.h>

#include "core/evidence/admission.h"
#include "core/evidence/ledger.h"

using namespace latchround;

namespace {

Fact fact(const std::string& id, FactBody body, std::optional<FactId> supersedes = {}) {
    return {{id, {}, "p", "d", std::move(supersedes)}, std::move(body)};
}

const Observation yes{"01", "5-31", "path-clear", Side::None, Answer::Yes};
const Observation no{"01", "5-31", "path-clear", Side::None, Answer::No};

struct Admission : testing::Test {
    Ledger ledger;

    void SetUp() override { ledger.add(fact("01", WalkdownBegun{})); }
    std::optional<Error> refusal(const Fact& asked) { return refusalOf(asked, onRecord(ledger)); }
};

} // namespace

/// As programs before form 6 of the register recorded an undo: the answer was said again.
TEST_F(Admission, AnAnswerMayComeAgainAfterItWasTakenBack) {
    ledger.add(fact("02", yes));
    ledger.add(fact("03", TakenBack{"answer taken back"}, "02"));
    const Fact again = fact("04", yes, "03");
    EXPECT_FALSE(refusal(again));
    ledger.add(again);
    EXPECT_FALSE(refusal(fact("05", no, "04")));
    EXPECT_FALSE(refusal(fact("05", no, "03")));
}

TEST_F(Admission, UndoIsForWhoRecordedItOnThatTablet) {
    ledger.add(fact("02", yes));
    EXPECT_FALSE(refusal(fact("03", Undone{}, "02")));
    Fact undo = fact("03", Undone{}, "02");
    undo.stamp.person = "q";
    EXPECT_TRUE(refusal(undo));
    undo = fact("03", Undone{}, "02");
    undo.stamp.device = "e";
    EXPECT_TRUE(refusal(undo));
    EXPECT_TRUE(refusal(fact("015", Undone{}, "02"))) << "it is earlier than what it undoes";
}

TEST_F(Admission, UndoIsUndoneOnceAndNoMore) {
    ledger.add(fact("02", yes));
    ledger.add(fact("03", Undone{}, "02"));
    const Fact put_back = fact("04", Undone{}, "03");
    EXPECT_FALSE(refusal(put_back));
    ledger.add(put_back);
    EXPECT_TRUE(refusal(fact("05", Undone{}, "04")));
    EXPECT_FALSE(refusal(fact("05", Undone{}, "02")));
}

TEST_F(Admission, UndoReachesNoMarksPeopleKeysSignaturesAndPapers) {
    ledger.add(fact("02", RunStarted{"01", "5-31", RunKind::Closing, Release::LetGo, 0}));
    const std::vector<FactBody> out_of_reach{
        PersonJoined{"Maren Tollefsby", "surveyor"},
        Mark{"02", MarkKind::LeafMoves, 1000, {}, InputDevice::Key, {}},
        RunEnded{"02", RunOutcome::Complete, {}},
        KeyAccepted{},
        WalkdownSigned{},
        ReportMade{}};
    int next = 10;
    for (const FactBody& body : out_of_reach) {
        const FactId id = std::to_string(next++);
        const FactId slip = std::to_string(next++);
        ledger.add(fact(id, body));
        ledger.add(fact(slip, TakenBack{"slip"}, id));
        EXPECT_TRUE(refusal(fact("90", Undone{}, id))) << factKindWords[body.index()];
        EXPECT_TRUE(refusal(fact("90", Undone{}, slip))) << factKindWords[body.index()];
    }
    EXPECT_FALSE(refusal(fact("90", Undone{}, "02"))) << "a run goes as a whole";
}

TEST_F(Admission, ACorrectionSpeaksOfTheSameRowDoorAndSide) {
    ledger.add(fact("02", yes));
    ledger.add(fact("03", TakenBack{"slip"}, "02"));
    for (const char* slip : {"02", "03"}) {
        Observation other = yes;
        other.requirement = "sill";
        EXPECT_TRUE(refusal(fact("05", other, slip)));
        other = yes;
        other.door = "5-32";
        EXPECT_TRUE(refusal(fact("05", other, slip)));
        other = yes;
        other.side = Side::Two;
        EXPECT_TRUE(refusal(fact("05", other, slip)));
        EXPECT_TRUE(refusal(fact("05", Note{"01", "5-31", "?"}, slip)));
        EXPECT_FALSE(refusal(fact("05", no, slip)));
    }
}

TEST_F(Admission, OfAnEndedWalkdownOnlyItsEndIsTakenBack) {
    ledger.add(fact("02", yes));
    ledger.add(fact("03", Deficiency{"01", "5-31", "path-clear", "blocked", {}}));
    ledger.add(fact("04", WalkdownEnded{"01", ""}));
    EXPECT_TRUE(refusal(fact("05", no, "02")));
    EXPECT_TRUE(refusal(fact("05", TakenBack{"slip"}, "02")));
    EXPECT_TRUE(refusal(fact("05", WalkdownEnded{"01", "again"})));
    EXPECT_FALSE(refusal(fact("05", TakenBack{"slip"}, "04")));
    EXPECT_TRUE(refusal(fact("05", Undone{}, "02")));
    EXPECT_FALSE(refusal(fact("05", Undone{}, "03")));
    EXPECT_FALSE(refusal(fact("05", Undone{}, "04")));
    EXPECT_FALSE(refusal(fact("05", Rectification{"03", "cleared", "bosun"})));
    Photograph photograph{"01", "5-31", "", "image/png", "", "", {}};
    EXPECT_TRUE(refusal(fact("05", photograph)));
    photograph.shows = "03";
    EXPECT_FALSE(refusal(fact("05", photograph)));
}

/// A chain of slips that leads nowhere comes to an end.
TEST_F(Admission, SlipsOfSlipsInACircleReplaceNothing) {
    ledger.add(fact("02", TakenBack{"a"}, "03"));
    ledger.add(fact("03", TakenBack{"b"}, "02"));
    EXPECT_TRUE(refusal(fact("05", yes, "03")));
    EXPECT_TRUE(refusal(fact("05", Undone{}, "03")));
}
