// The debrief: perfect answers score everything, and what is wrong costs what it should.
#include <gmock/gmock.h>

#include "core/evidence/run_sequence.h"
#include "tests/core/practice_given.h"
#include "tests/long_form.h"

namespace latchround::practice {
namespace {

using given::practiceVessel;

/// Somebody who answers like `perfectEvidence` and whose runs went as the stage has it.
struct Trainee {
    Arrangement vessel = practiceVessel();
    Exercise exercise = given::exerciseOver(vessel);
    std::map<std::string, DoorTruth> truths;
    std::vector<DoorEvidence> evidence;
    std::vector<TrueRun> runs;

    explicit Trainee(std::uint32_t seed, int drawn) {
        exercise.drawn = drawn;
        truths = doorsOf(exercise, vessel, seed);
        for (const Door& door : vessel.doors) {
            evidence.push_back(perfectEvidence(truths.at(door.number), vessel.particulars, door,
                                               findBoundary(vessel, door.boundary),
                                               given::catalogue()));
            DoorTruth freed = truths.at(door.number);
            freed.wedge = false;
            for (const RunRecord& run : evidence.back().runs)
                runs.push_back({door.number, run.id, run.kind, run.release, 0,
                                trueEvents(freed, door, run.release, run.kind), std::nullopt, 0});
            if (truths.at(door.number).passer_by) {
                TrueRun stopped{door.number, "stopped", RunKind::Closing, Release::Remote,
                                0,           {},        std::int64_t(1),  0};
                runs.insert(runs.begin(), stopped);
            }
        }
    }
    Debrief debrief(int cautions_untrue = 0) const {
        return debriefOf(exercise, vessel, given::catalogue(), truths, evidence, runs,
                         cautions_untrue);
    }
    DoorEvidence& of(const std::string& door) {
        return *std::ranges::find(evidence, door, &DoorEvidence::door);
    }
};

void sayYes(DoorEvidence& evidence, const std::string& row, Side side = Side::None) {
    evidence.observations[{row, side}].body = {{}, evidence.door, row, side, Answer::Yes};
}
void sayNo(DoorEvidence& evidence, const std::string& row, Side side = Side::None) {
    evidence.observations[{row, side}].body = {{}, evidence.door, row, side, Answer::No};
}

TEST(Debrief, PerfectAnswersScoreAHundredPercentWhateverIsWrong) {
    const auto seeds = static_cast<std::uint32_t>(30 * test::timesAsMany());
    for (std::uint32_t seed = 1; seed <= seeds; ++seed)
        for (const int drawn : {0, 1, 5, 12}) {
            const Debrief debrief = Trainee(seed, drawn).debrief();
            EXPECT_EQ(debrief.percent, 100) << seed << " " << drawn;
            EXPECT_EQ(countOf(debrief, Outcome::Found), drawn);
            EXPECT_EQ(countOf(debrief, Outcome::Missed), 0);
            EXPECT_EQ(countOf(debrief, Outcome::Absent), 0);
            EXPECT_EQ(debrief.rows_right, static_cast<int>(debrief.verdicts.size()));
            for (const MarkCompared& mark : debrief.marks)
                EXPECT_NEAR(mark.late_s.value(), 0, 1e-8);
        }
}

TEST(Debrief, EachFaultAloneIsFoundByAPerfectTrainee) {
    const Arrangement vessel = practiceVessel();
    for (const Word<Fault>& entry : faultWords)
        for (const Door& door : vessel.doors) {
            const Boundary* boundary = findBoundary(vessel, door.boundary);
            if (!fits(entry.value, door, boundary) || entry.value == Fault::PeopleInPath)
                continue;
            Exercise exercise;
            exercise.doors = {{door.number, {entry.value}}};
            const auto truths = doorsOf(exercise, vessel, 9);
            const Debrief debrief =
                debriefOf(exercise, vessel, given::catalogue(), truths,
                          {perfectEvidence(truths.at(door.number), vessel.particulars, door,
                                           boundary, given::catalogue())},
                          {}, 0);
            ASSERT_EQ(debrief.faults.size(), 1U) << entry.word << " " << door.number;
            EXPECT_EQ(debrief.faults[0].outcome, Outcome::Found) << entry.word;
            EXPECT_EQ(debrief.percent, 100) << entry.word;
        }
}

TEST(Debrief, NothingDoneScoresNothing) {
    Trainee idle(3, 5);
    idle.evidence.clear();
    idle.runs.clear();
    const Debrief debrief = idle.debrief();
    EXPECT_EQ(countOf(debrief, Outcome::Missed), 5);
    EXPECT_LT(debrief.percent, 10); // the plate's class is taken from the register
}

TEST(Debrief, AFaultPassedOverIsMissedAndCostsItsRow) {
    Trainee trainee(1, 0);
    trainee.exercise.doors[1].faults = {Fault::PaintedSeal};
    trainee.truths["P-02"].painted_seal = true;
    trainee.truths["P-02"].faults = {Fault::PaintedSeal};
    const Debrief debrief = trainee.debrief();
    ASSERT_EQ(debrief.faults.size(), 1U);
    EXPECT_EQ(debrief.faults[0].outcome, Outcome::Missed);
    EXPECT_EQ(debrief.faults[0].requirement, "seals-whole");
    EXPECT_EQ(debrief.rows_right + 1, static_cast<int>(debrief.verdicts.size()));
    EXPECT_LT(debrief.percent, 50);
    sayNo(trainee.of("P-02"), "seals-whole");
    EXPECT_EQ(trainee.debrief().percent, 100);
}

TEST(Debrief, AFaultThatIsNotThereIsAbsent) {
    Trainee trainee(1, 0);
    sayNo(trainee.of("P-01"), "no-hook");
    const Debrief debrief = trainee.debrief();
    ASSERT_EQ(debrief.faults.size(), 1U);
    EXPECT_EQ(debrief.faults[0].outcome, Outcome::Absent);
    EXPECT_EQ(debrief.faults[0].requirement, "no-hook");
    EXPECT_FALSE(debrief.faults[0].fault);
    EXPECT_LT(debrief.percent, 80);
}

TEST(Debrief, SayingYesToEverythingIsNoWayToPass) {
    for (std::uint32_t seed = 1; seed <= 10; ++seed) {
        Trainee trainee(seed, 8);
        for (DoorEvidence& door : trainee.evidence)
            for (auto& [key, said] : door.observations)
                sayYes(door, key.first, key.second);
        EXPECT_LT(trainee.debrief().percent, 90);
        EXPECT_GT(countOf(trainee.debrief(), Outcome::Missed), 0);
    }
}

TEST(Debrief, DangerToPeopleCostsTenPointsEach) {
    Trainee trainee(1, 0);
    trainee.runs.front().endangered = 2;
    EXPECT_EQ(trainee.debrief().percent, 80);
    EXPECT_EQ(trainee.debrief().endangered, 2);
    EXPECT_EQ(trainee.debrief(3).percent, 50);
    trainee.runs.front().endangered = 40;
    EXPECT_EQ(trainee.debrief().percent, 0);
}

TEST(Debrief, EachMarkIsComparedWithTheTruth) {
    Trainee trainee(1, 0);
    DoorEvidence& door = trainee.of("P-01");
    RunRecord& run = door.runs.back(); // from the control station
    ASSERT_EQ(run.release, Release::Remote);
    for (auto& taken : run.marks)
        *taken.mark.steady_ns += taken.mark.kind == MarkKind::LeafMoves ? 230'000'000 : 120'000'000;
    const Debrief debrief = trainee.debrief();
    int late = 0;
    for (const MarkCompared& mark : debrief.marks)
        if (*mark.late_s > 0.001) {
            ++late;
            EXPECT_NEAR(*mark.late_s, mark.mark == MarkKind::LeafMoves ? 0.23 : 0.12, 1e-8);
        }
    EXPECT_EQ(late, static_cast<int>(run.marks.size()));
    int trials = 0;
    for (const ThumbTrial& trial : debrief.delays)
        if (trial.delay_s > 0.001) {
            ++trials;
            EXPECT_NEAR(trial.delay_s, trial.cue == Cue::LeafStarts ? 0.23 : 0.12, 1e-8);
        }
    EXPECT_EQ(trials, late - 1) << "half-way is judged by eye";
}

TEST(Debrief, AMarkOfSomethingThatDidNotHappenIsNoTrialOfTheThumb) {
    Trainee trainee(1, 0);
    RunRecord& run = trainee.of("P-02").runs.front();
    trainee.runs.clear();
    trainee.runs.push_back({"P-02", run.id, run.kind, run.release, 0, {}, std::nullopt, 0});
    const Debrief debrief = trainee.debrief();
    ASSERT_EQ(debrief.marks.size(), run.marks.size());
    for (const MarkCompared& mark : debrief.marks)
        EXPECT_FALSE(mark.late_s);
    EXPECT_TRUE(debrief.delays.empty());
}

TEST(Debrief, SomebodyInTheWayIsFoundByStoppingInTime) {
    Trainee trainee(1, 0);
    trainee.truths["P-01"].faults = {Fault::PeopleInPath};
    EXPECT_EQ(trainee.debrief().faults.at(0).outcome, Outcome::Missed) << "never stopped";
    TrueRun stopped{"P-01", "s", RunKind::Closing, Release::Remote, 0, {}, std::int64_t(5), 0};
    trainee.runs.insert(trainee.runs.begin(), stopped);
    EXPECT_EQ(trainee.debrief().faults.at(0).outcome, Outcome::Found);
    trainee.runs.front().endangered = 1;
    EXPECT_EQ(trainee.debrief().faults.at(0).outcome, Outcome::Missed) << "too late";
}

TEST(Debrief, AnAttemptKeepsWhatProgressIsMadeOf) {
    Trainee trainee(4, 3);
    const Debrief debrief = trainee.debrief();
    const Attempt attempt =
        attemptOf(debrief, trainee.exercise, 4, {1'700'000'000'000, 60}, "Ansa Merlund");
    EXPECT_EQ(attempt.percent, 100);
    EXPECT_EQ(attempt.found, 3);
    EXPECT_EQ(attempt.seed, 4U);
    EXPECT_EQ(attempt.exercise, "all-doors");
    EXPECT_EQ(attempt.delays, debrief.delays);
}

TEST(Debrief, TheThumbGoesByAPersonsNewestMarks) {
    Attempt old_one;
    old_one.person = "Ansa Merlund";
    old_one.delays.assign(30, {Cue::LeafStarts, 0.5});
    Attempt new_one = old_one;
    new_one.delays.assign(20, {Cue::LeafStarts, 0.2});
    Attempt other = new_one;
    other.person = "Somebody Else";
    const ThumbDrill drill = drillFrom({old_one, new_one, other}, "ansa  merlund", 25);
    EXPECT_EQ(drill.trials.size(), 25U);
    EXPECT_EQ(std::ranges::count(drill.trials, ThumbTrial{Cue::LeafStarts, 0.2}), 20);
}

} // namespace
} // namespace latchround::practice
