// Times and rates beside a band that its text calls approximate, runs that differ, and runs that no
// door can have made. The band: SOLAS II-2/9.4.1.1.5.2; its margins and the 5 per cent by which
// releases of one door differ are our choice, no source.
#include <gtest/gtest.h>

#include "core/grading/grade.h"
#include "core/grading/reason_phrases.h"
#include "core/measure/double_mark.h"
#include "core/measure/interval.h"
#include "core/requirement/flag_rules.h"
#include "tests/core/recorded_ship.h"
#include "tests/core/row_cases.h"

using namespace latchround;

namespace {

using Times = std::vector<double>;

DoorEvidence closings(const Door& door, const Times& seconds) {
    DoorEvidence evidence;
    evidence.door = door.number;
    for (const double each : seconds)
        evidence.runs.push_back(given::run(Release::Remote, {{MarkKind::AlarmOn, 0},
                                                             {MarkKind::LeafMoves, 7},
                                                             {MarkKind::Shut, 7 + each},
                                                             {MarkKind::AlarmOff, 7.2 + each}}));
    return evidence;
}

RowGrade graded(const Door& door, const DoorEvidence& evidence, const char* id,
                const Catalogue& catalogue = given::catalogue()) {
    const Boundary boundary = given::zoneBulkhead();
    const DoorGrade all = grade(given::solasVessel(), door, &boundary, evidence, catalogue);
    const RowGrade* row = findRow(all, id);
    if (row)
        return *row;
    ADD_FAILURE() << "no row " << id;
    return {};
}

RowGrade hinged(const Times& seconds, const Catalogue& catalogue = given::catalogue()) {
    const Door door = given::hingedDoor();
    return graded(door, closings(door, seconds), "hinged-time", catalogue);
}

RowGrade sliding(double rate) {
    const Door door = given::slidingDoor();
    return graded(door, closings(door, {door.opening_m / rate}), "sliding-rate");
}

Catalogue byFlag(const std::string& row) {
    return withFlagRules(given::catalogue(),
                         R"({"edition":"Order 7","issuer":"Port of Skerry","rows":[)" + row + "]}",
                         "flag.json")
        .value();
}

} // namespace

// 10 to 40 s: as far as 9.5 s and 44 s. One run of a thumb has u = 0.104 s: 0.171 s decides.
TEST(ApproximateBand, LeavesATimeWithinItsMarginToTheInspector) {
    for (const auto& [seconds, verdict] : {std::pair{10.2, Verdict::Satisfactory},
                                           {10.0, Verdict::TimeAgain},
                                           {9.8, Verdict::Judge},
                                           {9.5, Verdict::Judge},
                                           {9.3, Verdict::Unsatisfactory},
                                           {39.8, Verdict::Satisfactory},
                                           {40.0, Verdict::TimeAgain},
                                           {40.2, Verdict::Judge},
                                           {43.8, Verdict::Judge},
                                           {44.0, Verdict::Judge},
                                           {44.2, Verdict::Unsatisfactory}})
        EXPECT_EQ(hinged({seconds}).verdict, verdict) << seconds;
}

// 0.1 to 0.2 m/s: as far as 0.09 and 0.21 m/s.
TEST(ApproximateBand, LeavesARateWithinItsMarginToTheInspector) {
    for (const auto& [rate, verdict] : {std::pair{0.103, Verdict::Satisfactory},
                                        {0.095, Verdict::Judge},
                                        {0.09, Verdict::Judge},
                                        {0.088, Verdict::Unsatisfactory},
                                        {0.193, Verdict::Satisfactory},
                                        {0.207, Verdict::Judge},
                                        {0.21, Verdict::Judge},
                                        {0.218, Verdict::Unsatisfactory}})
        EXPECT_EQ(sliding(rate).verdict, verdict) << rate;
}

TEST(ApproximateBand, SaysWhichSideCrushes) {
    EXPECT_EQ(hinged({9.7}).reason.kind, ReasonKind::WithinMargin);
    EXPECT_EQ(hinged({9.7}).reason.text, reason::faster_by("5"));
    EXPECT_EQ(hinged({42}).reason.text, reason::slower_by("10"));
    EXPECT_EQ(sliding(0.095).reason.text, reason::slower_by("10"));
    EXPECT_EQ(sliding(0.207).reason.text, reason::faster_by("5"));
}

TEST(ApproximateBand, IsTheOnePlaceWhereAJudgementStandsOverATime) {
    const Door door = given::hingedDoor();
    DoorEvidence evidence = closings(door, {9.5});
    evidence.judgements["hinged-time"] = {Stamp{},
                                          {"w", "5-31", "hinged-time", true, "a light leaf"}};
    EXPECT_EQ(graded(door, evidence, "hinged-time").verdict, Verdict::Satisfactory);
    evidence.runs = closings(door, {9}).runs;
    EXPECT_EQ(graded(door, evidence, "hinged-time").verdict, Verdict::Unsatisfactory);
}

// Alarm lead 5 to 10 s, SOLAS II-2/9.4.1.1.5.10; a door in a deck 5 to 10 s, 46 CFR
// 116.435(c)(7)(i): neither text says "approximate".
TEST(ApproximateBand, IsWhereTheTextSaysItAndOnlyThere) {
    for (const char* id : {"hinged-time", "sliding-rate"})
        EXPECT_TRUE(given::row(id).approximate) << id;
    for (const char* id : {"alarm-lead", "alarm-holds", "k-horizontal"})
        EXPECT_FALSE(given::row(id).approximate) << id;
    const Door door = given::slidingDoor();
    const auto lead = [&](double seconds, int runs) {
        DoorEvidence evidence;
        evidence.door = door.number;
        for (int i = 0; i < runs; ++i)
            evidence.runs.push_back(
                given::run(Release::Remote, {{MarkKind::AlarmOn, 0},
                                             {MarkKind::LeafMoves, seconds},
                                             {MarkKind::Shut, seconds + 9},
                                             {MarkKind::AlarmOff, seconds + 9.5}}));
        return graded(door, evidence, "alarm-lead");
    };
    EXPECT_EQ(lead(4.75, 1).verdict, Verdict::Unsatisfactory);
    EXPECT_EQ(lead(10.3, 1).verdict, Verdict::Unsatisfactory);
    EXPECT_EQ(lead(5.0, 3).reason.kind, ReasonKind::StillCloseAfterThree);
    EXPECT_EQ(hinged({10, 10, 10}).reason.kind, ReasonKind::StillCloseToApproximate);
}

TEST(ApproximateBand, IsAFlagsToNarrowToNothing) {
    const Catalogue none = byFlag(R"({"id":"hinged-time","change":"tighten","cite":"para 2",)"
                                  R"("approximate":{"slow":0,"fast":0}})");
    EXPECT_EQ(hinged({9.8}, none).verdict, Verdict::Unsatisfactory);
    EXPECT_EQ(hinged({40.2}, none).verdict, Verdict::Unsatisfactory);
    EXPECT_EQ(hinged({10.2}, none).verdict, Verdict::Satisfactory);
    const Catalogue own =
        byFlag(R"({"id":"hinged-time","change":"tighten","high":30,"cite":"para 2"})");
    EXPECT_EQ(hinged({30.3}, own).verdict, Verdict::Unsatisfactory)
        << "the flag's own limit is not called approximate";
    EXPECT_FALSE(withFlagRules(given::catalogue(),
                               R"({"edition":"e","issuer":"i","rows":[{"id":"hinged-time",)"
                               R"("change":"tighten","cite":"c","approximate":)"
                               R"({"slow":0.2,"fast":0.05}}]})",
                               "flag.json"))
        << "wider than it was";
}

TEST(RunsOfOneGoodDoor, DifferByFivePerCentAndAreNotCalledUneven) {
    const RowGrade row = hinged({10.20, 10.41, 10.52});
    EXPECT_EQ(row.verdict, Verdict::Satisfactory);
    EXPECT_EQ(row.reason.kind, ReasonKind::InsideLimits);
    EXPECT_NEAR(row.figure->value, (10.20 + 10.41 + 10.52) / 3, 1e-9);
}

// 5 per cent of 20 s is 1 s; with the 0.283 s by which two readings of one thumb differ, 1.039 s.
TEST(RunsOfOneGoodDoor, AreCalledUnevenBeyondThat) {
    EXPECT_EQ(hinged({19.49, 20.51}).reason.kind, ReasonKind::InsideLimits);
    EXPECT_EQ(hinged({19.47, 20.53}).reason.kind, ReasonKind::RunsDisagree);
}

TEST(RunsThatDiffer, LeaveTheWorstVerdictStanding) {
    EXPECT_EQ(hinged({43, 9}).verdict, Verdict::Unsatisfactory) << "43 s alone is judged";
    EXPECT_EQ(hinged({9, 43}).verdict, Verdict::Unsatisfactory);
    EXPECT_EQ(hinged({20, 42}).reason.kind, ReasonKind::WithinMargin);
}

TEST(RunFasterThanALeaf, IsNeitherGoodNorBad) {
    const Door door = given::hingedDoor();
    const DoorEvidence slip = closings(door, {0.49});
    const RowGrade row = graded(door, slip, "hinged-time");
    EXPECT_EQ(row.verdict, Verdict::Judge);
    EXPECT_EQ(row.reason.kind, ReasonKind::FasterThanALeaf);
    for (const char* id : {"self-closing", "remote-release"}) {
        EXPECT_EQ(graded(door, slip, id).verdict, Verdict::Untested) << id;
        EXPECT_EQ(graded(door, slip, id).reason.kind, ReasonKind::FasterThanALeaf) << id;
    }
    EXPECT_EQ(hinged({0.5}).verdict, Verdict::Unsatisfactory);
    EXPECT_EQ(hinged({0.51}).verdict, Verdict::Unsatisfactory);
}

TEST(RunFasterThanALeaf, IsNotPassedOverBesideAGoodOne) {
    EXPECT_EQ(hinged({0.2, 20}).verdict, Verdict::Judge) << "if it was no slip, the leaf flew";
    EXPECT_EQ(hinged({20, 0.2}).reason.kind, ReasonKind::FasterThanALeaf);
    EXPECT_EQ(hinged({0.2, 60}).verdict, Verdict::Unsatisfactory);
}

// Alarm 5 to 10 s before movement (SOLAS II-2/9.4.1.1.5.10): 2 s of it are not lost with a shut
// mark that nobody believes.
TEST(RunFasterThanALeaf, KeepsItsAlarmInSight) {
    const Door door = given::slidingDoor();
    const auto withLead = [&](double lead) {
        DoorEvidence evidence = closings(door, {9});
        evidence.runs.push_back(given::run(Release::Remote, {{MarkKind::AlarmOn, 0},
                                                             {MarkKind::LeafMoves, lead},
                                                             {MarkKind::Shut, lead + 0.3},
                                                             {MarkKind::AlarmOff, lead + 0.5}}));
        return graded(door, evidence, "alarm-lead");
    };
    EXPECT_EQ(withLead(7).verdict, Verdict::Satisfactory);
    EXPECT_EQ(withLead(2).verdict, Verdict::Judge);
    EXPECT_EQ(withLead(2).reason.kind, ReasonKind::FasterThanALeaf);
}

TEST(RunFasterThanALeaf, IsSettledByAJudgement) {
    const Door door = given::hingedDoor();
    DoorEvidence evidence = closings(door, {0.3});
    evidence.judgements["hinged-time"] = {Stamp{}, {"w", "5-31", "hinged-time", false, "it slams"}};
    EXPECT_EQ(graded(door, evidence, "hinged-time").verdict, Verdict::Unsatisfactory);
    const Door slide = given::slidingDoor();
    for (const char* id : {"sliding-rate", "alarm-lead", "alarm-holds"})
        EXPECT_EQ(graded(slide, closings(slide, {0.3}), id).reason.kind,
                  ReasonKind::FasterThanALeaf)
            << id;
}

TEST(RunFasterThanALeaf, IsAskedAboutAfterTheRun) {
    const auto closing = [](double seconds) {
        return given::run(Release::LetGo, {{MarkKind::LeafMoves, 0}, {MarkKind::Shut, seconds}});
    };
    EXPECT_EQ(suspectedDouble(closing(0.49)), std::optional<std::size_t>(1));
    EXPECT_FALSE(suspectedDouble(closing(0.5)));
    EXPECT_FALSE(suspectedDouble(
        given::run(Release::Remote,
                   {{MarkKind::AlarmOn, 0}, {MarkKind::LeafMoves, 0.4}, {MarkKind::Shut, 9}})))
        << "no leaf went its way between these";
}

TEST(ReversedMarks, AreThoseThatNoDoorCanMake) {
    const auto of = [](std::vector<std::pair<MarkKind, double>> marks) {
        return reversedMarks(given::run(Release::Remote, marks));
    };
    EXPECT_TRUE(of({{MarkKind::Shut, 0}, {MarkKind::LeafMoves, 13}}));
    EXPECT_TRUE(of({{MarkKind::LeafMoves, 1}, {MarkKind::Shut, 0.999}}));
    EXPECT_FALSE(of({{MarkKind::LeafMoves, 1}, {MarkKind::Shut, 1}}));
    EXPECT_TRUE(of({{MarkKind::LeafMoves, 0}, {MarkKind::HalfWay, 9}, {MarkKind::Shut, 8}}));
    EXPECT_TRUE(of({{MarkKind::SecondLeafHome, 4}, {MarkKind::FirstLeafHome, 5}}));
    EXPECT_TRUE(of({{MarkKind::AlarmOn, 2}, {MarkKind::AlarmOff, 1}}));
    EXPECT_TRUE(of({{MarkKind::Touched, 2}, {MarkKind::Stopped, 1}}));
    EXPECT_FALSE(of({{MarkKind::AlarmOn, 3}, {MarkKind::LeafMoves, 0}, {MarkKind::Shut, 9}}))
        << "an alarm that comes late is the door's fault";
    EXPECT_FALSE(of({{MarkKind::AlarmOn, 0},
                     {MarkKind::AlarmOff, 5},
                     {MarkKind::LeafMoves, 6},
                     {MarkKind::Shut, 15}}));
}

TEST(ReversedMarks, InARegisterVoidTheirRunAndSayWhy) {
    given::RecordedShip ship;
    const FactId walk = ship.begin();
    const auto record = [&](std::uint32_t moves_ms, std::uint32_t shut_ms) {
        const FactId run =
            ship.add(ship.mate, RunStarted{walk, ship.door, RunKind::Closing, Release::LetGo, 0});
        ship.add(ship.mate, Mark{run, MarkKind::LeafMoves, moves_ms, {}, InputDevice::Key, {}});
        ship.add(ship.mate, Mark{run, MarkKind::Shut, shut_ms, {}, InputDevice::Key, {}});
        ship.add(ship.mate, RunEnded{run, RunOutcome::Complete, ""});
    };
    record(14'000, 1'000);
    record(1'000, 1'000);
    const DoorEvidence evidence = ship.ledger.evidenceOf(walk, ship.door);
    ASSERT_EQ(evidence.runs.size(), 2u);
    EXPECT_EQ(evidence.runs[0].end->outcome, RunOutcome::Void);
    EXPECT_EQ(evidence.runs[0].reversed,
              std::optional(std::pair(MarkKind::LeafMoves, MarkKind::Shut)));
    EXPECT_EQ(evidence.runs[1].end->outcome, RunOutcome::Complete);
    EXPECT_FALSE(evidence.runs[1].reversed);
    DoorEvidence alone = evidence;
    alone.runs.pop_back();
    for (const char* id : {"hinged-time", "self-closing"})
        EXPECT_EQ(graded(given::hingedDoor(), alone, id).verdict, Verdict::Untested) << id;
}
