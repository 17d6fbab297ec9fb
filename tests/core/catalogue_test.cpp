#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/error/catalogue_errors.h"
#include "core/error/reading_errors.h"
#include "core/phrase/places.h"
#include "core/requirement/catalogue.h"
#include "tests/core/given.h"

using namespace latchround;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsSupersetOf;

namespace {

std::string rowText(const std::string& inside) {
    return R"({"edition":"e","deference":"d","issuer":"i","rows":[{)" + inside + "}]}";
}

Errors faultsOf(const std::string& file) {
    const auto read = catalogueFrom(file, "rules.json");
    return read ? Errors() : read.error();
}

Error at(const char* pointer, Phrase what) {
    return {place::pointer("rules.json", pointer), std::move(what)};
}

} // namespace

TEST(Catalogue, ShippedFilesAreReadWhole) {
    EXPECT_GE(given::catalogue().rows.size(), 35u);
    EXPECT_THAT(given::catalogue().edition, HasSubstr("April 2015"));
}

TEST(Catalogue, EveryRowSaysWhereItComesFrom) {
    for (const Requirement& row : given::catalogue().rows) {
        if (row.status == Status::Usage)
            EXPECT_EQ(row.cite, "common practice, no published source") << row.id;
        else
            EXPECT_THAT(row.cite, testing::AnyOf(testing::StartsWith("SOLAS II-"),
                                                 testing::StartsWith("46 CFR "),
                                                 testing::StartsWith("SOR/2017-14, s")))
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
    EXPECT_THAT(
        faultsOf(R"({"edition":"e","deference":"d","issuer":"i","rows":[
            {"id":"a","words":"w","check":"guess","cite":"c","status":"read","step":"look"},
            {"id":"a","words":"w","check":"at-most","source":"gauge","cite":"c","status":"read",
             "step":"look","high":"12","colour":"red"}]})"),
        IsSupersetOf(
            {at("/rows/0/check",
                errors::not_one_of("guess", "seen, seen-both-sides, within-band, at-most, "
                                            "at-least, class-at-least, plate-agrees, order")),
             at("/rows/0/severity", errors::field_missing()),
             at("/rows/1/high", errors::field_not_a_number()),
             at("/rows/1/colour", errors::field_not_known(errors::take_field_out())),
             at("/rows/1/id", errors::row_id_twice("a"))}));
}

TEST(Catalogue, NullIsAbsentAndRemarksArePassedOver) {
    const std::string row = R"("id":"a","words":"w","check":"seen","question":"q","cite":"c",)"
                            R"("severity":"minor","step":"look",)";
    const auto read = catalogueFrom(
        rowText(row + R"("status":"read","low":null,"x-why":7,"$comment":"ours")"), "f");
    ASSERT_TRUE(read);
    EXPECT_EQ(read->rows.front().low, std::nullopt);
    EXPECT_EQ(faultsOf(rowText(row + R"("status":null)")),
              Errors{at("/rows/0/status", errors::field_missing())});
}

TEST(Catalogue, ConditionMustAskSomethingOfADoor) {
    const std::string row = R"("id":"a","words":"w","check":"seen","question":"q","cite":"c",)"
                            R"("status":"read","severity":"minor","step":"look","applies":)";
    EXPECT_EQ(faultsOf(rowText(row + R"([{"listed":true}])")), Errors{});
    for (const char* nothing : {"{}", R"({"x-why":7})", R"({"listed":null})"})
        EXPECT_EQ(faultsOf(rowText(row + "[" + nothing + "]")),
                  Errors{at("/rows/0/applies/0", errors::condition_without_fields())})
            << nothing;
    EXPECT_EQ(faultsOf(rowText(row + "[7]")),
              Errors{at("/rows/0/applies/0", errors::field_not_an_object())});
    EXPECT_EQ(faultsOf(rowText(row + "[]")),
              Errors{at("/rows/0/applies", errors::not_a_list_of_conditions())});
}

TEST(Catalogue, TextsAndListsThatAreEmptyAreRefused) {
    const std::string row = R"("id":"a","words":"w","check":"seen","cite":"c",)"
                            R"("status":"read","severity":"minor","step":"look")";
    EXPECT_THAT(
        faultsOf(rowText(row + R"(,"question":"","regimes":[],"advises":"us-h",)" +
                         R"("applies":[{"kinds":["single",7,"round"]}])")),
        IsSupersetOf({at("/rows/0/question", errors::field_empty()),
                      at("/rows/0/regimes", errors::field_list_empty()),
                      at("/rows/0/advises", errors::field_not_a_list_of_texts()),
                      at("/rows/0/applies/0/kinds/1", errors::field_not_a_text()),
                      at("/rows/0/applies/0/kinds/2",
                         errors::not_one_of("round", "single, double, sliding, double-swing"))}));
}

TEST(Catalogue, OtherFigureInstrumentAndMarginAreReadWhereTheyMeanSomething) {
    const std::string row = R"("id":"a","words":"w","cite":"c","status":"read","severity":"minor",)"
                            R"("step":"look",)";
    const std::string gauge = row + R"("check":"at-most","source":"gauge","unit":"mm","high":12)";
    const auto read = catalogueFrom(
        rowText(gauge + R"(,"high_also":12.7,"gauge":"tape","variants":[{"high":9}])"), "f");
    ASSERT_TRUE(read);
    EXPECT_EQ(read->rows.front().high_also, 12.7);
    EXPECT_EQ(read->rows.front().gauge, Instrument::Tape);
    EXPECT_FALSE(read->rows.front().variants.front().high_also) << "it was beside another limit";
    EXPECT_EQ(faultsOf(rowText(gauge + R"(,"low_also":1)")),
              Errors{at("/rows/0/low_also", errors::other_figure_alone())});
    const auto band = [&](const char* source, const char* approximate) {
        return rowText(row + R"("check":"within-band","low":5,"high":10,"unit":"s","source":")" +
                       source + R"(","approximate":)" + approximate);
    };
    const auto timed = catalogueFrom(band("closing-time", R"({"slow":0.1,"fast":0})"), "f");
    ASSERT_TRUE(timed);
    EXPECT_EQ(timed->rows.front().approximate->slow, 0.1);
    EXPECT_EQ(timed->rows.front().approximate->fast, 0);
    EXPECT_EQ(faultsOf(band("alarm-lead", R"({"slow":0.1,"fast":0})")),
              Errors{at("/rows/0/approximate", errors::approximate_without_band())});
    EXPECT_EQ(faultsOf(band("closing-time", R"({"slow":1,"fast":0})")),
              Errors{at("/rows/0/approximate/slow", errors::margin_out_of_range())});
    EXPECT_EQ(faultsOf(band("closing-time", R"({"slow":0.1})")),
              Errors{at("/rows/0/approximate/fast", errors::field_missing())});
}

TEST(Catalogue, VariantSaysWhatIsOtherThanInItsRow) {
    const auto read = catalogueFrom(
        rowText(R"("id":"a","words":"w","check":"at-most","source":"gauge","high":12,"unit":"mm",)"
                R"("cite":"c","status":"read","severity":"minor","step":"look",)"
                R"("regimes":["us-h"],"applies":[{"listed":true}],)"
                R"("variants":[{"high":25,"cite":"d"},{"regimes":["us-k"],"words":"v"}])"),
        "f");
    ASSERT_TRUE(read);
    const auto& variants = read->rows.front().variants;
    ASSERT_EQ(variants.size(), 2u);
    EXPECT_EQ(variants[0].high, 25);
    EXPECT_EQ(variants[0].cite, "d");
    EXPECT_EQ(variants[0].words, "w");
    EXPECT_THAT(variants[0].regimes, ElementsAre(Regime::UsH));
    EXPECT_TRUE(variants[0].any_of.empty());
    EXPECT_EQ(variants[1].high, 12);
    EXPECT_EQ(variants[1].words, "v");
    EXPECT_THAT(variants[1].regimes, ElementsAre(Regime::UsK));
}

TEST(Catalogue, RowSaysOfWhichDatesItsTextIsAndAVariantOfWhichItsOwn) {
    const auto read = catalogueFrom(
        rowText(R"("id":"a","words":"w","check":"seen-both-sides","question":"q","cite":"c",)"
                R"("status":"read","severity":"minor","step":"look","keel_from":"2002-07-01",)"
                R"("other_dates":"judge","variants":[{"keel_before":"2002-07-01","check":"seen",)"
                R"("question":"p","cite":"d","edition":"older","issuer":"I","status":"advice"},)"
                R"({"high":3}])"),
        "f");
    ASSERT_TRUE(read);
    const Requirement& row = read->rows.front();
    EXPECT_EQ(row.keel_from, calendarDateFrom("2002-07-01"));
    EXPECT_EQ(row.other_dates, OtherDates::Judge);
    const Requirement& older = row.variants.at(0);
    EXPECT_EQ(older.keel_from, std::nullopt);
    EXPECT_EQ(older.keel_before, calendarDateFrom("2002-07-01"));
    EXPECT_EQ(older.check, CheckKind::Seen);
    EXPECT_EQ(older.status, Status::Advice);
    EXPECT_THAT((std::vector{older.question, older.edition, older.issuer}),
                ElementsAre("p", "older", "I"));
    EXPECT_EQ(row.variants.at(1).keel_from, row.keel_from) << "says nothing of dates";
}

TEST(Catalogue, WhatTakesARowAwayIsAQuestionOfTheCatalogue) {
    for (const Requirement& row : given::catalogue().rows) {
        std::vector<std::string> ids = row.unless_yes;
        ids.insert(ids.end(), {row.unless_no, row.unless_na, row.open_unless_no});
        for (const std::string& id : ids)
            if (!id.empty()) {
                const Requirement* other = findRequirement(given::catalogue(), id);
                ASSERT_NE(other, nullptr) << row.id << " " << id;
                EXPECT_NE(other->question, "") << row.id << " " << id;
            }
    }
}

// Ships of before 1 July 2002 keep the text of their day (SOLAS II-2/1.2.1); condition, plan and
// doors hung since bind by days of their own.
TEST(Catalogue, EverySolasRowHasTheDatesOfItsText) {
    const auto has_dates = [](const Requirement& row) {
        return row.keel_from || row.keel_before || row.cite.starts_with("SOLAS II-2/14.") ||
               row.tells;
    };
    for (const Requirement& row : given::catalogue().rows)
        if (row.issuer == "SOLAS") {
            EXPECT_TRUE(has_dates(row)) << row.id;
        }
}

TEST(Catalogue, ThatIsNotJsonIsRefusedWithOneError) {
    const auto result = catalogueFrom("{\"rows\": [", "rules.json");
    ASSERT_FALSE(result);
    EXPECT_THAT(result.error(),
                ElementsAre(Error{place::top("rules.json"), errors::shipped_file_no_object()}));
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
