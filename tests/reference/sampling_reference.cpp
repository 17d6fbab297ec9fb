// Samples without replacement, as whole numbers; and exact intervals of a rate.
#include <array>
#include <cmath>

#include <gtest/gtest.h>

#include "core/planning/failure_rate.h"
#include "core/planning/sample.h"
#include "tests/reference/published.h"

using namespace latchround;

// Trap 3: "at most k" tests k + 1 defective doors, "to find" tests as many as there are.
TEST(CleanSample, BothConventionsComputedApart) {
    for (const auto& cell : published::clean_samples) {
        EXPECT_EQ(sampleForAtMost(cell.doors, cell.at_most, 950'000), cell.for_at_most)
            << cell.doors << " doors, " << cell.percent << " %";
        EXPECT_EQ(sampleToFind(cell.doors, cell.defective_to_find, 950'000), cell.to_find)
            << cell.doors << " doors, " << cell.percent << " %";
    }
    EXPECT_EQ(sampleForAtMost(100, 5, 950'000), 39);
    EXPECT_EQ(sampleToFind(100, 5, 950'000), 45);
}

// Trap 2: these two hit one in twenty exactly; a rounded comparison may ask for one door more.
TEST(CleanSample, ExactlyOneInTwentyIsEnough) {
    EXPECT_EQ(sampleToFind(20, 1, 950'000), 19);
    EXPECT_EQ(sampleToFind(100, 1, 950'000), 95);
}

TEST(CleanSample, TableOfIspm31) {
    for (const auto& cell : published::ispm31) {
        const int defective = cell.lot * cell.level_tenths / 1000;
        EXPECT_EQ(sampleToFind(cell.lot, defective, 950'000), cell.sample)
            << cell.lot << " at " << cell.level_tenths / 10.0 << " %";
    }
}

// Largest number not ruled out at 95 %, computed apart in exact fractions.
TEST(UpperBound, AfterFailures) {
    struct Cell {
        int doors, tested, failed, at_most;
    };
    constexpr std::array<Cell, 8> cells{{{20, 10, 0, 3},
                                         {50, 20, 0, 5},
                                         {100, 20, 0, 12},
                                         {100, 30, 1, 13},
                                         {200, 40, 0, 12},
                                         {200, 40, 2, 27},
                                         {400, 60, 0, 18},
                                         {400, 60, 1, 28}}};
    for (const Cell& cell : cells)
        EXPECT_EQ(defectiveAtMost(cell.doors, cell.tested, cell.failed, 950'000), cell.at_most)
            << cell.doors << " doors, " << cell.tested << " tested";
}

// Two roads to one statement: the plan for a claim proves it, and one door fewer does not.
TEST(UpperBound, AgreesWithThePlan) {
    for (const int doors : {20, 61, 100, 400})
        for (const int defective : {0, 1, 3, 5}) {
            const int sample = *sampleForAtMost(doors, defective, 950'000);
            EXPECT_LE(*defectiveAtMost(doors, sample, 0, 950'000), defective);
            EXPECT_GT(*defectiveAtMost(doors, sample - 1, 0, 950'000), defective);
        }
}

// Clopper and Pearson. First four: codingace.net; 682 of 925: example of R's binom.test; the rest
// Newcombe (1998) table I, from memory. Beyond the printed places computed apart.
TEST(ClopperPearson, PublishedIntervals) {
    struct Cell {
        int failed, tested;
        double confidence, low, high;
    };
    constexpr std::array<Cell, 9> cells{{{3, 20, 0.95, 0.03207093718546371, 0.37892682654531396},
                                         {12, 30, 0.90, 0.24952590514663248, 0.5660547387865444},
                                         {42, 100, 0.95, 0.3219855393547969, 0.5228808042760862},
                                         {85, 120, 0.99, 0.5904342569070281, 0.8091955720697978},
                                         {81, 263, 0.95, 0.25273674558527115, 0.36762192260135135},
                                         {15, 148, 0.95, 0.05784401008344856, 0.161650490349479},
                                         {0, 20, 0.95, 0, 0.16843347098308534},
                                         {1, 29, 0.95, 0.0008726468835799219, 0.17764429548872293},
                                         {682, 925, 0.95, 0.707668264079039, 0.7654065582415253}}};
    for (const Cell& cell : cells) {
        const auto rate = failureRate(cell.failed, cell.tested, cell.confidence);
        ASSERT_TRUE(rate);
        EXPECT_NEAR(rate->low, cell.low, 1e-10) << cell.failed << " of " << cell.tested;
        EXPECT_NEAR(rate->high, cell.high, 1e-10) << cell.failed << " of " << cell.tested;
    }
}

// Rule of three (ASQ, Quality Progress, November 2007) and its exact form 1 - 0.05^(1/n), one-sided
// 95 %; limiting quality of MIL-STD-105E at 10 %, 13 items, none accepted: 16 % (from memory).
TEST(ClopperPearson, NoFailureAtAll) {
    for (const int tested : {20, 30, 59, 100, 300}) {
        const double high = failureRate(0, tested, 0.90)->high;
        EXPECT_NEAR(high, 1 - std::pow(0.05, 1.0 / tested), 1e-12);
        EXPECT_LT(high, 3.0 / tested);
    }
    EXPECT_NEAR(failureRate(0, 13, 0.80)->high, 0.1623223599, 1e-9);
}

// With very many doors the plan comes near that of draws with replacement: 59 for 95/95, 29 for
// 95/90 (Wilks; read).
TEST(CleanSample, ManyDoorsComeNearTheBinomialPlan) {
    const int near_95 = *sampleForAtMost(2000, 100, 950'000);
    EXPECT_LE(near_95, 59);
    EXPECT_GE(near_95, 57);
    EXPECT_EQ(sampleToFind(2000, 200, 950'000), 29);
}

TEST(CleanSample, RefusesWhatCannotBe) {
    EXPECT_FALSE(sampleForAtMost(0, 0, 950'000));
    EXPECT_FALSE(sampleForAtMost(10, 10, 950'000));
    EXPECT_FALSE(sampleForAtMost(10, -1, 950'000));
    EXPECT_FALSE(sampleForAtMost(10, 1, 0));
    EXPECT_FALSE(sampleForAtMost(10, 1, 1'000'000));
    EXPECT_FALSE(sampleForAtMost(most_doors + 1, 1, 950'000));
    EXPECT_FALSE(sampleToFind(10, 0, 950'000));
    EXPECT_FALSE(defectiveAtMost(10, 11, 0, 950'000));
    EXPECT_FALSE(defectiveAtMost(10, 5, 6, 950'000));
    EXPECT_FALSE(failureRate(1, 0, 0.95));
}
