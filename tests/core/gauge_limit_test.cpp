// A figure read off rule, gauge or tape beside its limit: settled at once, by the step of the
// instrument. Limits of 46 CFR: 72.05-25 (inches) and 116.435 (both units), annual edition of 2015.
#include <gtest/gtest.h>

#include "core/grading/grade.h"
#include "core/requirement/gauge.h"
#include "tests/core/us_row_cases.h"

using namespace latchround;

namespace {

/// Of the site that this case of the row stands for, with this figure and instrument.
RowGrade measuredAt(given::Change asked, const char* id, double value,
                    std::optional<double> step = std::nullopt) {
    given::Site site;
    asked(site);
    Particulars vessel = given::solasVessel();
    vessel.regime = site.regime;
    DoorEvidence evidence;
    evidence.door = site.door.number;
    given::measured(evidence, id, value);
    evidence.measured[id].body.step = step;
    const DoorGrade all = grade(vessel, site.door, &site.boundary, evidence, given::catalogue());
    const RowGrade* row = findRow(all, id);
    if (row)
        return *row;
    ADD_FAILURE() << "no row " << id;
    return {};
}

struct Expected {
    double value;
    Verdict verdict;
};

void expectEach(given::Change asked, const char* id, std::optional<double> step,
                const std::vector<Expected>& all) {
    for (const Expected& each : all)
        EXPECT_EQ(measuredAt(asked, id, each.value, step).verdict, each.verdict)
            << id << " " << each.value;
}

constexpr Verdict good = Verdict::Satisfactory;
constexpr Verdict judge = Verdict::Judge;
constexpr Verdict bad = Verdict::Unsatisfactory;
constexpr double rule = 1, caliper = 0.1, gap_gauge = 0.5;

} // namespace

// 12 mm: SOLAS II-2/9.4.1.1.2.
TEST(GaugeOnItsLimit, IsSettledByTheStepOfTheInstrument) {
    expectEach(given::newlyHungA, "a-gap", rule,
               {{11, good}, {12, good}, {12.5, judge}, {12.9, judge}, {13, bad}, {14, bad}});
    expectEach(given::newlyHungA, "a-gap", caliper,
               {{11.9, good}, {12.0, good}, {12.05, judge}, {12.1, bad}, {12.5, bad}});
    expectEach(given::newlyHungA, "a-gap", gap_gauge, {{12, good}, {12.4, judge}, {12.5, bad}});
}

// A coarse step is no way round a limit: no instrument is coarser than the tape.
TEST(GaugeOnItsLimit, IsReadOffNothingCoarserThanATape) {
    expectEach(given::newlyHungA, "a-gap", 100, {{16.9, judge}, {17.0, bad}, {30, bad}});
    EXPECT_EQ(measuredAt(given::solasSliding, "reopen-distance", 4, 5).verdict, bad);
}

TEST(GaugeOnItsLimit, IsNeverToBeMeasuredAgain) {
    for (int tenths = 100; tenths <= 150; ++tenths)
        for (const double step : {0.0, rule, caliper, gap_gauge})
            EXPECT_NE(measuredAt(given::newlyHungA, "a-gap", tenths / 10.0, step).verdict,
                      Verdict::TimeAgain)
                << tenths;
}

TEST(GaugeOnItsLimit, IsSaidToBeOnItWithinHalfAStep) {
    const auto why = [](double value, double step) {
        return measuredAt(given::newlyHungA, "a-gap", value, step).reason;
    };
    EXPECT_EQ(why(12, rule).kind, ReasonKind::OnTheLimit);
    EXPECT_EQ(why(11.5, rule).kind, ReasonKind::OnTheLimit);
    EXPECT_EQ(why(11.4, rule).kind, ReasonKind::InsideLimits);
    EXPECT_EQ(why(12.5, rule).kind, ReasonKind::BeyondByLessThanAStep);
    EXPECT_EQ(why(12.5, rule).text, Phrase("1 mm"));
    EXPECT_EQ(why(13, rule).kind, ReasonKind::OutsideLimits);
    EXPECT_FALSE(measuredAt(given::newlyHungA, "a-gap", 12, rule).inside)
        << "a step decides, not a probability";
}

TEST(GaugeOnItsLimit, OfAnUnknownInstrumentGoesByTheUsualStep) {
    for (const std::optional<double> unknown : {std::optional<double>(), std::optional(0.0)})
        expectEach(given::newlyHungA, "a-gap", unknown, {{12, good}, {12.5, judge}, {13, bad}});
    // 1 m: SOLAS II-2/9.4.1.1.5.11; by tape.
    expectEach(given::solasSliding, "reopen-distance", std::nullopt,
               {{0.995, good}, {1.0, good}, {1.002, judge}, {1.005, bad}, {1.01, bad}});
    // 0.05 m2: SOLAS II-2/9.4.1.2.1.
    expectEach(given::bDoor, "b-vent", std::nullopt,
               {{0.05, good}, {0.0503, judge}, {0.0505, bad}});
}

TEST(GaugeOnItsLimit, OfInchesIsTheInch) {
    // 3/4 in = 19.05 mm, 72.05-25(b)(3); 3/8 in, (c)(4); 1/2 in = 12.7 mm, (b)(6), (b)(7); 1 in,
    // (c)(5).
    expectEach(given::usA<given::H>, "h-latch-throw", caliper,
               {{19.1, good}, {19.05, good}, {19.0, judge}, {18.95, bad}, {18.9, bad}});
    expectEach(given::usA<given::H>, "h-latch-throw", rule, {{20, good}, {19, judge}, {18, bad}});
    expectEach(given::usB<given::H>, "h-latch-throw", caliper,
               {{9.525, good}, {9.5, judge}, {9.4, bad}});
    expectEach(given::usA<given::H>, "h-undercut", caliper,
               {{12.7, good}, {12.75, judge}, {12.8, bad}});
    expectEach(given::usB<given::H>, "h-undercut", rule,
               {{25, good}, {25.4, good}, {26, judge}, {27, bad}});
    expectEach(given::usA<given::H>, "h-frame-stop", rule,
               {{13, good}, {12.7, good}, {12, judge}, {11, bad}});
}

// 20 mm (0.75 in), 116.435(c)(3); 1200 mm (48 in), (b)(6); 17.8 N (5 lb, which is 22.2 N),
// (c)(7)(iii).
TEST(TwoPrintedFigures, LeaveWhatLiesBetweenThemToTheInspector) {
    expectEach(
        given::usA<given::K>, "k-latch-throw", caliper,
        {{20.1, good}, {20, good}, {19.9, judge}, {19.05, judge}, {19.0, judge}, {18.9, bad}});
    expectEach(given::usA<given::K>, "leaf-width", rule,
               {{1200, good}, {1201, judge}, {1219, judge}, {1220, judge}, {1221, bad}});
    for (const char* id : {"k-horizontal-unlatch", "k-horizontal-open"})
        expectEach(given::deckDoor, id, 0.1,
                   {{17.8, good}, {17.9, judge}, {22.2, judge}, {22.4, bad}});
    expectEach(given::usB<given::K>, "k-undercut", caliper,
               {{25, good}, {25.4, judge}, {25.6, bad}});
}

TEST(TwoPrintedFigures, AreBothShown) {
    const RowGrade between = measuredAt(given::usA<given::K>, "leaf-width", 1210, rule);
    EXPECT_EQ(between.reason.kind, ReasonKind::BetweenTwoFigures);
    ASSERT_EQ(between.reason.text.parts.size(), 2u);
    EXPECT_EQ(between.reason.text.parts[0], Phrase("1200 mm"));
    EXPECT_EQ(between.reason.text.parts[1], Phrase("1219.2 mm"));
}

TEST(InstrumentStep, IsTheSameLengthInEveryUnit) {
    EXPECT_EQ(stepOf(Instrument::Rule, "mm"), 1);
    EXPECT_DOUBLE_EQ(stepOf(Instrument::Tape, "m"), 0.005);
    EXPECT_DOUBLE_EQ(stepOf(Instrument::Caliper, "m"), 0.0001);
    EXPECT_EQ(stepOf(Instrument::SpringGauge, "N"), 1);
    EXPECT_EQ(stepOf(Instrument::Rule, "N"), 0);
    EXPECT_EQ(usualStep(given::row("h-meeting-gap")), 0.5) << "a gap gauge";
    EXPECT_EQ(usualStep(given::row("leaf-width")), 5) << "a tape";
    EXPECT_EQ(usualStep(given::row("self-closing")), 1) << "a spring gauge";
}
