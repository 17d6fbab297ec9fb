// sample, trend and conformity as a shell sees them. Published values and their sources stand in
// tests/reference; here a few of each show that the command line gives what the core works out.
#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include "tests/reference/published.h"
#include "tests/whole/shell.h"

namespace latchround {

namespace {

using nlohmann::json;
using ::testing::HasSubstr;

json answerOf(const QStringList& arguments) {
    const ShellOutput said = run(arguments);
    EXPECT_EQ(said.exit_code, 0) << said.err;
    EXPECT_EQ(said.err, "");
    return said.exit_code == 0 ? json::parse(said.out) : json::object();
}

/// Refused with so many lines, each on its own, nothing on standard output.
std::string refusedWith(const QStringList& arguments, long faults) {
    const ShellOutput said = run(arguments);
    EXPECT_EQ(said.exit_code, 2);
    EXPECT_EQ(said.out, "");
    EXPECT_EQ(lines(said.err), faults) << said.err;
    return said.err;
}

} // namespace

// 39 and 45 of 100: computed apart, see tests/reference/sampling_reference.cpp.
TEST_F(Cli, SampleSaysItsClaimAndTheOtherConventionUnderItsOwnName) {
    const json plan =
        answerOf({"sample", "--doors", "100", "--defective", "5", "--confidence", "0.95"});
    EXPECT_EQ(plan["n"], 39);
    EXPECT_EQ(plan["claim"], "at most 5 of 100 doors are defective");
    EXPECT_THAT(plan["says"].get<std::string>(), HasSubstr("95 % confidence that at most 5"));
    EXPECT_EQ(plan["chance_to_find"]["n"], 45);
    EXPECT_THAT(plan["chance_to_find"]["says"].get<std::string>(), HasSubstr("not to be confused"));
    EXPECT_FALSE(plan.contains("result"));
}

TEST_F(Cli, SampleSaysWhatAResultProvesAndWhatComesNext) {
    const auto result = [](const char* failed, const char* tested) {
        return answerOf({"sample", "--doors", "100", "--defective", "5", "--failed", failed,
                         "--tested", tested})["result"];
    };
    EXPECT_EQ(result("0", "39")["next"], "proven");
    EXPECT_EQ(result("0", "39")["at_most_defective"], 5);
    EXPECT_EQ(result("0", "30")["next"], "continue");
    EXPECT_EQ(result("0", "30")["more"], 9);
    EXPECT_EQ(result("1", "30")["at_most_defective"], 13);
    EXPECT_EQ(result("1", "30")["next"], "extend");
    EXPECT_EQ(result("6", "30")["next"], "test-all");
    EXPECT_EQ(result("6", "30")["more"], 70);
    EXPECT_EQ(result("6", "100")["at_most_defective"], 6);
}

TEST_F(Cli, SampleRefusesWhatCannotBe) {
    EXPECT_THAT(refusedWith({"sample", "--doors", "0", "--defective", "5", "--confidence", "2"}, 2),
                HasSubstr("--doors"));
    EXPECT_THAT(refusedWith({"sample", "--doors", "100", "--defective", "100"}, 1),
                HasSubstr("--defective"));
    EXPECT_THAT(refusedWith({"sample", "--doors", "100", "--defective", "5", "--failed", "1"}, 1),
                HasSubstr("--tested"));
    EXPECT_THAT(
        refusedWith(
            {"sample", "--doors", "100", "--defective", "5", "--failed", "4", "--tested", "3"}, 1),
        HasSubstr("failed cannot exceed tested"));
    refusedWith({"sample", "--doors", "many", "--defective", "5"}, 1);
}

// NIST StRD Norris, certified values.
TEST_F(Cli, TrendGivesTheCertifiedLineOfNorris) {
    QByteArray csv("x,y\n");
    for (const published::Xy& point : published::norris)
        csv += QByteArray::number(point.x, 'g', 17) + ',' + QByteArray::number(point.y, 'g', 17) +
               '\n';
    const json line = answerOf({"trend", put("norris.csv", csv), "--at", "500"});
    EXPECT_EQ(line["points"], 36);
    EXPECT_NEAR(line["slope"].get<double>(), 1.00211681802045, 1e-13);
    EXPECT_NEAR(line["intercept"].get<double>(), -0.262323073774029, 1e-11);
    EXPECT_NEAR(line["sd_slope"].get<double>(), 0.429796848199937e-03, 1e-13);
    EXPECT_NEAR(line["sd_intercept"].get<double>(), 0.232818234301152, 1e-11);
    EXPECT_NEAR(line["residual_sd"].get<double>(), 0.884796396144373, 1e-11);
    EXPECT_NEAR(line["r_squared"].get<double>(), 0.999993745883712, 1e-14);
    EXPECT_NEAR(line["prediction"]["y"].get<double>(), 500.796085936453, 1e-9);
    EXPECT_NEAR(line["prediction"]["low"].get<double>(), 498.971794054184, 1e-9);
    EXPECT_NEAR(line["prediction"]["high"].get<double>(), 502.620377818723, 1e-9);
}

TEST_F(Cli, TrendReadsWhatSpreadsheetsSave) {
    const QString german = put("de.csv", "Jahr;Zeit\r\n1;2,5\r\n2;3,5\r\n3;4,5\r\n");
    EXPECT_NEAR(answerOf({"trend", german})["slope"].get<double>(), 1, 1e-12);
    const QString bare = put("bare.csv", "1,2.5\n2,3.5\n3,4.5\n");
    EXPECT_EQ(answerOf({"trend", bare})["points"], 3);
}

TEST_F(Cli, TrendNamesEveryFaultByLineAndColumn) {
    const QString bad = put("bad.csv", "x,y\n1,2\n2,three\n3\n4,nan\n5,6\n");
    const std::string said = refusedWith({"trend", bad}, 3);
    EXPECT_THAT(said, HasSubstr("line 3, column 2"));
    EXPECT_THAT(said, HasSubstr("line 4"));
    EXPECT_THAT(said, HasSubstr("line 5, column 2"));
    refusedWith({"trend", put("two.csv", "1,2\n2,3\n")}, 1);
    refusedWith({"trend", put("same.csv", "1,2\n1,3\n1,4\n")}, 1);
    refusedWith({"trend", at("none.csv")}, 1);
    refusedWith({"trend", put("empty.csv", "")}, 1);
}

// Zener diode of JCGM 106 (from memory) and Student's t with 4 degrees, computed apart.
TEST_F(Cli, ConformityGivesTheProbability) {
    EXPECT_NEAR(answerOf({"conformity", "--value", "-5.47", "--u", "0.05", "--high",
                          "-5.40"})["probability"]
                    .get<double>(),
                0.9192433407662289, 1e-12);
    const json few = answerOf({"conformity", "--value", "10.3", "--u", "0.2", "--low", "10",
                               "--high", "40", "--dof", "4"});
    EXPECT_NEAR(few["probability"].get<double>(), 0.895999993832855, 1e-12);
    EXPECT_EQ(few["verdict"], "time-again");
    EXPECT_EQ(answerOf({"conformity", "--value", "12", "--u", "0.1", "--low", "10"})["verdict"],
              "satisfactory");
    EXPECT_EQ(answerOf({"conformity", "--value", "9", "--u", "0.1", "--low", "10"})["verdict"],
              "unsatisfactory");
}

TEST_F(Cli, ConformityRefusesWhatCannotBe) {
    refusedWith({"conformity", "--value", "10", "--u", "-1", "--low", "10"}, 1);
    refusedWith({"conformity", "--value", "10", "--u", "1"}, 1);
    refusedWith({"conformity", "--value", "10", "--u", "1", "--low", "5", "--high", "4"}, 1);
    refusedWith({"conformity", "--value", "10", "--u", "1", "--low", "5", "--dof", "0.5"}, 1);
    refusedWith({"conformity", "--value", "nan", "--u", "1", "--low", "5"}, 1);
}

} // namespace latchround
