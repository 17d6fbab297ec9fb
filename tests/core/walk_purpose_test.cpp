// What a walk of each purpose tries, and what a latch or a lamp that is not in order comes to.
#include <gtest/gtest.h>

#include "core/grading/graded_walkdown.h"
#include "tests/core/given.h"

using namespace latchround;

namespace {

DoorEvidence answered(const char* id, Answer answer) {
    DoorEvidence evidence;
    evidence.door = given::hingedDoor().number;
    given::answer(evidence, id, answer);
    return evidence;
}

RowGrade rowOf(const Door& door, const DoorEvidence& evidence, const char* id, Purpose purpose,
               const Particulars& vessel = given::solasVessel()) {
    const Boundary boundary = given::zoneBulkhead();
    const DoorGrade graded = grade(vessel, door, &boundary, evidence, given::catalogue(),
                                   upkeepOf(given::catalogue(), purpose));
    return *findRow(graded, id);
}

Verdict unlatched(const Door& door, const char* keel = "2012-05-01",
                  Regime regime = Regime::SolasPassenger) {
    Particulars vessel = given::solasVessel();
    vessel.keel_laid = calendarDateFrom(keel);
    vessel.regime = regime;
    return rowOf(door, answered("latches", Answer::No), "latches", Purpose::Annual, vessel).verdict;
}

} // namespace

TEST(WalkPurpose, HasItsOwnUpkeepOrTriesEveryRow) {
    for (const auto& [purpose, id] : {std::pair{Purpose::Quarterly, "quarterly"},
                                      {Purpose::DoorCampaign, "door-campaign"},
                                      {Purpose::Blackout, "blackout"}}) {
        const Upkeep* upkeep = upkeepOf(given::catalogue(), purpose);
        ASSERT_NE(upkeep, nullptr) << id;
        EXPECT_EQ(upkeep->id, id);
        EXPECT_EQ(purposeOf(*upkeep), purpose) << id;
    }
    for (const Purpose purpose :
         {Purpose::Annual, Purpose::AfterRepair, Purpose::PortState, Purpose::Drill})
        EXPECT_EQ(upkeepOf(given::catalogue(), purpose), nullptr);
}

// Our own list, no source: lamps, a sample local and remote, lashed open, closes and latches,
// machinery doors, rating.
TEST(DoorCampaign, AsksItsOwnListAndHidesNoFailure) {
    const Door door = given::hingedDoor();
    for (const char* id :
         {"indicator", "local-release", "remote-release", "not-held", "self-closing", "latches"})
        EXPECT_EQ(rowOf(door, {}, id, Purpose::DoorCampaign).verdict, Verdict::Untested) << id;
    for (const char* id : {"hose-port", "seals-whole", "independence"})
        EXPECT_EQ(rowOf(door, {}, id, Purpose::DoorCampaign).reason.kind,
                  ReasonKind::OutsideThisWalk)
            << id;
    EXPECT_EQ(
        rowOf(door, answered("hose-port", Answer::No), "hose-port", Purpose::DoorCampaign).verdict,
        Verdict::Unsatisfactory);
}

TEST(BlackoutTrial, IsPlannedAndRecordedByItself) {
    const Door door = given::hingedDoor();
    EXPECT_EQ(rowOf(door, {}, "blackout", Purpose::Blackout).verdict, Verdict::Untested);
    EXPECT_EQ(rowOf(door, {}, "self-closing", Purpose::Blackout).reason.kind,
              ReasonKind::OutsideThisWalk);
    const auto verdict = [&](Answer answer) {
        return rowOf(door, answered("blackout", answer), "blackout", Purpose::Blackout).verdict;
    };
    EXPECT_EQ(verdict(Answer::Yes), Verdict::Satisfactory);
    EXPECT_EQ(verdict(Answer::No), Verdict::Unsatisfactory);
}

// SOLAS II-2/9.4.1.1.2: means of securing A-class doors when closed.
TEST(Latch, ThatTheTextAsksForFailsTheDoor) {
    Door door = given::hingedDoor();
    EXPECT_EQ(unlatched(door), Verdict::Unsatisfactory);
    EXPECT_EQ(unlatched(door, "2002-07-01"), Verdict::Unsatisfactory);
    EXPECT_EQ(unlatched(door, "2002-06-30"), Verdict::Judge);
    EXPECT_EQ(unlatched(door, ""), Verdict::Judge);
    EXPECT_EQ(unlatched(door, "2012-05-01", Regime::Other), Verdict::Judge);
    door.fire_class = FireClass::B15;
    EXPECT_EQ(unlatched(door), Verdict::Unsatisfactory) << "it stands in an A-class bulkhead";
    door.latch = false;
    EXPECT_EQ(unlatched(door), Verdict::NotApplicable);
}

TEST(Latch, CitesTheTextThatAsksForIt) {
    const RowGrade row = rowOf(given::hingedDoor(), {}, "latches", Purpose::Annual);
    EXPECT_EQ(row.requirement->cite, "SOLAS II-2/9.4.1.1.2");
    EXPECT_EQ(row.requirement->issuer, "SOLAS");
    EXPECT_EQ(given::row("latches").cite, "common practice, no published source")
        << "of other doors";
}

TEST(Indicator, ThatLiesIsSerious) {
    EXPECT_EQ(given::row("indicator").severity, Severity::Serious);
    EXPECT_EQ(given::row("bridge-indicator").severity, Severity::Serious);
}
