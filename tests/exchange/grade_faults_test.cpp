// Every fault of a grade file is named by its JSON pointer, all in one pass.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/exchange/grade_sample.h"

namespace latchround::test {
namespace {

using testing::HasSubstr;

std::string faultsAfter(std::string_view from, std::string_view to) {
    const auto input = readGrade(replaced(grade_sample, from, to));
    return input ? "read without an error" : inLines(input.error());
}

void expectOne(std::string_view from, std::string_view to, const std::string& start) {
    const std::string faults = faultsAfter(from, to);
    EXPECT_THAT(faults, testing::StartsWith("grade.json at " + start));
    EXPECT_EQ(std::ranges::count(faults, '\n'), 1) << faults;
}

TEST(GradeFaults, WordsOutsideTheirSet) {
    expectOne("\"sliding\"", "\"roller\"", "/doors/0/kind: \"roller\" is not known here");
    EXPECT_THAT(faultsAfter("\"sliding\"", "\"roller\""),
                HasSubstr("single, double, sliding, double-swing"));
    expectOne("\"A-60\"", "\"A-61\"", "/doors/0/class: ");
    expectOne("zone-bulkhead", "bulkhead", "/doors/0/place: ");
    expectOne("\"bulkhead\"", "\"wall\"", "/doors/0/division: ");
    expectOne("\"open\"", "\"ajar\"", "/doors/0/normally: ");
    expectOne("solas-passenger", "solas", "/vessel/regime: ");
    expectOne("\"remote\"", "\"radio\"", "/doors/0/runs/0/release: ");
    expectOne("\"id\": \"5-32\"", "\"id\": \"5-32\", \"plate_read\": \"read\"",
              "/doors/0/plate_read: ");
}

TEST(GradeFaults, ValuesOfTheWrongKind) {
    expectOne("1200", "\"1200\"", "/vessel/passengers: ");
    expectOne("1200", "-1", "/vessel/passengers: ");
    expectOne("1200", "12.5", "/vessel/passengers: ");
    expectOne("1.40", "\"1.40\"", "/doors/0/opening_m: this must be a number");
    expectOne("1.40", "0", "/doors/0/opening_m: ");
    expectOne("\"power_operated\": true", "\"power_operated\": \"yes\"",
              "/doors/0/power_operated: this must be true or false");
    expectOne("\"built\": \"2015-03-01\"", "\"built\": \"1.3.2015\"", "/vessel/built: ");
    expectOne("[3, 3]", "[3]", "/doors/0/spaces: ");
    expectOne("[3, 3]", "[3, 15]", "/doors/0/spaces: ");
    expectOne("\"heel_deg\": 0.5", "\"heel_deg\": 90", "/doors/0/runs/0/heel_deg: ");
}

TEST(GradeFaults, MissingFields) {
    expectOne("\"kind\": \"sliding\", ", "", "/doors/0/kind: this field is missing");
    expectOne("\"id\": \"6-04\", ", "", "/doors/1/id: this field is missing");
    expectOne("\"regime\": \"solas-passenger\", ", "", "/vessel/regime: ");
    expectOne("\"release\": \"remote\", ", "", "/doors/0/runs/0/release: ");
    const auto empty = readGrade("{}");
    ASSERT_FALSE(empty);
    EXPECT_EQ(empty.error().size(), 2u);
    EXPECT_EQ(whereOf(empty.error()[0]), "grade.json at /vessel");
    EXPECT_EQ(whereOf(empty.error()[1]), "grade.json at /doors");
}

TEST(GradeFaults, UnknownFieldsSuggestTheNearOne) {
    expectOne("\"hose_port\"", "\"hoseport\"",
              "/doors/0/hoseport: this field is not known here. Nearest name here: \"hose_port\".");
    expectOne("\"vessel\"", "\"x/y~\": 1, \"vessel\"", "/x~1y~0: ");
    expectOne("\"half-way\"", "\"halfway\"", "/doors/0/runs/0/marks/halfway: ");
}

TEST(GradeFaults, RequirementsTheCatalogueDoesNotHave) {
    expectOne("\"one-person\"", "\"one-persn\"", "/doors/0/observations/one-persn: ");
    EXPECT_THAT(faultsAfter("\"one-person\"", "\"one-persn\""),
                HasSubstr("Nearest name here: \"one-person\"."));
    expectOne("\"a-gap\"", "\"a-gapp\"", "/doors/0/measured/a-gapp: ");
}

TEST(GradeFaults, AnswersAndFiguresInTheWrongPlace) {
    expectOne("\"no-hook\": \"no\"", "\"no-hook\": \"perhaps\"", "/doors/0/observations/no-hook: ");
    expectOne("\"no-hook\": \"no\"", "\"no-hook\": {\"one\": \"no\"}",
              "/doors/0/observations/no-hook: ");
    expectOne("{\"one\": \"yes\"}", "{\"three\": \"yes\"}",
              "/doors/0/observations/reopen-local/three: ");
    expectOne("\"no-hook\": \"no\"", "\"sliding-rate\": \"yes\"",
              "/doors/0/observations/sliding-rate: ");
    expectOne("\"a-gap\": 9", "\"sliding-rate\": 0.15", "/doors/0/measured/sliding-rate: ");
    expectOne("\"a-gap\": 9", "\"a-gap\": -9", "/doors/0/measured/a-gap: ");
    expectOne("\"a-gap\": 9", "\"a-gap\": \"9\"", "/doors/0/measured/a-gap: ");
}

TEST(GradeFaults, RunsAndMarks) {
    expectOne("\"moves\": 7.4", "\"moves\": -7.4", "/doors/0/runs/0/marks/moves: ");
    expectOne("\"moves\": 7.4", "\"moves\": \"7.4\"", "/doors/0/runs/0/marks/moves: ");
    expectOne("\"shut\": 16.7, \"alarm-off\": 16.8}",
              "\"alarm-off\": 16.8}, \"outcome\": \"complete\"",
              "/doors/0/runs/0/outcome: the run is not complete");
    EXPECT_THAT(
        faultsAfter("\"runs\": [{", "\"runs\": [{\"release\": \"remote\", \"marks\": {}}, {"),
        HasSubstr("/doors/0/runs/0/marks: a run without marks"));
    EXPECT_THAT(faultsAfter("\"runs\": [{", "\"runs\": [5, {"),
                HasSubstr("/doors/0/runs/0: this must be an object"));
}

TEST(GradeFaults, MarksThatRunBackwardsAreRefusedWithThePointer) {
    expectOne("\"shut\": 16.7", "\"shut\": 3.0",
              "/doors/0/runs/0/marks/shut: this cannot come before \"moves\"");
    expectOne("\"half-way\": 11.9", "\"half-way\": 7.3",
              "/doors/0/runs/0/marks/half-way: this cannot come before \"moves\"");
    expectOne("\"half-way\": 11.9", "\"half-way\": 16.75",
              "/doors/0/runs/0/marks/shut: this cannot come before \"half-way\"");
    expectOne("\"alarm-off\": 16.8", "\"alarm-off\": 0.5",
              "/doors/0/runs/0/marks/alarm-off: this cannot come before \"alarm-on\"");
    EXPECT_TRUE(readGrade(replaced(grade_sample, "\"alarm-off\": 16.8", "\"alarm-off\": 3.0")))
        << "an alarm that stops early is the door's fault";
}

TEST(GradeFaults, AStepIsANumberBesideItsFigure) {
    expectOne("\"a-gap\": 9", "\"a-gap\": {\"value\": 9, \"step\": -1}",
              "/doors/0/measured/a-gap/step: ");
    expectOne("\"a-gap\": 9", "\"a-gap\": {\"step\": 1}", "/doors/0/measured/a-gap/value: ");
    expectOne("\"a-gap\": 9", "\"a-gap\": {\"value\": 9, \"stp\": 1}",
              "/doors/0/measured/a-gap/stp: ");
}

TEST(GradeFaults, DoorTwiceNamesTheFirst) {
    expectOne("\"6-04\"", "\"5-32\"",
              "/doors/1/id: door \"5-32\" is listed twice, first at /doors/0/id");
    expectOne("\"6-04\"", "\"\"", "/doors/1/id: a door needs a number");
}

TEST(GradeFaults, FieldTwiceIsNamedWhereItStands) {
    expectOne("\"alarm-on\": 1.0", "\"moves\": 1.0",
              "/doors/0/runs/0/marks/moves: this field is given twice");
}

TEST(GradeFaults, WhatIsNotJsonIsNamedByLineAndColumn) {
    const auto broken = readGrade("{\"vessel\": {},\n \"doors\": [,]}");
    ASSERT_FALSE(broken);
    EXPECT_EQ(whereOf(broken.error().front()), "grade.json line 2, column 12");
    EXPECT_FALSE(readGrade(""));
    EXPECT_FALSE(readGrade("[]"));
    EXPECT_FALSE(readGrade("{\"vessel\": 1e999}"));
    EXPECT_FALSE(readGrade("{\"vessel\": \"\xE9\"}"));
}

TEST(GradeFaults, AllFaultsComeInOnePass) {
    std::string json = replaced(grade_sample, "\"sliding\"", "\"roller\"");
    json = replaced(json, "1200", "-1");
    json = replaced(json, "\"one-person\"", "\"one-persn\"");
    json = replaced(json, "\"moves\": 7.4", "\"moves\": -1");
    json = replaced(json, "\"A-30\"", "\"A-31\"");
    const auto input = readGrade(json);
    ASSERT_FALSE(input);
    std::vector<std::string> places;
    for (const Error& error : input.error())
        places.push_back(whereOf(error));
    EXPECT_THAT(places,
                testing::UnorderedElementsAre(
                    "grade.json at /vessel/passengers", "grade.json at /doors/0/kind",
                    "grade.json at /doors/0/observations/one-persn",
                    "grade.json at /doors/0/runs/0/marks/moves", "grade.json at /doors/1/class"));
}

} // namespace
} // namespace latchround::test
