#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

#include "core/measure/closing.h"
#include "tests/core/given.h"

using namespace latchround;

namespace {

Reading scattering(double value, double u_random, double u_common) {
    return {value,
            {{Influence::SpreadAtEnd, u_random, 1, known_exactly, true},
             {Influence::BiasLeft, u_common, 1, known_exactly, false}}};
}

} // namespace

// `sw.example.hinged`: 12.40 s with spread 0.1 s, bias half-width 0.05 s, last digit 0.01 s, clock
// rate 0.02 %: 0.10413316858715094 s by the law of propagation (JCGM 100, 5.1.2), computed apart.
TEST(ClosingTime, CarriesTheWholeDefaultBudget) {
    const RunRecord run =
        given::run(Release::LetGo, {{MarkKind::LeafMoves, 0}, {MarkKind::Shut, 12.4}});
    const Reading time = *closingTime(run, DoorKind::SingleLeaf, ReactionModel());
    EXPECT_NEAR(time.value, 12.4, 1e-9);
    EXPECT_NEAR(time.u(), 0.10413316858715094, 1e-12);
    EXPECT_EQ(time.degreesOfFreedom(), known_exactly);
}

// A heard start and a seen end are unlike events: the bias does not cancel (trap 8). Published bias
// of one stop 0.11 s: Am. J. Phys. 87, 110 (2019).
TEST(AlarmLead, KeepsTheBiasBetweenSoundAndSight) {
    const RunRecord run =
        given::run(Release::Remote, {{MarkKind::AlarmOn, 0}, {MarkKind::LeafMoves, 7.2}});
    const Reading lead = *alarmLead(run, ReactionModel());
    EXPECT_NEAR(
        lead.u(),
        std::sqrt(0.01 + 0.11 * 0.11 / 3 + std::pow(0.005, 2) / 3 + std::pow(7.2 * 2e-4, 2) / 3),
        1e-12);
    EXPECT_GT(lead.u(), 0.118);
}

TEST(ClosingRate, OfNoTimeOrNoOpeningIsNoRate) {
    Door unknown = given::slidingDoor();
    unknown.opening_m = 0;
    EXPECT_FALSE(closingRate(given::goodSlidingRun(), unknown, ReactionModel()));
    const RunRecord at_once =
        given::run(Release::Remote, {{MarkKind::LeafMoves, 3}, {MarkKind::Shut, 3}});
    EXPECT_FALSE(closingRate(at_once, given::slidingDoor(), ReactionModel()));
}

TEST(ClosingRate, NamesTheOpeningInItsBudget) {
    const Reading rate =
        *closingRate(given::goodSlidingRun(), given::slidingDoor(), ReactionModel());
    const auto opening = std::ranges::find(rate.budget, Influence::Opening, &Component::part);
    ASSERT_NE(opening, rate.budget.end());
    EXPECT_DOUBLE_EQ(opening->input_u, 0.005);
    EXPECT_NEAR(opening->u(), 0.005 / 9.3, 1e-12);
}

TEST(PooledReading, MeanShrinksOnlyTheRandomPart) {
    const PooledReading all = pooled({scattering(10, 0.1, 0.03), scattering(10.1, 0.1, 0.03),
                                      scattering(10.2, 0.1, 0.03), scattering(10.1, 0.1, 0.03)});
    EXPECT_TRUE(all.agree);
    EXPECT_EQ(all.count, 4);
    EXPECT_NEAR(all.mean.value, 10.1, 1e-12);
    EXPECT_NEAR(all.mean.uRandom(), 0.05, 1e-12);
    EXPECT_NEAR(all.mean.u(), std::hypot(0.05, 0.03), 1e-12);
}

TEST(PooledReading, ReadingsFurtherApartThanTheThumbDisagree) {
    EXPECT_TRUE(pooled({scattering(10, 0.1, 0), scattering(10.28, 0.1, 0)}).agree);
    EXPECT_FALSE(pooled({scattering(10, 0.1, 0), scattering(10.29, 0.1, 0)}).agree);
}

// A spread known from few trials covers less: t for 95.45 % and 4 degrees is 2.87 (GUM table G.2,
// from memory), so that 0.40 s apart still agree where u = 0.1 s.
TEST(PooledReading, FewTrialsWidenWhatAgrees) {
    const auto few = [](double value) {
        return Reading{value, {{Influence::SpreadAtEnd, 0.1, 1, 4, true}}};
    };
    EXPECT_TRUE(pooled({few(10), few(10.40)}).agree);
    EXPECT_FALSE(pooled({few(10), few(10.41)}).agree);
}

TEST(PooledReading, MeanOfManyPersonsKeepsTheLeastKnownSpread) {
    const Reading sure{10, {{Influence::SpreadAtEnd, 0.1, 1, known_exactly, true}}};
    const Reading unsure{10.1, {{Influence::SpreadAtEnd, 0.05, 1, 7, true}}};
    const PooledReading both = pooled({sure, unsure});
    EXPECT_NEAR(both.mean.u(), std::hypot(0.1, 0.05) / 2, 1e-12);
    EXPECT_NEAR(both.mean.degreesOfFreedom(), 7, 1e-12);
}

TEST(HalfRates, NeedTheHalfWayMark) {
    EXPECT_TRUE(halfRates(given::goodSlidingRun(), given::slidingDoor(), ReactionModel()).empty());
    const RunRecord run = given::run(
        Release::Remote, {{MarkKind::LeafMoves, 0}, {MarkKind::HalfWay, 4}, {MarkKind::Shut, 9}});
    const auto halves = halfRates(run, given::slidingDoor(), ReactionModel());
    ASSERT_EQ(halves.size(), 2u);
    EXPECT_NEAR(halves[0].value, 0.175, 1e-12);
    EXPECT_NEAR(halves[1].value, 0.14, 1e-12);
}
