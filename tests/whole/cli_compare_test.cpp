// rules compare: two catalogues held against each other from a shell.
#include <filesystem>
#include <set>

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include "tests/whole/shell.h"

namespace latchround {

namespace {

namespace fs = std::filesystem;
using nlohmann::json;
using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

class CompareCli : public Cli {
protected:
    static QString shipped() { return QStringLiteral(LATCHROUND_SOURCE "/resources"); }

    /// A folder of the shipped rows in which one row of a file is edited.
    QString edited(const char* file, const char* id, const char* field, const json& value) {
        const fs::path folder = at("edited").toStdString();
        fs::copy(LATCHROUND_SOURCE "/resources/requirements", folder, fs::copy_options::recursive);
        const fs::path path = folder / file;
        json rows = json::parse(bytesAt(QString::fromStdString(path.string())).toStdString());
        for (json& row : rows["rows"])
            if (row["id"] == id)
                row[field] = value;
        QFile out(QString::fromStdString(path.string()));
        EXPECT_TRUE(out.open(QIODevice::WriteOnly));
        out.write(QByteArray::fromStdString(rows.dump()));
        return QString::fromStdString(folder.string());
    }
    static json compared(const QStringList& arguments) {
        const ShellOutput said =
            run(QStringList{"rules", "compare"} + arguments + QStringList{"--json"});
        EXPECT_EQ(said.exit_code, 0) << said.err;
        return said.exit_code == 0 ? json::parse(said.out) : json();
    }
};

} // namespace

TEST_F(CompareCli, ACatalogueDiffersFromItselfInNothing) {
    const ShellOutput said = run({"rules", "compare", shipped(), shipped()});
    EXPECT_EQ(said.exit_code, 0) << said.err;
    EXPECT_THAT(said.out, HasSubstr("No differences."));
    const json answer = compared({shipped(), shipped()});
    for (const char* part : {"texts", "rows", "upkeep", "cells"})
        EXPECT_THAT(answer[part], IsEmpty()) << part;
    EXPECT_FALSE(answer.contains("doors"));
}

TEST_F(CompareCli, NamesTheRowAndTheFieldWithBothValues) {
    const QString other = edited("solas-passenger.json", "reopen-distance", "high", 0.8);
    const json answer = compared({shipped(), other});
    ASSERT_EQ(answer["rows"].size(), 1U);
    EXPECT_EQ(answer["rows"][0]["id"], "reopen-distance");
    EXPECT_EQ(answer["rows"][0]["change"], "changed");
    EXPECT_EQ(answer["rows"][0]["fields"],
              json::parse(R"([{"field":"high","before":"1","now":"0.8"}])"));
    EXPECT_THAT(run({"rules", "compare", shipped(), other}).out,
                HasSubstr("reopen-distance  changed  high"));
}

// SOLAS II-2/9.4.1.1.5.2: a hinged door shuts in 10 to 40 s; the edition before had 20 s.
TEST_F(CompareCli, NamesTheDoorsOfAVesselThatWouldBeGradedOtherwiseWithBothTexts) {
    const QString other = edited("solas-passenger.json", "hinged-time", "high", 20);
    const QString vessel = at("lantern.db");
    const QString folder = QStringLiteral(LATCHROUND_SOURCE "/sample_vessels/vellis-lantern/");
    ASSERT_EQ(run({"register", "import", folder + "register.csv", "--into", vessel, "--history",
                   folder + "history.jsonl"})
                  .exit_code,
              0);
    const json answer = compared({other, shipped(), "--vessel", vessel});
    EXPECT_EQ(answer["vessel"]["name"], "Vellis Lantern");
    ASSERT_FALSE(answer["doors"].empty());
    for (const json& door : answer["doors"]) {
        EXPECT_NE(door["before"], door["now"]);
        ASSERT_EQ(door["rows"].size(), 1U) << door;
        const json& row = door["rows"][0];
        EXPECT_EQ(row["id"], "hinged-time");
        EXPECT_THAT(row["before"]["limit"].get<std::string>(), HasSubstr("20"));
        EXPECT_THAT(row["now"]["limit"].get<std::string>(), HasSubstr("40"));
        EXPECT_EQ(row["before"]["verdict"], door["before"]) << "it made the door as bad as it was";
        EXPECT_EQ(row["now"]["verdict"], "satisfactory");
        EXPECT_EQ(row["now"]["cite"], "SOLAS II-2/9.4.1.1.5.2");
        EXPECT_THAT(row["now"]["edition"].get<std::string>(), HasSubstr("April 2015"));
    }
    EXPECT_THAT(compared({shipped(), shipped(), "--vessel", vessel})["doors"], IsEmpty());
    const ShellOutput text = run({"rules", "compare", other, shipped(), "--vessel", vessel});
    EXPECT_EQ(text.exit_code, 0) << text.err;
    EXPECT_THAT(text.out, HasSubstr("Vellis Lantern: doors that would be graded differently: " +
                                    std::to_string(answer["doors"].size())));
}

TEST_F(CompareCli, AFlagsOwnRulesAreHeldAgainstWhatTheyStandOver) {
    const QString rules = put("order.json", R"({"edition":"Order 7","issuer":"Port of Skerry",
        "rows":[{"id":"hinged-time","change":"tighten","high":12,"cite":"Order 7, para 2"}]})");
    const json answer = compared({shipped(), rules});
    EXPECT_EQ(answer["now"]["flag"], "Port of Skerry");
    ASSERT_EQ(answer["rows"].size(), 1U);
    EXPECT_EQ(answer["rows"][0]["id"], "hinged-time");
    EXPECT_THAT(answer["rows"][0]["fields"],
                Contains(json::parse(R"({"field":"high","before":"40","now":"12"})")));
}

TEST_F(CompareCli, RulesThatLieBesideTheRegisterStandOverBoth) {
    const QString vessel = imported();
    put("ternwick.rules.json", R"({"edition":"Order 7","issuer":"Port of Skerry",
        "rows":[{"id":"hinged-time","change":"tighten","high":12,"cite":"Order 7, para 2"}]})");
    const json answer = compared({shipped(), shipped(), "--vessel", vessel});
    EXPECT_EQ(answer["before"]["flag"], "Port of Skerry");
    EXPECT_EQ(answer["now"]["flag"], "Port of Skerry");
    EXPECT_THAT(answer["rows"], IsEmpty());
}

TEST_F(CompareCli, FilesAreComparedAsTheyAre) {
    const QString one = QStringLiteral(LATCHROUND_SOURCE "/resources/requirements/usage.json");
    const json answer = compared({one, QStringLiteral(LATCHROUND_SOURCE "/resources/requirements/"
                                                                        "solas-passenger.json")});
    std::set<std::string> changes;
    for (const json& row : answer["rows"])
        changes.insert(row["change"].get<std::string>());
    EXPECT_EQ(changes, (std::set<std::string>{"added", "gone"}));
}

TEST_F(CompareCli, EveryFaultOfBothIsTold) {
    const QString spoiled = put("one.json", "[");
    const QString other = put("two.json", "{}");
    const ShellOutput said = run({"rules", "compare", spoiled, other});
    EXPECT_EQ(said.exit_code, 2);
    EXPECT_THAT(said.err, HasSubstr("one.json"));
    EXPECT_THAT(said.err, HasSubstr("two.json"));
    EXPECT_EQ(run({"rules", "compare", shipped()}).exit_code, 2);
    EXPECT_EQ(run({"rules", "compare", shipped(), at("nowhere")}).exit_code, 2);
}

} // namespace latchround
