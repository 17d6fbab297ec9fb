// What the trainee sees and hears of a practice door, in virtual time.
#include <gmock/gmock.h>

#include "core/evidence/run_sequence.h"
#include "tests/core/practice_given.h"

namespace latchround::practice {
namespace {

constexpr std::int64_t start_ns = 900'000'000'000;

std::int64_t at(double t_s) {
    return start_ns + static_cast<std::int64_t>(t_s * 1e9);
}

Stage stageWith(std::vector<DoorTask> tasks, std::uint32_t seed = 11) {
    Exercise exercise;
    exercise.id = "one";
    exercise.doors = std::move(tasks);
    return Stage(exercise, given::practiceVessel(), seed);
}

double eventOf(const TrueRun& run, MarkKind mark) {
    for (const TrueEvent& event : run.events)
        if (event.mark == mark)
            return event.t_s;
    ADD_FAILURE() << "the run has no " << word(mark);
    return 0;
}

bool has(const TrueRun& run, MarkKind mark) {
    return std::ranges::find(run.events, mark, &TrueEvent::mark) != run.events.end();
}

TrueRun played(Stage& stage, const std::string& door, Release release,
               RunKind kind = RunKind::Closing, double for_s = 120) {
    stage.setReady(door, release, kind);
    stage.release(at(0));
    stage.finish("run", at(for_s));
    return stage.runs().back();
}

TEST(Stage, StandsAsTheDoorNormallyDoesAndOpensForARun) {
    Stage stage = stageWith({{"P-01", {}}, {"P-05", {}}});
    EXPECT_EQ(stage.view("P-01", at(0)).open, 1);
    EXPECT_EQ(stage.view("P-05", at(0)).open, 0);
    stage.setReady("P-05", Release::LetGo, RunKind::Closing);
    EXPECT_EQ(stage.view("P-05", at(0)).open, 1);
    EXPECT_FALSE(stage.isReleased());
    EXPECT_FALSE(stage.view("P-05", at(50)).moving) << "nobody has let it go";
}

TEST(Stage, ShowsWhatTheTrueRunSaysHappened) {
    Stage stage = stageWith({{"P-01", {}}});
    stage.setReady("P-01", Release::Remote, RunKind::Closing);
    EXPECT_EQ(stage.view("P-01", at(0)).voice, Voice::Ready);
    stage.release(at(0));
    const auto events = trueEvents(stage.truth("P-01"), stage.vessel().doors.front(),
                                   Release::Remote, RunKind::Closing);
    TrueRun run;
    run.events = events;
    const double alarm = eventOf(run, MarkKind::AlarmOn);
    const double moves = eventOf(run, MarkKind::LeafMoves);
    const double half = eventOf(run, MarkKind::HalfWay);
    const double shut = eventOf(run, MarkKind::Shut);
    const double silent = eventOf(run, MarkKind::AlarmOff);
    EXPECT_NEAR(moves - alarm, stage.truth("P-01").alarm_lead_s, 1e-9);
    EXPECT_EQ(stage.view("P-01", at(alarm / 2)).voice, Voice::Releasing);
    EXPECT_FALSE(stage.view("P-01", at(alarm - 0.01)).alarm);
    EXPECT_TRUE(stage.view("P-01", at(alarm + 0.01)).alarm);
    EXPECT_EQ(stage.view("P-01", at(moves - 0.01)).open, 1);
    EXPECT_LT(stage.view("P-01", at(moves + 0.3)).open, 1);
    EXPECT_TRUE(stage.view("P-01", at(moves + 0.3)).moving);
    EXPECT_NEAR(stage.view("P-01", at(half)).open, 0.5, 1e-3);
    EXPECT_GT(stage.view("P-01", at(shut - 0.2)).open, 0);
    EXPECT_NEAR(stage.view("P-01", at(shut)).open, 0, 1e-6);
    EXPECT_TRUE(stage.view("P-01", at(silent - 0.01)).alarm);
    EXPECT_FALSE(stage.view("P-01", at(silent + 0.01)).alarm);
    EXPECT_TRUE(stage.view("P-01", at(shut)).panel_shut);
    stage.finish("run-7", at(silent + 1));
    EXPECT_EQ(stage.runs().back().run, "run-7");
    EXPECT_EQ(stage.runs().back().events, events);
    EXPECT_NEAR(stage.view("P-01", at(silent + 5)).open, 0, 1e-6) << "it stays shut";
}

TEST(Stage, AStoppedLeafStandsAndTheAlarmIsSilent) {
    Stage stage = stageWith({{"P-01", {}}});
    stage.setReady("P-01", Release::Remote, RunKind::Closing);
    stage.release(at(0));
    const double stop_s = 13;
    const double open = stage.view("P-01", at(stop_s)).open;
    EXPECT_GT(open, 0);
    EXPECT_LT(open, 1);
    stage.stop(at(stop_s));
    EXPECT_NEAR(stage.view("P-01", at(40)).open, open, 1e-9);
    EXPECT_FALSE(stage.view("P-01", at(40)).alarm);
    EXPECT_EQ(stage.view("P-01", at(40)).voice, Voice::Stopped);
    stage.finish("run", at(40));
    EXPECT_FALSE(has(stage.runs().back(), MarkKind::Shut));
    EXPECT_EQ(stage.runs().back().stopped_ns, at(stop_s));
}

TEST(Stage, AWedgeKeepsTheLeafUntilItIsTakenAway) {
    Stage stage = stageWith({{"P-02", {Fault::Wedge}}});
    EXPECT_TRUE(stage.view("P-02", at(0)).wedge);
    EXPECT_FALSE(has(played(stage, "P-02", Release::LetGo), MarkKind::LeafMoves));
    stage.clearPath("P-02");
    EXPECT_FALSE(stage.view("P-02", at(0)).wedge);
    EXPECT_TRUE(has(played(stage, "P-02", Release::LetGo), MarkKind::Shut));
    EXPECT_EQ(stage.cautionsUntrue(), 0);
}

TEST(Stage, AReleaseFromTheControlStationWithAWedgeInTheWayWasNotConfirmedTruly) {
    Stage stage = stageWith({{"P-02", {Fault::Wedge}}});
    played(stage, "P-02", Release::Remote);
    EXPECT_EQ(stage.cautionsUntrue(), 1);
}

TEST(Stage, AMagnetThatHoldsFromOneSideLetsGoFromTheOther) {
    Stage stage = stageWith({{"P-02", {Fault::MagnetOneSide}}});
    const bool one = has(played(stage, "P-02", Release::LocalSideOne), MarkKind::Shut);
    const bool two = has(played(stage, "P-02", Release::LocalSideTwo), MarkKind::Shut);
    EXPECT_NE(one, two);
}

TEST(Stage, LeavesOfADoubleDoorComeHomeInOrderUnlessTheSelectorFails) {
    Stage sound = stageWith({{"P-03", {}}});
    sound.setReady("P-03", Release::LetGo, RunKind::Closing);
    sound.release(at(0));
    bool second_waited = false;
    for (double t = 0; t < 60; t += 0.1) {
        const DoorView seen = sound.view("P-03", at(t));
        EXPECT_FALSE(seen.second_open < 0.001 && seen.open > 0.01) << t;
        second_waited = second_waited || (seen.open < 0.2 && seen.second_open > 0.25);
    }
    EXPECT_TRUE(second_waited);
    Stage faulty = stageWith({{"P-03", {Fault::LeavesReversed}}});
    faulty.setReady("P-03", Release::LetGo, RunKind::Closing);
    faulty.release(at(0));
    bool reversed = false;
    for (double t = 0; t < 60; t += 0.1) {
        const DoorView seen = faulty.view("P-03", at(t));
        reversed = reversed || (seen.second_open < 0.001 && seen.open > 0.01);
    }
    EXPECT_TRUE(reversed);
}

TEST(Stage, OnContactTheLeafStopsAndReopensAsFarAsItsEdgeHasIt) {
    Stage stage = stageWith({{"P-01", {}}});
    const TrueRun run = played(stage, "P-01", Release::LetGo, RunKind::Contact);
    EXPECT_LT(eventOf(run, MarkKind::Touched), eventOf(run, MarkKind::Stopped));
    const double travel = stage.vessel().doors.front().opening_m;
    const double open_m = stage.view("P-01", at(120)).open * travel;
    EXPECT_NEAR(open_m, block_at_open * travel + stage.truth("P-01").reopens_m, 1e-3);
}

TEST(Stage, OnlyALeafThatDoesNotLatchGivesWayToAPush) {
    for (const bool faulty : {false, true}) {
        Stage stage = faulty ? stageWith({{"P-02", {Fault::NoLatch}}}) : stageWith({{"P-02", {}}});
        stage.push("P-02", at(0));
        EXPECT_FALSE(stage.view("P-02", at(1)).pushed_open) << "it stands open: nothing to push";
        played(stage, "P-02", Release::LetGo);
        stage.push("P-02", at(130));
        EXPECT_EQ(stage.view("P-02", at(132)).pushed_open, faulty);
        EXPECT_EQ(stage.view("P-02", at(132)).open > 0.05, faulty);
    }
}

TEST(Stage, OpenedAgainItShutsByItselfUnlessItIsFaulty) {
    for (const char* door : {"P-01", "P-02", "P-03"})
        for (const bool faulty : {false, true}) {
            const std::vector<Fault> faults =
                faulty ? std::vector{Fault::StaysOpen} : std::vector<Fault>{};
            Stage stage = stageWith({{door, faults}});
            played(stage, door, Release::Remote);
            stage.openAgain(door, at(130));
            const auto widest = [&](double t) {
                const DoorView seen = stage.view(door, at(t));
                return std::string(door) == "P-03" ? seen.second_open : seen.open;
            };
            EXPECT_GT(widest(132.4), 0.9) << door;
            EXPECT_EQ(widest(300) < 0.01, !faulty) << door;
        }
}

TEST(Stage, APanelThatLiesShowsAShutDoorOpen) {
    for (const bool faulty : {false, true}) {
        const std::vector<Fault> faults =
            faulty ? std::vector{Fault::IndicatorLies} : std::vector<Fault>{};
        Stage stage = stageWith({{"P-02", faults}});
        stage.askPanel("P-02", at(0));
        EXPECT_EQ(stage.view("P-02", at(0)).voice, Voice::PanelOpen);
        played(stage, "P-02", Release::Remote);
        stage.askPanel("P-02", at(130));
        EXPECT_EQ(stage.view("P-02", at(131)).voice, faulty ? Voice::PanelOpen : Voice::PanelShut);
    }
}

/// A seed with, or without, somebody who stands in the opening from the start.
std::uint32_t seedWhere(bool somebody_waits) {
    for (std::uint32_t seed = 1;; ++seed)
        if (stageWith({{"P-01", {Fault::PeopleInPath}}}, seed).truth("P-01").somebody_waits ==
            somebody_waits)
            return seed;
}

TEST(Stage, WhoeverWalksInIsEndangeredUnlessItIsStoppedInTime) {
    const std::uint32_t seed = seedWhere(false);
    for (const auto& [stop_after_s, endangered] :
         {std::pair(1.0, 0), std::pair(stop_within_s - 0.1, 0),
          std::pair(stop_within_s + 0.1, 1)}) {
        Stage stage = stageWith({{"P-01", {Fault::PeopleInPath}}}, seed);
        const DoorTruth& truth = stage.truth("P-01");
        stage.setReady("P-01", Release::Remote, RunKind::Closing);
        stage.release(at(0));
        const double moves = truth.station_takes_s + truth.alarm_lead_s;
        const double steps_in = moves + truth.passer_by->steps_in_s;
        EXPECT_FALSE(stage.view("P-01", at(steps_in - 0.1)).person);
        EXPECT_TRUE(stage.view("P-01", at(steps_in + 0.1)).person);
        stage.stop(at(steps_in + stop_after_s));
        EXPECT_FALSE(stage.view("P-01", at(steps_in + stop_after_s + 30)).person) << "walks on";
        stage.finish("run", at(steps_in + 40));
        EXPECT_EQ(stage.runs().back().endangered, endangered);
        EXPECT_EQ(stage.cautionsUntrue(), 0);
        EXPECT_EQ(played(stage, "P-01", Release::Remote).endangered, 0)
            << "the path is watched from then on";
    }
}

TEST(Stage, WhoeverStandsInTheOpeningMustBeAskedAsideFirst) {
    const std::uint32_t seed = seedWhere(true);
    Stage careless = stageWith({{"P-01", {Fault::PeopleInPath}}}, seed);
    EXPECT_TRUE(careless.view("P-01", at(0)).somebody_waits);
    EXPECT_GE(played(careless, "P-01", Release::Remote).endangered, 1);
    EXPECT_EQ(careless.cautionsUntrue(), 1);
    Stage careful = stageWith({{"P-01", {Fault::PeopleInPath}}}, seed);
    careful.clearPath("P-01");
    EXPECT_EQ(played(careful, "P-01", Release::LocalSideOne).endangered, 0);
    EXPECT_EQ(careful.cautionsUntrue(), 0);
}

TEST(Stage, EveryDoorOfTheReleaseGroupMovesAndStopsTogether) {
    Stage stage = stageWith({{"P-01", {}}, {"P-02", {}}, {"P-05", {}}});
    ASSERT_EQ(stage.vessel().doors[0].release_groups, stage.vessel().doors[1].release_groups);
    stage.setReady("P-01", Release::Remote, RunKind::Closing, "MVZ2");
    stage.release(at(0));
    EXPECT_LT(stage.view("P-02", at(9)).open, 1);
    EXPECT_EQ(stage.view("P-05", at(9)).open, 0) << "of no group: as it was";
    stage.stop(at(9));
    const double open = stage.view("P-02", at(9)).open;
    EXPECT_GT(open, 0);
    EXPECT_NEAR(stage.view("P-02", at(60)).open, open, 1e-9);
    stage.setReady("P-02", Release::Remote, RunKind::Closing, "MVZ2");
    stage.release(at(100));
    EXPECT_TRUE(stage.view("P-01", at(105)).alarm) << "the sliding door sounds its own";
    stage.finish("run", at(200));
    EXPECT_NEAR(stage.view("P-01", at(200)).open, 0, 1e-6);
    EXPECT_FALSE(stage.view("P-01", at(200)).alarm);
}

TEST(Stage, WhoeverStandsAtAnotherDoorOfTheGroupIsInDangerToo) {
    const std::uint32_t seed = seedWhere(true);
    const std::vector<DoorTask> tasks{{"P-02", {}}, {"P-01", {Fault::PeopleInPath}}};
    for (const bool cleared : {false, true}) {
        Stage stage = stageWith(tasks, seed);
        stage.setReady("P-02", Release::Remote, RunKind::Closing, "MVZ2");
        if (cleared)
            stage.clearWay();
        stage.release(at(0));
        stage.finish("run", at(60));
        EXPECT_EQ(stage.runs().back().endangered, cleared ? 0 : 1);
        EXPECT_EQ(stage.cautionsUntrue(), cleared ? 0 : 1);
    }
}

TEST(Stage, NothingMovesThatNobodyReleased) {
    Stage stage = stageWith({{"P-01", {}}});
    stage.release(at(0));
    EXPECT_FALSE(stage.isReleased());
    stage.finish("run", at(1));
    EXPECT_TRUE(stage.runs().empty());
}

} // namespace
} // namespace latchround::practice
