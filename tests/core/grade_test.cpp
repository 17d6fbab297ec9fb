#include <gtest/gtest.h>

#include "core/grading/grade.h"
#include "core/grading/reason_phrases.h"
#include "tests/core/given.h"

using namespace latchround;

namespace {

DoorGrade graded(const Door& door, const DoorEvidence& evidence,
                 Particulars vessel = given::solasVessel()) {
    const Boundary boundary = given::zoneBulkhead();
    return grade(vessel, door, &boundary, evidence, given::catalogue());
}

RowGrade rowOf(const DoorGrade& grade, std::string_view id) {
    for (const RowGrade& row : grade.rows)
        if (row.requirement->id == id)
            return row;
    ADD_FAILURE() << "no row " << id;
    return {};
}

Phrase compared(Phrase has, Phrase asked) {
    return joined(phrase::with_commas, {std::move(has), std::move(asked)});
}

DoorEvidence slidingWith(const RunRecord& run) {
    DoorEvidence evidence = given::allAnswersGood(given::slidingDoor());
    evidence.runs = {run};
    return evidence;
}

DoorEvidence hingedClosingIn(double seconds, double heel_deg = 0) {
    DoorEvidence evidence = given::allAnswersGood(given::hingedDoor());
    evidence.runs = {given::run(Release::LetGo,
                                {{MarkKind::LeafMoves, 0}, {MarkKind::Shut, seconds}}, heel_deg)};
    return evidence;
}

Verdict hingedVerdict(double seconds) {
    return rowOf(graded(given::hingedDoor(), hingedClosingIn(seconds)), "hinged-time").verdict;
}

} // namespace

TEST(DoorGrade, SlidingDoorWithEverythingGoodIsSatisfactory) {
    const DoorGrade result = graded(given::slidingDoor(), slidingWith(given::goodSlidingRun()));
    EXPECT_EQ(result.verdict, Verdict::Satisfactory);
    const RowGrade rate = rowOf(result, "sliding-rate");
    EXPECT_NEAR(rate.figure->value, 1.40 / 9.3, 1e-9);
    EXPECT_NEAR(rate.figure->u(), 0.0018, 2e-4);
    EXPECT_EQ(rate.requirement->cite, "SOLAS II-2/9.4.1.1.5.2");
    const RowGrade lead = rowOf(result, "alarm-lead");
    EXPECT_NEAR(lead.figure->value, 6.4, 1e-9);
    EXPECT_EQ(lead.verdict, Verdict::Satisfactory);
}

// Limits 10 s and 40 s: SOLAS II-2/9.4.1.1.5.2. Guard of 1.645 u with u = 0.104 s: 0.171 s.
TEST(HingedLeaf, TakesTenSecondsExactlyIsTimeAgainNotPass) {
    EXPECT_EQ(hingedVerdict(10.0), Verdict::TimeAgain);
}
TEST(HingedLeaf, InsideAndOutsideBothLimitsByMoreThanTheThumb) {
    EXPECT_EQ(hingedVerdict(10.2), Verdict::Satisfactory);
    EXPECT_EQ(hingedVerdict(9.8), Verdict::Judge);
    EXPECT_EQ(hingedVerdict(9.3), Verdict::Unsatisfactory);
    EXPECT_EQ(hingedVerdict(39.8), Verdict::Satisfactory);
    EXPECT_EQ(hingedVerdict(40.2), Verdict::Judge);
    EXPECT_EQ(hingedVerdict(44.2), Verdict::Unsatisfactory);
    EXPECT_EQ(hingedVerdict(40.0), Verdict::TimeAgain);
    EXPECT_EQ(hingedVerdict(39.9), Verdict::TimeAgain);
}

// Limits 0.1 and 0.2 m/s: SOLAS II-2/9.4.1.1.5.2.
TEST(SlidingLeaf, RateTooCloseToTheUpperLimitIsTimedAgain) {
    const RunRecord fast = given::run(Release::Remote, {{MarkKind::AlarmOn, 0},
                                                        {MarkKind::LeafMoves, 6.4},
                                                        {MarkKind::Shut, 6.4 + 7.07},
                                                        {MarkKind::AlarmOff, 13.6}});
    const RowGrade rate = rowOf(graded(given::slidingDoor(), slidingWith(fast)), "sliding-rate");
    EXPECT_NEAR(rate.figure->value, 0.198, 5e-4);
    EXPECT_EQ(rate.verdict, Verdict::TimeAgain);
}

TEST(SlidingLeaf, OneHalfFarTooFastNeedsJudgement) {
    const RunRecord uneven = given::run(Release::Remote, {{MarkKind::AlarmOn, 0},
                                                          {MarkKind::LeafMoves, 6.4},
                                                          {MarkKind::HalfWay, 8.4},
                                                          {MarkKind::Shut, 15.4},
                                                          {MarkKind::AlarmOff, 15.6}});
    const RowGrade rate = rowOf(graded(given::slidingDoor(), slidingWith(uneven)), "sliding-rate");
    EXPECT_EQ(rate.verdict, Verdict::Judge);
    EXPECT_EQ(rate.reason.kind, ReasonKind::UnevenHalves);
}

TEST(Runs, ThatAgreeAreAveragedAndSettleWhatOneCouldNot) {
    DoorEvidence evidence = hingedClosingIn(10.15);
    EXPECT_EQ(rowOf(graded(given::hingedDoor(), evidence), "hinged-time").verdict,
              Verdict::TimeAgain);
    evidence.runs.push_back(
        given::run(Release::LetGo, {{MarkKind::LeafMoves, 0}, {MarkKind::Shut, 10.25}}));
    const RowGrade row = rowOf(graded(given::hingedDoor(), evidence), "hinged-time");
    EXPECT_EQ(row.verdict, Verdict::Satisfactory);
    EXPECT_NEAR(row.figure->value, 10.20, 1e-9);
}

TEST(Runs, ThatDisagreeLeaveTheWorstStanding) {
    DoorEvidence evidence = hingedClosingIn(20);
    evidence.runs.push_back(
        given::run(Release::LetGo, {{MarkKind::LeafMoves, 0}, {MarkKind::Shut, 9}}));
    const RowGrade row = rowOf(graded(given::hingedDoor(), evidence), "hinged-time");
    EXPECT_EQ(row.verdict, Verdict::Unsatisfactory);
    EXPECT_EQ(row.reason.kind, ReasonKind::RunsDisagree);
    EXPECT_NEAR(row.figure->value, 9, 1e-9);
}

TEST(Runs, StillTooCloseAfterThreeIsForTheInspector) {
    DoorEvidence evidence = hingedClosingIn(10.0);
    evidence.runs.push_back(evidence.runs.front());
    evidence.runs.push_back(evidence.runs.front());
    EXPECT_EQ(rowOf(graded(given::hingedDoor(), evidence), "hinged-time").verdict, Verdict::Judge);
}

TEST(Runs, ThatAreVoidOrWereStoppedAreNoMeasurement) {
    for (const RunOutcome outcome : {RunOutcome::Void, RunOutcome::Stopped}) {
        DoorEvidence evidence = hingedClosingIn(20);
        evidence.runs.front().end->outcome = outcome;
        EXPECT_EQ(rowOf(graded(given::hingedDoor(), evidence), "hinged-time").verdict,
                  Verdict::Untested);
    }
    DoorEvidence unfinished = hingedClosingIn(20);
    unfinished.runs.front().end.reset();
    EXPECT_EQ(rowOf(graded(given::hingedDoor(), unfinished), "hinged-time").verdict,
              Verdict::Untested);
}

TEST(Heel, OverOneDegreeMakesTheTimeAdviceAndTheDoorStaysUntested) {
    const DoorGrade result = graded(given::hingedDoor(), hingedClosingIn(20, 1.5));
    const RowGrade row = rowOf(result, "hinged-time");
    EXPECT_EQ(row.verdict, Verdict::Advice);
    EXPECT_TRUE(row.indicative);
    EXPECT_EQ(result.verdict, Verdict::Untested);
    EXPECT_EQ(graded(given::hingedDoor(), hingedClosingIn(20, 1.0)).verdict, Verdict::Satisfactory);
}

TEST(OlderShip, ClosingLimitsAreAdviceNeverAFailure) {
    Particulars older = given::solasVessel();
    older.keel_laid = calendarDateFrom("2002-06-30");
    EXPECT_EQ(rowOf(graded(given::hingedDoor(), hingedClosingIn(5), older), "hinged-time").verdict,
              Verdict::Advice);
    EXPECT_EQ(graded(given::hingedDoor(), hingedClosingIn(5), older).verdict,
              Verdict::Satisfactory);
    older.keel_laid.reset();
    EXPECT_EQ(rowOf(graded(given::hingedDoor(), hingedClosingIn(5), older), "hinged-time").verdict,
              Verdict::Advice);
    older.keel_laid = calendarDateFrom("2002-07-01");
    EXPECT_EQ(rowOf(graded(given::hingedDoor(), hingedClosingIn(5), older), "hinged-time").verdict,
              Verdict::Unsatisfactory);
}

TEST(Alarm, LeadOutsideFiveToTenSecondsFails) {
    for (const auto& [lead, verdict] : {std::pair{4.5, Verdict::Unsatisfactory},
                                        {5.0, Verdict::TimeAgain},
                                        {5.3, Verdict::Satisfactory},
                                        {9.7, Verdict::Satisfactory},
                                        {10.5, Verdict::Unsatisfactory}}) {
        const RunRecord run = given::run(Release::Remote, {{MarkKind::AlarmOn, 0},
                                                           {MarkKind::LeafMoves, lead},
                                                           {MarkKind::Shut, lead + 9.3},
                                                           {MarkKind::AlarmOff, lead + 9.5}});
        EXPECT_EQ(rowOf(graded(given::slidingDoor(), slidingWith(run)), "alarm-lead").verdict,
                  verdict)
            << lead;
    }
}

TEST(Alarm, StoppingBeforeTheDoorIsShutFails) {
    const auto verdictFor = [](double off) {
        const RunRecord run = given::run(Release::Remote, {{MarkKind::AlarmOn, 0},
                                                           {MarkKind::LeafMoves, 6},
                                                           {MarkKind::AlarmOff, off},
                                                           {MarkKind::Shut, 15}});
        return rowOf(graded(given::slidingDoor(), slidingWith(run)), "alarm-holds").verdict;
    };
    EXPECT_EQ(verdictFor(12), Verdict::Unsatisfactory);
    EXPECT_EQ(verdictFor(15), Verdict::TimeAgain);
    EXPECT_EQ(verdictFor(15.1), Verdict::Satisfactory);
}

TEST(Alarm, IsUntestedByLocalRunsAlone) {
    const RunRecord local =
        given::run(Release::LocalSideOne, {{MarkKind::LeafMoves, 0}, {MarkKind::Shut, 9.3}});
    const DoorGrade result = graded(given::slidingDoor(), slidingWith(local));
    EXPECT_EQ(rowOf(result, "alarm-lead").verdict, Verdict::Untested);
    EXPECT_EQ(rowOf(result, "alarm-lead").reason.kind, ReasonKind::NeedsRemoteRun);
    EXPECT_EQ(rowOf(result, "alarm-holds").verdict, Verdict::Untested);
    EXPECT_EQ(result.verdict, Verdict::Untested);
}

TEST(DoubleLeaf, IsTimedToTheSecondLeafHome) {
    const Door door = given::hingedDoor(DoorKind::DoubleLeaf);
    DoorEvidence evidence = given::allAnswersGood(door);
    evidence.runs = {given::run(
        Release::LetGo,
        {{MarkKind::LeafMoves, 0}, {MarkKind::FirstLeafHome, 9}, {MarkKind::SecondLeafHome, 14}})};
    const DoorGrade result = graded(door, evidence);
    EXPECT_NEAR(rowOf(result, "hinged-time").figure->value, 14, 1e-9);
    EXPECT_EQ(result.verdict, Verdict::Satisfactory);
}

TEST(Rating, PlateRegisterAndBoundaryAreThreeThings) {
    Door door = given::hingedDoor();
    DoorEvidence evidence = hingedClosingIn(20);
    given::plate(evidence, FireClass::A0);
    DoorGrade result = graded(door, evidence);
    EXPECT_EQ(rowOf(result, "rating").verdict, Verdict::Unsatisfactory);
    EXPECT_EQ(rowOf(result, "rating").reason.text,
              compared(reason::plate("A-0"), reason::boundary("A-60")));
    EXPECT_EQ(rowOf(result, "plate").verdict, Verdict::Judge);

    evidence.plate.reset();
    door.fire_class = FireClass::A15;
    result = graded(door, evidence);
    EXPECT_EQ(rowOf(result, "rating").reason.text,
              compared(reason::in_register("A-15"), reason::boundary("A-60")));
    EXPECT_EQ(rowOf(result, "rating").verdict, Verdict::Unsatisfactory);
    door.watertight = true; // needs no insulation: SOLAS II-2/9.4.1.1.3
    EXPECT_EQ(rowOf(graded(door, evidence), "rating").verdict, Verdict::Satisfactory);
}

TEST(Rating, PlanThatAsksLessThanTheRulesIsNamedBesideThem) {
    const Door door = given::hingedDoor();
    Boundary boundary = given::zoneBulkhead();
    boundary.required = FireClass::A0;
    const auto text = [&] {
        return rowOf(grade(given::solasVessel(), door, &boundary, {}, given::catalogue()), "rating")
            .reason.text;
    };
    const Phrase has = reason::in_register("A-60");
    EXPECT_EQ(text(),
              compared(has, reason::boundary_by_plan("A-0", "A-60", "SOLAS II-2/9.2.2.1.1.1")));
    boundary.required.reset();
    EXPECT_EQ(text(), compared(has, reason::boundary_by("A-60", "SOLAS II-2/9.2.2.1.1.1")));
    boundary.place = Place::Stairway;
    boundary.spaces = std::pair(2, 12); // SOLAS II-2 table 9.1: A-30
    EXPECT_EQ(text(), compared(has, reason::boundary_by("A-30", "SOLAS II-2 table 9.1, 2-12")));
    boundary.spaces = std::pair(4, 4);
    EXPECT_EQ(text(), has);
    EXPECT_EQ(rowOf(grade(given::solasVessel(), door, &boundary, {}, given::catalogue()), "rating")
                  .reason.kind,
              ReasonKind::NoValuePrinted);
}

TEST(Plate, MissingAsksForTheCertificateAndIsNoFailure) {
    DoorEvidence evidence = hingedClosingIn(20);
    evidence.plate = Recorded<PlateRead>{Stamp{}, {"w", "5-31", PlateState::None, {}}};
    const DoorGrade result = graded(given::hingedDoor(), evidence);
    EXPECT_EQ(rowOf(result, "plate").verdict, Verdict::Judge);
    EXPECT_EQ(rowOf(result, "rating").verdict, Verdict::Satisfactory);
    EXPECT_EQ(result.verdict, Verdict::Judge);
}

TEST(Answers, NoFailsARuleAndIsJudgedWhereItIsPractice) {
    DoorEvidence evidence = hingedClosingIn(20);
    given::answer(evidence, "no-hook", Answer::No);
    EXPECT_EQ(graded(given::hingedDoor(), evidence).verdict, Verdict::Unsatisfactory);

    evidence = hingedClosingIn(20);
    given::answer(evidence, "path-clear", Answer::No);
    EXPECT_EQ(graded(given::hingedDoor(), evidence).verdict, Verdict::Judge);
    evidence.judgements["path-clear"] = {Stamp{},
                                         {"w", "5-31", "path-clear", true, "moved while we stood"}};
    const DoorGrade decided = graded(given::hingedDoor(), evidence);
    EXPECT_EQ(decided.verdict, Verdict::Satisfactory);
    EXPECT_EQ(rowOf(decided, "path-clear").reason.kind, ReasonKind::InspectorDecided);
}

TEST(Judgement, NeverOverrulesAPlainFailure) {
    DoorEvidence evidence = hingedClosingIn(5);
    evidence.judgements["hinged-time"] = {Stamp{}, {"w", "5-31", "hinged-time", true, "fine"}};
    EXPECT_EQ(graded(given::hingedDoor(), evidence).verdict, Verdict::Unsatisfactory);
}

TEST(DoorGrade, AnyUntestedRowKeepsADoorFromSatisfactory) {
    for (const Requirement& requirement : given::catalogue().rows) {
        DoorEvidence evidence = hingedClosingIn(20);
        const DoorGrade before = graded(given::hingedDoor(), evidence);
        if (rowOf(before, requirement.id).verdict != Verdict::Satisfactory ||
            requirement.check == CheckKind::ClassAtLeast)
            continue;
        evidence.observations.erase({requirement.id, Side::None});
        evidence.observations.erase({requirement.id, Side::Two});
        evidence.measured.erase(requirement.id);
        if (requirement.id == "plate")
            evidence.plate.reset();
        if (requirement.source == Source::ClosingTime || requirement.source == Source::AnyRun)
            evidence.runs.clear();
        EXPECT_EQ(graded(given::hingedDoor(), evidence).verdict, Verdict::Untested)
            << requirement.id;
    }
}

TEST(DoorGrade, CouldNotTestSaysWhyAndStaysUntested) {
    DoorEvidence evidence = hingedClosingIn(20);
    evidence.observations.erase({"fail-safe", Side::None});
    evidence.could_not_test["fail-safe"] = {Stamp{},
                                            {"w", "5-31", "fail-safe", "no engineer free"}};
    const DoorGrade result = graded(given::hingedDoor(), evidence);
    EXPECT_EQ(result.verdict, Verdict::Untested);
    EXPECT_EQ(rowOf(result, "fail-safe").reason.kind, ReasonKind::CouldNotTest);
    EXPECT_EQ(rowOf(result, "fail-safe").reason.said, "no engineer free");
}

TEST(OneSide, AnsweredLeavesTheRowUntested) {
    DoorEvidence evidence = hingedClosingIn(20);
    evidence.observations.erase({"one-person", Side::Two});
    const DoorGrade result = graded(given::hingedDoor(), evidence);
    EXPECT_EQ(rowOf(result, "one-person").reason.kind, ReasonKind::OneSideMissing);
    EXPECT_EQ(result.verdict, Verdict::Untested);
}

// Limit 1 m: SOLAS II-2/9.4.1.1.5.11.
TEST(Reopening, NoFurtherThanOneMetre) {
    DoorEvidence evidence = slidingWith(given::goodSlidingRun());
    for (const auto& [distance, verdict] : {std::pair{0.95, Verdict::Satisfactory},
                                            {1.0, Verdict::Satisfactory},
                                            {1.02, Verdict::Unsatisfactory}}) {
        given::measured(evidence, "reopen-distance", distance);
        EXPECT_EQ(rowOf(graded(given::slidingDoor(), evidence), "reopen-distance").verdict, verdict)
            << distance;
    }
}

TEST(Rows, ShownByRunsNeedNoFurtherAnswer) {
    DoorEvidence evidence;
    evidence.door = "5-31";
    for (const Release release : {Release::LocalSideOne, Release::LocalSideTwo, Release::Remote})
        evidence.runs.push_back(
            given::run(release, {{MarkKind::LeafMoves, 0}, {MarkKind::Shut, 20}}));
    const DoorGrade result = graded(given::hingedDoor(), evidence);
    for (const char* id : {"self-closing", "local-release", "remote-release"})
        EXPECT_EQ(rowOf(result, id).verdict, Verdict::Satisfactory) << id;
}

TEST(OtherFlag, SeesTheSolasRowsAsAdvice) {
    Particulars ferry = given::solasVessel();
    ferry.regime = Regime::Other;
    const DoorGrade result = graded(given::hingedDoor(), hingedClosingIn(5), ferry);
    const RowGrade time = rowOf(result, "hinged-time");
    EXPECT_EQ(time.verdict, Verdict::Advice);
    EXPECT_EQ(time.underlying, Verdict::Unsatisfactory);
    EXPECT_EQ(result.verdict, Verdict::Satisfactory);
}

// MSC.1/Circ.1432: local operation of every fire door in zone bulkheads, every quarter.
TEST(QuarterlyWalk, AsksOnlyWhatItTriesAndHidesNoFailure) {
    const Upkeep& quarterly = given::catalogue().upkeep.at(1);
    ASSERT_EQ(quarterly.id, "quarterly");
    const Door door = given::hingedDoor();
    const Boundary boundary = given::zoneBulkhead();
    DoorEvidence evidence;
    evidence.door = door.number;
    const auto walked = [&] {
        return grade(given::solasVessel(), door, &boundary, evidence, given::catalogue(),
                     &quarterly);
    };
    EXPECT_EQ(walked().verdict, Verdict::Untested);
    EXPECT_EQ(rowOf(walked(), "hose-port").reason.kind, ReasonKind::OutsideThisWalk);
    for (const std::string& id : quarterly.covers)
        if (const Requirement& row = given::row(id); row.check == CheckKind::Seen)
            given::answer(evidence, id, Answer::Yes);
        else if (row.check == CheckKind::SeenBothSides)
            for (const Side side : {Side::One, Side::Two})
                given::answer(evidence, id, Answer::Yes, side);
    evidence.runs = {given::run(Release::LetGo, {{MarkKind::LeafMoves, 0}, {MarkKind::Shut, 20}})};
    EXPECT_EQ(walked().verdict, Verdict::Satisfactory);
    given::answer(evidence, "hose-port", Answer::No);
    EXPECT_EQ(rowOf(walked(), "hose-port").verdict, Verdict::Unsatisfactory);
    EXPECT_EQ(walked().verdict, Verdict::Unsatisfactory);
}

TEST(QuarterlyWalk, EveryRowItTriesIsInTheCatalogue) {
    for (const Upkeep& upkeep : given::catalogue().upkeep)
        for (const std::string& id : upkeep.covers)
            EXPECT_NE(findRequirement(given::catalogue(), id), nullptr) << id;
}

// No grace days are printed (MSC.1/Circ.1432).
TEST(Upkeep, FallsDueOnTheSameDayOrTheLastOfAShorterMonth) {
    const auto due = [](const char* done, Period every) {
        return isoText(dueAfter(*calendarDateFrom(done), every));
    };
    EXPECT_EQ(due("2026-11-25", Period::Weekly), "2026-12-02");
    EXPECT_EQ(due("2026-11-25", Period::Quarterly), "2027-02-25");
    EXPECT_EQ(due("2026-11-30", Period::Quarterly), "2027-02-28");
    EXPECT_EQ(due("2024-02-29", Period::Yearly), "2025-02-28");
}
