// Budgets of the GUM, of NIST TN 1297 and of stopwatch calibration.
#include <cmath>
#include <vector>

#include <gtest/gtest.h>

#include "core/measure/interval.h"
#include "core/measure/reading.h"

using namespace latchround;

namespace {

Budget budgetOf(const std::vector<double>& u, const std::vector<double>& degrees = {}) {
    Budget budget;
    for (std::size_t i = 0; i < u.size(); ++i)
        budget.push_back(
            {Influence::Resolution, u[i], 1, degrees.empty() ? known_exactly : degrees[i], false});
    return budget;
}

} // namespace

// JCGM 100:2008, example H.1 (end gauge), nm: inputs, 32, 16 and 93 read in files that quote it;
// 16.7 and 2.92 from memory.
TEST(GumH1, CombinedUncertaintyIs32nm) {
    EXPECT_NEAR(combinedUncertainty(budgetOf({25, 9.7, 2.9, 16.6})), 31.67112249352713, 1e-12);
    EXPECT_EQ(std::round(combinedUncertainty(budgetOf({25, 9.7, 2.9, 16.6}))), 32);
}

// Trap 1: 16.76 from the unrounded sum; the printed 32 nm put back in would give 17.47.
TEST(GumH1, DegreesOfFreedomComeFromTheUnroundedSum) {
    const Budget budget = budgetOf({25, 9.7, 2.9, 16.6}, {18, 25.6, 50, 2});
    const double degrees = effectiveDegreesOfFreedom(budget);
    EXPECT_NEAR(degrees, 16.76455398091716, 1e-11);
    EXPECT_EQ(std::floor(degrees), 16);
    // Truncated to 16, not rounded to 17 and not left at 16.76.
    EXPECT_NEAR(coverageFactor(degrees, 0.99), 2.9207816224251, 1e-12);
    EXPECT_NEAR(coverageFactor(degrees, 0.99), 2.92, 0.005);
    const double expanded_nm = coverageFactor(degrees, 0.99) * combinedUncertainty(budget);
    EXPECT_NEAR(expanded_nm, 92.50443254066825, 1e-9);
    EXPECT_EQ(std::round(expanded_nm), 93);
}

// The same example's u(d): 9.7 nm; 25.6 degrees from the printed 9.7, 25.45 unrounded.
TEST(GumH1, UncertaintyOfTheDifference) {
    const Budget budget = budgetOf({5.8, 3.9, 6.7}, {24, 5, 8});
    EXPECT_NEAR(combinedUncertainty(budget), 9.681941953967707, 1e-12);
    EXPECT_NEAR(effectiveDegreesOfFreedom(budget), 25.44725077736272, 1e-11);
}

// NIST TN 1297 (1994), appendix D.2: 34 nm, read at nist.gov.
TEST(Tn1297, CombinedUncertaintyIs34nm) {
    const Budget budget = budgetOf({25, 5.8, 3.9, 6.7, 1.7, 5.8, 10.2, 2.9, 16.6});
    EXPECT_NEAR(combinedUncertainty(budget), 33.81242375222457, 1e-12);
    EXPECT_EQ(std::round(combinedUncertainty(budget)), 34);
}

// JCGM 101:2008, 9.2.2: four standard normal parts added, from memory.
TEST(Jcgm101, FourNormalPartsMakeTwo) {
    const Budget budget = budgetOf({1, 1, 1, 1});
    EXPECT_DOUBLE_EQ(combinedUncertainty(budget), 2);
    EXPECT_NEAR(coverageFactor(effectiveDegreesOfFreedom(budget), 0.95) * 2, 3.92, 0.005);
}

// Ohm's law in the README of GTC (a published calculator): 0.1 V (0.001) over 15 mA (0.5) is
// 6.67(23) ohm. The same form as opening over time.
TEST(Quotient, OhmsLaw) {
    const Reading volt{0.1, budgetOf({0.001})};
    const Reading ampere{0.015, budgetOf({0.0005})};
    const Reading ohm = quotient(volt, ampere);
    EXPECT_NEAR(ohm.value, 6.666666666666667, 1e-12);
    EXPECT_NEAR(ohm.u(), 0.23200681130912335, 1e-12);
}

// 0.90 m (5 mm) in 6.00 s and in 4.50 s (0.10 s), computed apart.
TEST(Quotient, SpeedOfALeaf) {
    const Reading opening{0.90, budgetOf({0.005})};
    const Reading slow = quotient(opening, {6.00, budgetOf({0.10})});
    EXPECT_NEAR(slow.value, 0.15, 1e-12);
    EXPECT_NEAR(slow.u(), 0.0026352313834736496, 1e-12);
    EXPECT_NEAR(quotient(opening, {4.50, budgetOf({0.10})}).u(), 0.0045812284729085115, 1e-12);
}

// NIST SP 960-12 (2009), uncertainty tables, ms, k = 2; from memory (land line: good confidence,
// mobile: fair, totalize: low).
TEST(StopwatchCalibration, BudgetsOfSp960) {
    const auto expanded_ms = [](std::vector<double> half_widths, double sd) {
        std::vector<double> u{sd};
        for (const double half : half_widths)
            u.push_back(rectangular(half));
        return 2 * combinedUncertainty(budgetOf(u));
    };
    EXPECT_NEAR(expanded_ms({120, 30, 5}, 230), 482, 1);
    EXPECT_NEAR(expanded_ms({120, 150, 5}, 230), 511, 1);
    EXPECT_NEAR(expanded_ms({40, 5}, 30), 76, 1);
    EXPECT_NEAR(expanded_ms({120, 30, 5}, 230), 481.6983841921554, 1e-9);
}

// Am. J. Phys. 87, 110 (2019), abstract, read: one anticipated stop 0.11 s late, sd 0.07 s; start
// and stop by the same person sd 0.10 s.
TEST(StopwatchCalibration, DefaultThumbIsThePublishedOne) {
    const Budget seen = ReactionModel().budget(Cue::LeafStarts, Cue::LeafStops);
    double squares = 0;
    for (const Component& part : seen)
        if (part.falls_with_runs) {
            EXPECT_NEAR(part.u(), 0.07, 0.005);
            squares += part.u() * part.u();
        }
    EXPECT_NEAR(std::sqrt(squares), 0.10, 1e-12);
}

// `sw.example.alarm`, computed apart: 7.20 s, bias half-width 0.05 s: 0.104126643404398 s.
TEST(StopwatchCalibration, WholeBudgetOfAnInterval) {
    const Interval interval{7.2, IntervalClock::InputEvent, {}};
    const Reading seen = timed(interval, MarkKind::LeafMoves, MarkKind::Shut, ReactionModel());
    EXPECT_NEAR(seen.u(), 0.10412664340439802, 1e-12);
}

// NIST SOP 24 (NISTIR 8250, 2019), read: field watches within 0.02 % of the interval.
TEST(StopwatchCalibration, ClockRateGrowsWithTheInterval) {
    const auto rateOf = [](double seconds) {
        const Reading reading = timed({seconds, IntervalClock::InputEvent, {}}, MarkKind::LeafMoves,
                                      MarkKind::Shut, ReactionModel());
        for (const Component& part : reading.budget)
            if (part.part == Influence::ClockRate)
                return part.u();
        return 0.0;
    };
    EXPECT_NEAR(rateOf(12.4), 0.001431828667590272, 1e-15);
    EXPECT_NEAR(rateOf(40), 40 * 0.0002 / std::sqrt(3.0), 1e-15);
}
