// What may be recorded beside what is on record.
#include <gtest/gtest.h>

#include "core/evidence/admission.h"
#include "core/evidence/ledger.h"
#include "core/evidence/undo.h"

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
    std::optional<Complaint> refusal(const Fact& asked) {
        return refusalOf(asked, {[this](const FactId& id) {
                                     const Fact* found = ledger.find(id);
                                     return found ? std::optional(*found) : std::nullopt;
                                 },
                                 [this](const FactId& id) {
                                     const auto walk = ledger.walkdown(id);
                                     return walk && walk->end;
                                 }});
    }
};

} // namespace

/// As a person does: answers, clears the answer, undoes that, answers otherwise.
TEST_F(Admission, AnAnswerMayComeAgainAfterItWasTakenBack) {
    ledger.add(fact("02", yes));
    ledger.add(fact("03", TakenBack{"answer taken back"}, "02"));
    const auto undo = undoOf(*ledger.find("03"), ledger);
    ASSERT_TRUE(undo);
    const Fact again = fact("04", undo->body, undo->supersedes);
    EXPECT_FALSE(refusal(again));
    ledger.add(again);
    EXPECT_FALSE(refusal(fact("05", no, "04")));
    EXPECT_FALSE(refusal(fact("05", no, "03")));
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
    EXPECT_FALSE(refusal(fact("05", TakenBack{"undone"}, "04")));
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
}
