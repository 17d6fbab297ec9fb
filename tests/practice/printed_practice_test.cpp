// Whatever is printed of a practice register says so on every page, whoever prints it.
#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include "app/catalogue/catalogue_place.h"
#include "app/report/made_report.h"
#include "app/report/paper_form.h"
#include "printed_page.h"
#include "tests/practice/practice_world.h"
#include "tests/register/sample_facts.h"
#include "ui/words/phrase_words.h"

namespace latchround::test {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

constexpr const char* mark = "PRACTICE - not a record";

class PrintedPractice : public ::testing::Test {
protected:
    PrintedPractice()
        : file(practisedRegister())
        , arrangement(file->arrangement().value())
        , catalogue(builtInCatalogue().value()) {
        auto facts = file->facts().value();
        for (Fact& fact : facts)
            ledger.add(std::move(fact));
    }

    /// Nobody asked for the mark.
    QByteArray made(ReportKind kind, Format format = Format::Pdf) const {
        WalkdownReport report{arrangement,
                              ledger,
                              sampleId(1),
                              catalogue,
                              sampleMoment(),
                              "Latchround 9.8.7",
                              [](std::string_view) { return std::vector<std::byte>{}; }};
        report.door = "P-01";
        auto document = madeReport(report, kind, format);
        EXPECT_TRUE(document) << ui::inOneLine(document.error());
        return document ? document->document : QByteArray();
    }
    static void expectMarkedOnEveryPage(const QByteArray& pdf, const std::string& what) {
        const QStringList pages = pageTexts(pdf);
        EXPECT_FALSE(pages.isEmpty()) << what;
        for (const QString& page : pages)
            EXPECT_THAT(page.toStdString(), HasSubstr(mark)) << what;
    }

    DataFolder folder;
    std::unique_ptr<SqliteRegister> file;
    Arrangement arrangement;
    Catalogue catalogue;
    Ledger ledger;
};

TEST_F(PrintedPractice, SaysSoOnEveryPageOfEveryKind) {
    for (const auto& kind : reportKindWords)
        expectMarkedOnEveryPage(made(kind.value), std::string(kind.word));
}

TEST_F(PrintedPractice, SaysSoOnEveryPageOfABlankForm) {
    const auto pdf = paperFormPdf(
        {arrangement, catalogue, {}, Purpose::Annual, sampleMoment(), "Latchround 9.8.7", false});
    ASSERT_TRUE(pdf);
    EXPECT_GT(pageTexts(*pdf).size(), 1);
    expectMarkedOnEveryPage(*pdf, "blank form");
}

TEST_F(PrintedPractice, SaysSoInEveryLineOfATable) {
    for (const ReportKind kind : {ReportKind::Survey, ReportKind::DeficiencyList}) {
        QList<QByteArray> lines = made(kind, Format::Csv).split('\n');
        lines.removeAll(QByteArray());
        EXPECT_GT(lines.size(), 1);
        for (qsizetype i = 1; i < lines.size(); ++i)
            EXPECT_THAT(lines[i].toStdString(), HasSubstr(mark));
    }
}

TEST_F(PrintedPractice, SaysSoInJson) {
    const auto json = nlohmann::json::parse(made(ReportKind::Survey, Format::Json).toStdString());
    EXPECT_EQ(json["snapshot"]["practice"], true);
}

TEST_F(PrintedPractice, AVesselsPaperDoesNot) {
    arrangement.particulars.number = "VC-0071";
    EXPECT_THAT(flowingText(made(ReportKind::Survey)).toStdString(), Not(HasSubstr("PRACTICE")));
    EXPECT_THAT(made(ReportKind::Survey, Format::Csv).toStdString(), Not(HasSubstr("practice\r")));
}

} // namespace
} // namespace latchround::test
