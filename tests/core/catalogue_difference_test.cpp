// What differs between two editions of the catalogue, and the texts that a catalogue is kept as.
#include <gmock/gmock.h>

#include "core/error/catalogue_errors.h"
#include "core/phrase/places.h"
#include "core/requirement/catalogue_difference.h"
#include "core/requirement/flag_rules.h"
#include "core/requirement/row_fields.h"
#include "tests/core/edited_catalogue.h"

using namespace latchround;
using nlohmann::json;
using testing::Contains;
using testing::ElementsAre;
using testing::Field;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

namespace {

/// The one row that differs; a row without an id where it is not one.
RowDifference onlyRow(const Catalogue& before, const Catalogue& now) {
    const CatalogueDifference difference = differenceBetween(before, now);
    EXPECT_THAT(difference.rows, SizeIs(1));
    EXPECT_THAT(difference.upkeep, IsEmpty());
    EXPECT_THAT(difference.cells, IsEmpty());
    return difference.rows.size() == 1 ? difference.rows.front() : RowDifference{};
}

json schema() {
    return json::parse(
        given::fileText(LATCHROUND_SOURCE "/resources/schema/catalogue.schema.json"));
}

/// A value that the schema allows.
json allowed(const json& definitions, const json& property) {
    if (property.contains("$ref")) {
        const std::string name = property["$ref"].get<std::string>().substr(8); // "#/$defs/"
        return name == "approximate" ? json{{"slow", 0.1}, {"fast", 0.05}}
               : name == "date"      ? json("2020-01-01")
                                     : json{{"latch", true}};
    }
    if (property.contains("enum"))
        return property["enum"].back();
    if (property["type"] == "array")
        return json::array({allowed(definitions, property["items"])});
    return property["type"] == "boolean"  ? json(true)
           : property["type"] == "number" ? json(7)
                                          : json("words");
}

/// Two rows that differ in one field alone, whatever else a row of a file must be.
bool isTold(const json& one, const json& other) {
    const auto read = [](const json& row) {
        json file = json::parse(*given::catalogue().texts.front().text);
        file["rows"] = json::array({row});
        file.erase("upkeep");
        const auto catalogue = catalogueFrom(file.dump(), "rows");
        EXPECT_TRUE(catalogue) << row;
        return catalogue ? *catalogue : Catalogue();
    };
    return !differenceBetween(read(one), read(other)).rows.empty();
}

} // namespace

TEST(CatalogueDifference, OfACatalogueAndItselfIsNothing) {
    EXPECT_TRUE(differenceBetween(given::catalogue(), given::catalogue()).empty());
}

TEST(CatalogueDifference, AnEditedLimitIsTheOneFieldThatDiffersWithBothValues) {
    const Catalogue now = given::edited("a-gap", [](json& row) { row["high"] = 10; });
    const RowDifference row = onlyRow(given::catalogue(), now);
    EXPECT_EQ(row.change, TextChange::Changed);
    EXPECT_EQ(row.id, "a-gap");
    EXPECT_EQ(row.words, given::row("a-gap").words);
    EXPECT_THAT(row.fields, ElementsAre(FieldDifference{"high", "", "12", "10"}));
    EXPECT_FALSE(isOnlyEdition(row));
}

TEST(CatalogueDifference, ARowPutInIsAddedWithAllThatItSays) {
    const RowDifference row = onlyRow(given::without("a-gap"), given::catalogue());
    EXPECT_EQ(row.change, TextChange::Added);
    EXPECT_EQ(row.id, "a-gap");
    EXPECT_THAT(row.fields, Contains(FieldDifference{"high", "", "", "12"}));
    EXPECT_THAT(row.fields, Contains(FieldDifference{"cite", "", "", given::row("a-gap").cite}));
}

TEST(CatalogueDifference, ARowTakenOutIsGoneWithAllThatItSaid) {
    const RowDifference row = onlyRow(given::catalogue(), given::without("a-gap"));
    EXPECT_EQ(row.change, TextChange::Gone);
    EXPECT_EQ(row.words, given::row("a-gap").words);
    EXPECT_THAT(row.fields, Contains(FieldDifference{"high", "", "12", ""}));
}

TEST(CatalogueDifference, WhatARowAndItsVariantsTakeFromItIsSaidOnce) {
    ASSERT_FALSE(given::row("hinged-time").variants.empty());
    const Catalogue now =
        given::edited("hinged-time", [](json& row) { row["severity"] = "minor"; });
    EXPECT_THAT(onlyRow(given::catalogue(), now).fields,
                ElementsAre(Field(&FieldDifference::field, "severity")));
}

TEST(CatalogueDifference, AVariantIsKnownByWhomItIsFor) {
    const Catalogue before = given::edited("a-gap", [](json& row) {
        row["variants"] = json::array({{{"regimes", {"us-h"}}, {"high", 13}, {"cite", "one"}},
                                       {{"regimes", {"us-k"}}, {"high", 14}, {"cite", "two"}}});
    });
    const Catalogue now = given::edited("a-gap", [](json& row) {
        row["variants"] = json::array({{{"regimes", {"us-k"}}, {"high", 15}, {"cite", "two"}}});
    });
    const auto fields = onlyRow(before, now).fields;
    EXPECT_THAT(fields, Contains(AllOf(Field(&FieldDifference::field, "high"),
                                       Field(&FieldDifference::variant, HasSubstr("us-k")),
                                       Field(&FieldDifference::before, "14"),
                                       Field(&FieldDifference::now, "15"))));
    EXPECT_THAT(fields, Contains(AllOf(Field(&FieldDifference::field, "high"),
                                       Field(&FieldDifference::variant, HasSubstr("us-h")),
                                       Field(&FieldDifference::before, "13"),
                                       Field(&FieldDifference::now, ""))));
}

TEST(CatalogueDifference, VariantsInAnotherOrderDiffer) {
    const json us_h{{"regimes", {"us-h"}}, {"high", 13}};
    const json us_k{{"regimes", {"us-k"}}, {"high", 14}};
    const auto inOrder = [](const json& one, const json& other) {
        return given::edited("a-gap", [&](json& row) {
            row["variants"] = json::array({one, other});
        });
    };
    EXPECT_THAT(onlyRow(inOrder(us_h, us_k), inOrder(us_k, us_h)).fields,
                ElementsAre(Field(&FieldDifference::field, "variants")));
}

TEST(CatalogueDifference, ANewStampOfEditionAloneIsTold) {
    const Catalogue now = given::edited("a-gap", [](json& row) { row["edition"] = "2031"; });
    const RowDifference row = onlyRow(given::catalogue(), now);
    EXPECT_TRUE(isOnlyEdition(row));
    EXPECT_THAT(row.fields,
                ElementsAre(FieldDifference{"edition", "", given::row("a-gap").edition, "2031"}));
}

TEST(CatalogueDifference, RulesOfAFlagAreADifferenceLikeAnother) {
    const auto now = withFlagRules(given::catalogue(), R"({"edition":"Order 7","issuer":"Skerry",
        "rows":[{"id":"a-gap","change":"tighten","high":10,"cite":"para 2"}]})",
                                   "flag");
    ASSERT_TRUE(now);
    const auto fields = onlyRow(given::catalogue(), *now).fields;
    EXPECT_THAT(fields, Contains(FieldDifference{"high", "", "12", "10"}));
    EXPECT_THAT(fields, Contains(Field(&FieldDifference::now, "Skerry")));
}

TEST(CatalogueDifference, UpkeepThatIsAskedMoreOftenDiffers) {
    Catalogue now = given::catalogue();
    ASSERT_FALSE(now.upkeep.empty());
    now.upkeep.front().every = Period::WhenAsked;
    const auto difference = differenceBetween(given::catalogue(), now);
    ASSERT_THAT(difference.upkeep, SizeIs(1));
    EXPECT_EQ(difference.upkeep.front().id, now.upkeep.front().id);
    EXPECT_THAT(difference.upkeep.front().fields,
                ElementsAre(Field(&FieldDifference::now, "when-asked")));
}

// SOLAS II-2 table 9.1, stairways against accommodation of greater fire risk.
TEST(CatalogueDifference, ACellOfAFireTableDiffersWithBothPrints) {
    Catalogue now = given::catalogue();
    FireTable& table = now.divisions.tables.front();
    auto& [spaces, cell] = *table.cells.begin();
    const std::string before = cell.text;
    cell.text = "A-60 here";
    const auto difference = differenceBetween(given::catalogue(), now);
    EXPECT_THAT(difference.rows, IsEmpty());
    ASSERT_THAT(difference.cells, SizeIs(1));
    EXPECT_EQ(difference.cells.front().table, table.name);
    EXPECT_EQ(difference.cells.front().cell,
              std::to_string(spaces.first) + "-" + std::to_string(spaces.second));
    EXPECT_EQ(difference.cells.front().before, before);
    EXPECT_EQ(difference.cells.front().now, "A-60 here");
}

TEST(CatalogueDifference, EveryFieldThatARowCanHaveIsHeldAgainstTheOther) {
    const json published = schema();
    const json bare{
        {"id", "x"},         {"words", "w"},     {"question", "q"}, {"check", "seen"},
        {"source", "gauge"}, {"status", "read"}, {"step", "look"},  {"severity", "critical"},
        {"cite", "c"},       {"low", 1},         {"high", 9}};
    int tried = 0;
    for (const auto& [key, property] : published["$defs"]["row"]["properties"].items()) {
        if (key == "id" || key == "variants")
            continue;
        json one = bare;
        json other = bare;
        if (key == "approximate")
            for (json* row : {&one, &other}) {
                (*row)["check"] = "within-band";
                (*row)["source"] = "closing-time";
            }
        other[key] = allowed(published["$defs"], property);
        EXPECT_TRUE(isTold(one, other)) << key;
        ++tried;
    }
    EXPECT_GT(tried, 25);
}

TEST(CatalogueDifference, EveryConditionThatARowCanHaveIsHeldAgainstTheOther) {
    const json published = schema();
    for (const auto& [key, property] : published["$defs"]["condition"]["properties"].items()) {
        const json row{{"id", "x"},       {"words", "w"},          {"question", "q"},
                       {"check", "seen"}, {"status", "read"},      {"step", "look"},
                       {"cite", "c"},     {"severity", "critical"}};
        json other = row;
        other["applies"] = json::array({{{key, allowed(published["$defs"], property)}}});
        json file = json::parse(*given::catalogue().texts.front().text);
        file["rows"] = json::array({other});
        file.erase("upkeep");
        const auto read = catalogueFrom(file.dump(), "rows");
        ASSERT_TRUE(read) << key;
        EXPECT_THAT(conditionText(read->rows.front().any_of), HasSubstr(key));
    }
}

TEST(RuleTexts, ACatalogueReadAgainFromItsTextsIsTheSame) {
    const auto with_flag = withFlagRules(given::catalogue(), R"({"edition":"Order 7",
        "issuer":"Skerry","rows":[{"id":"a-gap","change":"tighten","high":10,"cite":"para 2"}]})",
                                         "flag");
    ASSERT_TRUE(with_flag);
    const auto again = catalogueOfTexts(ruleTextsOf(*with_flag), "kept");
    ASSERT_TRUE(again);
    EXPECT_TRUE(differenceBetween(*with_flag, *again).empty());
    EXPECT_EQ(again->edition, with_flag->edition);
    EXPECT_EQ(again->flag, "Skerry");
    EXPECT_EQ(ruleTextsOf(*again), ruleTextsOf(*with_flag));
    EXPECT_EQ(again->divisions.tables.size(), with_flag->divisions.tables.size());
}

TEST(RuleTexts, AnotherNumberIsAnotherText) {
    const Catalogue now = given::edited("a-gap", [](json& row) { row["high"] = 10; });
    EXPECT_EQ(now.edition, given::catalogue().edition);
    EXPECT_NE(ruleTextsOf(now), ruleTextsOf(given::catalogue()));
}

TEST(RuleTexts, ATextThatCannotBeReadIsRefusedWithItsPlace) {
    EXPECT_FALSE(catalogueOfTexts("{", "kept"));
    EXPECT_FALSE(catalogueOfTexts("{}", "kept"));
    const auto read = catalogueOfTexts(R"({"texts":[{"text":"["}]})", "kept");
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().front(), (Error{place::top(place::pointer("kept", "/texts/0")),
                                           errors::shipped_file_no_object()}));
}

TEST(RuleTexts, ACatalogueMadeByHandHasNone) {
    EXPECT_EQ(ruleTextsOf(Catalogue()), "");
}
