// The output file says what the core graded, in the words of the core.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "tests/exchange/grade_sample.h"

namespace latchround::test {
namespace {

using nlohmann::json;

json outputOf(const std::string& input_json) {
    const auto input = readGrade(input_json);
    if (!input) {
        ADD_FAILURE() << inLines(input.error());
        return {};
    }
    return json::parse(gradeOutputJson(solasCatalogue(), input->vessel,
                                       gradedDoors(*input, solasCatalogue()), {}));
}

json rowOf(const json& output, std::size_t door, const std::string& id) {
    for (const json& row : output["doors"][door]["rows"])
        if (row["requirement"] == id)
            return row;
    ADD_FAILURE() << "no row " << id;
    return {};
}

TEST(GradeOutput, RowCarriesValueLimitsCitationAndReason) {
    const json row = rowOf(outputOf(grade_sample), 0, "sliding-rate");
    EXPECT_EQ(row["verdict"], "satisfactory") << row;
    EXPECT_NEAR(row["value"].get<double>(), 1.4 / 9.3, 1e-9);
    EXPECT_GT(row["u"].get<double>(), 0);
    EXPECT_EQ(row["unit"], "m/s");
    EXPECT_EQ(row["low"], 0.1);
    EXPECT_EQ(row["high"], 0.2);
    EXPECT_THAT(row["cite"].get<std::string>(), testing::HasSubstr("9.4.1.1.5.2"));
    EXPECT_FALSE(row["why"].get<std::string>().empty());
}

TEST(GradeOutput, NothingTestedIsUntestedAndHasNoValue) {
    const json output = outputOf(
        replaced(grade_sample, "\"stairway\"", "\"stairway\", \"boundary_class\": \"A-30\""));
    EXPECT_EQ(output["doors"][1]["verdict"], "untested");
    const json row = rowOf(output, 1, "hinged-time");
    EXPECT_EQ(row["verdict"], "untested");
    EXPECT_FALSE(row.contains("value"));
    EXPECT_FALSE(row.contains("u"));
}

// 180 kg needs 107.8 N along its track at 3.5 degrees (SOLAS II-2/9.4.1.1.5.1).
TEST(GradeOutput, AClosingForceIsThereInNewtonsAndDoubtsTheRun) {
    const auto closing = [](const char* force_N) {
        const std::string heavy =
            replaced(grade_sample, "\"opening_m\"", "\"leaf_mass_kg\": 180, \"opening_m\"");
        return rowOf(outputOf(replaced(heavy, "\"a-gap\": 9",
                                       std::string("\"a-gap\": 9, \"self-closing\": ") + force_N)),
                     0, "self-closing");
    };
    EXPECT_EQ(closing("5")["verdict"], "judge");
    EXPECT_EQ(closing("5")["value"], 5);
    EXPECT_EQ(closing("5")["unit"], "N");
    EXPECT_EQ(closing("5")["why"], "closing force below what the leaf's weight alone needs (5 N "
                                   "measured, 107.8 N needed at 3.5 degrees): you decide");
    EXPECT_EQ(closing("109")["verdict"], "satisfactory");
    EXPECT_EQ(closing("109")["value"], 109);
}

TEST(GradeOutput, HookMakesTheDoorUnsatisfactory) {
    const json output = outputOf(grade_sample);
    EXPECT_EQ(rowOf(output, 0, "no-hook")["verdict"], "unsatisfactory");
    EXPECT_EQ(output["doors"][0]["verdict"], "unsatisfactory");
}

TEST(GradeOutput, RowNotAskedSaysWhy) {
    const json row = rowOf(outputOf(grade_sample), 0, "hinged-time");
    EXPECT_EQ(row["verdict"], "not-applicable");
    EXPECT_FALSE(row["why"].get<std::string>().empty());
    EXPECT_FALSE(row.contains("value"));
}

TEST(GradeOutput, OlderShipGetsAdviceWithWhatItWouldHaveBeen) {
    const std::string slow = replaced(grade_sample, "\"opening_m\": 1.40", "\"opening_m\": 0.50");
    EXPECT_EQ(rowOf(outputOf(slow), 0, "sliding-rate")["verdict"], "unsatisfactory");
    const json row =
        rowOf(outputOf(replaced(slow, "\"built\": \"2015-03-01\", ", "")), 0, "sliding-rate");
    EXPECT_EQ(row["verdict"], "advice");
    EXPECT_EQ(row["underlying"], "unsatisfactory");
}

TEST(GradeOutput, LocalRunsLeaveTheAlarmUntested) {
    const json output = outputOf(replaced(grade_sample, "\"remote\"", "\"local-1\""));
    EXPECT_EQ(rowOf(output, 0, "alarm-lead")["verdict"], "untested");
    EXPECT_EQ(rowOf(output, 0, "alarm-holds")["verdict"], "untested");
}

TEST(GradeOutput, VoidRunShowsNothing) {
    const json output = outputOf(replaced(grade_sample, "\"shut\": 16.7, ", ""));
    EXPECT_EQ(rowOf(output, 0, "self-closing")["verdict"], "untested");
    EXPECT_EQ(rowOf(output, 0, "sliding-rate")["verdict"], "untested");
    EXPECT_EQ(rowOf(output, 0, "remote-release")["verdict"], "untested");
}

TEST(GradeOutput, EditionAndZonesAreThere) {
    const json output = outputOf(grade_sample);
    EXPECT_EQ(output["catalogue"]["edition"], solasCatalogue().edition);
    EXPECT_TRUE(output["zones"].is_array());
    ZoneIntegrity zones;
    zones.failing = {{{"3", "4"}, 80, 1700.0, {}, {"5-32"}, {"3/4"}}};
    zones.not_shown = {{{"4", "5"}, 70, {}, {}, {"5-40"}, {"4/5"}}};
    zones.best_repair = Repair{"3/4", {"5-32"}, 80, 0};
    const json written = json::parse(gradeOutputJson(solasCatalogue(), {}, {}, zones));
    EXPECT_EQ(written["zones"],
              json::parse(R"([{"zones":["3","4"],"through":"failing","length_m":80.0,)"
                          R"("area_m2":1700.0,"doors":["5-32"],"boundaries":["3/4"]},)"
                          R"({"zones":["4","5"],"through":"not-shown","length_m":70.0,)"
                          R"("doors":["5-40"],"boundaries":["4/5"]}])"));
    EXPECT_EQ(written["best_repair"]["doors"], json::parse(R"(["5-32"])"));
}

TEST(GradeOutput, DoorsAndRowsKeepTheirOrder) {
    const json output = outputOf(grade_sample);
    ASSERT_EQ(output["doors"].size(), 2u);
    EXPECT_EQ(output["doors"][0]["id"], "5-32");
    ASSERT_EQ(output["doors"][0]["rows"].size(), solasCatalogue().rows.size());
    for (std::size_t i = 0; i < solasCatalogue().rows.size(); ++i)
        EXPECT_EQ(output["doors"][0]["rows"][i]["requirement"], solasCatalogue().rows[i].id);
}

} // namespace
} // namespace latchround::test
