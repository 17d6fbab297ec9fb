// What spreadsheets do to a CSV file must not change what it says.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/exchange/sample_register.h"

namespace latchround::test {
namespace {

void expectSameAsSample(const std::string& csv) {
    const auto plain = read(sample_csv);
    const auto habit = read(csv);
    ASSERT_TRUE(plain) << inLines(plain.error());
    ASSERT_TRUE(habit) << inLines(habit.error());
    EXPECT_EQ(*habit, *plain);
}

/// As saved with semicolons and a decimal comma.
std::string withSemicolons() {
    std::string csv = replaced(sample_csv, "\"Car deck, upper\"", "Car deck@ upper");
    csv = replacedAll(csv, ",", ";");
    csv = replacedAll(csv, "@", ",");
    for (std::size_t i = 1; i + 1 < csv.size(); ++i)
        if (csv[i] == '.')
            csv[i] = ',';
    return csv;
}

TEST(RegisterHabits, SampleSaysWhatItSays) {
    const auto vessel = read(sample_csv);
    ASSERT_TRUE(vessel) << inLines(vessel.error());
    EXPECT_EQ(vessel->particulars.name, "Tern of Skerry");
    EXPECT_EQ(vessel->particulars.passengers, 1200);
    EXPECT_EQ(vessel->decks.at(0).name, "Car deck, upper");
    const Door& door = vessel->doors.at(0);
    EXPECT_EQ(door.kind, DoorKind::Sliding);
    EXPECT_DOUBLE_EQ(door.y_m, -2.1);
    EXPECT_THAT(door.release_groups, testing::ElementsAre("MVZ3", "ALL"));
    EXPECT_EQ(door.installed, calendarDateFrom("2015-03-01"));
    EXPECT_FALSE(door.latch);
    EXPECT_EQ(vessel->doors.at(1).leaf_mass_kg, 42.5);
    EXPECT_EQ(vessel->doors.at(1).installed, std::nullopt);
    EXPECT_EQ(vessel->boundaries.at(1).required, std::nullopt);
}

TEST(RegisterHabits, ByteOrderMarkIsPassedOver) {
    expectSameAsSample("\xEF\xBB\xBF" + sample_csv);
}

TEST(RegisterHabits, SemicolonsAndDecimalComma) {
    expectSameAsSample(withSemicolons());
}

TEST(RegisterHabits, SeparatorNamedInAFirstLine) {
    expectSameAsSample("sep=;\r\n" + replacedAll(withSemicolons(), "\n", "\r\n"));
    const auto bad = read("sep=;\n" + replaced(withSemicolons(), "sliding", "roller"));
    ASSERT_FALSE(bad);
    EXPECT_EQ(whereOf(bad.error().front()), "fleet.csv line 18, column 7 (door.kind)");
}

TEST(RegisterHabits, Tabs) {
    std::string csv = replaced(sample_csv, "\"Car deck, upper\"", "Car deck@ upper");
    expectSameAsSample(replacedAll(replacedAll(csv, ",", "\t"), "@", ","));
}

TEST(RegisterHabits, WindowsAndOldMacLineEnds) {
    expectSameAsSample(replacedAll(sample_csv, "\n", "\r\n"));
    expectSameAsSample(replacedAll(sample_csv, "\n", "\r"));
}

TEST(RegisterHabits, LineEndsAreCountedOnceWhateverTheyAre) {
    for (const char* end : {"\n", "\r\n", "\r"}) {
        const auto bad =
            read(replacedAll(replaced(sample_csv, "3/4,sliding", "3/4,roller"), "\n", end));
        ASSERT_FALSE(bad);
        EXPECT_EQ(whereOf(bad.error().front()), "fleet.csv line 17, column 7 (door.kind)");
    }
}

TEST(RegisterHabits, DecimalCommaInQuotesInACommaFile) {
    expectSameAsSample(replaced(sample_csv, ",1.40,180", ",\"1,40\",\"180,0\""));
}

TEST(RegisterHabits, TrailingEmptyCellsAndBlankLines) {
    expectSameAsSample(replacedAll(sample_csv, "\n", ",,,,\n"));
    expectSameAsSample(replacedAll(sample_csv, "\n", "\n\n   \n"));
    expectSameAsSample(sample_csv.substr(0, sample_csv.size() - 1)); // no line end at the end
}

TEST(RegisterHabits, BlanksAroundCells) {
    std::string csv = replacedAll(sample_csv, ",", " , ");
    expectSameAsSample(replaced(csv, "\"Car deck ,  upper\"", "\"Car deck, upper\""));
    expectSameAsSample(replaced(sample_csv, "door,5-32,5,", "door,\" 5-32 \",\"5 \","));
}

TEST(RegisterHabits, EveryCellInQuotes) {
    std::string csv = replaced(sample_csv, "\"Car deck, upper\"", "Car deck@ upper");
    csv = "\"" + replacedAll(replacedAll(csv, ",", "\",\""), "\n", "\"\n\"");
    csv = replacedAll(csv.substr(0, csv.size() - 1), "\"\"\n", "\n");
    expectSameAsSample(replacedAll(csv, "@", ","));
}

TEST(RegisterHabits, WordsInAnyCase) {
    for (const char* yes : {"YES", "Yes", "yEs"})
        expectSameAsSample(replacedAll(sample_csv, "yes", yes));
    expectSameAsSample(replaced(sample_csv, "sliding,A-60", "Sliding,a-60"));
    expectSameAsSample(replaced(sample_csv, "door:,number,deck", "Door:,Number,DECK"));
}

TEST(RegisterHabits, LineBreakInAQuotedCellIsKept) {
    const auto vessel =
        read(replaced(sample_csv, "\"Car deck, upper\"", "\"Car\ndeck \"\"U\"\"\""));
    ASSERT_TRUE(vessel) << inLines(vessel.error());
    EXPECT_EQ(vessel->decks.at(0).name, "Car\ndeck \"U\"");
}

TEST(RegisterHabits, ColumnsInAnyOrderAndOptionalOnesAbsent) {
    const auto vessel = read("door:,opening_m,number,deck,boundary,y_m,x_m,class,kind\n"
                             "door,0.8,1,A,b,0,5,B-0,single\n"
                             "boundary:,x_m,id,zone_forward,zone_aft,place\n"
                             "boundary,5,b,1,1,cabin\n"
                             "deck:,number\ndeck,A\n"
                             "zone:,forward_m,aft_m,number\nzone,30,0,1\n"
                             "vessel:,passengers,regime,name\nvessel,12,other,Small Auk\n");
    ASSERT_TRUE(vessel) << inLines(vessel.error());
    Door door;
    door.number = "1";
    door.deck = "A";
    door.boundary = "b";
    door.x_m = 5;
    door.opening_m = 0.8;
    door.fire_class = FireClass::B0;
    for (Said* unsaid :
         {&door.power_operated, &door.hold_back, &door.alarm, &door.designed_to_reopen,
          &door.hose_port, &door.escape_route, &door.sill_in_frame, &door.latch, &door.watertight,
          &door.weathertight, &door.escape_trunk, &door.special_category, &door.faces_embarkation})
        *unsaid = Said();
    EXPECT_EQ(vessel->doors, std::vector{door})
        << "absent columns say neither yes nor no, or give the defaults of the header";
    EXPECT_EQ(vessel->particulars.keel_laid, std::nullopt);
}

TEST(RegisterHabits, ATableMayGoOnUnderASecondHeader) {
    const auto vessel = read(sample_csv + "\ndeck:,height_m,number\ndeck,20.00,7\n");
    ASSERT_TRUE(vessel) << inLines(vessel.error());
    EXPECT_EQ(vessel->decks.at(2), (Deck{"7", "", 20}));
}

} // namespace
} // namespace latchround::test
