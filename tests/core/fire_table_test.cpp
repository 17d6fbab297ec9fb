// Cells of the fire tables against a copy typed by hand from the printed tables: SOLAS II-2 tables
// 9.1 to 9.8 (English text consolidated April 2015), 46 CFR 72.05-10(d) to (g) and 116.415(b), (c)
// (annual edition of 2015).
#include <gmock/gmock.h>

#include "core/division/printed_cell.h"
#include "core/error/catalogue_errors.h"
#include "core/error/reading_errors.h"
#include "core/phrase/places.h"
#include "tests/core/given.h"

using namespace latchround;
using testing::Contains;
using testing::IsEmpty;
using testing::IsSupersetOf;

namespace {

struct Spot {
    const char* table;
    int one;
    int other;
    const char* printed;
};

// Of a deck table the first number is the space below.
constexpr Spot spots[] = {
    {"solas-9.1", 1, 1, "B-0[a]"},
    {"solas-9.1", 2, 12, "A-30"},
    {"solas-9.1", 3, 4, "A-60"},
    {"solas-9.1", 3, 7, "B-15"},
    {"solas-9.1", 4, 4, ""},
    {"solas-9.1", 4, 6, "A-60[b,d]"},
    {"solas-9.1", 8, 11, "A-30"},
    {"solas-9.1", 14, 14, "A-30"},
    {"solas-9.2", 1, 14, "A-60"},
    {"solas-9.2", 4, 5, "-"},
    {"solas-9.2", 5, 4, "A-0"},
    {"solas-9.2", 7, 12, "A-0"},
    {"solas-9.2", 12, 7, "A-60"},
    {"solas-9.2", 8, 8, "A-30"},
    {"solas-9.2", 13, 2, "A-30"},
    {"solas-9.2", 2, 13, "A-0"},
    {"solas-9.3", 1, 1, "A-0[c]"},
    {"solas-9.3", 2, 4, "A-0[a] / B-0[e]"},
    {"solas-9.3", 2, 9, "A-15 / A-0[d]"},
    {"solas-9.3", 3, 11, "A-30 / A-0[d]"},
    {"solas-9.3", 6, 9, "A-60"},
    {"solas-9.3", 10, 10, ""},
    {"solas-9.4", 9, 2, "A-30 / A-0[d]"},
    {"solas-9.4", 2, 9, "A-0"},
    {"solas-9.4", 6, 7, "A-60[f]"},
    {"solas-9.4", 7, 6, "A-0"},
    {"solas-9.4", 11, 6, "A-60[g]"},
    {"solas-9.4", 10, 10, "-"},
    {"solas-9.5", 2, 6, "A-60"},
    {"solas-9.5", 2, 4, "B-0 / A-0[c]"},
    {"solas-9.5", 3, 3, "C[a,b]"},
    {"solas-9.5", 6, 8, "A-0[g]"},
    {"solas-9.6", 5, 1, "A-15"},
    {"solas-9.6", 1, 5, "A-0"},
    {"solas-9.6", 6, 8, "A-30"},
    {"solas-9.6", 8, 6, "A-0"},
    {"solas-9.7", 6, 8, "A-0[d]"},
    {"solas-9.7", 3, 8, "A-60"},
    {"solas-9.8", 6, 7, "A-60[e]"},
    {"solas-9.8", 8, 9, "-"},
    {"cfr-116.415-b", 1, 10, "A-60"},
    {"cfr-116.415-b", 6, 7, "A-30"},
    {"cfr-116.415-b", 9, 9, "C[3]"},
    {"cfr-116.415-b", 12, 13, "C'[1]"},
    {"cfr-116.415-c", 10, 3, "A-60"},
    {"cfr-116.415-c", 3, 10, "A-0"},
    {"cfr-116.415-c", 6, 7, "A-60"},
    {"cfr-116.415-c", 12, 13, "A-0[1]"},
    {"cfr-72.05-10-d", 1, 5, "A-30"},
    {"cfr-72.05-10-d", 4, 13, "C"},
    {"cfr-72.05-10-e", 5, 7, "A-15"},
    {"cfr-72.05-10-e", 9, 9, "C[1]"},
    {"cfr-72.05-10-f", 2, 1, "A-15"},
    {"cfr-72.05-10-f", 1, 2, "A-60"},
    {"cfr-72.05-10-f", 10, 5, "A-30"},
    {"cfr-72.05-10-f", 5, 10, "A-0"},
    {"cfr-72.05-10-g", 9, 5, "A-15"},
    {"cfr-72.05-10-g", 5, 9, "A-0"},
    {"cfr-72.05-10-g", 6, 3, "A-30"},
    {"cfr-72.05-10-g", 3, 6, "A-0"},
};

const FireTable& table(std::string_view id) {
    for (const FireTable& each : given::catalogue().divisions.tables)
        if (each.id == id)
            return each;
    throw std::out_of_range(std::string(id));
}

Errors faultsOf(const std::string& json) {
    const auto read = fireTablesFrom(json, "tables.json");
    return read ? Errors() : read.error();
}

Error at(const char* pointer, Phrase what) {
    return {place::pointer("tables.json", pointer), std::move(what)};
}

std::string oneTable(const std::string& cells, const std::string& division = "bulkhead") {
    return R"({"edition":"e","category_lists":{"two":[{"number":1,"name":"a"},{"number":2,"name":"b"}]},)"
           R"("tables":[{"id":"t","name":"T","title":"t","ship":"cargo","division":")" +
           division + R"(","categories":"two","cite":"c","notes":{"a":"note"},"cells":{)" + cells +
           "}}]}";
}

} // namespace

TEST(FireTables, CellsAreThoseOfThePrintedTables) {
    for (const Spot& spot : spots)
        EXPECT_EQ(table(spot.table).cells.at({spot.one, spot.other}).text, spot.printed)
            << spot.table << " " << spot.one << "-" << spot.other;
}

TEST(FireTables, EveryTableIsThereWithItsCategories) {
    const std::pair<const char*, std::size_t> sizes[] = {
        {"solas-9.1", 105},      {"solas-9.2", 196},     {"solas-9.3", 66},
        {"solas-9.4", 121},      {"solas-9.5", 66},      {"solas-9.6", 121},
        {"solas-9.7", 55},       {"solas-9.8", 100},     {"cfr-116.415-b", 91},
        {"cfr-116.415-c", 169},  {"cfr-72.05-10-d", 91}, {"cfr-72.05-10-e", 91},
        {"cfr-72.05-10-f", 169}, {"cfr-72.05-10-g", 169}};
    for (const auto& [id, cells] : sizes)
        EXPECT_EQ(table(id).cells.size(), cells) << id;
    EXPECT_EQ(given::catalogue().divisions.tables.size(), std::size(sizes));
}

TEST(FireTables, EveryCategoryHasANameAndAnExample) {
    for (const FireTable& each : given::catalogue().divisions.tables)
        for (const SpaceCategory& category : each.categories) {
            EXPECT_FALSE(category.name.empty()) << each.id;
            EXPECT_FALSE(category.examples.empty()) << each.id << " " << category.number;
        }
}

// The cells that changed on 1 July 2014.
TEST(FireTables, RoRoCellsBeforeJuly2014) {
    EXPECT_EQ(table("solas-9.3").before_2014_07.at({2, 11}).text, "A-15");
    EXPECT_EQ(table("solas-9.3").before_2014_07.at({11, 11}).text, "A-0");
    EXPECT_EQ(table("solas-9.4").before_2014_07.at({1, 11}).text, "A-30");
    EXPECT_EQ(table("solas-9.4").before_2014_07.at({11, 6}).text, "A-30");
    EXPECT_EQ(table("solas-9.5").before_2014_07.at({11, 11}).text, "*[h]");
    EXPECT_EQ(table("solas-9.6").before_2014_07.at({10, 11}).text, "*");
    EXPECT_TRUE(table("solas-9.1").before_2014_07.empty());
}

TEST(PrintedCell, IsTakenApart) {
    const auto two = printedCellFrom("A-15 / A-0[d]");
    ASSERT_TRUE(two);
    EXPECT_EQ(two->higher, FireClass::A15);
    EXPECT_EQ(two->lower, FireClass::A0);
    EXPECT_TRUE(two->lower_with_sprinklers);
    const auto reversed = printedCellFrom("B-0 / A-0[c]");
    ASSERT_TRUE(reversed);
    EXPECT_EQ(reversed->higher, FireClass::A0);
    EXPECT_EQ(reversed->lower, FireClass::B0);
    EXPECT_FALSE(reversed->lower_with_sprinklers);
    EXPECT_THAT(printedCellFrom("A-60[b,d]")->marks, testing::ElementsAre("b", "d"));
    EXPECT_EQ(printedCellFrom("*")->kind, PrintedCell::Kind::Steel);
    EXPECT_EQ(printedCellFrom("")->kind, PrintedCell::Kind::NotPrinted);
    for (const char* bad : {"A-61", "A-60[", "A-60[]", "A-60[a,]", "A-0 / ", "A-0 / *", " A-0"})
        EXPECT_FALSE(printedCellFrom(bad)) << bad;
}

TEST(FireTablesFile, FaultsComeByPointerAllAtOnce) {
    EXPECT_THAT(faultsOf(oneTable(R"("1-1":"A-0","1-2":"A-60[a]","2-2":null)")), IsEmpty());
    EXPECT_THAT(faultsOf(oneTable(R"("1-1":"A-9","2-1":"A-0","1-2":"A-0[z]","3-3":"C")")),
                IsSupersetOf({at("/tables/0/cells/1-1", errors::no_printed_value("\"A-9\"")),
                              at("/tables/0/cells/2-1", errors::no_cell_of_table()),
                              at("/tables/0/cells/1-2", errors::note_not_in_table("z")),
                              at("/tables/0/cells/3-3", errors::no_cell_of_table()),
                              at("/tables/0/cells/2-2", errors::table_cell_missing())}));
    EXPECT_THAT(faultsOf(oneTable(R"("1-1":"C","1-2":"C","2-2":"C")", "deck")),
                Contains(at("/tables/0/cells/2-1", errors::table_cell_missing())));
    EXPECT_THAT(faultsOf("[]"),
                Contains(Error{place::top("tables.json"), errors::shipped_file_no_object()}));
    EXPECT_THAT(faultsOf("{\"edition\":\"e\",\"tables\":7}"),
                IsSupersetOf({at("/tables", errors::not_a_list_of_tables()),
                              at("/category_lists", errors::field_missing())}));
}

TEST(FireTablesFile, FieldsThatDoNotFitAreNamedOneByOne) {
    const std::string lists = R"({"edition":"e","x-from":"us","category_lists":)"
                              R"({"one":[{"number":2,"name":"","size":1},7]},)";
    EXPECT_THAT(
        faultsOf(lists + R"("remarks":["r",7],"tables":[{"id":"t","name":"T","title":"t",)"
                         R"("ship":"cargo","division":"bulkhead","categories":"one","cite":"c",)"
                         R"("remarks":"r","notes":7,"cells":7,"readings":{},"colour":"red"}]})"),
        testing::UnorderedElementsAre(
            at("/remarks/1", errors::field_not_a_text()),
            at("/category_lists/one/0/number", errors::categories_not_numbered()),
            at("/category_lists/one/0/name", errors::field_empty()),
            at("/category_lists/one/0/size", errors::field_not_known(errors::take_field_out())),
            at("/category_lists/one/1", errors::field_not_an_object()),
            at("/tables/0/remarks", errors::field_not_a_list_of_texts()),
            at("/tables/0/notes", errors::field_not_an_object()),
            at("/tables/0/cells", errors::field_not_an_object()),
            at("/tables/0/cells/1-1", errors::table_cell_missing()),
            at("/tables/0/colour", errors::field_not_known(errors::take_field_out()))));
    EXPECT_THAT(faultsOf(lists + R"("tables":[{"id":"t","categories":"two"},7]})"),
                IsSupersetOf({at("/tables/0/categories", errors::unknown_category_list("two")),
                              at("/tables/0/cells", errors::field_missing()),
                              at("/tables/1", errors::field_not_an_object())}));
}
