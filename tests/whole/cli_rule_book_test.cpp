// rules as a shell sees it: the rows that doors are graded by, of a vessel and of one of its doors.
#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include "shell.h"

namespace latchround {

namespace {

using nlohmann::json;
using ::testing::AllOf;
using ::testing::ContainsRegex;
using ::testing::HasSubstr;
using ::testing::Not;
using ::testing::StartsWith;

json rulesAs(const QStringList& options) {
    const ShellOutput said = run(QStringList{"rules", "--json"} + options);
    EXPECT_EQ(said.exit_code, 0) << said.err;
    return said.exit_code == 0 ? json::parse(said.out) : json();
}

json rowIn(const json& rules, const std::string& id) {
    for (const json& row : rules["rows"])
        if (row["id"] == id)
            return row;
    ADD_FAILURE() << "no row " << id;
    return {};
}

/// Of a SOLAS passenger ship of 2011; without its history, which takes long.
QString registered(const QString& path) {
    const ShellOutput said =
        run({"register", "import", LATCHROUND_SOURCE "/sample_vessels/vellis-lantern/register.csv",
             "--into", path});
    EXPECT_EQ(said.exit_code, 0) << said.err;
    return path;
}

} // namespace

TEST_F(Cli, ListsEveryRowWithItsTextAsATable) {
    const ShellOutput said = run({"rules"});
    ASSERT_EQ(said.exit_code, 0) << said.err;
    EXPECT_THAT(said.out,
                AllOf(HasSubstr("Not read"), HasSubstr("requirement "), HasSubstr("10 to 40"),
                      HasSubstr("SOLAS II-2/9.4.1.1.5.2"), HasSubstr("46 CFR 116.435(c)(3)"),
                      HasSubstr("keel laid on or after 2002-07-01"), HasSubstr("Catalogue: ")));
    EXPECT_GT(lines(said.out), 140);
    EXPECT_THAT(said.out, ContainsRegex("requirement +step +limit +dates +citation"))
        << "of no vessel it says nothing of where it binds";
}

// SOLAS II-2/9.4.1.1.5.2 and .10; 46 CFR 116.435(c)(3).
TEST_F(Cli, GivesLimitsDatesAndConditionsOfRowsAsJson) {
    const json rules = rulesAs({});
    EXPECT_GT(rules["rows"].size(), 140u);
    EXPECT_FALSE(rules["profiles"].empty());
    const json time = rowIn(rules, "hinged-time");
    EXPECT_EQ(time["low"], 10);
    EXPECT_EQ(time["high"], 40);
    EXPECT_EQ(time["unit"], "s");
    EXPECT_EQ(time["keel_from"], "2002-07-01");
    EXPECT_EQ(time["approximate"], (json{{"slow", 0.1}, {"fast", 0.05}}));
    EXPECT_THAT(time["applies"][0].get<std::string>(), HasSubstr("single leaf or double leaf"));
    EXPECT_FALSE(time.contains("at_door") || time.contains("aboard"));
    const json latch = rowIn(rules, "k-latch-throw");
    EXPECT_EQ(latch["low"], 20);
    EXPECT_EQ(latch["low_also"], 19.05);
}

TEST_F(Cli, GivesOneRowOnAPageOfItsOwn) {
    const ShellOutput said = run({"rules", "--requirement", "self-closing"});
    ASSERT_EQ(said.exit_code, 0) << said.err;
    EXPECT_THAT(said.out, AllOf(StartsWith("self-closing"), HasSubstr("\nApplies to "),
                                HasSubstr("Instead, where: "), HasSubstr("\nSource ")));
    EXPECT_THAT(said.out, Not(HasSubstr("hinged-time")));
    EXPECT_EQ(rulesAs({"--requirement", "self-closing"})["rows"].size(), 1u);
}

TEST_F(Cli, SaysWhereARowBindsAboardAndWhyNot) {
    const QString vessel = registered(at("v.db"));
    const json rules = rulesAs({"--vessel", vessel});
    EXPECT_EQ(rules["vessel"]["name"], "Vellis Lantern");
    int binding = 0;
    for (const json& row : rules["rows"]) {
        const json& here = row["aboard"];
        const bool asked =
            !here["binds"].empty() || !here["judge"].empty() || !here["advice"].empty();
        EXPECT_NE(asked, here.contains("because")) << row["id"];
        binding += here["binds"].empty() ? 0 : 1;
    }
    EXPECT_GT(binding, 40);
    const ShellOutput table = run({"rules", "--vessel", vessel});
    EXPECT_THAT(table.out, AllOf(StartsWith("Vellis Lantern\n"), HasSubstr("binding at "),
                                 HasSubstr("text for other ships")));
}

TEST_F(Cli, SaysThatNoRowBindsAShipOfAFlagWhoseTextIsNotThere) {
    int advised = 0;
    const json rules = rulesAs({"--vessel", imported()});
    for (const json& row : rules["rows"]) {
        EXPECT_TRUE(row["aboard"]["binds"].empty()) << row["id"];
        advised += row["aboard"]["advice"].empty() ? 0 : 1;
    }
    EXPECT_GT(advised, 20);
}

TEST_F(Cli, SaysWhyARowBindsAtADoor) {
    const QString vessel = registered(at("v.db"));
    const json aboard = rulesAs({"--vessel", vessel});
    for (const json& row : aboard["rows"]) {
        if (row["aboard"]["binds"].empty())
            continue;
        const auto door = row["aboard"]["binds"][0].get<std::string>();
        const json at_door =
            rowIn(rulesAs({"--vessel", vessel, "--door", QString::fromStdString(door)}),
                  row["id"].get<std::string>());
        EXPECT_EQ(at_door["at_door"]["asked"], "binds");
        EXPECT_NE(at_door["at_door"]["because"], "");
        const ShellOutput page =
            run({"rules", "--vessel", vessel, "--door", QString::fromStdString(door),
                 "--requirement", QString::fromStdString(row["id"].get<std::string>())});
        EXPECT_THAT(page.out, AllOf(HasSubstr("At door " + door), HasSubstr("Binding here")));
        return;
    }
    FAIL() << "no row binds";
}

TEST_F(Cli, PrintsTheRuleBook) {
    const QString vessel = imported();
    const QStringList to{"--to", at("rules.pdf"), "--replace"};
    const QList<QStringList> commands{
        {"rules"}, {"rules", "--vessel", vessel}, {"report", vessel, "--kind", "rule-book"}};
    for (const QStringList& command : commands) {
        QFile::remove(at("rules.pdf"));
        const ShellOutput said = run(command + to);
        ASSERT_EQ(said.exit_code, 0) << said.err;
        EXPECT_EQ(json::parse(said.out)["kind"], "rule-book");
        EXPECT_TRUE(bytesAt(at("rules.pdf")).startsWith("%PDF-"));
    }
}

TEST_F(Cli, RefusesRulesThatAreNotToBeHad) {
    const QString vessel = imported();
    put("there.pdf", "kept");
    const QList<QStringList> commands{
        {"rules", "--door", "5-31"},
        {"rules", "--vessel", at("none.db")},
        {"rules", "--vessel", vessel, "--door", "99-99"},
        {"rules", "--requirement", "no-such-row"},
        {"rules", "--requirement", "no-such-row", "--json"},
        {"rules", "--to", at("there.pdf")},
        {"rules", "--vessel", vessel, "--to", vessel, "--replace"},
        {"report", vessel, "--kind", "rule-book", "--format", "csv", "--to", at("x.csv")}};
    for (const QStringList& command : commands) {
        const ShellOutput said = run(command);
        EXPECT_EQ(said.exit_code, 2) << command.join(' ').toStdString();
        EXPECT_EQ(lines(said.err), 1) << said.err;
        EXPECT_EQ(said.out, "");
    }
    EXPECT_EQ(bytesAt(at("there.pdf")), "kept");
}

} // namespace latchround
