// The published schemas and the code that reads and writes speak of the same fields and words.
#include <set>

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "app/exchange/file_bytes.h"
#include "core/error/reading_errors.h"
#include "tests/exchange/grade_sample.h"
#include "ui/words/phrase_words.h"

namespace latchround::test {
namespace {

using nlohmann::json;

json schema(const std::string& name) {
    const auto bytes =
        bytesOf(std::string(LATCHROUND_SOURCE) + "/resources/schema/" + name, 1 << 20);
    if (!bytes) {
        ADD_FAILURE() << ui::inOneLine(bytes.error());
        return {};
    }
    return json::parse(*bytes);
}

template <class E, std::size_t N>
std::set<std::string> wordsOf(const std::array<Word<E>, N>& table) {
    std::set<std::string> words;
    for (const auto& entry : table)
        words.emplace(entry.word);
    return words;
}

std::set<std::string> enumOf(const json& property) {
    std::set<std::string> words;
    for (const json& word : property["enum"])
        if (word.is_string())
            words.insert(word.get<std::string>());
    return words;
}

std::set<std::string> keysOf(const json& object) {
    std::set<std::string> keys;
    for (const auto& [key, value] : object.items())
        keys.insert(key);
    return keys;
}

/// The fields that reading complains of in an object at `pointer` whose every field has the odd
/// value [].
std::string errorsOfOddFields(const json& document) {
    const auto input = readGrade(document.dump());
    return input ? std::string{} : inLines(input.error());
}

TEST(GradeSchema, InputWordsAreTheWordsOfTheCore) {
    const json defs = schema("grade-input.schema.json")["$defs"];
    const json& door = defs["door"]["properties"];
    const json& run = defs["run"]["properties"];
    EXPECT_EQ(enumOf(defs["vessel"]["properties"]["regime"]), wordsOf(regimeWords));
    EXPECT_EQ(enumOf(defs["fireClass"]), wordsOf(fireClassWords));
    EXPECT_EQ(enumOf(defs["answer"]), wordsOf(answerWords));
    EXPECT_EQ(enumOf(door["kind"]), wordsOf(doorKindWords));
    EXPECT_EQ(enumOf(door["place"]), wordsOf(placeWords));
    EXPECT_EQ(enumOf(door["normally"]), wordsOf(normalPositionWords));
    EXPECT_EQ(enumOf(run["release"]), wordsOf(releaseWords));
    EXPECT_EQ(enumOf(run["kind"]), wordsOf(runKindWords));
    EXPECT_EQ(enumOf(run["outcome"]), wordsOf(runOutcomeWords));
    EXPECT_EQ(keysOf(run["marks"]["properties"]), wordsOf(markKindWords));
}

TEST(GradeSchema, EveryFieldOfTheSchemaIsReadAndNoOther) {
    const json defs = schema("grade-input.schema.json")["$defs"];
    json document = json::parse(grade_sample);
    const auto check = [&](json& object, const json& properties, const std::string& pointer) {
        const json before = object;
        for (const std::string& key : keysOf(properties)) {
            object[key] = json::array({json::object()}); // no field takes a list of an empty object
            EXPECT_THAT(errorsOfOddFields(document),
                        testing::HasSubstr("grade.json at " + pointer + "/" + key))
                << key << " is not read";
            EXPECT_THAT(errorsOfOddFields(document),
                        testing::Not(
                            testing::HasSubstr(pointer + "/" + key + ": this field is not known")));
            object = before;
        }
        object["surplus"] = 1;
        EXPECT_THAT(errorsOfOddFields(document),
                    testing::HasSubstr(pointer + "/surplus: this field is not known"));
        object = before;
    };
    check(document["vessel"], defs["vessel"]["properties"], "/vessel");
    check(document["doors"][0], defs["door"]["properties"], "/doors/0");
    check(document["doors"][0]["runs"][0], defs["run"]["properties"], "/doors/0/runs/0");
    check(document["doors"][0]["runs"][0]["marks"],
          defs["run"]["properties"]["marks"]["properties"], "/doors/0/runs/0/marks");
}

TEST(GradeSchema, RequiredFieldsAreTheOnesReadingAsksFor) {
    const json defs = schema("grade-input.schema.json")["$defs"];
    const auto missing = [](const json& document, const std::string& pointer) {
        std::set<std::string> keys;
        const auto input = readGrade(document.dump());
        if (input)
            return keys;
        for (const Error& error : input.error())
            if (error.what == errors::field_missing() &&
                whereOf(error).starts_with("grade.json at " + pointer))
                keys.insert(whereOf(error).substr(whereOf(error).rfind('/') + 1));
        return keys;
    };
    const json bare = json::parse(R"({"vessel":{},"doors":[{"runs":[{}]}]})");
    const auto required = [](const json& definition) {
        return definition["required"].get<std::set<std::string>>();
    };
    EXPECT_EQ(missing(bare, "/vessel"), required(defs["vessel"]));
    EXPECT_EQ(missing(bare, "/doors/0/runs/0"), required(defs["run"]));
    EXPECT_EQ(missing(json::parse(R"({"vessel":{},"doors":[{}]})"), "/doors/0"),
              required(defs["door"]));
}

TEST(GradeSchema, OutputHasTheFieldsOfItsSchema) {
    const json output_schema = schema("grade-output.schema.json");
    EXPECT_EQ(enumOf(output_schema["$defs"]["verdict"]), wordsOf(verdictWords));
    const auto input = readGrade(grade_sample);
    ASSERT_TRUE(input) << inLines(input.error());
    ZoneIntegrity zones;
    zones.failing = {{{"3", "4"}, 80, 1700.0, {}, {"5-32"}, {"3/4"}}};
    zones.best_repair = Repair{"3/4", {"5-32"}, 80, 0};
    const json output = json::parse(gradeOutputJson(solasCatalogue(), input->vessel,
                                                    gradedDoors(*input, solasCatalogue()), zones));
    const auto check = [](const json& object, const json& definition) {
        const std::set<std::string> keys = keysOf(object);
        for (const json& key : definition["required"])
            EXPECT_TRUE(keys.contains(key.get<std::string>())) << key << " in " << object;
        for (const std::string& key : keys)
            EXPECT_TRUE(definition["properties"].contains(key)) << key;
    };
    check(output, output_schema);
    check(output["catalogue"], output_schema["properties"]["catalogue"]);
    check(output["zones"][0], output_schema["$defs"]["zone"]);
    check(output["best_repair"], output_schema["$defs"]["repair"]);
    for (const json& door : output["doors"]) {
        check(door, output_schema["$defs"]["door"]);
        for (const json& row : door["rows"])
            check(row, output_schema["$defs"]["row"]);
    }
}

} // namespace
} // namespace latchround::test
