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
        "39 of 100 doors tested, none failed: 95\u00a0% confidence that at most 5 of 100 doors "
        "are defective. The claim is supported.");
    tally.by_verdict = {{Verdict::Satisfactory, 20}, {Verdict::TimeAgain, 19}};
    EXPECT_TRUE(resultSoFarWords(sample, tally).startsWith("20 of 100 doors tested, none failed"));
    tally.by_verdict = {{Verdict::Satisfactory, 101}};
    EXPECT_EQ(resultSoFarWords(sample, tally), "");
}

TEST(ClaimWords, SayWhatToDoNext) {
    EXPECT_TRUE(result(usual, 20, 0).ends_with(". Continue: test 19 more."));
    EXPECT_EQ(
        result(usual, 39, 1),
        "39 of 100 doors tested, 1 failed: 95\u00a0% confidence that at most 9 of 100 doors are "
        "defective. Extend: test 19 more. If none of those fails, the claim is supported, with "
        "slightly less confidence than stated, because the results enlarged the sample.");
    EXPECT_TRUE(result(usual, 40, 6).ends_with(". Test all: the remaining 60 doors as well."));
    EXPECT_TRUE(result(usual, 100, 6).ends_with(". Every door has been tested: the claim fails."));
}

TEST(ClaimWords, CountOneDoorAsOne) {
    EXPECT_EQ(claimedWords(100, 5), "at most 5 of 100 doors are defective");
    EXPECT_EQ(claimedWords(100, 1), "at most 1 of 100 doors is defective");
    EXPECT_EQ(claimedWords(100, 0), "none of 100 doors is defective");
    EXPECT_EQ(claimedWords(1, 0), "the one door is not defective");
    EXPECT_EQ(result({1, 0}, 0, 0), "0 of 1 door tested, none failed: 95\u00a0% confidence that at "
                                    "most 1 of 1 door is defective. Test all: the remaining door "
                                    "as well.");
    EXPECT_EQ(result({1, 0}, 1, 0),
              "1 of 1 door tested, none failed: 95\u00a0% confidence that the "
              "one door is not defective. The claim is supported.");
    EXPECT_EQ(result({1, 0}, 1, 1),
              "1 of 1 door tested, 1 failed: 95\u00a0% confidence that at most "
              "1 of 1 door is defective. Every door has been tested: the claim "
              "fails.");
}

TEST(ClaimWords, KeepThePlanAndTheChanceToFindApart) {
    EXPECT_EQ(
        planWords(usual, 39).toStdString(),
        "Test 39 doors, drawn at random. If none fails: 95\u00a0% confidence that at most 5 of "
        "100 doors are defective.");
    EXPECT_EQ(
        planWords({1, 0}, 1).toStdString(),
        "Test 1 door, drawn at random. If it does not fail: 95\u00a0% confidence that the one door "
        "is not defective.");
    EXPECT_EQ(findWords(usual, 45).toStdString(),
              "A different claim, not to be confused with this one: if exactly 5 of 100 doors are "
              "defective, testing 45 gives at least a 95\u00a0% chance of finding one or more of "
              "them.");
}

TEST(ClaimWords, ConfidenceKeepsWhatCounts) {
    EXPECT_EQ(confidenceWords(950'000), QStringLiteral("95\u00a0%"));
    EXPECT_EQ(confidenceWords(995'000), QStringLiteral("99.5\u00a0%"));
    EXPECT_EQ(confidenceWords(999'001), QStringLiteral("99.9001\u00a0%"));
}

} // namespace
} // namespace latchround::ui
