// CSV and JSON of the same matter, read back.
#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include "app/exchange/csv_text.h"
#include "app/report/data/csv_lines.h"
#include "app/report/made_report.h"
#include "core/given.h"
#include "sample_items.h"

namespace latchround {

namespace {

using nlohmann::json;

std::string written(const SampleWalkdown& sample, ReportKind kind, Format format) {
    const auto made = madeReport({sample.arrangement,
                                  sample.ledger,
                                  sample.walkdown,
                                  given::catalogue(),
                                  {1795601520000, 60},
                                  "Latchround 9.8.7",
                                  {}},
                                 kind, format);
    EXPECT_TRUE(made.has_value());
    return made ? made->document.toStdString() : std::string();
}

/// Every line as the cells under their heads.
std::vector<std::map<std::string, std::string>> linesOf(const std::string& csv) {
    const auto read = csvTextFrom(csv, "table");
    EXPECT_TRUE(read.has_value() && read->flaws.empty());
    std::vector<std::map<std::string, std::string>> lines;
    for (std::size_t row = 1; read && row < read->rows.size(); ++row) {
        EXPECT_EQ(read->rows[row].cells.size(), read->rows[0].cells.size());
        auto& line = lines.emplace_back();
        for (std::size_t cell = 0; cell < read->rows[row].cells.size(); ++cell)
            line[read->rows[0].cells[cell].text] = read->rows[row].cells[cell].text;
    }
    return lines;
}

} // namespace

TEST(CsvLines, QuoteAsRfc4180Asks) {
    report::CsvLines csv({"a", "b"});
    csv.text("one, two").text("say \"no\"\nthen").endLine();
    EXPECT_EQ(csv.all(), "a,b\r\n\"one, two\",\"say \"\"no\"\"\nthen\"\r\n");
}

TEST(CsvLines, LetNoWordsRunInASpreadsheet) {
    report::CsvLines csv({"a"});
    for (const char* words : {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", " =1"})
        csv.text(words).endLine();
    csv.figure(-1.5).endLine();
    EXPECT_EQ(csv.all(), "a\r\n'=1+1\r\n'+1\r\n'-1\r\n'@SUM(A1)\r\n'\t=1\r\n' =1\r\n-1.5\r\n");
}

TEST(ItemsCsv, GivesEveryItemWithActionAndGroundInTwoColumns) {
    const auto lines = linesOf(written(SampleItems(), ReportKind::DeficiencyList, Format::Csv));
    ASSERT_EQ(lines.size(), 4U);
    EXPECT_EQ(lines[0].at("door"), "5-32");
    EXPECT_EQ(lines[0].at("code"), "07105");
    EXPECT_EQ(lines[0].at("action"), "16");
    EXPECT_EQ(lines[0].at("ground_for_detention"), "no");
    EXPECT_EQ(lines[0].at("due"), "2026-11-20");
    EXPECT_EQ(lines[0].at("overdue"), "yes");
    EXPECT_EQ(lines[0].at("zones_acting_as_one"), "2 3");
    EXPECT_EQ(lines[1].at("state"), "rectified");
    EXPECT_EQ(lines[1].at("rectified_by"), "Ove Brandlund");
    EXPECT_EQ(lines[2].at("state"), "withdrawn");
    EXPECT_EQ(lines[3].at("action"), "");
    EXPECT_EQ(lines[3].at("ground_for_detention"), "");
}

TEST(SurveyCsv, GivesEveryRowAskedWithItsFigureAndReason) {
    const auto lines = linesOf(written(SampleItems(), ReportKind::Survey, Format::Csv));
    const auto rate = std::ranges::find_if(lines, [](const auto& line) {
        return line.at("door") == "5-32" && line.at("requirement") == "sliding-rate";
    });
    ASSERT_NE(rate, lines.end());
    EXPECT_EQ(rate->at("verdict"), "unsatisfactory");
    EXPECT_NEAR(std::stod(rate->at("value")), 1.40 / 5.25, 1e-9);
    EXPECT_EQ(rate->at("unit"), "m/s");
    EXPECT_EQ(rate->at("high"), "0.2");
    EXPECT_EQ(rate->at("plate_read"), "A-30");
    EXPECT_EQ(rate->at("cite"), "SOLAS II-2/9.4.1.1.5.2");
}

TEST(SurveyJson, HoldsGradesItemsAndSnapshotTogether) {
    const json survey = json::parse(written(SampleItems(), ReportKind::Survey, Format::Json));
    EXPECT_EQ(survey.at("vessel").at("name"), "Calder Wisp");
    EXPECT_EQ(survey.at("doors").size(), 4U);
    EXPECT_EQ(survey.at("items").size(), 4U);
    EXPECT_EQ(survey.at("snapshot").at("walkdown_facts_sha256").get<std::string>().size(), 64U);
    EXPECT_EQ(survey.at("signatures").size(), 0U);
}

TEST(ItemsJson, LeavesOutWhatPortStateControlDidNotGive) {
    const json items =
        json::parse(written(SampleItems(), ReportKind::WorkList, Format::Json)).at("items");
    EXPECT_EQ(items.at(0).at("action"), "16");
    EXPECT_EQ(items.at(0).at("ground_for_detention"), false);
    EXPECT_FALSE(items.at(3).contains("action"));
    EXPECT_FALSE(items.at(3).contains("ground_for_detention"));
    EXPECT_EQ(items.at(3).at("found"), "<script>alert(2)</script>");
    EXPECT_EQ(items.at(2).at("withdrawn").at("reason"), "the door was taken out");
}

TEST(ItemsTables, AreEmptyWhereNothingWasWrittenUp) {
    SampleWalkdown sample;
    Ledger bare;
    for (const auto& [id, fact] : sample.ledger.facts())
        if (!std::holds_alternative<Deficiency>(fact.body))
            bare.add(fact);
    sample.ledger = bare;
    EXPECT_EQ(json::parse(written(sample, ReportKind::WorkList, Format::Json)).at("items"),
              json::array());
    EXPECT_TRUE(linesOf(written(sample, ReportKind::WorkList, Format::Csv)).empty());
}

TEST(DoorRecord, IsRefusedAsATable) {
    const SampleWalkdown sample;
    EXPECT_FALSE(madeReport({sample.arrangement,
                             sample.ledger,
                             sample.walkdown,
                             given::catalogue(),
                             {0, 0},
                             "x",
                             {},
                             false,
                             "",
                             "5-32"},
                            ReportKind::DoorRecord, Format::Csv));
}

} // namespace latchround
