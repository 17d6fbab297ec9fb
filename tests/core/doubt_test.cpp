// What a surveyor with the text in hand would not let pass: runs that hide one another, a plan that
// goes below a rule, a ship outside the text's reach.
#include <gtest/gtest.h>

#include "core/grading/grade.h"
#include "core/requirement/applicability.h"
#include "tests/core/given.h"
#include "tests/core/us_asked.h"

using namespace latchround;

namespace {

struct Ship {
    Particulars vessel = given::solasVessel();
    Door door = given::slidingDoor();
    Boundary boundary = given::zoneBulkhead();
    DoorEvidence evidence{};

    Ship() { evidence.door = door.number; }
    DoorGrade graded() const {
        return grade(vessel, door, &boundary, evidence, given::catalogue());
    }
    RowGrade row(const char* id) const { return *findRow(graded(), id); }
    void remote(const std::vector<std::pair<MarkKind, double>>& marks, double heel_deg = 0) {
        evidence.runs.push_back(given::run(Release::Remote, marks, heel_deg));
    }
};

} // namespace

// "approximately uniform rate", 9.4.1.1.5.2.
TEST(UnevenHalf, IsNotHiddenByARunThatDiffers) {
    Ship ship;
    ship.remote({{MarkKind::AlarmOn, 0},
                 {MarkKind::LeafMoves, 7},
                 {MarkKind::HalfWay, 8},
                 {MarkKind::Shut, 14.4},
                 {MarkKind::AlarmOff, 15}});
    EXPECT_EQ(ship.row("sliding-rate").reason.kind, ReasonKind::UnevenHalves);
    ship.remote({{MarkKind::AlarmOn, 0},
                 {MarkKind::LeafMoves, 7},
                 {MarkKind::Shut, 20},
                 {MarkKind::AlarmOff, 21}});
    EXPECT_EQ(ship.row("sliding-rate").verdict, Verdict::Judge);
}

TEST(Alarm, ThatComesOnWhenTheDoorIsShutDoesNotHold) {
    Ship ship;
    ship.remote({{MarkKind::LeafMoves, 7},
                 {MarkKind::Shut, 17},
                 {MarkKind::AlarmOn, 18},
                 {MarkKind::AlarmOff, 20}});
    EXPECT_EQ(ship.row("alarm-holds").verdict, Verdict::Unsatisfactory);
    EXPECT_EQ(ship.row("alarm-holds").reason.kind, ReasonKind::AlarmAfterClosing);
}

TEST(Alarm, OfWhichOnlyTheEndWasMarkedHasSounded) {
    Ship ship;
    ship.remote({{MarkKind::LeafMoves, 7}, {MarkKind::Shut, 17}, {MarkKind::AlarmOff, 17.4}});
    EXPECT_EQ(ship.row("alarm-sounds").verdict, Verdict::Satisfactory);
    EXPECT_EQ(ship.row("alarm-lead").reason.kind, ReasonKind::MarkMissing);
}

TEST(Alarm, ThatDiffersFromRunToRunIsNotCalledAnUnevenClosing) {
    Ship ship;
    for (const double lead : {4.5, 5.6})
        ship.remote({{MarkKind::AlarmOn, 0},
                     {MarkKind::LeafMoves, lead},
                     {MarkKind::Shut, lead + 9},
                     {MarkKind::AlarmOff, lead + 9.3}});
    EXPECT_EQ(ship.row("alarm-lead").verdict, Verdict::Unsatisfactory);
    EXPECT_EQ(ship.row("alarm-lead").reason.kind, ReasonKind::AlarmsDisagree);
}

// Against 3.5 degrees, 9.4.1.1.5.1: a list that helps shows nothing.
TEST(SelfClosing, IsNotShownWithHeel) {
    Ship ship;
    ship.remote({{MarkKind::AlarmOn, 0},
                 {MarkKind::LeafMoves, 7},
                 {MarkKind::Shut, 17},
                 {MarkKind::AlarmOff, 18}},
                -20);
    EXPECT_EQ(ship.row("self-closing").verdict, Verdict::Untested);
    EXPECT_EQ(ship.row("self-closing").reason.kind, ReasonKind::ShipNotUpright);
    EXPECT_EQ(ship.row("remote-release").verdict, Verdict::Satisfactory);
}

TEST(RunWithoutAnEnd, IsNotCalledNotYetTried) {
    Ship ship;
    RunRecord ajar = given::run(Release::Remote, {{MarkKind::LeafMoves, 0}});
    ajar.end.reset();
    ship.evidence.runs = {ajar};
    EXPECT_EQ(ship.row("sliding-rate").reason.kind, ReasonKind::NoRunComplete);
    EXPECT_EQ(ship.row("self-closing").reason.kind, ReasonKind::NoRunComplete);
}

TEST(NormallyLocked, IsNotWhatWasTimedAsItClosed) {
    Ship ship;
    ship.door.normally = NormalPosition::Locked;
    given::answer(ship.evidence, "found-locked", Answer::Yes);
    EXPECT_EQ(ship.row("sliding-rate").verdict, Verdict::NotApplicable);
    ship.remote({{MarkKind::AlarmOn, 0},
                 {MarkKind::LeafMoves, 7},
                 {MarkKind::Shut, 8},
                 {MarkKind::AlarmOff, 9}});
    EXPECT_EQ(ship.row("sliding-rate").verdict, Verdict::Unsatisfactory);
}

// SOLAS II-2/9.2.2.1.1: bulkheads of main vertical zones are A class.
TEST(ZoneBulkhead, OfNoAClassByThePlanIsTheInspectors) {
    Ship ship;
    ship.boundary.required = ship.door.fire_class = FireClass::C;
    EXPECT_EQ(ship.row("rating").verdict, Verdict::Judge);
    EXPECT_EQ(ship.row("rating").reason.kind, ReasonKind::PlanBelowRule);
    ship.boundary.required = ship.door.fire_class = FireClass::A0;
    EXPECT_EQ(ship.row("rating").verdict, Verdict::Satisfactory) << "the plan stands before tables";
}

TEST(LowerDoor, InAnAClassBoundaryIsAskedWhatTheBoundaryAsks) {
    Ship ship;
    ship.door = given::hingedDoor();
    ship.door.fire_class = FireClass::C;
    for (const char* id : {"one-person", "hose-port", "material", "condition", "plan-has-door"})
        EXPECT_EQ(ship.row(id).verdict, Verdict::Untested) << id;
}

// 46 CFR 116.415(d)(1), 72.05-10(d): a zone bulkhead is of an A class, whatever the door.
TEST(UsZoneBulkhead, ThatNobodyClassedIsNotOfTheDoorsOwnClass) {
    given::Site made;
    given::us<Regime::UsK, FireClass::B15, Place::ZoneBulkhead>(made);
    made.boundary.required.reset();
    DoorEvidence evidence;
    evidence.door = made.door.number;
    given::measured(evidence, "k-undercut", 20);
    given::measured(evidence, "k-latch-throw", 10);
    for (const char* id : {"k-undercut", "k-latch-throw"})
        EXPECT_EQ(given::rowOf(given::vesselOf(made), made, id, evidence).verdict,
                  Verdict::Unsatisfactory)
            << id;
}

// 46 CFR subchapter K is for 50 passengers or more; SOR/2017-14, s. 201 for fewer than 100.
TEST(Reach, OutsideItAFailureIsTheInspectors) {
    given::Site made;
    given::usA<Regime::UsK>(made);
    Particulars vessel = given::vesselOf(made);
    for (const auto& [passengers, verdict] :
         {std::pair{50, Verdict::Unsatisfactory}, {49, Verdict::Judge}}) {
        vessel.passengers = passengers;
        EXPECT_EQ(given::whenNo(vessel, made, "k-has-latch"), verdict) << passengers;
    }
}
