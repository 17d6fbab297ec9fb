// A paper in another language says what it is a translation of, in that language and in English,
// and has the English beside every citation and every warning. One in English has none of this, and
// data is the same in every language.
#include <map>
#include <string>
#include <string_view>

#include <gmock/gmock.h>

#include <QCoreApplication>

#include "app/languages/translations.h"
#include "app/report/fact_kind_words.h"
#include "app/report/made_report.h"
#include "core/given.h"
#include "core/safety/cautions.h"
#include "every_paper.h"
#include "printed_page.h"
#include "ui/words/catalogue_words.h"
#include "ui/words/in_english.h"
#include "ui/words/offered.h"
#include "ui/words/phrase_words.h"

namespace latchround {

namespace {

using ::testing::AllOf;
using ::testing::HasSubstr;
using ::testing::Not;

constexpr auto machine_translation =
    "This document is a machine translation, not yet checked by a native speaker in the trade.";
constexpr auto what_is_signed = "What is recorded and signed is the English record.";
constexpr auto what_grades = "Doors are graded by the English text.";

/// A hyphen at the end of a line is lost where lines are joined.
std::string plain(std::string text) {
    std::erase(text, '-');
    constexpr std::string_view no_break_space = "\u00a0";
    for (std::size_t at = text.find(no_break_space); at != text.npos;
         at = text.find(no_break_space, at))
        text.replace(at, no_break_space.size(), " ");
    return text;
}

std::string plain(const QString& text) {
    return plain(text.toStdString());
}

/// In the language that is spoken.
std::string said(const char* english) {
    return plain(QCoreApplication::translate("Report", english));
}

std::size_t timesIn(const std::string& text, const std::string& part) {
    std::size_t times = 0;
    for (std::size_t at = text.find(part); at != text.npos; at = text.find(part, at + 1))
        ++times;
    return times;
}

/// Every paper in the language that is spoken, with its words.
struct Papers {
    std::map<std::string, PrintedPaper> made = everyPaper(SampleOfAll());
    std::map<std::string, std::string> words;

    Papers() {
        for (const auto& [name, paper] : made)
            words[name] = plain(flowingText(paper.pdf));
    }
};

void expectMarkedInBothLanguages(const Papers& papers) {
    EXPECT_NE(said(machine_translation), plain(std::string(machine_translation)))
        << "nobody translated it";
    for (const auto& [name, words] : papers.words) {
        SCOPED_TRACE(name);
        EXPECT_EQ(timesIn(words, machine_translation), 1u);
        EXPECT_EQ(timesIn(words, said(machine_translation)), 1u);
        EXPECT_LT(words.find(machine_translation), 1500u) << "not near its head";
        const bool of_record = name != "rule-book";
        const bool has_signatures = name == "survey" || name == "deficiency-list";
        const std::size_t said_so = has_signatures ? 2 : of_record ? 1 : 0;
        EXPECT_EQ(timesIn(words, what_is_signed), said_so);
        EXPECT_EQ(timesIn(words, said(what_is_signed)), said_so);
        EXPECT_EQ(timesIn(words, what_grades), of_record ? 0u : 1u);
    }
}

void expectEnglishBesideCitations(const Papers& papers) {
    const Requirement& rate = given::row("sliding-rate");
    // As far as they stand in one line: what is beside a narrow column is read in between, and a
    // full page shortens them.
    for (const char* name : {"survey", "deficiency-list", "work-list", "door-record"})
        EXPECT_THAT(papers.words.at(name), AllOf(HasSubstr(plain(ui::rowWords(rate).left(20))),
                                                 HasSubstr(plain(rate.words.substr(0, 20)))))
            << name;
    for (const char* name : {"survey", "deficiency-list", "work-list"})
        EXPECT_THAT(papers.words.at(name), HasSubstr(plain(rate.cite))) << name;
    const std::string& book = papers.words.at("rule-book");
    for (const Requirement& row : given::catalogue().rows) {
        EXPECT_NE(book.find(plain(row.words)), book.npos) << row.id;
        EXPECT_NE(book.find(plain(ui::rowWords(row))), book.npos) << row.id;
    }
    for (const Upkeep& task : given::catalogue().upkeep)
        EXPECT_NE(book.find(plain(task.words)), book.npos) << task.id;
}

void expectEnglishBeneathWarnings(const Papers& papers) {
    for (const char* name : {"survey", "blank-form"})
        for (const Caution& caution : cautionsBeforeRelease()) {
            const std::string& words = papers.words.at(name);
            EXPECT_THAT(words, HasSubstr(plain(ui::phraseWords(caution.question())))) << name;
            const ui::InEnglish english;
            EXPECT_THAT(words, HasSubstr(plain(ui::phraseWords(caution.question())))) << name;
        }
    for (const char* name : {"deficiency-list", "work-list", "blank-form", "rule-book"})
        EXPECT_THAT(papers.words.at(name),
                    HasSubstr("A released door moves by itself and can crush."))
            << name;
}

void expectWholePages(const Papers& papers) {
    for (const auto& [name, words] : papers.words) {
        SCOPED_TRACE(name);
        for (const char* gap : {"%1", "%2", "%3", "%4", "%n", "\ufffd", "\u25a1"})
            EXPECT_THAT(words, Not(HasSubstr(gap)));
        const QByteArray& pdf = papers.made.at(name).pdf;
        EXPECT_LE(rightmostInk_pt(pdf), pageWidth_pt(pdf)) << "something runs off the page";
    }
    EXPECT_EQ(pageTexts(papers.made.at("door-record").pdf).size(), 1);
}

void expectLanguageInFileAndRecord(const Papers& papers, const std::string& language) {
    for (const auto& [name, paper] : papers.made) {
        EXPECT_TRUE(paper.pdf.contains("/Lang (" + QByteArray::fromStdString(language) + ")"))
            << name;
        EXPECT_EQ(paper.language, reportKindFrom(name) ? language : "") << name;
    }
    EXPECT_THAT(plain(documentInformation(papers.made.at("work-list").pdf)),
                HasSubstr(said("Work list")));
}

class TranslatedPapers : public ::testing::TestWithParam<const char*> {};

} // namespace

// One test: to make them all again for each question takes minutes under the sanitizers.
TEST_P(TranslatedPapers, AreMarkedAndHaveTheEnglishBeside) {
    const InLanguage spoken(QString::fromLatin1(GetParam()));
    const Papers papers;
    expectMarkedInBothLanguages(papers);
    expectEnglishBesideCitations(papers);
    expectEnglishBeneathWarnings(papers);
    expectWholePages(papers);
    expectLanguageInFileAndRecord(papers, GetParam());
    EXPECT_THAT(papers.words.at("survey"),
                AllOf(HasSubstr(plain(ui::wordingWords(ui::offered("space-locked-no-key")))),
                      HasSubstr("Closes too fast; adjust the damper")))
        << "a picked phrase is translated, what somebody wrote is not";
}

INSTANTIATE_TEST_SUITE_P(Each, TranslatedPapers, ::testing::Values("es", "fr", "id"));

TEST(EnglishPapers, SayNothingOfTranslations) {
    const Papers papers;
    for (const auto& [name, words] : papers.words) {
        SCOPED_TRACE(name);
        EXPECT_THAT(words, AllOf(Not(HasSubstr("translation")), Not(HasSubstr("English record"))));
        EXPECT_FALSE(papers.made.at(name).pdf.contains("/Lang ("));
        EXPECT_EQ(papers.made.at(name).language, reportKindFrom(name) ? "en" : "");
    }
}

TEST(DataOfReports, IsTheSameInEveryLanguage) {
    const SampleOfAll sample;
    const WalkdownReport report{sample.arrangement,
                                sample.ledger,
                                sample.walkdown,
                                given::catalogue(),
                                {0, 0},
                                "Latchround 9.8.7",
                                {},
                                true};
    for (const Format format : {Format::Csv, Format::Json})
        for (const ReportKind kind : {ReportKind::Survey, ReportKind::WorkList}) {
            const auto english = madeReport(report, kind, format);
            const InLanguage spoken(QStringLiteral("es"));
            const auto spanish = madeReport(report, kind, format);
            ASSERT_TRUE(english && spanish);
            EXPECT_EQ(spanish->document, english->document);
            EXPECT_EQ(spanish->fact, english->fact);
        }
}

// A paper says most kinds of facts by the words of their codes, some in the inspector's own.
TEST(FactKinds, AreSaidByTheirWords) {
    const std::map<std::string, std::string> otherwise{{"thumb drill", "timing drill"},
                                                       {"judgement", "decision"},
                                                       {"deficiency terms", "deficiency details"},
                                                       {"difference settled", "conflict decided"},
                                                       {"report made", "document created"},
                                                       {"upkeep done", "maintenance done"}};
    for (std::size_t kind = 0; kind < factKindWords.size(); ++kind) {
        std::string word(factKindWords[kind]);
        std::ranges::replace(word, '-', ' ');
        const auto found = otherwise.find(word);
        EXPECT_EQ(report::factKind({{}, emptyBody(kind)}).toStdString(),
                  found == otherwise.end() ? word : found->second);
    }
}

} // namespace latchround
