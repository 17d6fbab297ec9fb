#include "core/near_name.h"

#include <array>

#include <gtest/gtest.h>

#include "core/error/reading_errors.h"
#include "ui/words/phrase_words.h"

namespace latchround {
namespace {

TEST(NearName, DistancesOfTheTextbookPairs) {
    // Classic worked examples of the Levenshtein distance.
    EXPECT_EQ(changesBetween("kitten", "sitting"), 3u);
    EXPECT_EQ(changesBetween("Saturday", "Sunday"), 3u);
    EXPECT_EQ(changesBetween("", "abc"), 3u);
    EXPECT_EQ(changesBetween("Stair 2", "stair2"), 0u) << "case and blanks do not count";
}

TEST(NearName, NearestComeFirstAndAtMostThree) {
    constexpr std::array<std::string_view, 6> known{"7/9", "3/5", "4/4", "3/3", "3/4", "galley"};
    EXPECT_EQ(didYouMean("3 /4", known), errors::did_you_mean_three("3/4", "3/5", "4/4"));
    EXPECT_EQ(didYouMean("galey", known), errors::did_you_mean_one("galley"));
    constexpr std::array<std::string_view, 2> two{"stair 1", "stair 2"};
    EXPECT_EQ(didYouMean("stair", two), errors::did_you_mean_two("stair 1", "stair 2"));
    EXPECT_EQ(ui::phraseWords(didYouMean("3 /4", known)).toStdString(),
              R"(Nearest names here: "3/4", "3/5" or "4/4".)");
}

TEST(NearName, NothingNearGivesNoQuestion) {
    constexpr std::array<std::string_view, 3> known{"3/4", "galley", ""};
    EXPECT_EQ(didYouMean("stair 7 port", known), Phrase());
    EXPECT_EQ(didYouMean("", known), Phrase());
    EXPECT_EQ(didYouMean("x", std::array<std::string_view, 1>{"y"}), Phrase())
        << "one letter is not near another";
}

} // namespace
} // namespace latchround
