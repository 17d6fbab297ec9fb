// Each fault a register CSV can have is named by line, column and the column's name, all in one
// pass.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "app/exchange/csv_text.h"
#include "core/error/arrangement_errors.h"
#include "tests/exchange/sample_register.h"
#include "ui/words/phrases/all_phrases.h"

namespace latchround::test {
namespace {

using testing::HasSubstr;

/// The one error of the file; fails the test where there is none or more than one.
Error only(const std::string& csv) {
    const auto result = read(csv);
    if (result) {
        ADD_FAILURE() << "read without an error";
        return {};
    }
    EXPECT_EQ(result.error().size(), 1u) << inLines(result.error());
    return result.error().front();
}

Error afterReplacing(std::string_view from, std::string_view to) {
    return only(replaced(sample_csv, from, to));
}

TEST(RegisterFaults, UnknownKindListsTheWordsAllowed) {
    const Error fault = afterReplacing("3/4,sliding,", "3/4,roller,");
    EXPECT_EQ(whereOf(fault), "fleet.csv line 17, column 7 (door.kind)");
    EXPECT_THAT(whatOf(fault), HasSubstr("\"roller\""));
    EXPECT_THAT(remedyOf(fault), HasSubstr("single, double, sliding, double-swing"));
}

TEST(RegisterFaults, UnknownClassPlaceRegimeAndPositionEachHaveTheirCell) {
    EXPECT_EQ(whereOf(afterReplacing("sliding,A-60", "sliding,A-61")),
              "fleet.csv line 17, column 8 (door.class)");
    EXPECT_EQ(whereOf(afterReplacing(",stairway,", ",stairs,")),
              "fleet.csv line 14, column 3 (boundary.place)");
    EXPECT_EQ(whereOf(afterReplacing("100.00,A-60", "100.00,A60")),
              "fleet.csv line 13, column 7 (boundary.required)");
    EXPECT_EQ(whereOf(afterReplacing("solas-passenger", "solas")),
              "fleet.csv line 2, column 4 (vessel.regime)");
    EXPECT_EQ(whereOf(afterReplacing("no,open,", "no,ajar,")),
              "fleet.csv line 17, column 26 (door.normally)");
}

TEST(RegisterFaults, NumberTwiceIsNamedByLineAndColumnWithTheFirstLine) {
    const Error fault = afterReplacing("door,6-04", "door,5-32");
    EXPECT_EQ(whereOf(fault), "fleet.csv line 18, column 2 (door.number)");
    EXPECT_THAT(whatOf(fault), HasSubstr("twice"));
    EXPECT_THAT(whatOf(fault), HasSubstr("the first is on line 17"));
}

TEST(RegisterFaults, DeckZoneAndBoundaryTwiceAreFaultsToo) {
    EXPECT_EQ(
        whereOf(only(replaced(sample_csv, "deck,6,,17.00\n", "deck,6,,17.00\ndeck,5,,1.00\n"))),
        "fleet.csv line 7, column 2 (deck.number)");
    EXPECT_EQ(whereOf(only(replaced(sample_csv, "zone,4,100.00,140.00,\n",
                                    "zone,4,100.00,140.00\nzone,3,150.00,160.00\n"))),
              "fleet.csv line 11, column 2 (zone.number)");
    EXPECT_EQ(whereOf(only(replaced(sample_csv, "boundary,stair 2,stairway,3,3,71.00,,deck,\n",
                                    "boundary,stair 2,stairway,3,3,71.00,,deck,\n"
                                    "boundary,3/4,galley,3,3,70.00,\n"))),
              "fleet.csv line 15, column 2 (boundary.id)");
}

TEST(RegisterFaults, OpeningOfZeroIsAFault) {
    EXPECT_EQ(whereOf(afterReplacing(",1.40,180", ",0,180")),
              "fleet.csv line 17, column 10 (door.opening_m)");
    EXPECT_EQ(whereOf(afterReplacing(",1.40,180", ",10.01,180")),
              "fleet.csv line 17, column 10 (door.opening_m)");
}

TEST(RegisterFaults, BoundaryNotThereSuggestsNearNames) {
    const Error fault = afterReplacing("71.00,3.25,stair 2", "71.00,3.25,stair2x");
    EXPECT_EQ(whereOf(fault), "fleet.csv line 18, column 6 (door.boundary)");
    EXPECT_THAT(whatOf(fault), HasSubstr("there is no boundary \"stair2x\""));
    EXPECT_THAT(remedyOf(fault), HasSubstr("Nearest name here: \"stair 2\"."));
}

TEST(RegisterFaults, DeckAndZoneNotThereAreNamed) {
    EXPECT_EQ(whereOf(afterReplacing("door,6-04,6,", "door,6-04,9,")),
              "fleet.csv line 18, column 3 (door.deck)");
    EXPECT_EQ(whereOf(afterReplacing("stairway,3,3,", "stairway,3,7,")),
              "fleet.csv line 14, column 5 (boundary.zone_forward)");
}

TEST(RegisterFaults, BadDateSaysHowToWriteOne) {
    const Error fault = afterReplacing("open,2015-03-01", "open,01/03/2015");
    EXPECT_EQ(whereOf(fault), "fleet.csv line 17, column 27 (door.installed)");
    EXPECT_THAT(remedyOf(fault), HasSubstr("YYYY-MM-DD"));
    EXPECT_EQ(whereOf(afterReplacing("open,2015-03-01", "open,2015-02-29")),
              "fleet.csv line 17, column 27 (door.installed)");
    EXPECT_EQ(whereOf(afterReplacing("1200,2015-03-01", "1200,2015")),
              "fleet.csv line 2, column 6 (vessel.keel_laid)");
}

TEST(RegisterFaults, NotANumberIsSaidOfTheCellAndNothingFollowsFromIt) {
    const Error fault = afterReplacing("zone,3,60.00", "zone,3,sixty");
    EXPECT_EQ(whereOf(fault), "fleet.csv line 9, column 3 (zone.aft_m)");
    EXPECT_THAT(whatOf(fault), HasSubstr("\"sixty\" is not a number"));
    for (const char* text : {"1.40 m", "1.4e0", "1.234,5", "nan", "inf", "--1", "1.4.0", "+1"})
        EXPECT_EQ(whereOf(afterReplacing(",1.40,180", "," + std::string("\"") + text + "\",180")),
                  "fleet.csv line 17, column 10 (door.opening_m)")
            << text;
    EXPECT_EQ(whereOf(afterReplacing(",1200,", ",about 1200,")),
              "fleet.csv line 2, column 5 (vessel.passengers)");
    EXPECT_EQ(whereOf(afterReplacing(",1200,", ",99999999999,")),
              "fleet.csv line 2, column 5 (vessel.passengers)");
}

TEST(RegisterFaults, NeitherYesNorNo) {
    const Error fault = afterReplacing("180,yes,yes,", "180,yes,maybe,");
    EXPECT_EQ(whereOf(fault), "fleet.csv line 17, column 13 (door.hold_back)");
    EXPECT_EQ(remedyOf(fault), "Write yes or no.");
}

TEST(RegisterFaults, EmptyRequiredCellIsNamedEvenWhereTheRowIsShort) {
    EXPECT_EQ(whereOf(afterReplacing("door,5-32,", "door,,")),
              "fleet.csv line 17, column 2 (door.number)");
    const auto result = read(replaced(sample_csv, "zone,4,100.00,140.00", "zone,4,100.00"));
    ASSERT_FALSE(result);
    EXPECT_EQ(whereOf(result.error().front()), "fleet.csv line 10, column 4 (zone.forward_m)");
}

TEST(RegisterFaults, MissingRequiredColumnIsSaidOnceAtTheHeader) {
    std::string csv = replaced(sample_csv, "zone:,number,aft_m,forward_m", "zone:,number,aft_m");
    csv = replaced(csv, "60.00,100.00", "60.00");
    csv = replaced(csv, "100.00,140.00", "100.00");
    const Error fault = only(csv);
    EXPECT_EQ(whereOf(fault), "fleet.csv line 8, column 1 (zone.forward_m)");
    EXPECT_THAT(whatOf(fault), HasSubstr("forward_m is missing"));
}

TEST(RegisterFaults, UnknownColumnSuggestsTheNearOne) {
    std::string csv =
        replaced(sample_csv, "deck:,number,name,height_m", "deck:,number,nmae,height_m");
    const Error fault = only(csv);
    EXPECT_EQ(whereOf(fault), "fleet.csv line 4, column 3 (deck.nmae)");
    EXPECT_THAT(whatOf(fault), HasSubstr("no such column"));
}

TEST(RegisterFaults, ColumnTwiceIsAFault) {
    const Error fault = afterReplacing("deck:,number,name,height_m", "deck:,number,name,name");
    EXPECT_EQ(whereOf(fault), "fleet.csv line 4, column 4 (deck.name)");
}

TEST(RegisterFaults, UnknownRowKindSuggestsTheTable) {
    const Error fault = afterReplacing("\n\nzone:", "\ndecks,7,,20.00\n\nzone:");
    EXPECT_EQ(whereOf(fault), "fleet.csv line 7, column 1");
    EXPECT_THAT(remedyOf(fault), HasSubstr("Nearest name here: \"deck\"."));
}

TEST(RegisterFaults, RowsBeforeTheirHeaderAreSaidOnceAndNothingFollows) {
    const Error fault = afterReplacing("deck:,number,name,height_m\n", "");
    EXPECT_EQ(whereOf(fault), "fleet.csv line 4, column 1");
    EXPECT_THAT(remedyOf(fault), HasSubstr("\"deck:\""));
}

/// Those that are themselves what to do need nothing more.
TEST(RegisterFaults, EveryFaultOfAnArrangementSaysWhatToDo) {
    EXPECT_GT(ui::arrangement_errors_rows.size(), 30u);
    for (const ui::PhraseRow& row : ui::arrangement_errors_rows)
        EXPECT_EQ(std::string_view(row.remedy).empty(), row.code.starts_with("correct-or-add-"))
            << row.code;
}

TEST(RegisterFaults, UnterminatedQuoteIsNamedWhereItBegins) {
    const Error fault = afterReplacing("\"Car deck, upper\"", "\"Car deck");
    EXPECT_EQ(whereOf(fault), "fleet.csv line 5, column 3");
    EXPECT_THAT(whatOf(fault), HasSubstr("not closed"));
}

TEST(RegisterFaults, QuoteInTheMiddleOfACellIsAFault) {
    EXPECT_EQ(whereOf(afterReplacing("Tern of Skerry", "Tern \"of\" Skerry")),
              "fleet.csv line 2, column 2");
    EXPECT_EQ(whereOf(afterReplacing("Tern of Skerry", "\"Tern\" of Skerry")),
              "fleet.csv line 2, column 2");
}

TEST(RegisterFaults, RowsAfterABadQuoteAreStillChecked) {
    std::string csv = replaced(sample_csv, "\"Car deck, upper\"", "\"Car deck");
    csv = replaced(csv, "3/4,sliding,", "3/4,roller,");
    const auto result = read(csv);
    ASSERT_FALSE(result);
    ASSERT_EQ(result.error().size(), 2u) << inLines(result.error());
    EXPECT_EQ(whereOf(result.error()[1]), "fleet.csv line 17, column 7 (door.kind)");
}

TEST(RegisterFaults, ByteThatIsNotUtf8IsNamedInHex) {
    const Error fault = afterReplacing("Tern of Skerry", "T\xE9rn of Skerry");
    EXPECT_EQ(whereOf(fault), "fleet.csv line 2, column 2 (vessel.name)");
    EXPECT_EQ(whatOf(fault), "byte 0xE9 is not UTF-8");
    EXPECT_THAT(remedyOf(fault), HasSubstr("CSV UTF-8"));
    EXPECT_EQ(whereOf(afterReplacing("3/4,sliding,A-60,A-60", "3/4,sliding,A-60,A\x96"
                                                              "60")),
              "fleet.csv line 17, column 9 (door.plate)");
}

TEST(RegisterFaults, ReferenceToANameThatIsNotUtf8IsNotAFaultOfItsOwn) {
    const auto result = read(replacedAll(sample_csv, "stair 2", "stair \xB2"));
    ASSERT_FALSE(result);
    ASSERT_EQ(result.error().size(), 2u) << inLines(result.error());
    EXPECT_EQ(whereOf(result.error()[0]), "fleet.csv line 14, column 2 (boundary.id)");
    EXPECT_EQ(whereOf(result.error()[1]), "fleet.csv line 18, column 6 (door.boundary)");
}

TEST(RegisterFaults, Utf16IsRecognisedByItsMarkAndByItsZeroBytes) {
    std::string little;
    std::string big;
    for (const char c : sample_csv) {
        little += {c, '\0'};
        big += {'\0', c};
    }
    for (const std::string& csv : {"\xFF\xFE" + little, "\xFE\xFF" + big, little, big}) {
        const Error fault = only(csv);
        EXPECT_EQ(whereOf(fault), "fleet.csv line 1, column 1");
        EXPECT_THAT(whatOf(fault), HasSubstr("UTF-16"));
        EXPECT_THAT(remedyOf(fault), HasSubstr("CSV UTF-8"));
    }
}

TEST(RegisterFaults, EmptyFileIsNamed) {
    for (const char* csv : {"", "\xEF\xBB\xBF", "\r\n\r\n", ";;;;\n;;;;\n"}) {
        const Error fault = only(csv);
        EXPECT_EQ(whereOf(fault), "fleet.csv");
        EXPECT_THAT(whatOf(fault), HasSubstr("empty"));
    }
}

TEST(RegisterFaults, FileOver64MegabytesIsRefused) {
    std::string csv = sample_csv;
    csv.resize(largest_csv_bytes, ' ');
    EXPECT_TRUE(read(csv)) << "64 MB to the byte are read";
    csv += ' ';
    EXPECT_THAT(whatOf(only(csv)), HasSubstr("64 MB"));
}

TEST(RegisterFaults, VesselMissingOrTwice) {
    EXPECT_THAT(whatOf(only("deck:,number\ndeck,5\n")), HasSubstr("no vessel row"));
    const Error fault = afterReplacing("\n\ndeck:", "\nvessel,Other,,us-h,3,,no,1\n\ndeck:");
    EXPECT_EQ(whereOf(fault), "fleet.csv line 3, column 1 (vessel)");
    EXPECT_THAT(whatOf(fault), HasSubstr("the first is on line 2"));
}

TEST(RegisterFaults, DecimalCommaInACommaFileIsExplainedAndItsShiftedCellsAreNotJudged) {
    const Error fault = afterReplacing("60.00,100.00", "60,00,100.00");
    EXPECT_EQ(whereOf(fault), "fleet.csv line 9, column 6");
    EXPECT_THAT(remedyOf(fault), HasSubstr("needs quotes"));
    EXPECT_EQ(whereOf(afterReplacing("door,5-32,5,99.80", "door,5-32,5,99,80")),
              "fleet.csv line 17, column 29");
}

TEST(RegisterFaults, LinesAreCountedThroughLineBreaksInsideCells) {
    std::string csv = replaced(sample_csv, "\"Car deck, upper\"", "\"Car\r\ndeck\"");
    csv = replaced(csv, "17.00", "high");
    EXPECT_EQ(whereOf(only(csv)), "fleet.csv line 7, column 4 (deck.height_m)");
    EXPECT_EQ(whereOf(only(replaced(sample_csv, "\"Car deck, upper\",14.20", "\"Car\ndeck\",low"))),
              "fleet.csv line 6, column 4 (deck.height_m)");
}

TEST(RegisterFaults, AllFaultsComeInOnePassInTheOrderOfTheFile) {
    std::string csv = replaced(sample_csv, "door,6-04,6,71.00", "door,5-32,9,7l.00");
    csv = replaced(csv, "3/4,sliding,", "3/5,roller,");
    csv = replaced(csv, ",1.40,180", ",0,none");
    csv = replaced(csv, "open,2015-03-01", "open,2015-13-01");
    csv = replaced(csv, "Tern", "T\xE9rn");
    csv = replaced(csv, "zone,4,100.00", "zone,4,90.00");
    const auto result = read(csv);
    ASSERT_FALSE(result);
    std::vector<std::string> places;
    for (const Error& error : result.error())
        places.push_back(whereOf(error).substr(std::string("fleet.csv ").size()));
    EXPECT_THAT(places,
                testing::ElementsAre(
                    "line 2, column 2 (vessel.name)", "line 10, column 3 (zone.aft_m)",
                    "line 17, column 6 (door.boundary)", "line 17, column 7 (door.kind)",
                    "line 17, column 10 (door.opening_m)", "line 17, column 11 (door.leaf_mass_kg)",
                    "line 17, column 27 (door.installed)", "line 18, column 2 (door.number)",
                    "line 18, column 3 (door.deck)", "line 18, column 4 (door.x_m)"));
}

} // namespace
} // namespace latchround::test
