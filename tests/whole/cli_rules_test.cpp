// What the command line says of the rules: the class of a division, a catalogue whose numbers were
// edited, a flag's own rules.
#include <filesystem>

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include "tests/whole/shell.h"

namespace latchround {

namespace {

namespace fs = std::filesystem;
using nlohmann::json;
using ::testing::Contains;
using ::testing::HasSubstr;

json boundary(const QStringList& options) {
    const ShellOutput said = run(QStringList{"boundary"} + options);
    EXPECT_EQ(said.exit_code, 0) << said.err;
    return said.exit_code == 0 ? json::parse(said.out) : json();
}

constexpr auto hinged_door = R"({"vessel":{"regime":"solas-passenger","passengers":600,
    "built":"2015-03-01","sprinklers":true},"doors":[{"id":"5-31","kind":"single","class":"A-60",
    "place":"zone-bulkhead","runs":[{"release":"let-go","marks":{"moves":0,"shut":35}}]}]})";

json rowOf(const std::string& output, const std::string& id) {
    const json document = json::parse(output);
    for (const json& row : document["doors"][0]["rows"])
        if (row["requirement"] == id)
            return row;
    ADD_FAILURE() << "no row " << id;
    return {};
}

/// The command line and its resources as they are installed, to be edited.
class InstalledCli : public Cli {
protected:
    void SetUp() override {
        fs::create_directories(root() / "bin");
        fs::copy(LATCHROUND_CLI, program());
        fs::create_directories(root() / "share" / "latchround");
        for (const char* folder : {"requirements", "boundaries"})
            fs::copy(fs::path(LATCHROUND_SOURCE "/resources") / folder,
                     root() / "share" / "latchround" / folder, fs::copy_options::recursive);
    }
    fs::path root() const { return at("").toStdString(); }
    fs::path program() const { return root() / "bin" / "latchround-cli"; }

    void edit(const char* file, const char* id, const char* limit, double value) {
        const fs::path path = root() / "share" / "latchround" / "requirements" / file;
        json rows = json::parse(bytesAt(QString::fromStdString(path.string())).toStdString());
        for (json& row : rows["rows"])
            if (row["id"] == id)
                row[limit] = value;
        QFile out(QString::fromStdString(path.string()));
        ASSERT_TRUE(out.open(QIODevice::WriteOnly));
        out.write(QByteArray::fromStdString(rows.dump()));
    }
};

} // namespace

// SOLAS II-2 tables 9.1 (3-7), 9.2 (12-7), 9.3 (2-9), 9.5 (2-6); 9.2.2.1.1.1; 46 CFR 116.415(b)
// (1-10) with 116.435(c)(1).
TEST_F(Cli, TellsTheClassOfADivision) {
    json answer =
        boundary({"--ship", "passenger-over-36", "--division", "bulkhead", "--spaces", "3,7"});
    EXPECT_EQ(answer["class"], "B-15");
    EXPECT_EQ(answer["table"], "SOLAS II-2 table 9.1");
    EXPECT_EQ(answer["cell"], "3-7");
    EXPECT_THAT(answer["cite"].get<std::string>(), HasSubstr("table 9.1"));
    EXPECT_EQ(boundary({"--ship", "passenger-over-36", "--division", "deck", "--spaces",
                        "12,7"})["class"],
              "A-60");
    EXPECT_EQ(boundary({"--ship", "passenger-over-36", "--division", "deck", "--spaces",
                        "7,12"})["class"],
              "A-0");
    const QStringList few{"--ship", "passenger-36-or-fewer", "--division", "bulkhead", "--spaces",
                          "2,9"};
    EXPECT_EQ(boundary(few)["class"], "A-15");
    EXPECT_EQ(boundary(few + QStringList{"--sprinklers"})["class"], "A-0");
    EXPECT_EQ(boundary({"--ship", "cargo", "--division", "bulkhead", "--spaces", "2,6"})["class"],
              "A-60");
    answer = boundary(
        {"--ship", "passenger-over-36", "--division", "zone-bulkhead", "--spaces", "3,10"});
    EXPECT_EQ(answer["class"], "A-0");
    EXPECT_EQ(answer["cite"], "SOLAS II-2/9.2.2.1.1.1");
    EXPECT_TRUE(answer["table"].is_null());
    answer = boundary({"--ship", "us-k", "--division", "bulkhead", "--spaces", "1,10"});
    EXPECT_EQ(answer["class"], "A-60");
    EXPECT_EQ(answer["door_class"], "A-15");
}

TEST_F(Cli, SaysWhereNothingIsPrinted) {
    const json answer =
        boundary({"--ship", "passenger-over-36", "--division", "bulkhead", "--spaces", "4,4"});
    EXPECT_TRUE(answer["class"].is_null());
    EXPECT_THAT(answer["notes"], Contains("no value printed: ask the Administration"));
}

TEST_F(Cli, RefusesADivisionThatCannotBe) {
    const ShellOutput said = run({"boundary", "--ship", "yacht", "--division", "wall", "--spaces",
                                  "3", "--built", "yesterday"});
    EXPECT_EQ(said.exit_code, 2);
    EXPECT_EQ(lines(said.err), 4) << said.err;
    for (const char* option : {"--ship", "--division", "--spaces", "--built"})
        EXPECT_THAT(said.err, HasSubstr(option));
    EXPECT_EQ(run({"boundary", "--ship", "cargo", "--division", "zone-bulkhead"}).exit_code, 2);
    EXPECT_EQ(
        run({"boundary", "--ship", "us-h", "--division", "deck", "--spaces", "3,14"}).exit_code, 2);
}

TEST_F(InstalledCli, OneEditedNumberChangesGradeAndReport) {
    const QString file = put("door.json", hinged_door);
    const QString cli = QString::fromStdString(program().string());
    EXPECT_EQ(rowOf(run({"grade", file}, cli).out, "hinged-time")["verdict"], "satisfactory");
    edit("solas-passenger.json", "hinged-time", "high", 30);
    const json row = rowOf(run({"grade", file}, cli).out, "hinged-time");
    EXPECT_EQ(row["verdict"], "unsatisfactory");
    EXPECT_EQ(row["high"], 30);

    const QString vessel = at("lantern.db");
    ASSERT_EQ(
        run({"register", "import", LATCHROUND_SOURCE "/sample_vessels/vellis-lantern/register.csv",
             "--into", vessel, "--history",
             LATCHROUND_SOURCE "/sample_vessels/vellis-lantern/history.jsonl"},
            cli)
            .exit_code,
        0);
    ASSERT_EQ(run({"report", vessel, "--to", at("report.pdf")}, cli).exit_code, 0);
    QProcess reader;
    reader.start("pdftotext", {"-layout", at("report.pdf"), "-"});
    ASSERT_TRUE(reader.waitForFinished());
    EXPECT_THAT(reader.readAllStandardOutput().toStdString(), HasSubstr("10 to 30 s"));
}

TEST_F(InstalledCli, SpoiledFileIsToldAndTheBuiltInCatalogueGrades) {
    const QString file = put("door.json", hinged_door);
    edit("solas-passenger.json", "hinged-time", "low", 50);
    const ShellOutput said = run({"grade", file}, QString::fromStdString(program().string()));
    EXPECT_EQ(said.exit_code, 0);
    EXPECT_THAT(said.err, HasSubstr("Using the catalogue built into the program"));
    EXPECT_THAT(said.err, HasSubstr("/rows/13/low"));
    EXPECT_EQ(rowOf(said.out, "hinged-time")["verdict"], "satisfactory");
}

TEST_F(Cli, FlagRulesAreNamedOrLieBesideTheRegister) {
    const QByteArray rules = R"({"edition":"Order 7","issuer":"Port of Skerry","rows":[
        {"id":"hinged-time","change":"tighten","high":30,"cite":"Order 7, para 2"}]})";
    const QString file = put("door.json", hinged_door);
    const QString named = put("rules.json", rules);
    const json row = rowOf(run({"grade", file, "--flag-rules", named}).out, "hinged-time");
    EXPECT_EQ(row["verdict"], "unsatisfactory");
    EXPECT_EQ(row["issuer"], "Port of Skerry");

    const QString path = imported();
    put("ternwick.rules.json", rules);
    const json edition = json::parse(run({"walkdown", path, "--json"}).out)["catalogue"]["edition"];
    EXPECT_THAT(edition.get<std::string>(), HasSubstr("Order 7 (Port of Skerry)"));
    put("ternwick.rules.json", "{}");
    EXPECT_EQ(run({"walkdown", path, "--json"}).exit_code, 2);
}

} // namespace latchround
