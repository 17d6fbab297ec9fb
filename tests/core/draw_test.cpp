// Samples shared out over zones and kinds: checked by counting every way the defective doors may
// lie.
#include <algorithm>
#include <cmath>
#include <numeric>
#include <set>

#include <gtest/gtest.h>

#include "core/planning/draw.h"
#include "core/planning/sample_so_far.h"
#include "tests/core/given.h"

using namespace latchround;

namespace {

/// Strata of these sizes, one zone each, hinged doors.
Arrangement shipOf(const std::vector<int>& sizes) {
    Arrangement ship;
    int zone = 0;
    for (const int size : sizes) {
        const std::string name = std::to_string(++zone);
        ship.boundaries.push_back({"b" + name, Place::ZoneBulkhead, name, name, 0, {}});
        for (int i = 0; i < size; ++i) {
            Door door = given::hingedDoor();
            door.number = name + "-" + std::to_string(i);
            door.boundary = "b" + name;
            ship.doors.push_back(door);
        }
    }
    return ship;
}

std::vector<std::string> allOf(const Arrangement& ship) {
    std::vector<std::string> doors;
    for (const Door& door : ship.doors)
        doors.push_back(door.number);
    return doors;
}

double chanceOfNone(int size, int drawn, int defective) {
    double chance = 1;
    for (int i = 0; i < defective; ++i)
        chance *= std::max(0.0, static_cast<double>(size - drawn - i)) / (size - i);
    return chance;
}

/// The largest chance of a clean result over every way to lay `defective` doors, by trying all.
double worstChance(const std::vector<Stratum>& strata, std::size_t at, int defective) {
    if (at == strata.size())
        return defective == 0 ? 1 : 0;
    const int size = static_cast<int>(strata[at].doors.size());
    double worst = 0;
    for (int here = 0; here <= std::min(size, defective); ++here)
        worst = std::max(worst, chanceOfNone(size, strata[at].drawn, here) *
                                    worstChance(strata, at + 1, defective - here));
    return worst;
}

} // namespace

TEST(Strata, AreZonesAndKindsInOrder) {
    Arrangement ship = shipOf({3, 2});
    ship.doors[1].kind = DoorKind::Sliding;
    const auto strata = strataOf(ship, allOf(ship));
    ASSERT_EQ(strata.size(), 3u);
    EXPECT_EQ(strata[0].zone, "1");
    EXPECT_EQ(strata[0].kind, DoorKind::SingleLeaf);
    EXPECT_EQ(strata[0].doors, (std::vector<std::string>{"1-0", "1-2"}));
    EXPECT_EQ(strata[1].kind, DoorKind::Sliding);
    EXPECT_EQ(strata[2].zone, "2");
}

TEST(ShareOut, GivesEachStratumItsPartAndAllOfThem) {
    const Arrangement ship = shipOf({50, 30, 17, 3});
    auto strata = strataOf(ship, allOf(ship));
    for (int sample = 0; sample <= 100; ++sample) {
        shareOut(strata, sample);
        int drawn = 0;
        for (const Stratum& stratum : strata) {
            const double part = static_cast<double>(sample * stratum.doors.size()) / 100;
            EXPECT_LT(std::abs(stratum.drawn - part), 1);
            drawn += stratum.drawn;
        }
        EXPECT_EQ(drawn, sample);
    }
}

TEST(StratifiedSample, HoldsWhereverTheDefectiveDoorsLie) {
    for (const std::vector<int>& sizes : {std::vector{50, 30, 17, 3}, std::vector{20, 20, 20},
                                          std::vector{9, 8, 2, 1}, std::vector{12}})
        for (const int defective : {0, 1, 3}) {
            const Arrangement ship = shipOf(sizes);
            auto strata = strataOf(ship, allOf(ship));
            const int sample = *stratifiedSample(strata, defective, 950'000);
            const int all = static_cast<int>(ship.doors.size());
            EXPECT_GE(sample, *sampleForAtMost(all, defective, 950'000));
            EXPECT_LE(worstChance(strata, 0, defective + 1), 0.05 + 1e-12);
            if (sample == *sampleForAtMost(all, defective, 950'000))
                continue;
            shareOut(strata, sample - 1);
            EXPECT_GT(worstChance(strata, 0, defective + 1), 0.05 - 1e-12);
        }
}

// One stratum is the plain plan: 39 of 100 for at most 5.
TEST(StratifiedSample, OfOneStratumIsThePlainSample) {
    const Arrangement ship = shipOf({100});
    auto strata = strataOf(ship, allOf(ship));
    EXPECT_EQ(stratifiedSample(strata, 5, 950'000), 39);
}

TEST(Drawing, SameLotSameDoorsAndEachOnce) {
    const Arrangement ship = shipOf({50, 30, 20});
    auto strata = strataOf(ship, allOf(ship));
    shareOut(strata, 40);
    const auto doors = drawn(strata, 4711);
    EXPECT_EQ(doors, drawn(strata, 4711));
    EXPECT_NE(doors, drawn(strata, 4712));
    EXPECT_EQ(std::set<std::string>(doors.begin(), doors.end()).size(), 40u);
}

// Every door is drawn about as often as any other: 30 of 100, 2000 lots, 600 times each; 5 standard
// deviations of the binomial are 102.
TEST(Drawing, FavoursNoDoor) {
    const Arrangement ship = shipOf({60, 40});
    auto strata = strataOf(ship, allOf(ship));
    shareOut(strata, 30);
    std::map<std::string, int> times;
    for (std::uint32_t seed = 0; seed < 2000; ++seed)
        for (const std::string& door : drawn(strata, seed))
            ++times[door];
    ASSERT_EQ(times.size(), 100u);
    for (const auto& [door, count] : times)
        EXPECT_NEAR(count, 600, 102) << door;
}

TEST(Offers, GrowWithWhatTheyProve) {
    const Arrangement ship = shipOf({100});
    const auto offers = sampleOffers(ship, allOf(ship));
    ASSERT_EQ(offers.size(), 6u);
    EXPECT_EQ(offers.front().doors, 23);
    EXPECT_EQ(offers.front().at_most, 10);
    EXPECT_EQ(offers.back().at_most, 0);
    EXPECT_EQ(offers.back().doors, 95);
    EXPECT_TRUE(std::ranges::is_sorted(offers, {}, &SampleOffer::doors));
}

TEST(SampleSoFarOf, CountsWhatIsSettledAlone) {
    const SampleDrawn sample{100, 5, 950'000, 1};
    Tally tally;
    tally.by_verdict = {{Verdict::Satisfactory, 39}};
    const auto proven = sampleSoFar(sample, tally);
    ASSERT_TRUE(proven);
    EXPECT_EQ(proven->claim.doors, 100);
    EXPECT_EQ(proven->claim.defective, 5);
    EXPECT_EQ(proven->claim.confidence, 950'000);
    EXPECT_EQ(proven->tested, 39);
    EXPECT_EQ(proven->failed, 0);
    EXPECT_EQ(proven->result.at_most, 5);
    EXPECT_EQ(proven->result.next, NextStep::Proven);
    tally.by_verdict = {{Verdict::Satisfactory, 20}, {Verdict::TimeAgain, 19}};
    EXPECT_EQ(sampleSoFar(sample, tally)->tested, 20);
    tally.by_verdict = {{Verdict::Satisfactory, 38}, {Verdict::Unsatisfactory, 1}};
    const auto extended = sampleSoFar(sample, tally);
    EXPECT_EQ(extended->tested, 39);
    EXPECT_EQ(extended->failed, 1);
    EXPECT_EQ(extended->result.next, NextStep::Extend);
    EXPECT_EQ(extended->result.more, 19);
    tally.by_verdict = {{Verdict::Satisfactory, 34}, {Verdict::Unsatisfactory, 6}};
    const auto all = sampleSoFar(sample, tally);
    EXPECT_EQ(all->result.next, NextStep::TestAll);
    EXPECT_EQ(all->result.more, 60);
}

TEST(SampleSoFarOf, IsNothingWhereTheNumbersDoNotGoTogether) {
    Tally tally;
    tally.by_verdict = {{Verdict::Satisfactory, 101}};
    EXPECT_FALSE(sampleSoFar({100, 5, 950'000, 1}, tally));
}
