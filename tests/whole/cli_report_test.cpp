// report and items as a shell sees them.
#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include "shell.h"

namespace latchround {

using ::testing::HasSubstr;

TEST_F(Cli, WritesEveryKindOfDocument) {
    const QString vessel = imported();
    for (const char* kind : {"survey", "deficiency-list", "work-list", "blank-form"}) {
        const ShellOutput said =
            run({"report", vessel, "--kind", kind, "--to", at("document.pdf"), "--replace"});
        ASSERT_EQ(said.exit_code, 0) << kind << ": " << said.err;
        EXPECT_EQ(nlohmann::json::parse(said.out)["kind"], kind);
        EXPECT_TRUE(bytesAt(at("document.pdf")).startsWith("%PDF-"));
    }
}

/// Each would take a document that a recorded hash stands for, or the register itself.
TEST_F(Cli, WritesOverNothingUnasked) {
    const QString vessel = imported();
    const QByteArray facts = bytesAt(vessel);
    put("there", "kept");
    const QList<QStringList> commands{{"report", vessel, "--format", "pdf"},
                                      {"register", "export", vessel},
                                      {"handover", "export", vessel}};
    for (const QStringList& command : commands) {
        const ShellOutput there = run(command + QStringList{"--to", at("there")});
        EXPECT_EQ(there.exit_code, 2) << command.join(' ').toStdString();
        EXPECT_EQ(lines(there.err), 1) << there.err;
        EXPECT_THAT(there.err, HasSubstr("NOT replaced"));
        EXPECT_EQ(bytesAt(at("there")), "kept");
        const ShellOutput own = run(command + QStringList{"--to", vessel, "--replace"});
        EXPECT_EQ(own.exit_code, 2) << command.join(' ').toStdString();
        EXPECT_THAT(own.err, HasSubstr("the register itself"));
    }
    for (const QStringList& command : commands)
        EXPECT_EQ(run(command + QStringList{"--to", at("there"), "--replace"}).exit_code, 0);
    EXPECT_EQ(bytesAt(vessel).left(16), facts.left(16));
    EXPECT_EQ(run({"verify", vessel}).exit_code, 0);
}

TEST_F(Cli, ChoosesTheFormOfAReportByTheEndingOfItsFile) {
    const QString vessel = imported();
    ASSERT_EQ(run({"report", vessel, "--to", at("survey.csv")}).exit_code, 0);
    EXPECT_TRUE(bytesAt(at("survey.csv")).startsWith("door,deck,"));
    ASSERT_EQ(run({"report", vessel, "--to", at("survey.json")}).exit_code, 0);
    EXPECT_TRUE(nlohmann::json::parse(bytesAt(at("survey.json")).toStdString()).contains("items"));
    ASSERT_EQ(run({"report", vessel, "--format", "json", "--to", at("named.txt")}).exit_code, 0);
    EXPECT_TRUE(bytesAt(at("named.txt")).startsWith("{"));
}

TEST_F(Cli, RefusesAReportThatIsNotToBeHad) {
    const QString vessel = imported();
    for (const QStringList& options :
         {QStringList{"--kind", "poem"}, QStringList{"--kind", "door-record"},
          QStringList{"--kind", "door-record", "--door", "99-99"}, QStringList{"--format", "doc"},
          QStringList{"--by", "Nobody Aboard"},
          QStringList{"--kind", "blank-form", "--format", "csv"}}) {
        const ShellOutput said = run(QStringList{"report", vessel, "--to", at("x.pdf")} + options);
        EXPECT_EQ(said.exit_code, 2) << options.join(' ').toStdString();
        EXPECT_EQ(lines(said.err), 1) << said.err;
        EXPECT_FALSE(QFileInfo::exists(at("x.pdf")));
    }
}

TEST_F(Cli, WritesAPaperInAnotherLanguageAndSaysSo) {
    const QString vessel = imported();
    const auto wordsIn = [](const QString& pdf) {
        QProcess reader;
        reader.start("pdftotext", {pdf, "-"});
        EXPECT_TRUE(reader.waitForFinished());
        return QString::fromUtf8(reader.readAllStandardOutput()).simplified().toStdString();
    };
    const QString paper = at("paper.pdf");
    for (const QString& language : {"es", "fr", "id"})
        for (const QStringList& command : {QStringList{"report", vessel, "--kind", "work-list"},
                                           QStringList{"report", vessel, "--kind", "blank-form"},
                                           QStringList{"rules", "--vessel", vessel}}) {
            const ShellOutput said =
                run(command + QStringList{"--to", paper, "--replace", "--language", language});
            ASSERT_EQ(said.exit_code, 0) << said.err;
            EXPECT_EQ(nlohmann::json::parse(said.out)["language"], language.toStdString());
            EXPECT_TRUE(bytesAt(paper).contains("/Lang (" + language.toLatin1() + ")"));
            EXPECT_THAT(wordsIn(paper), HasSubstr("This document is a machine translation"));
        }
    const ShellOutput english = run({"report", vessel, "--to", paper, "--replace"});
    EXPECT_EQ(nlohmann::json::parse(english.out)["language"], "en");
    EXPECT_THAT(wordsIn(paper), testing::Not(HasSubstr("translation")));
}

TEST_F(Cli, TranslatesPapersAlone) {
    const QString vessel = imported();
    for (const QStringList& command :
         {QStringList{"report", vessel, "--to", at("x.pdf"), "--language", "xx"},
          QStringList{"report", vessel, "--to", at("x.csv"), "--language", "es"},
          QStringList{"rules", "--json", "--language", "es"}}) {
        const ShellOutput said = run(command);
        EXPECT_EQ(said.exit_code, 2) << command.join(' ').toStdString();
        EXPECT_EQ(lines(said.err), 1) << said.err;
        EXPECT_THAT(said.err, HasSubstr("--language"));
    }
    EXPECT_FALSE(QFileInfo::exists(at("x.pdf")) || QFileInfo::exists(at("x.csv")));
}

TEST_F(Cli, ListsOpenItemsAsTableAndAsJson) {
    const QString vessel = imported();
    const ShellOutput table = run({"items", vessel});
    EXPECT_EQ(table.exit_code, 0) << table.err;
    EXPECT_THAT(table.out, HasSubstr("Catalogue: "));
    const auto open = nlohmann::json::parse(run({"items", vessel, "--json"}).out)["items"];
    const auto all = nlohmann::json::parse(run({"items", vessel, "--all", "--json"}).out)["items"];
    EXPECT_LE(open.size(), all.size());
    for (const auto& item : open)
        EXPECT_EQ(item["open"], true);
    EXPECT_EQ(run({"items", at("none.db")}).exit_code, 2);
}

} // namespace latchround
