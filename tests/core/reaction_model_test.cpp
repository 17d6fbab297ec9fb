#include <cmath>

#include <gtest/gtest.h>

#include "core/evidence/ledger.h"
#include "core/grading/grade.h"
#include "core/measure/closing.h"
#include "tests/core/given.h"

using namespace latchround;

namespace {

/// Trials of one cue that scatter evenly about `mean`: 20 of them, standard deviation `spread`.
void addTrials(ThumbDrill& drill, Cue cue, double mean, double spread) {
    // Pairs at plus and minus d have the sample deviation d sqrt(20 / 19).
    const double d = spread * std::sqrt(19.0 / 20.0);
    for (int i = 0; i < 10; ++i) {
        drill.trials.push_back({cue, mean - d});
        drill.trials.push_back({cue, mean + d});
    }
}

ThumbDrill steadyDrill() {
    ThumbDrill drill;
    addTrials(drill, Cue::AlarmHeard, 0.30, 0.03);
    addTrials(drill, Cue::LeafStarts, 0.25, 0.04);
    addTrials(drill, Cue::LeafStops, 0.05, 0.02);
    return drill;
}

RunRecord hingedRun(double seconds) {
    return given::run(Release::LetGo, {{MarkKind::LeafMoves, 0}, {MarkKind::Shut, seconds}});
}

} // namespace

TEST(Sieve, GivesMeanAndDeviationOfTheTrials) {
    const Sifted sifted = rejectOutliers(Cue::LeafStops, steadyDrill());
    ASSERT_TRUE(sifted.reaction);
    EXPECT_NEAR(sifted.reaction->bias_s, 0.05, 1e-12);
    EXPECT_NEAR(sifted.reaction->spread_s, 0.02, 1e-12);
    EXPECT_EQ(sifted.reaction->trials, 20);
    EXPECT_EQ(sifted.too_early, 0);
    EXPECT_EQ(sifted.set_aside, 0);
}

// Modified z score 0.6745 |x - median| / MAD above 3.5 (NIST/SEMATECH e-Handbook 1.3.5.17, from
// memory): median 0.05, MAD d = 0.0195: more than 0.101 s away from 0.05.
TEST(Sieve, SetsAsideWhatIsOutOfLine) {
    ThumbDrill drill = steadyDrill();
    const double d = 0.02 * std::sqrt(0.95);
    drill.trials.push_back({Cue::LeafStops, 0.05 + 3.5 / 0.6745 * d - 0.001});
    EXPECT_EQ(rejectOutliers(Cue::LeafStops, drill).set_aside, 0);
    drill.trials.push_back({Cue::LeafStops, 0.5});
    drill.trials.push_back({Cue::LeafStops, 2.0});
    const Sifted sifted = rejectOutliers(Cue::LeafStops, drill);
    EXPECT_EQ(sifted.set_aside, 2);
    EXPECT_EQ(sifted.reaction->trials, 21);
}

// Nobody answers a sudden event in less than 0.1 s: such a tap was a guess. A leaf that is seen to
// come may be met early.
TEST(Sieve, GuessesDoNotCountButMeetingTheLeafEarlyDoes) {
    ThumbDrill drill = steadyDrill();
    drill.trials.push_back({Cue::AlarmHeard, 0.05});
    drill.trials.push_back({Cue::LeafStarts, -0.4});
    drill.trials.push_back({Cue::LeafStops, -0.01});
    EXPECT_EQ(rejectOutliers(Cue::AlarmHeard, drill).too_early, 1);
    EXPECT_EQ(rejectOutliers(Cue::LeafStarts, drill).too_early, 1);
    EXPECT_EQ(rejectOutliers(Cue::LeafStops, drill).too_early, 0);
    EXPECT_EQ(rejectOutliers(Cue::LeafStops, drill).reaction->trials, 21);
}

TEST(Sieve, TooFewTrialsGiveNothing) {
    ThumbDrill drill;
    for (int i = 0; i < min_trials - 1; ++i)
        drill.trials.push_back({Cue::LeafStops, 0.1 + 0.001 * i});
    EXPECT_FALSE(rejectOutliers(Cue::LeafStops, drill).reaction);
    EXPECT_FALSE(rejectOutliers(Cue::AlarmHeard, drill).reaction);
    drill.trials.push_back({Cue::LeafStops, 0.11});
    EXPECT_TRUE(rejectOutliers(Cue::LeafStops, drill).reaction);
}

TEST(ReactionModel, OwnBiasCorrectsTheInterval) {
    const ReactionModel own(steadyDrill());
    // Starts are seen 0.25 s late and stops 0.05 s late: the watch ran 0.20 s too short.
    EXPECT_NEAR(own.correction(Cue::LeafStarts, Cue::LeafStops), 0.20, 1e-12);
    EXPECT_NEAR(closingTime(hingedRun(12), DoorKind::SingleLeaf, own)->value, 12.20, 1e-9);
    // Alarm heard late by 0.30 s, leaf seen moving late by 0.25 s.
    EXPECT_NEAR(own.correction(Cue::AlarmHeard, Cue::LeafStarts), 0.05, 1e-12);
    EXPECT_EQ(ReactionModel().correction(Cue::LeafStarts, Cue::LeafStops), 0);
}

TEST(ReactionModel, OwnBudgetHasBothMarksAndBothMeans) {
    const Reading time =
        *closingTime(hingedRun(12), DoorKind::SingleLeaf, ReactionModel(steadyDrill()));
    const double expected =
        std::sqrt(0.04 * 0.04 + 0.02 * 0.02 + (0.04 * 0.04 + 0.02 * 0.02) / 20 + 0.02 * 0.02 / 3 +
                  0.005 * 0.005 / 3 + std::pow(12 * 2e-4, 2) / 3);
    EXPECT_NEAR(time.u(), expected, 1e-12);
    // 19 degrees each: the widest part rules.
    EXPECT_GT(time.degreesOfFreedom(), 19);
    EXPECT_LT(time.degreesOfFreedom(), 60);
}

// A time from a watch on a string knows nothing of the tablet's drill; read to tenths, its last
// digit is 0.1 s.
TEST(ReactionModel, TypedInTimesKeepThePublishedFigures) {
    RunRecord run = hingedRun(12);
    for (auto& record : run.marks) {
        record.mark.by_hand_ns = record.mark.kind == MarkKind::Shut ? 12'400'000'000 : 0;
        record.mark.event_ms.reset();
        record.mark.device = InputDevice::Hand;
    }
    const Reading time = *closingTime(run, DoorKind::SingleLeaf, ReactionModel(steadyDrill()));
    EXPECT_NEAR(time.value, 12.4, 1e-12);
    EXPECT_NEAR(time.u(),
                std::sqrt(0.01 + 0.05 * 0.05 / 3 + 0.05 * 0.05 / 3 + std::pow(12.4 * 2e-4, 2) / 3),
                1e-12);
}

TEST(ReactionModel, WithoutSoundTheHeardPartStaysAsPublished) {
    ThumbDrill drill;
    addTrials(drill, Cue::LeafStarts, 0.25, 0.04);
    addTrials(drill, Cue::LeafStops, 0.05, 0.02);
    const ReactionModel own(drill);
    EXPECT_EQ(own.correction(Cue::AlarmHeard, Cue::LeafStarts), 0);
    EXPECT_NEAR(combinedUncertainty(own.budget(Cue::AlarmHeard, Cue::LeafStarts)),
                std::sqrt(0.005 + 0.04 * 0.04 + 0.11 * 0.11 / 3), 1e-12);
    EXPECT_NE(own.correction(Cue::LeafStarts, Cue::LeafStops), 0);
}

// Grades go by the drill that the person had done on that device before the run, and by no later
// one.
TEST(ReactionModel, GradeUsesTheDrillDoneBeforeTheRun) {
    const auto fact = [](const char* id, FactBody body, const char* person = "p",
                         const char* device = "d") {
        return Fact{{id, {}, person, device, {}}, std::move(body)};
    };
    const auto walkWith = [&](const char* drill_id, const char* person, const char* device) {
        Ledger ledger;
        ledger.add(fact("02", WalkdownBegun{}));
        ledger.add(fact(drill_id, steadyDrill(), person, device));
        ledger.add(fact("04", RunStarted{"02", "5-31", RunKind::Closing, Release::LetGo, 0}));
        ledger.add(fact("05", Mark{"04", MarkKind::LeafMoves, 1000, {}, InputDevice::Key, {}}));
        ledger.add(fact("06", Mark{"04", MarkKind::Shut, 10900, {}, InputDevice::Key, {}}));
        ledger.add(fact("07", RunEnded{"04", RunOutcome::Complete, {}}));
        const Boundary bulkhead = given::zoneBulkhead();
        const DoorGrade graded = grade(given::solasVessel(), given::hingedDoor(), &bulkhead,
                                       ledger.evidenceOf("02", "5-31"), given::catalogue());
        for (const RowGrade& row : graded.rows)
            if (row.requirement->id == "hinged-time")
                return row;
        return RowGrade{};
    };
    // 9.90 s read; 10.10 s for one whose watch runs 0.20 s short: too close either way.
    EXPECT_NEAR(walkWith("01", "p", "d").figure->value, 10.10, 1e-9);
    EXPECT_NEAR(walkWith("03", "p", "d").figure->value, 10.10, 1e-9);
    EXPECT_NEAR(walkWith("08", "p", "d").figure->value, 9.90, 1e-9);
    EXPECT_NEAR(walkWith("01", "another", "d").figure->value, 9.90, 1e-9);
    EXPECT_NEAR(walkWith("01", "p", "another").figure->value, 9.90, 1e-9);
    // The own, finer thumb settles what the published one leaves open.
    EXPECT_EQ(walkWith("01", "p", "d").verdict, Verdict::Satisfactory);
    EXPECT_EQ(walkWith("08", "p", "d").verdict, Verdict::TimeAgain);
}

TEST(DecisionLimits, HoldForWalkdownsThatHadNotEnded) {
    const auto fact = [](const char* id, FactBody body) {
        return Fact{{id, {}, "p", "d", {}}, std::move(body)};
    };
    Ledger ledger;
    ledger.add(fact("01", WalkdownBegun{}));
    ledger.add(fact("02", WalkdownEnded{"01", ""}));
    ledger.add(fact("03", WalkdownBegun{}));
    ledger.add(fact("04", DecisionLimits{0.99, 0.01, "asked for by the flag"}));
    EXPECT_EQ(ledger.limitsFor("01"), DecisionLimits{});
    EXPECT_EQ(ledger.limitsFor("03").satisfactory_from, 0.99);
    EXPECT_EQ(ledger.evidenceOf("03", "5-31").limits.unsatisfactory_to, 0.01);
}

TEST(DecisionLimits, ChangeWhatIsTooClose) {
    DoorEvidence evidence = given::allAnswersGood(given::hingedDoor());
    evidence.runs = {hingedRun(10.2)}; // 0.97 inside
    const Boundary bulkhead = given::zoneBulkhead();
    const auto verdict = [&] {
        const DoorGrade graded = grade(given::solasVessel(), given::hingedDoor(), &bulkhead,
                                       evidence, given::catalogue());
        for (const RowGrade& row : graded.rows)
            if (row.requirement->id == "hinged-time")
                return row.verdict;
        return Verdict::Untested;
    };
    EXPECT_EQ(verdict(), Verdict::Satisfactory);
    evidence.limits = {0.99, 0.01, ""};
    EXPECT_EQ(verdict(), Verdict::TimeAgain);
}
