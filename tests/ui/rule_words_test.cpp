// What the rule book says of rows in words.
#include <gmock/gmock.h>

#include <algorithm>

#include "tests/core/given.h"
#include "tests/ui/print_to.h"
#include "ui/words/rule_words.h"

namespace latchround::ui {
namespace {

using ::testing::HasSubstr;

std::string wordsOf(const std::vector<RuleLine>& lines, const char* name) {
    const auto found = std::ranges::find(lines, QString::fromLatin1(name), &RuleLine::name);
    return found == lines.end() ? std::string() : found->words.toStdString();
}

std::vector<RulePart> partsOf(const char* id, const Particulars* vessel = nullptr) {
    return rowParts(given::row(id), given::catalogue(), vessel);
}

std::string lineOf(const char* id, const char* name) {
    return wordsOf(partsOf(id).front().lines, name);
}

TEST(RuleWords, SayOfEveryRowWhomItIsAskedItsTextItsEditionAndItsStanding) {
    for (const Requirement& row : given::catalogue().rows) {
        const std::vector<RulePart> parts = rowParts(row, given::catalogue(), nullptr);
        ASSERT_EQ(parts.size(), 1 + row.variants.size()) << row.id;
        for (const char* name : {"Applies to", "Ships", "Severity", "Edition", "Source"})
            EXPECT_NE(wordsOf(parts.front().lines, name), "") << row.id << ": " << name;
        EXPECT_EQ(wordsOf(parts.front().lines, "Text").empty(), row.status == Status::Usage)
            << row.id;
        EXPECT_EQ(wordsOf(parts.front().lines, "Limit").empty(),
                  (!row.low && !row.high) || row.check == CheckKind::Order)
            << row.id;
        EXPECT_EQ(wordsOf(parts.front().lines, "Dates").empty(), !row.keel_from && !row.keel_before)
            << row.id;
        EXPECT_EQ(wordsOf(parts.front().lines, "Exempt").empty(), row.none_of.empty()) << row.id;
        for (const RulePart& part : parts) {
            EXPECT_EQ(part.heading.isEmpty(), &part == parts.data()) << row.id;
            EXPECT_FALSE(part.lines.empty()) << row.id << ": " << part.heading.toStdString();
        }
    }
}

// SOLAS II-2/9.4.1.1.5.2; 46 CFR 116.435(c)(3).
TEST(RuleWords, SayALimitInItsUnitWithBothFiguresWhereTheTextPrintsTwo) {
    EXPECT_EQ(lineOf("hinged-time", "Limit"), "10 to 40\u00a0s");
    EXPECT_THAT(lineOf("hinged-time", "Approximate"),
                HasSubstr("10 % outside the limits on the slow side, 5 %"));
    EXPECT_EQ(lineOf("k-latch-throw", "Limit"), "at least 20 or 19.05\u00a0mm");
    EXPECT_EQ(lineOf("k-latch-throw", "Approximate"), "");
}

TEST(RuleWords, SayWhatARowIsForShipsOfOtherDates) {
    EXPECT_EQ(lineOf("hinged-time", "Dates"), "keel laid on or after 2002-07-01");
    EXPECT_EQ(lineOf("hinged-time", "Other dates"),
              "a ship of another date: advice only; a ship with no date on record: advice only");
}

TEST(RuleWords, SayWhichAnswerTakesARowAway) {
    int hang_on_answers = 0;
    for (const Requirement& row : given::catalogue().rows) {
        const std::string said = wordsOf(rowParts(row, given::catalogue(), nullptr).front().lines,
                                         "Does not apply where");
        EXPECT_EQ(said.empty(),
                  row.unless_yes.empty() && row.unless_no.empty() && row.unless_na.empty())
            << row.id;
        std::vector<std::string> by_answers = row.unless_yes;
        by_answers.insert(by_answers.end(), {row.unless_no, row.unless_na});
        for (const std::string& by : by_answers)
            if (!by.empty()) {
                EXPECT_THAT(said, HasSubstr(given::row(by).question));
                ++hang_on_answers;
            }
    }
    EXPECT_GT(hang_on_answers, 3);
}

TEST(RuleWords, OfAVariantSayWhereItStandsAndOnlyWhatIsOtherwise) {
    const std::vector<RulePart> parts = partsOf("self-closing");
    const auto older = std::ranges::find_if(parts, [](const RulePart& part) {
        return part.heading.contains("keel laid before 2002-07-01, or no date on record");
    });
    ASSERT_NE(older, parts.end());
    EXPECT_TRUE(older->heading.startsWith("Instead, where: "));
    EXPECT_THAT(wordsOf(older->lines, "Text"), HasSubstr("II-2/30"));
    EXPECT_EQ(wordsOf(older->lines, "Severity"), "") << "as the row has it";
    EXPECT_EQ(wordsOf(older->lines, "Other dates"), "") << "it stands for no others";
}

TEST(RuleWords, OfAVesselLeaveOutVariantsOfOtherFlags) {
    const Particulars vessel = given::solasVessel();
    const std::vector<RulePart> all = partsOf("self-closing");
    const std::vector<RulePart> own = partsOf("self-closing", &vessel);
    EXPECT_LT(own.size(), all.size());
    EXPECT_GT(own.size(), 1u);
    for (const RulePart& part : own)
        EXPECT_FALSE(part.heading.contains("EU inland")) << part.heading.toStdString();
    EXPECT_EQ(partsOf("k-latch-throw", &vessel).size(), partsOf("k-latch-throw").size())
        << "a row of other ships is shown whole";
}

TEST(RuleWords, SayOfTheTextsWhatWasNotRead) {
    const std::vector<RulePart> all = textParts(given::catalogue(), nullptr);
    EXPECT_EQ(all.size(), given::catalogue().profiles.size());
    EXPECT_NE(wordsOf(all.front().lines, "Not read"), "");
    EXPECT_NE(wordsOf(all.front().lines, "Texts read"), "");
    const Particulars vessel = given::solasVessel();
    const std::vector<RulePart> own = textParts(given::catalogue(), &vessel);
    EXPECT_LT(own.size(), all.size());
    EXPECT_THAT(wordsOf(own.back().lines, "Other texts"), HasSubstr("46 CFR"));
}

TEST(RuleWords, SayHowAnAnswerAtTheDoorExcusesARow) {
    const Reason reason{ReasonKind::ExcusedByAnswer, given::row("exterior-stair").words, 0, 0};
    const RuleAtDoor rule{&given::row("exterior"), Asked::No, {}, reason};
    const RulePart part = atDoorPart(rule, given::row("exterior"), "5-31");
    EXPECT_EQ(part.heading, QString("At door 5-31"));
    EXPECT_THAT(wordsOf(part.lines, "Does not apply here"),
                HasSubstr(given::row("exterior-stair").words));
}

TEST(RuleWords, CountTheDoorsAboardAndNameTheFirstOfThem) {
    std::vector<Door> doors(15, given::hingedDoor());
    RuleAboard rule;
    for (const Door& door : doors)
        rule.binding.push_back(&door);
    rule.advised = {&doors.front()};
    EXPECT_EQ(askedCountWords(rule), QString("binding at 15 doors, advice at 1 door"));
    EXPECT_THAT(wordsOf(aboardPart(rule).lines, "Binding at"), HasSubstr("and 3 more"));
    EXPECT_EQ(askedCountWords({}), QString("does not apply"));
}

TEST(RuleWords, SayOfUpkeepHowOftenAndByWhichText) {
    for (const Upkeep& task : given::catalogue().upkeep) {
        const std::vector<RuleLine> lines =
            upkeepParts(task, given::catalogue(), nullptr).front().lines;
        for (const char* name : {"Interval", "Doors", "Edition", "Source"})
            EXPECT_NE(wordsOf(lines, name), "") << task.id << ": " << name;
    }
}

} // namespace
} // namespace latchround::ui
