// What a file says of rows of another: profiles, variants and texts taken in, and what is wrong
// with them.
#include <gmock/gmock.h>

#include "core/error/catalogue_errors.h"
#include "core/error/reading_errors.h"
#include "core/phrase/places.h"
#include "core/requirement/catalogue.h"
#include "tests/core/given.h"

using namespace latchround;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::UnorderedElementsAre;

namespace {

std::string fileOf(const char* edition, const std::string& inside) {
    return std::string(R"({"edition":")") + edition + R"(","deference":"d","issuer":"i",)" +
           inside + "}";
}

constexpr auto closes =
    R"("rows":[{"id":"closes","words":"w","question":"q","check":"seen","source":"any-run",
       "incline_deg":3.5,"cite":"c","status":"read","severity":"critical","step":"release",
       "regimes":["solas-passenger"],"advises":["other"],"keel_from":"2002-07-01",
       "other_dates":"judge","applies":[{"listed":true}],"exempt":[{"escape_trunk":true}],
       "variants":[{"keel_before":"2002-07-01","applies":[{"listed":true}],"cite":"older"}]}])";

Catalogue first() {
    return catalogueFrom(
               fileOf("one",
                      std::string(R"("profiles":[{"ships":"s","regimes":["solas-passenger"]}],)") +
                          closes),
               "one.json")
        .value();
}

Checked<Catalogue> with(const std::string& inside) {
    auto second = catalogueFrom(fileOf("two", inside), "two.json");
    if (!second)
        return tl::unexpected(second.error());
    return joined(first(), std::move(*second));
}

Errors faultsOf(const std::string& inside) {
    const auto read = with(inside);
    return read ? Errors() : read.error();
}

Error at(const char* pointer, Phrase what) {
    return {place::pointer("two.json", pointer), std::move(what)};
}

} // namespace

TEST(Profiles, OfAFileAreReadWithItsEditionAndIssuer) {
    const auto read =
        catalogueFrom(fileOf("e", R"("profiles":[{"regimes":["us-h"],"ships":"big ones",
            "built_from":"1965-05-26","built_before":"1996-03-11","read_in":"a print",
            "not_read":"the rest"},{"edition":"another","ships":"all"}])"),
                      "f");
    ASSERT_TRUE(read);
    ASSERT_EQ(read->profiles.size(), 2u);
    const Profile& profile = read->profiles.front();
    EXPECT_EQ(profile.edition, "e");
    EXPECT_EQ(profile.issuer, "i");
    EXPECT_EQ(profile.deference, "d");
    EXPECT_THAT(profile.regimes, ElementsAre(Regime::UsH));
    EXPECT_EQ(profile.ships, "big ones");
    EXPECT_EQ(profile.built_from, calendarDateFrom("1965-05-26"));
    EXPECT_EQ(profile.built_before, calendarDateFrom("1996-03-11"));
    EXPECT_EQ(profile.read_in, "a print");
    EXPECT_EQ(profile.not_read, "the rest");
    EXPECT_EQ(read->profiles.back().edition, "another");
}

TEST(Profiles, OfAFileThatNamesNoneAreTheFileItself) {
    const auto read = catalogueFrom(fileOf("e", closes), "f");
    ASSERT_TRUE(read);
    ASSERT_EQ(read->profiles.size(), 1u);
    EXPECT_EQ(profileOf(*read, read->rows.front()), &read->profiles.front());
    EXPECT_THAT(read->profiles.front().regimes, IsEmpty());
}

TEST(Profiles, SayWhomTheirRowsAdvise) {
    const Catalogue read = first();
    EXPECT_THAT(read.profiles.front().advises, ElementsAre(Regime::Other));
    EXPECT_TRUE(speaksTo(read.profiles.front(), Regime::Other));
    EXPECT_FALSE(speaksTo(read.profiles.front(), Regime::UsH));
}

TEST(VariantOfAnotherFile, HasTheWordsOfItsRowAndConditionsOfItsOwn) {
    const auto read = with(R"("variants":[{"of":"closes","regimes":["eu-inland"],"cite":"x",
        "applies":[{"places":["galley"]}],"words":"Closes"}])");
    ASSERT_TRUE(read);
    ASSERT_EQ(read->rows.size(), 1u);
    ASSERT_EQ(read->rows[0].variants.size(), 2u);
    const Requirement& variant = read->rows[0].variants[1];
    EXPECT_EQ(variant.id, "closes");
    EXPECT_EQ(variant.words, "Closes");
    EXPECT_EQ(variant.question, "q");
    EXPECT_EQ(variant.source, Source::AnyRun);
    EXPECT_EQ(variant.edition, "two");
    EXPECT_EQ(variant.cite, "x");
    EXPECT_EQ(variant.incline_deg, std::nullopt);
    EXPECT_EQ(variant.keel_from, std::nullopt);
    EXPECT_THAT(variant.none_of, IsEmpty());
    EXPECT_THAT(variant.advises, IsEmpty());
    EXPECT_EQ(profileOf(*read, variant)->edition, "two");
}

TEST(VariantOfAnotherFile, OfARowThatIsNotThereIsNamedByItsPointer) {
    EXPECT_THAT(
        faultsOf(
            R"("variants":[{"of":"opens","regimes":["us-h"],"cite":"x","applies":[{"listed":true}]}])"),
        ElementsAre(at("/variants/0/of", errors::row_not_in_catalogue("opens"))));
    EXPECT_FALSE(with(R"("variants":[{"of":"closes","regimes":["us-h"],"cite":"x","hue":1}])"));
    EXPECT_FALSE(with(R"("variants":[{"of":"closes","cite":"x"}])")) << "whose ships?";
    EXPECT_FALSE(with(R"("variants":[])"));
}

TEST(TextTakenIn, WithoutADayBindsAsItStands) {
    const auto read =
        with(R"("takes_in":[{"of":"solas-passenger","for":"canada-convention","as":"rule"}])");
    ASSERT_TRUE(read);
    const Requirement& row = read->rows[0];
    EXPECT_THAT(row.regimes, ElementsAre(Regime::SolasPassenger, Regime::CanadaConvention));
    ASSERT_EQ(row.variants.size(), 1u);
    EXPECT_THAT(row.variants[0].regimes,
                ElementsAre(Regime::SolasPassenger, Regime::CanadaConvention));
    EXPECT_TRUE(speaksTo(read->profiles[0], Regime::CanadaConvention));
}

TEST(TextTakenIn, FromADayOnLeavesOlderShipsToTheInspector) {
    const auto read = with(R"("takes_in":[{"of":"solas-passenger","for":"canada","as":"rule",
        "keel_from":"2017-02-03","left_open":"may keep its own","cite":"s. 102"}])");
    ASSERT_TRUE(read);
    const std::vector<Requirement>& variants = read->rows[0].variants;
    ASSERT_EQ(variants.size(), 3u) << "and not the text that had ended by then";
    EXPECT_EQ(variants[1].keel_from, calendarDateFrom("2017-02-03"));
    EXPECT_THAT(variants[1].regimes, ElementsAre(Regime::Canada));
    EXPECT_EQ(variants[1].cite, "c; s. 102");
    EXPECT_EQ(variants[1].left_open, "");
    EXPECT_EQ(variants[2].keel_before, calendarDateFrom("2017-02-03"));
    EXPECT_EQ(variants[2].left_open, "may keep its own");
    EXPECT_EQ(variants[2].status, Status::Read) << "for other dates it was the inspector's";
}

TEST(TextTakenIn, AsAdviceLeavesRowsThatHaveAVariantAlone) {
    const std::string advice =
        R"("takes_in":[{"of":"solas-passenger","for":"eu-inland","as":"advice"}])";
    EXPECT_THAT(with(advice)->rows[0].advises,
                UnorderedElementsAre(Regime::Other, Regime::EuInland));
    EXPECT_THAT(with(advice + R"(,"variants":[{"of":"closes","regimes":["eu-inland"],"cite":"x"}])")
                    ->rows[0]
                    .advises,
                ElementsAre(Regime::Other));
}

TEST(TextTakenIn, FaultsAreNamed) {
    EXPECT_THAT(faultsOf(R"("takes_in":[{"of":"solas-passenger","for":"canada","as":"advice",
                    "rows":["opens"]}])"),
                ElementsAre(at("/takes_in/0/rows", errors::row_not_in_catalogue("opens"))));
    EXPECT_FALSE(with(R"("takes_in":[{"of":"solas-passenger","for":"canada","as":"rule",
                    "keel_from":"2017-02-03"}])"))
        << "what of older ships?";
    EXPECT_FALSE(with(R"("takes_in":[{"of":"solas-passenger","for":"canada"}])"));
    EXPECT_FALSE(with(R"("profiles":[{"regimes":["canada"]}])")) << "which ships?";
}
