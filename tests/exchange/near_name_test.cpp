#include "core/near_name.h"

#include <array>

#include <gtest/gtest.h>

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
    EXPECT_EQ(didYouMean("3 /4", known), R"(Did you mean "3/4", "3/5" or "4/4"?)");
}

TEST(NearName, NothingNearGivesNoQuestion) {
    constexpr std::array<std::string_view, 3> known{"3/4", "galley", ""};
    EXPECT_EQ(didYouMean("stair 7 port", known), "");
    EXPECT_EQ(didYouMean("", known), "");
    EXPECT_EQ(didYouMean("x", std::array<std::string_view, 1>{"y"}), "")
        << "one letter is not near another";
}

} // namespace
} // namespace latchround
