// The lists, the door record, the paper form, and what every document says of what it was made
// from.
#include <gmock/gmock.h>

#include "app/exchange/facts_hash.h"
#include "app/report/made_report.h"
#include "app/report/paper_form.h"
#include "core/edited_catalogue.h"
#include "core/error/document_errors.h"
#include "core/evidence/basis.h"
#include "core/given.h"
#include "core/grading/paper_items.h"
#include "core/phrase/places.h"
#include "printed_page.h"
#include "sample_items.h"
#include "ui/words/door_words.h"
#include "ui/words/phrase_words.h"

namespace latchround {

namespace {

using ::testing::AllOf;
using ::testing::ContainsRegex;
using ::testing::HasSubstr;
using ::testing::Not;
using ::testing::SizeIs;

MadeReport made(const SampleWalkdown& sample, ReportKind kind, const std::string& door = {},
                const Catalogue& catalogue = given::catalogue()) {
    const WalkdownReport report{sample.arrangement,
                                sample.ledger,
                                sample.walkdown,
                                catalogue,
                                {1795601520000, 60}, // 2026-11-25T10:12:00Z
                                "Latchround 9.8.7",
                                [&](std::string_view sha256) {
                                    return sha256 == sample.photograph_sha256
                                               ? sample.photograph_bytes
                                               : std::vector<std::byte>{};
                                },
                                false,
                                sample.ledger.people().front().id,
                                door};
    auto document = madeReport(report, kind);
    EXPECT_TRUE(document.has_value()) << (document ? "" : ui::inOneLine(document.error()));
    return document ? std::move(*document) : MadeReport{};
}

std::string textOf(const SampleWalkdown& sample, ReportKind kind, const std::string& door = {}) {
    return flowingText(made(sample, kind, door).document).toStdString();
}

void expectNumberedPages(const QByteArray& pdf) {
    const QStringList pages = pageTexts(pdf);
    ASSERT_FALSE(pages.isEmpty());
    for (int page = 0; page < pages.size(); ++page)
        EXPECT_THAT(pages[page].toStdString(), HasSubstr("page " + std::to_string(page + 1) +
                                                         " of " + std::to_string(pages.size())));
}

Result<QByteArray> formOf(const SampleWalkdown& sample, std::vector<std::string> doors = {},
                          Purpose purpose = Purpose::Annual) {
    return paperFormPdf({sample.arrangement,
                         given::catalogue(),
                         std::move(doors),
                         purpose,
                         {1795601520000, 60},
                         "Latchround 9.8.7"});
}

/// As the catalogue's question stands on paper.
std::string questionOf(const char* row) {
    return given::row(row).question;
}

} // namespace

TEST(DeficiencyList, GivesTheMasterEveryOpenItemInFull) {
    const std::string text = textOf(SampleItems(), ReportKind::DeficiencyList);
    for (const char* words : {"3 open items: ", "1 overdue", "Closes too fast; adjust the damper",
                              "SOLAS II-2/9.4.1.1.5.2", "07105", "16, within 14", "overdue since",
                              "every half hour", "Brandlund", "zones 2 and 3 act as one"})
        EXPECT_THAT(text, HasSubstr(words));
    EXPECT_THAT(text, Not(HasSubstr("Stores in the way"))) << "it was withdrawn";
}

TEST(DeficiencyList, LeavesActionAndGroundBlankWherePortStateControlGaveNone) {
    SampleWalkdown sample;
    const std::string text = textOf(sample, ReportKind::DeficiencyList);
    EXPECT_THAT(text, HasSubstr("07105"));
    EXPECT_THAT(text, Not(ContainsRegex("07105 (10|15|16|17|18|30|yes|no)[ ,]")));
}

TEST(DeficiencyList, ShowsActionCodeAndGroundForDetentionAsTwoThings) {
    SampleItems sample;
    DeficiencyTerms terms;
    terms.deficiency = sample.rate_item;
    terms.action = PortAction::BeforeDeparture;
    terms.ground_for_detention = true;
    sample.add(terms);
    EXPECT_THAT(pageTexts(made(sample, ReportKind::DeficiencyList).document)[0].toStdString(),
                ContainsRegex("07105 +17, before +yes"));
}

TEST(DeficiencyList, SaysSoWhereNothingIsOpen) {
    SampleWalkdown sample;
    sample.add(Withdrawal{sample.ledger.deficiencies().front(), "none"});
    EXPECT_THAT(textOf(sample, ReportKind::DeficiencyList),
                HasSubstr("The vessel has no open items."));
    EXPECT_THAT(textOf(sample, ReportKind::WorkList), HasSubstr("There is nothing to rectify."));
    EXPECT_THAT(textOf(sample, ReportKind::Survey), HasSubstr("The vessel has no open items."));
}

TEST(WorkList, GivesEachPersonTheirWorkByZone) {
    const std::string text = textOf(SampleItems(), ReportKind::WorkList);
    EXPECT_THAT(text, ContainsRegex("For Ove Brandlund Zones 2 and 3 .*Closes too fast"));
    EXPECT_THAT(text, ContainsRegex("Assigned to no one yet Zones 2 and 3 .*<script>alert\\(2\\)"));
    EXPECT_THAT(text, ContainsRegex("awaiting retest .*hook taken off"));
    EXPECT_THAT(text, HasSubstr("A released door moves by itself and can crush"));
}

TEST(Documents, NumberTheirPagesAndEmbedTheirFonts) {
    const SampleItems sample;
    for (const auto& [kind, word] : reportKindWords) {
        const QByteArray pdf = made(sample, kind, "5-32").document;
        SCOPED_TRACE(std::string(word));
        expectNumberedPages(pdf);
        for (const QString& font : fontList(pdf).split(QChar('\n'), Qt::SkipEmptyParts).mid(2))
            EXPECT_THAT(font.toStdString(), ContainsRegex("(TrueType|Type 1C?).* yes +(yes|no) +"));
    }
}

TEST(Documents, SayWhatTheyWereMadeFrom) {
    const SampleItems sample;
    const auto basis = vesselBasisOf(sample.ledger);
    for (const auto& [kind, word] : reportKindWords) {
        SCOPED_TRACE(std::string(word));
        const MadeReport report = made(sample, kind, "5-32");
        EXPECT_EQ(report.fact.facts_sha256, factsSha256(basis));
        EXPECT_EQ(report.fact.covers, coverOf(basis));
        EXPECT_EQ(report.fact.report, kind);
        EXPECT_EQ(report.fact.walkdown, sample.walkdown);
        EXPECT_EQ(report.fact.of_door, kind == ReportKind::DoorRecord ? "5-32" : "");
        EXPECT_EQ(report.fact.catalogue_edition,
                  editionFor(given::catalogue(), sample.arrangement.particulars));
        EXPECT_EQ(report.fact.catalogue_sha256, catalogueSha256(given::catalogue()));
        EXPECT_EQ(report.fact.document_sha256,
                  sha256Hex(std::as_bytes(std::span(report.document.constData(),
                                                    std::size_t(report.document.size())))));
        const std::string text = flowingText(report.document).toStdString();
        EXPECT_THAT(text, AllOf(HasSubstr(report.fact.facts_sha256),
                                HasSubstr(report.fact.catalogue_sha256),
                                HasSubstr(report.fact.catalogue_edition.substr(0, 60)),
                                HasSubstr("Maren Holt"), HasSubstr("local rules take precedence")));
        const std::string information = documentInformation(report.document).toStdString();
        EXPECT_THAT(information, ContainsRegex("Author: +Maren Holt"));
        EXPECT_THAT(information, ContainsRegex("Creator: +Latchround 9.8.7"));
        EXPECT_THAT(information, ContainsRegex("Title: +.*Calder Wisp"));
        EXPECT_THAT(information, HasSubstr("facts-sha256:" + report.fact.facts_sha256));
    }
}

// Two catalogues under one edition: what an edited number makes is told by the sum alone.
TEST(Documents, NameTheTextsThatTheyWereGradedByNotTheirEditionAlone) {
    const SampleItems sample;
    const Catalogue edited =
        given::edited("hinged-time", [](nlohmann::json& row) { row["high"] = 30; });
    const MadeReport before = made(sample, ReportKind::Survey);
    const MadeReport now = made(sample, ReportKind::Survey, {}, edited);
    EXPECT_EQ(now.fact.catalogue_edition, before.fact.catalogue_edition);
    EXPECT_NE(now.fact.catalogue_sha256, before.fact.catalogue_sha256);
    EXPECT_THAT(flowingText(now.document).toStdString(), HasSubstr(now.fact.catalogue_sha256));
    EXPECT_EQ(now.fact.facts_sha256, before.fact.facts_sha256) << "no fact has changed";
}

// The document's own sum is left out: the file holds the second in which it was written.
TEST(Documents, ComeWithTheSameFactFromTheSameRegister) {
    const SampleItems sample;
    MadeReport once = made(sample, ReportKind::Survey);
    MadeReport again = made(sample, ReportKind::Survey);
    once.fact.document_sha256.clear();
    again.fact.document_sha256.clear();
    EXPECT_EQ(once.fact, again.fact);
}

TEST(Documents, ChangeTheirSumWithOneMoreFact) {
    SampleItems sample;
    const std::string before = made(sample, ReportKind::WorkList).fact.facts_sha256;
    sample.add(Note{sample.walkdown, "5-31", "one more"});
    EXPECT_NE(made(sample, ReportKind::WorkList).fact.facts_sha256, before);
}

TEST(SurveyReport, HasABookmarkForEverySectionAndEveryDoorWithDetails) {
    const QByteArray pdf = made(SampleItems(), ReportKind::Survey).document;
    const QStringList pages = pageTexts(pdf);
    const auto bookmarks = bookmarksOf(pdf);
    QStringList titles;
    for (const ReadBookmark& bookmark : bookmarks) {
        titles << bookmark.title;
        ASSERT_TRUE(bookmark.page >= 1 && bookmark.page <= pages.size());
        const QString page = QString(pages[bookmark.page - 1]).simplified();
        EXPECT_THAT(page.toStdString(), HasSubstr(bookmark.title.toStdString()))
            << "not on page " << bookmark.page;
    }
    for (const char* title : {"Survey report", "Summary", "Open items", "Vessel", "Doors",
                              "Details", "Door 5-32, unsatisfactory", "Cautions", "Signatures"})
        EXPECT_TRUE(titles.contains(QString::fromLatin1(title))) << title;
    EXPECT_FALSE(titles.contains(QStringLiteral("Runs")));
}

TEST(SurveyReport, ShowsSignaturesAndWhatCameLater) {
    SampleItems sample;
    const auto basis = basisOf(sample.ledger, sample.walkdown);
    WalkdownSigned by;
    by.walkdown = sample.walkdown;
    by.covers = coverOf(basis);
    by.facts_sha256 = factsSha256(basis);
    by.key = std::string(64, 'a');
    sample.add(by);
    EXPECT_THAT(textOf(sample, ReportKind::Survey),
                AllOf(HasSubstr("Maren Holt, inspector, signed 25 Nov 2026"),
                      HasSubstr("Nothing was recorded after this signature."),
                      Not(HasSubstr("No one has signed"))));
    sample.add(Note{sample.walkdown, "5-31", "afterwards"});
    EXPECT_THAT(textOf(sample, ReportKind::Survey),
                ContainsRegex("One entry was recorded after this signature .* 5-31 note"));
}

TEST(SurveyReport, SaysWhereSignedFactsAreNotThoseThatWereSigned) {
    SampleItems sample;
    WalkdownSigned by;
    by.walkdown = sample.walkdown;
    by.covers = coverOf(basisOf(sample.ledger, sample.walkdown));
    by.facts_sha256 = std::string(64, '0');
    by.key = std::string(64, 'a');
    sample.add(by);
    EXPECT_THAT(
        textOf(sample, ReportKind::Survey),
        HasSubstr("The entries covered by this signature are no longer as they were when signed."));
}

TEST(DoorRecord, IsOnePageWithClassRowsTimesItemsAndPhotograph) {
    const QByteArray pdf = made(SampleItems(), ReportKind::DoorRecord, "5-32").document;
    EXPECT_THAT(pageTexts(pdf), SizeIs(1));
    const std::string text = flowingText(pdf).toStdString();
    EXPECT_THAT(text, AllOf(HasSubstr("Door record: 5-32"), HasSubstr("register A-60"),
                            HasSubstr("plate A-30"), HasSubstr("0.267 ± 0.011 m/s"),
                            HasSubstr("Closing rates"), HasSubstr("0.1 to 0.2 m/s"),
                            HasSubstr("A hook holds the leaf open"), HasSubstr("rectified"),
                            HasSubstr("Hook on the leaf")));
    EXPECT_FALSE(pictureSizes(pdf).isEmpty());
}

// Forty quarterly walks with two items and a photograph each, and texts that nobody should write.
TEST(DoorRecord, IsOnePageAfterTenYears) {
    SampleWalkdown sample;
    const std::string word(300, 'w');
    for (int quarter = 0; quarter < 40; ++quarter) {
        WalkdownBegun plan;
        plan.purpose = Purpose::Quarterly;
        plan.doors = {"5-31"};
        sample.walkdown = sample.add(plan);
        sample.addRun("5-31", Release::LetGo, {{MarkKind::LeafMoves, 0}, {MarkKind::Shut, 14.0}});
        sample.add(Observation{sample.walkdown, "5-31", "no-hook", Side::None, Answer::No});
        sample.add(Deficiency{sample.walkdown, "5-31", "no-hook", word + " <b>hook</b> " + word});
        sample.add(Deficiency{sample.walkdown, "5-31", "", std::string(3000, 'x')});
        sample.add(Photograph{sample.walkdown, "5-31", sample.photograph_sha256, "image/png",
                              word + word, ""});
    }
    const QByteArray pdf = made(sample, ReportKind::DoorRecord, "5-31").document;
    EXPECT_THAT(pageTexts(pdf), SizeIs(1));
    EXPECT_THAT(flowingText(pdf).toStdString(),
                AllOf(ContainsRegex("and [0-9]+ earlier"), HasSubstr("page 1 of 1")));
}

TEST(DoorRecord, OfADoorNobodyEverTriedSaysSo) {
    EXPECT_THAT(textOf(SampleWalkdown(), ReportKind::DoorRecord, "3-01"),
                AllOf(HasSubstr("Untested"), HasSubstr("Not yet timed with the ship upright."),
                      HasSubstr("No deficiency has been written up at this door.")));
}

TEST(DoorRecord, IsRefusedForADoorThatIsNotThere) {
    const SampleWalkdown sample;
    const auto record = madeReport({sample.arrangement,
                                    sample.ledger,
                                    sample.walkdown,
                                    given::catalogue(),
                                    {0, 0},
                                    "x",
                                    {},
                                    false,
                                    "",
                                    "9-99"},
                                   ReportKind::DoorRecord);
    ASSERT_FALSE(record.has_value());
    EXPECT_EQ(record.error(), (Error{place::door("9-99"), errors::door_not_in_register()}));
}

TEST(PaperForm, AsksEachDoorWhatTheTabletAsks) {
    const auto pdf = formOf(SampleWalkdown(), {"5-32", "5-31"});
    ASSERT_TRUE(pdf.has_value());
    expectNumberedPages(*pdf);
    const std::string text = flowingText(*pdf).toStdString();
    EXPECT_THAT(text, ContainsRegex("Before each release from the control station.*"
                                    "The release has been announced.*Door 5-32.*Door 5-31"));
    EXPECT_THAT(text,
                AllOf(HasSubstr(questionOf("no-hook")), HasSubstr(questionOf("pocket-clear")),
                      HasSubstr("Plate reads:"), HasSubstr("Notes:"),
                      HasSubstr("Alarm on to leaf moves, s"), HasSubstr("Leaf moves to shut, s"),
                      HasSubstr("10 to 40 s"), HasSubstr("local rules take precedence")));
}

/// The numbers under which it is typed in.
TEST(PaperForm, NumbersItsRowsAsTheScreenDoes) {
    const SampleWalkdown sample;
    const std::string text = flowingText(formOf(sample, {"5-31"}).value()).toStdString();
    int questions = 0;
    for (const PaperItem& item :
         paperItems(sample.arrangement, *findDoor(sample.arrangement, "5-31"), given::catalogue(),
                    Purpose::Annual)) {
        const std::string number = std::to_string(item.number) + " ";
        if (item.kind == PaperKind::Question) {
            EXPECT_THAT(text, HasSubstr(number + item.requirement->question));
            ++questions;
        } else if (item.kind == PaperKind::Plate) {
            EXPECT_THAT(text, HasSubstr(number + "Plate reads:"));
        } else if (item.kind == PaperKind::Heel) {
            EXPECT_THAT(text, HasSubstr(number + "Ship's heel"));
        } else if (item.kind == PaperKind::Run) {
            EXPECT_THAT(text, HasSubstr(number + ui::releaseWords(item.release).toStdString()));
        }
    }
    EXPECT_GT(questions, 5);
}

TEST(PaperForm, OfAQuarterlyWalkAsksOnlyWhatThatTries) {
    const SampleWalkdown sample;
    const std::string all = flowingText(formOf(sample, {"5-31"}).value()).toStdString();
    const std::string few =
        flowingText(formOf(sample, {"5-31"}, Purpose::Quarterly).value()).toStdString();
    EXPECT_THAT(all, HasSubstr(questionOf("seals-whole")));
    EXPECT_THAT(few, Not(HasSubstr(questionOf("seals-whole"))));
}

TEST(PaperForm, KeepsEveryDoorOnOnePage) {
    SampleWalkdown sample;
    std::vector<std::string> doors;
    for (int number = 100; number < 140; ++number) {
        Door door = sample.arrangement.doors[std::size_t(number) % 2];
        door.number = "9-" + std::to_string(number);
        doors.push_back(door.number);
        sample.arrangement.doors.push_back(door);
    }
    const QByteArray pdf = formOf(sample, doors).value();
    const QStringList pages = pageTexts(pdf);
    int heads = 0;
    for (const QString& page : pages) {
        const auto on_page = page.count(QStringLiteral("Door 9-"));
        EXPECT_EQ(page.count(QStringLiteral("Notes:")), on_page) << "a door is torn";
        heads += int(on_page);
    }
    EXPECT_EQ(heads, 40);
}

TEST(PaperForm, WithoutDoorsNamedTakesInAllInWalkingOrder) {
    const std::string text = flowingText(formOf(SampleWalkdown()).value()).toStdString();
    for (const char* door : {"Door 5-32", "Door 5-31", "Door 4-10", "Door 3-01"})
        EXPECT_THAT(text, HasSubstr(door));
}

TEST(Documents, SurviveTextsThatNobodyShouldWrite) {
    SampleItems sample;
    const std::string long_word(900, 'W');
    const std::string hostile = "<script>alert(3)</script> & <img src=x> \u05e9\u05dc\u05d5\u05dd "
                                "\u0645\u0631\u062d\u0628\u0627 " +
                                long_word;
    sample.add(Deficiency{sample.walkdown, "5-31", "", hostile});
    DeficiencyTerms terms;
    terms.deficiency = sample.rate_item;
    terms.assigned = hostile;
    terms.interim = hostile;
    sample.add(terms);
    for (const ReportKind kind : {ReportKind::Survey, ReportKind::DeficiencyList,
                                  ReportKind::WorkList, ReportKind::DoorRecord}) {
        const QByteArray pdf = made(sample, kind, "5-31").document;
        SCOPED_TRACE(std::string(word(kind)));
        expectNumberedPages(pdf);
        EXPECT_THAT(flowingText(pdf).toStdString(), HasSubstr("<script>"));
        EXPECT_LE(rightmostInk_pt(pdf), pageWidth_pt(pdf)) << "something runs off the page";
    }
}

} // namespace latchround
