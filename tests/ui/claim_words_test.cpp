// What a sample claims and proves, in words: the same on screen, paper and in a shell.
#include <gtest/gtest.h>

#include "ui/words/claim_words.h"

namespace latchround::ui {
namespace {

constexpr SampleClaim usual{100, 5};

std::string result(const SampleClaim& claim, int tested, int failed) {
    const auto proved =
        sampleResult(claim.doors, claim.defective, claim.confidence, tested, failed);
    return proved ? resultWords({claim, tested, failed, *proved}).toStdString() : "nothing";
}

TEST(ClaimWords, SpeakOfTheSampleSoFar) {
    const SampleDrawn sample{100, 5, 950'000, 1};
    Tally tally;
    tally.by_verdict = {{Verdict::Satisfactory, 39}};
    EXPECT_EQ(
        resultSoFarWords(sample, tally).toStdString(),
        "39 of 100 doors tested, none failed: 95\u00a0% confident that at most 5 of 100 doors "
        "are defective. The claim stands.");
    tally.by_verdict = {{Verdict::Satisfactory, 20}, {Verdict::TimeAgain, 19}};
    EXPECT_TRUE(resultSoFarWords(sample, tally).startsWith("20 of 100 doors tested, none failed"));
    tally.by_verdict = {{Verdict::Satisfactory, 101}};
    EXPECT_EQ(resultSoFarWords(sample, tally), "");
}

TEST(ClaimWords, SayWhatToDoNext) {
    EXPECT_TRUE(result(usual, 20, 0).ends_with(". Go on: test 19 more."));
    EXPECT_EQ(
        result(usual, 39, 1),
        "39 of 100 doors tested, 1 failed: 95\u00a0% confident that at most 9 of 100 doors are "
        "defective. Extend: test 19 more; if none of those fails, the claim stands, with a "
        "little less confidence than stated, for the doors themselves made the sample "
        "larger.");
    EXPECT_TRUE(result(usual, 40, 6).ends_with(". Test all: the 60 doors that are left as well."));
    EXPECT_TRUE(
        result(usual, 100, 6).ends_with(". Every door was tested: the claim does not stand."));
}

TEST(ClaimWords, CountOneDoorAsOne) {
    EXPECT_EQ(claimedWords(100, 5), "at most 5 of 100 doors are defective");
    EXPECT_EQ(claimedWords(100, 1), "at most 1 of 100 doors is defective");
    EXPECT_EQ(claimedWords(100, 0), "none of 100 doors is defective");
    EXPECT_EQ(claimedWords(1, 0), "none of 1 door is defective");
    EXPECT_EQ(result({1, 0}, 0, 0), "0 of 1 door tested, none failed: 95\u00a0% confident that at "
                                    "most 1 of 1 door is defective. Test all: the 1 doors that are "
                                    "left as well.");
    EXPECT_EQ(result({1, 0}, 1, 0),
              "1 of 1 door tested, none failed: 95\u00a0% confident that none "
              "of 1 door is defective. The claim stands.");
    EXPECT_EQ(result({1, 0}, 1, 1),
              "1 of 1 door tested, 1 failed: 95\u00a0% confident that at most "
              "1 of 1 door is defective. Every door was tested: the claim "
              "does not stand.");
}

TEST(ClaimWords, KeepThePlanAndTheChanceToFindApart) {
    EXPECT_EQ(planWords(usual, 39).toStdString(),
              "Test 39 doors, drawn by lot. If none fails: 95\u00a0% confident that at most 5 of "
              "100 doors are defective.");
    EXPECT_EQ(
        planWords({1, 0}, 1).toStdString(),
        "Test 1 door, drawn by lot. If none fails: 95\u00a0% confident that none of 1 door is "
        "defective.");
    EXPECT_EQ(findWords(usual, 45).toStdString(),
              "Another claim, not to be mixed up with it: where exactly 5 of 100 doors are "
              "defective, testing 45 gives a chance of at least 95\u00a0% to find one of them or "
              "more.");
}

TEST(ClaimWords, ConfidenceKeepsWhatCounts) {
    EXPECT_EQ(confidenceWords(950'000), QStringLiteral("95\u00a0%"));
    EXPECT_EQ(confidenceWords(995'000), QStringLiteral("99.5\u00a0%"));
    EXPECT_EQ(confidenceWords(999'001), QStringLiteral("99.9001\u00a0%"));
}

} // namespace
} // namespace latchround::ui
