// A door whose alarm never sounds, and what the ship's heel has to do with it. SOLAS
// II-2/9.4.1.1.5.10 on the alarm, 9.4.1.1.5.2 on the upright ship.
#include <gtest/gtest.h>

#include "core/grading/grade.h"
#include "core/grading/run_grade.h"
#include "tests/core/given.h"
#include "tests/core/us_row_cases.h"

using namespace latchround;

namespace {

RunRecord silentRun() {
    return given::run(Release::Remote, {{MarkKind::LeafMoves, 6.4}, {MarkKind::Shut, 15.7}});
}

struct Alarmed {
    Door door = given::slidingDoor();
    DoorEvidence evidence{};
    Boundary boundary = given::zoneBulkhead();

    Alarmed(const std::vector<RunRecord>& runs) {
        evidence.door = door.number;
        evidence.runs = runs;
    }
    RowGrade row(const char* id) const {
        const DoorGrade all =
            grade(given::solasVessel(), door, &boundary, evidence, given::catalogue());
        return *findRow(all, id);
    }
};

} // namespace

TEST(SilentAlarm, FailsTheDoorOnceItIsSaid) {
    Alarmed door({silentRun(), silentRun(), silentRun()});
    EXPECT_EQ(door.row("alarm-sounds").verdict, Verdict::Judge);
    EXPECT_EQ(door.row("alarm-sounds").reason.kind, ReasonKind::AlarmNotMarked);
    EXPECT_EQ(door.row("alarm-lead").reason.kind, ReasonKind::AlarmNotMarked)
        << "not that it needs a remote run: there were three";
    given::answer(door.evidence, "alarm-sounds", Answer::No);
    EXPECT_EQ(door.row("alarm-sounds").verdict, Verdict::Unsatisfactory);
    EXPECT_EQ(door.row("alarm-lead").verdict, Verdict::NotApplicable) << "there is none to time";
    EXPECT_EQ(door.row("alarm-holds").verdict, Verdict::NotApplicable);
}

TEST(SilentAlarm, OnceInThreeIsNotPassedOver) {
    const Alarmed door({given::goodSlidingRun(), silentRun(), given::goodSlidingRun()});
    EXPECT_EQ(door.row("alarm-sounds").verdict, Verdict::Judge);
    EXPECT_EQ(door.row("alarm-lead").verdict, Verdict::Satisfactory);
}

TEST(SilentAlarm, IsNotASilentReleaseAtTheDoor) {
    RunRecord local = silentRun();
    local.release = Release::LocalSideOne;
    EXPECT_EQ(Alarmed({local}).row("alarm-sounds").reason.kind, ReasonKind::NeedsRemoteRun);
    EXPECT_EQ(Alarmed({local}).row("alarm-lead").reason.kind, ReasonKind::NeedsRemoteRun);
}

TEST(AlarmSounds, IsShownByTheRunInWhichItWasMarked) {
    const Alarmed door({given::goodSlidingRun()});
    EXPECT_EQ(door.row("alarm-sounds").verdict, Verdict::Satisfactory);
    EXPECT_EQ(door.row("alarm-sounds").reason.kind, ReasonKind::ShownByRun);
}

TEST(AlarmSounds, ANoTakesNoTimedAlarmAway) {
    Alarmed door({given::goodSlidingRun()});
    given::answer(door.evidence, "alarm-sounds", Answer::No);
    EXPECT_EQ(door.row("alarm-sounds").verdict, Verdict::Unsatisfactory);
    EXPECT_EQ(door.row("alarm-lead").verdict, Verdict::Satisfactory) << "it was timed";
}

TEST(Heel, MakesAdviceOfClosingAloneWhichTheTextAsksUpright) {
    RunRecord heeled = given::goodSlidingRun();
    heeled.heel_deg = 1.5;
    const Alarmed door({heeled});
    EXPECT_EQ(door.row("sliding-rate").verdict, Verdict::Advice);
    EXPECT_EQ(door.row("alarm-lead").verdict, Verdict::Satisfactory);
    EXPECT_EQ(door.row("alarm-holds").verdict, Verdict::Satisfactory);
    RunRecord short_lead = given::run(Release::Remote,
                                      {{MarkKind::AlarmOn, 0},
                                       {MarkKind::LeafMoves, 2},
                                       {MarkKind::Shut, 11.3},
                                       {MarkKind::AlarmOff, 11.4}},
                                      1.5);
    EXPECT_EQ(Alarmed({short_lead}).row("alarm-lead").verdict, Verdict::Unsatisfactory);
}

// 46 CFR 116.435(c)(7)(i) does not speak of the upright ship.
TEST(Heel, ExcusesNoDoorInADeck) {
    given::Site made;
    given::deckDoor(made);
    Particulars vessel = given::solasVessel();
    vessel.regime = made.regime;
    DoorEvidence evidence;
    evidence.door = made.door.number;
    evidence.runs = {
        given::run(Release::LetGo, {{MarkKind::LeafMoves, 0}, {MarkKind::Shut, 20}}, 3)};
    const DoorGrade all = grade(vessel, made.door, &made.boundary, evidence, given::catalogue());
    EXPECT_EQ(findRow(all, "k-horizontal")->verdict, Verdict::Unsatisfactory);
}
