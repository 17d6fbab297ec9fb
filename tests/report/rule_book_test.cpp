// The rule book on paper: every row with all that it says; of a vessel and of a door, where it
// binds and why.
#include <gmock/gmock.h>

#include "app/report/rule_book.h"
#include "core/given.h"
#include "printed_page.h"
#include "sample_walkdown.h"

namespace latchround {

namespace {

using ::testing::AllOf;
using ::testing::ContainsRegex;
using ::testing::HasSubstr;
using ::testing::Not;

constexpr Moment printed{1795601520000, 60}; // 2026-11-25T10:12:00Z

QByteArray pdfOf(const RuleBook& book) {
    const auto pdf = ruleBookPdf(book);
    EXPECT_TRUE(pdf.has_value());
    return pdf ? *pdf : QByteArray();
}

std::string textOf(const RuleBook& book) {
    return flowingText(pdfOf(book)).toStdString();
}

/// A hyphen at the end of a line is lost where lines are joined.
std::string withoutHyphens(std::string text) {
    std::erase(text, '-');
    return text;
}

RuleBook ofNoVessel() {
    return {given::catalogue(), nullptr, nullptr, printed, "Latchround 9.8.7", false};
}

} // namespace

TEST(RuleBook, HasEveryRowWithItsTextAndTheTextsWithWhatWasNotRead) {
    const std::string text = textOf(ofNoVessel());
    EXPECT_THAT(text, AllOf(HasSubstr("Rule book"), HasSubstr("no vessel in particular"),
                            HasSubstr("Not read"), HasSubstr("Rules that take precedence")));
    const std::string plain = withoutHyphens(text);
    const auto has = [&](const std::string& words) {
        return plain.find(withoutHyphens(words)) != std::string::npos;
    };
    for (const Requirement& row : given::catalogue().rows) {
        EXPECT_TRUE(has(row.words)) << row.id;
        EXPECT_TRUE(row.status == Status::Usage || has(row.cite)) << row.id;
    }
    for (const Upkeep& task : given::catalogue().upkeep)
        EXPECT_TRUE(has(task.words)) << task.id;
    for (const Profile& profile : given::catalogue().profiles)
        EXPECT_TRUE(has(profile.edition)) << profile.edition;
}

TEST(RuleBook, GivesLimitDatesExemptionsAndStandingOfARow) {
    EXPECT_THAT(textOf(ofNoVessel()),
                ContainsRegex("Hinged door shuts 10 to 40 s.*Limit 10 to 40.s.*Approximate.*"
                              "Dates keel laid on or after 2002-07-01.*II-2/9.4.1.1.5.2.*"
                              "checked against the text"));
}

TEST(RuleBook, OfAVesselSaysWhereEachRowBindsAndWhyTheOthersDoNot) {
    const SampleWalkdown sample;
    RuleBook book = ofNoVessel();
    book.arrangement = &sample.arrangement;
    const std::string text = textOf(book);
    EXPECT_THAT(text, HasSubstr(sample.arrangement.particulars.name));
    EXPECT_THAT(text, ContainsRegex("Sliding door closes at a roughly uniform.*Aboard this vessel "
                                    "Binding at .*5-32"));
    EXPECT_THAT(text, ContainsRegex("Does not apply aboard.*Latch throw at least 20 mm.*46 CFR "
                                    "116.435.*text for other ships"));
}

TEST(RuleBook, OfADoorSaysWhyEachRowBindsThereOrNot) {
    const SampleWalkdown sample;
    RuleBook book = ofNoVessel();
    book.arrangement = &sample.arrangement;
    const Door* door = findDoor(sample.arrangement, "5-32");
    const GradedDoor graded = asRegistered(sample.arrangement, *door, given::catalogue());
    book.door = &graded;
    const std::string text = textOf(book);
    EXPECT_THAT(text, AllOf(HasSubstr("door 5-32"),
                            ContainsRegex("At door 5-32 Binding here zone bulkhead"),
                            ContainsRegex("Does not apply to this door.*Hinged door shuts")));
}

TEST(RuleBook, OfThePracticeVesselIsMarkedAndNoOtherIs) {
    RuleBook book = ofNoVessel();
    EXPECT_THAT(textOf(book), Not(HasSubstr("PRACTICE")));
    book.practice = true;
    for (const QString& page : pageTexts(pdfOf(book)))
        EXPECT_THAT(page.toStdString(), HasSubstr("PRACTICE - not a record"));
}

TEST(RuleBook, IsNotMadeWhereSomebodyStopsIt) {
    EXPECT_FALSE(ruleBookPdf(ofNoVessel(), ProgressRange([](int, int) { return false; })));
}

} // namespace latchround
