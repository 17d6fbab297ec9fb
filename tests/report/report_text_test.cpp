// What a reader finds in the report.
#include <QFontDatabase>

#include <gmock/gmock.h>

#include "app/exchange/facts_hash.h"
#include "app/report/walkdown_report.h"
#include "core/error/document_errors.h"
#include "core/given.h"
#include "core/phrase/places.h"
#include "printed_page.h"
#include "sample_walkdown.h"
#include "ui/words/phrase_words.h"

namespace latchround {

namespace {

QByteArray printed(const SampleWalkdown& sample, bool practice = false) {
    const WalkdownReport report{sample.arrangement,
                                sample.ledger,
                                sample.walkdown,
                                given::catalogue(),
                                {1795601520000, 60}, // 2026-11-25T10:12:00Z
                                "Latchround 9.8.7",
                                [&](std::string_view sha256) {
                                    return sha256 == sample.photograph_sha256
                                               ? sample.photograph_bytes
                                               : std::vector<std::byte>{};
                                },
                                practice};
    const auto pdf = pdfOf(report);
    EXPECT_TRUE(pdf.has_value()) << (pdf ? "" : ui::inOneLine(pdf.error()));
    return pdf.value_or(QByteArray());
}

class WalkdownReportText : public ::testing::Test {
protected:
    static void SetUpTestSuite() {
        const SampleWalkdown sample;
        pdf = new QByteArray(printed(sample));
        text = new std::string(flowingText(*pdf).toStdString());
    }
    static void TearDownTestSuite() {
        delete pdf;
        delete text;
    }
    static QByteArray* pdf;
    static std::string* text;
};
QByteArray* WalkdownReportText::pdf = nullptr;
std::string* WalkdownReportText::text = nullptr;

using ::testing::AllOf;
using ::testing::ContainsRegex;
using ::testing::HasSubstr;
using ::testing::Not;

} // namespace

TEST_F(WalkdownReportText, NamesVesselWalkdownAndCrew) {
    EXPECT_THAT(*text,
                AllOf(HasSubstr("Calder Wisp"), HasSubstr("VC-0071"),
                      HasSubstr("annual walkdown begun 25 Nov 2026 10:42"),
                      HasSubstr("Maren Holt and Tobi Ennsley"), HasSubstr("Maren Holt (surveyor)"),
                      HasSubstr("safety centre"), HasSubstr("VHF 17"), HasSubstr("under way")));
}

TEST_F(WalkdownReportText, GivesShipsTimeAndUtcOfPrinting) {
    EXPECT_THAT(*text, HasSubstr("25 Nov 2026 11:12 ship's time (UTC+01:00), 10:12 UTC"));
}

TEST_F(WalkdownReportText, HasEveryDoorWithItsVerdict) {
    for (const char* door : {"5-32", "5-31", "4-10", "3-01"})
        EXPECT_THAT(*text, HasSubstr(door));
    EXPECT_THAT(*text, HasSubstr("Door 5-32, unsatisfactory"));
    EXPECT_THAT(*text, HasSubstr("untested"));
}

TEST_F(WalkdownReportText, ShowsAllThreeClasses) {
    EXPECT_THAT(*text, HasSubstr("class on the plate: A-30, in the register: A-60, required by "
                                 "the boundary: A-60"));
}

// 1.40 m in 5.25 s is 0.2667 m/s; u = 0.2667 hypot(0.005 / 1.40, hypot(0.1, 0.05 / sqrt 3) / 5.25)
// = 0.0054, so U = 0.0108, rounded up to two figures 0.011.
TEST_F(WalkdownReportText, GivesMeasuredValueWithItsUncertaintyLimitAndCitation) {
    EXPECT_THAT(*text, HasSubstr("0.267 ± 0.011 m/s"));
    EXPECT_THAT(*text, HasSubstr("0.1 to 0.2 m/s"));
    EXPECT_THAT(*text, HasSubstr("SOLAS II-2/9.4.1.1.5.2, edition SOLAS 1974"));
}

TEST_F(WalkdownReportText, SaysWhichZonesActAsOne) {
    EXPECT_THAT(*text, HasSubstr("Zones 2 and 3 act as one through door 5-32: 69 m long, limit "
                                 "40 m, 48 m maximum; SOLAS II-2/9.2.2.1.2."));
    EXPECT_THAT(*text, HasSubstr("Repairing door 5-32 in bulkhead 2/3 restores most separation: "
                                 "no zones then act as one."));
}

TEST_F(WalkdownReportText, HoldsZonesOnlyAgainstWhatWasReadOfTheShipsOwnText) {
    const auto zones = [](Regime regime, const char* keel) {
        SampleWalkdown sample;
        sample.arrangement.particulars.regime = regime;
        sample.arrangement.particulars.keel_laid = calendarDateFrom(keel);
        sample.add(Observation{sample.walkdown, "5-32", "self-closing", Side::None, Answer::No});
        return flowingText(printed(sample)).toStdString();
    };
    EXPECT_THAT(zones(Regime::SolasPassenger, "1983-01-01"),
                HasSubstr("act as one through door 5-32: 69 m long."));
    EXPECT_THAT(zones(Regime::SolasPassenger, "1999-01-01"),
                HasSubstr("69 m long, 48 m maximum; SOLAS II-2/24.1.1, 24.2 (MSC.27(61)"));
    EXPECT_THAT(zones(Regime::EuInland, "2012-01-01"),
                HasSubstr("69 m long, limit 40 m in cabin areas; Directive 2006/87/EC"));
}

TEST_F(WalkdownReportText, KeepsWhatWasWrittenAtTheDoor) {
    EXPECT_THAT(*text, HasSubstr("Closes too fast; adjust the damper"));
    EXPECT_THAT(*text, HasSubstr("the whole door: cabin stores stacked against it"));
    EXPECT_THAT(*text, HasSubstr("Hook on the leaf"));
}

TEST_F(WalkdownReportText, PrintsMarkupInDataAsItWasTyped) {
    EXPECT_THAT(*text, HasSubstr("<script>alert(1)</script> & 5 < 6"));
    EXPECT_THAT(*text, HasSubstr("Saloon & bar"));
}

TEST_F(WalkdownReportText, ListsMarksOfCompleteRuns) {
    EXPECT_THAT(*text, HasSubstr("alarm on 0.00, leaf moves 6.40, shut 11.65, alarm off 11.80"));
    EXPECT_THAT(*text, HasSubstr("leaf moves 0.00, shut 14.25"));
}

TEST_F(WalkdownReportText, NeverShowsAStoppedRunAsAMeasurement) {
    EXPECT_THAT(*text, HasSubstr("stopped: a passenger came near. Not a measurement"));
    // Its marks would have been 10.20 s after the alarm, a rate of 0.368 m/s.
    EXPECT_THAT(*text, AllOf(Not(HasSubstr("10.20")), Not(HasSubstr("0.368"))));
}

TEST_F(WalkdownReportText, ListsCautionsAnswered) {
    EXPECT_THAT(*text, HasSubstr("The release has been announced to everyone near these doors"));
    EXPECT_THAT(*text, ContainsRegex("5-32 Maren Holt \\(surveyor\\).*1, 2, 3, 4, 5, 6"));
    EXPECT_THAT(*text, Not(HasSubstr("without every caution confirmed")));
}

TEST_F(WalkdownReportText, SaysHowFarItReaches) {
    EXPECT_THAT(*text, HasSubstr("The flag Administration, approved plans and local rules take "
                                 "precedence over this report; grades are an aid to the "
                                 "inspector's judgement."));
    const Particulars vessel = given::solasVessel(); // of the same rules and day
    EXPECT_THAT(*text, HasSubstr(deferenceFor(given::catalogue(), vessel)));
    EXPECT_THAT(*text, HasSubstr(editionFor(given::catalogue(), vessel)));
    EXPECT_THAT(*text, HasSubstr("high-speed craft; watertight doors as such"));
    EXPECT_THAT(*text, HasSubstr("Times were taken by hand"));
    EXPECT_THAT(*text, AllOf(HasSubstr("Inspector: name, signature, date"),
                             HasSubstr("Chief officer: name, signature, date"),
                             HasSubstr("Latchround 9.8.7")));
}

TEST_F(WalkdownReportText, NumbersEveryPage) {
    const QStringList pages = pageTexts(*pdf);
    ASSERT_GT(pages.size(), 1);
    for (int page = 0; page < pages.size(); ++page) {
        const std::string words =
            "page " + std::to_string(page + 1) + " of " + std::to_string(pages.size());
        EXPECT_THAT(pages[page].toStdString(), AllOf(HasSubstr(words), HasSubstr("Calder Wisp")));
        EXPECT_THAT(pages[page].toStdString(), Not(HasSubstr("Practice")));
    }
}

TEST_F(WalkdownReportText, CarriesThePhotographAndItsHash) {
    EXPECT_TRUE(pictureSizes(*pdf).contains(QStringLiteral("640x480")))
        << pictureSizes(*pdf).join(QChar(' ')).toStdString();
    const SampleWalkdown sample;
    EXPECT_THAT(*text, HasSubstr("SHA-256 " + sample.photograph_sha256.substr(0, 12)));
}

TEST_F(WalkdownReportText, EmbedsItsFont) {
    if (!QFontDatabase::families().contains(QStringLiteral("B612")))
        GTEST_SKIP() << "B612 is not installed here";
    EXPECT_THAT(
        fontList(*pdf).toStdString(),
        AllOf(ContainsRegex("B612-Regular +CID TrueType +[^ ]+ +yes"), Not(HasSubstr("Mono"))));
}

TEST(WalkdownReport, IsMarkedAsPracticeOnEveryPage) {
    const QStringList pages = pageTexts(printed(SampleWalkdown(), true));
    ASSERT_GT(pages.size(), 1);
    for (const QString& page : pages)
        EXPECT_THAT(page.toStdString(), HasSubstr("PRACTICE - not a record"));
}

TEST(WalkdownReport, SaysWhenItEndedAndWithWhichRemark) {
    SampleWalkdown sample;
    sample.end();
    const std::string text = flowingText(printed(sample)).toStdString();
    EXPECT_THAT(text, AllOf(HasSubstr("weather rising"), Not(HasSubstr("under way"))));
}

TEST(WalkdownReport, NamesARemoteRunThatWentAheadWithoutCautions) {
    SampleWalkdown sample;
    sample.addRun("5-31", Release::Remote, {{MarkKind::LeafMoves, 0}, {MarkKind::Shut, 14.0}});
    const std::string text = flowingText(printed(sample)).toStdString();
    EXPECT_THAT(text, HasSubstr("without every caution confirmed for that run: 5-31 on 25 Nov"));
}

TEST(WalkdownReport, NamesTheMarkWithoutWhichARunIsNoMeasurement) {
    SampleWalkdown sample;
    sample.addRun("5-31", Release::LetGo, {{MarkKind::LeafMoves, 0}});
    EXPECT_THAT(flowingText(printed(sample)).toStdString(),
                HasSubstr("shut was not marked: not a measurement"));
}

TEST(WalkdownReport, SaysWhatASpringGaugeShowsAndThatItIsNoVerdict) {
    SampleWalkdown sample;
    for (Door& each : sample.arrangement.doors)
        each.leaf_mass_kg = 60;
    sample.add(MeasuredValue{sample.walkdown, "5-31", "self-closing", 40, "N"});
    const std::string text = flowingText(printed(sample)).toStdString();
    // 60 kg: half of 60 x 9.80665 x sin 3.5 degrees is 17.96 N.
    EXPECT_THAT(text, HasSubstr("The closer gives 40 N; at 3.5 degrees the leaf's weight alone "
                                "pulls with up to 18 N"));
    EXPECT_THAT(text, HasSubstr("this gives no verdict"));
}

TEST(WalkdownReport, SaysWhatASampleProves) {
    SampleWalkdown sample;
    WalkdownBegun plan;
    plan.scope = "all doors, random sample of 1 (seed 7)";
    plan.doors = {"3-01"};
    plan.sample = SampleDrawn{4, 1, 950'000, 7};
    sample.walkdown = sample.add(plan);
    EXPECT_THAT(flowingText(printed(sample)).toStdString(),
                HasSubstr("0 of 4 doors tested, none failed"));
}

TEST(WalkdownReport, NamesTheDrillsAndLimitsItsFiguresGoBy) {
    SampleWalkdown sample;
    ThumbDrill drill;
    for (int i = 0; i < 10; ++i)
        for (const Word<Cue>& cue : cueWords)
            drill.trials.push_back({cue.value, 0.2 + 0.01 * i});
    sample.add(drill);
    sample.add(DecisionLimits{0.99, 0.01, "asked for by the flag"});
    sample.addRun("5-31", Release::LetGo, {{MarkKind::LeafMoves, 0}, {MarkKind::Shut, 14.0}});
    const std::string text = flowingText(printed(sample)).toStdString();
    EXPECT_THAT(text, ContainsRegex("had done the timing drill on that tablet: 1 of [0-9]+\\."));
    EXPECT_THAT(text, ContainsRegex("at least 99.%, and unsatisfactory if that probability is at "
                                    "most 1.%"));
    EXPECT_THAT(text, HasSubstr("reason given: asked for by the flag"));
}

TEST(WalkdownReport, LeavesOutAPhotographWhoseBytesAreOthers) {
    SampleWalkdown sample;
    sample.photograph_bytes.back() = std::byte{0};
    sample.photograph_bytes.push_back(std::byte{7});
    const QByteArray pdf = printed(sample);
    EXPECT_FALSE(pictureSizes(pdf).contains(QStringLiteral("640x480")));
    EXPECT_THAT(flowingText(pdf).toStdString(), HasSubstr("its data is not what was recorded"));
}

TEST(WalkdownReport, SaysSoWherePhotographIsMissing) {
    SampleWalkdown sample;
    sample.photograph_bytes.clear();
    EXPECT_THAT(flowingText(printed(sample)).toStdString(),
                HasSubstr("Photograph not in this register"));
}

TEST(WalkdownReport, SaysSoWhereThePhotographIsNoPicture) {
    SampleWalkdown sample;
    sample.photograph_bytes.assign(2000, std::byte{65});
    sample.photograph_sha256 = sha256Hex(sample.photograph_bytes);
    sample.add(Photograph{sample.walkdown, "5-32", sample.photograph_sha256, "image/png", "", ""});
    EXPECT_THAT(flowingText(printed(sample)).toStdString(),
                HasSubstr("its data is not a picture that can be shown"));
}

TEST(WalkdownReport, StandsThroughAPhotographThatBreaksOffHalfWay) {
    SampleWalkdown sample;
    sample.photograph_bytes.resize(sample.photograph_bytes.size() / 2);
    sample.photograph_sha256 = sha256Hex(sample.photograph_bytes);
    sample.add(Photograph{sample.walkdown, "5-32", sample.photograph_sha256, "image/png",
                          "broken off", ""});
    EXPECT_THAT(flowingText(printed(sample)).toStdString(), HasSubstr("broken off"));
}

TEST(WalkdownReport, ComplainsOfAWalkdownNobodyKnows) {
    const SampleWalkdown sample;
    const auto pdf = pdfOf(
        {sample.arrangement, sample.ledger, "no-such", given::catalogue(), {0, 0}, "x", {}, false});
    ASSERT_FALSE(pdf.has_value());
    EXPECT_EQ(pdf.error(), (Error{place::walkdown("no-such"), errors::walkdown_not_in_register()}));
}

TEST(WalkdownReport, PrintsAWalkdownWithoutDoors) {
    SampleWalkdown sample;
    sample.walkdown = sample.add(WalkdownBegun{});
    EXPECT_THAT(flowingText(printed(sample)).toStdString(),
                HasSubstr("No door of this walkdown is in the register."));
}

// Page breaks are set after a first layout; a wrong second one would swallow what stands near them.
TEST(WalkdownReport, LosesNoHeadingOverManyPages) {
    SampleWalkdown sample;
    WalkdownBegun plan;
    for (int number = 100; number < 160; ++number) {
        Door door = sample.arrangement.doors[1];
        door.number = "9-" + std::to_string(number);
        plan.doors.push_back(door.number);
        sample.arrangement.doors.push_back(door);
    }
    sample.walkdown = sample.add(plan);
    for (const std::string& door : plan.doors) {
        sample.add(Observation{sample.walkdown, door, "no-hook", Side::None, Answer::No});
        sample.addRun(door, Release::LetGo, {{MarkKind::LeafMoves, 0}, {MarkKind::Shut, 14.25}});
    }
    const QString text = flowingText(printed(sample));
    for (const std::string& door : plan.doors) {
        const QString heading = QStringLiteral("Door %1, unsat").arg(QString::fromStdString(door));
        EXPECT_EQ(text.count(heading), 1) << door;
    }
    for (const char* heading : {" Details ", " Cautions ", " Signatures "})
        EXPECT_EQ(text.count(QString::fromLatin1(heading)), 1) << heading;
    EXPECT_EQ(text.count(QStringLiteral(" Runs Run begun ")), 60);
}

} // namespace latchround
