#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/requirement/catalogue.h"
#include "tests/core/given.h"

using namespace latchround;
using testing::HasSubstr;

namespace {

std::string rowText(const std::string& inside) {
    return R"({"edition":"e","deference":"d","issuer":"i","rows":[{)" + inside + "}]}";
}

} // namespace

TEST(Catalogue, ShippedFilesAreReadWhole) {
    EXPECT_GE(given::catalogue().rows.size(), 35u);
    EXPECT_THAT(given::catalogue().edition, HasSubstr("April 2015"));
}

TEST(Catalogue, EveryRowSaysWhereItComesFrom) {
    for (const Requirement& row : given::catalogue().rows) {
        if (row.status == Status::Practice)
            EXPECT_EQ(row.cite, "common practice, no source") << row.id;
        else
            EXPECT_THAT(row.cite, testing::AnyOf(testing::StartsWith("SOLAS II-2/9."),
                                                 testing::StartsWith("46 CFR ")))
                << row.id;
        EXPECT_NE(row.issuer, "") << row.id;
        EXPECT_NE(row.edition, "") << row.id;
    }
}

// SOLAS II-2/9.4.1.1.5.2, .10, .11; 9.4.1.1.2; 9.4.1.2.1, English text consolidated April 2015.
TEST(Catalogue, LimitsAreThoseOfTheText) {
    const auto limits = [](const char* id) {
        return std::pair{given::row(id).low, given::row(id).high};
    };
    using Limits = std::pair<std::optional<double>, std::optional<double>>;
    EXPECT_EQ(limits("hinged-time"), (Limits{10, 40}));
    EXPECT_EQ(limits("sliding-rate"), (Limits{0.1, 0.2}));
    EXPECT_EQ(limits("alarm-lead"), (Limits{5, 10}));
    EXPECT_EQ(limits("reopen-distance"), (Limits{std::nullopt, 1}));
    EXPECT_EQ(limits("a-gap"), (Limits{std::nullopt, 12}));
    EXPECT_EQ(limits("b-gap"), (Limits{std::nullopt, 25}));
    EXPECT_EQ(limits("b-vent"), (Limits{std::nullopt, 0.05}));
}

TEST(Catalogue, EveryFaultIsNamedByItsPointerInOnePass) {
    const auto result = catalogueFrom(
        R"({"edition":"e","deference":"d","issuer":"i","rows":[
            {"id":"a","words":"w","check":"guess","cite":"c","status":"read","step":"look"},
            {"id":"a","words":"w","check":"at-most","source":"gauge","cite":"c","status":"read",
             "step":"look","high":"12","colour":"red"}]})",
        "rules.json");
    ASSERT_FALSE(result);
    std::string all;
    for (const Complaint& complaint : result.error())
        all += inOneLine(complaint) + "\n";
    EXPECT_THAT(all, HasSubstr("rules.json at /rows/0/check: 'guess' is not known here"));
    EXPECT_THAT(all, HasSubstr("/rows/1/high: must be a number"));
    EXPECT_THAT(all, HasSubstr("/rows/1/colour: is not a field"));
    EXPECT_THAT(all, HasSubstr("/rows/1/id: 'a' stands twice"));
}

TEST(Catalogue, ThatIsNotJsonIsRefusedInOneSentence) {
    const auto result = catalogueFrom("{\"rows\": [", "rules.json");
    ASSERT_FALSE(result);
    EXPECT_EQ(result.error().size(), 1u);
}

TEST(Catalogue, BandNeedsBothLimitsInOrder) {
    const std::string start = R"("id":"a","words":"w","check":"within-band","source":"gauge",)"
                              R"("cite":"c","status":"read","severity":"minor","step":"look",)";
    EXPECT_FALSE(catalogueFrom(rowText(start + R"("low":1)"), "f"));
    EXPECT_FALSE(catalogueFrom(rowText(start + R"("low":2,"high":1)"), "f"));
    EXPECT_TRUE(catalogueFrom(rowText(start + R"("low":1,"high":2)"), "f"));
}

TEST(Catalogue, JoiningRefusesAnIdThatStandsInBoth) {
    EXPECT_FALSE(joined(given::catalogue(), given::catalogue()));
}
