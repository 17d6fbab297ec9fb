#include "core/division/fire_table.h"

#include <algorithm>
#include <charconv>
#include <utility>

#include <nlohmann/json.hpp>

#include "core/error/catalogue_errors.h"
#include "core/reading/json_object.h"
#include "core/reading/written_json.h"

namespace latchround {

namespace {

std::vector<std::string> textsOf(JsonObject& object, const char* key) {
    return object.texts(key, Need::Optional).value_or(std::vector<std::string>());
}

std::vector<SpaceCategory> categoriesOf(JsonObject& lists, const std::string& name) {
    std::vector<SpaceCategory> categories;
    for (JsonObject& entry :
         lists.filledObjects(name, Need::Optional, errors::not_a_list_of_categories())) {
        const int number = static_cast<int>(categories.size()) + 1;
        if (entry.number("number", Need::Optional) != static_cast<double>(number))
            entry.complain("number", errors::categories_not_numbered());
        categories.push_back({number, entry.filledText("name", Need::Required).value_or(""),
                              textsOf(entry, "examples")});
        entry.complainOfTheRest();
    }
    return categories;
}

/// "12-7" into its two numbers.
std::optional<SpacePair> pairFrom(std::string_view key) {
    SpacePair pair;
    const char* end = key.data() + key.size();
    const auto first = std::from_chars(key.data(), end, pair.first);
    if (first.ec != std::errc() || first.ptr == end || *first.ptr != '-')
        return std::nullopt;
    const auto second = std::from_chars(first.ptr + 1, end, pair.second);
    return second.ec == std::errc() && second.ptr == end ? std::optional(pair) : std::nullopt;
}

class TableReading {
public:
    TableReading(JsonObject& row, JsonFaults& faults, FireTable& table)
        : m_row(row)
        , m_faults(faults)
        , m_table(table) {}

    /// Here null means something: that nothing is printed.
    void cells(const char* key, Need need, std::map<SpacePair, PrintedCell>& into) {
        const Json* given = m_row.field(key, need);
        if (given && !given->is_object())
            m_row.complain(key, errors::field_not_an_object());
        else if (given)
            for (const auto& [name, value] : given->items())
                cell(pointerTo(m_row.pointerOf(key), name), name, value, into);
    }

    void complete() {
        const int last = static_cast<int>(m_table.categories.size());
        for (int one = 1; one <= last; ++one)
            for (int other = hasDirection(m_table.division) ? 1 : one; other <= last; ++other)
                if (!m_table.cells.contains({one, other}))
                    m_faults.add(pointerTo(m_row.pointerOf("cells"),
                                           std::to_string(one) + "-" + std::to_string(other)),
                                 errors::table_cell_missing());
    }

private:
    void cell(const std::string& here, const std::string& name, const Json& value,
              std::map<SpacePair, PrintedCell>& into) {
        const int last = static_cast<int>(m_table.categories.size());
        const auto pair = pairFrom(name);
        const auto known = [last](int number) { return number >= 1 && number <= last; };
        if (!pair || !known(pair->first) || !known(pair->second) ||
            (!hasDirection(m_table.division) && pair->first > pair->second)) {
            m_faults.add(here, errors::no_cell_of_table());
            return;
        }
        const std::string text = value.is_string() ? value.get<std::string>() : std::string();
        const auto printed = printedCellFrom(text);
        if ((!value.is_string() && !value.is_null()) || !printed) {
            m_faults.add(here, errors::no_printed_value(onOneLine(value)));
            return;
        }
        const bool starred = printed->kind == PrintedCell::Kind::Steel ||
                             printed->kind == PrintedCell::Kind::Nothing;
        for (const std::string& mark : printed->marks)
            if (!m_table.notes.contains(mark) && !starred)
                m_faults.add(here, errors::note_not_in_table(mark));
        into[*pair] = *printed;
    }

    JsonObject& m_row;
    JsonFaults& m_faults;
    FireTable& m_table;
};

FireTable tableFrom(JsonObject& row, JsonObject& lists, JsonFaults& faults) {
    const auto text = [&](const char* key) {
        return row.filledText(key, Need::Required).value_or("");
    };
    FireTable table;
    table.id = text("id");
    table.name = text("name");
    table.title = text("title");
    table.cite = text("cite");
    table.ship = row.word<ShipKind>("ship", Need::Required, shipKindWords).value_or(table.ship);
    table.division = row.word<DivisionKind>("division", Need::Required, divisionKindWords)
                         .value_or(table.division);
    table.remarks = textsOf(row, "remarks");
    const std::string list = text("categories");
    table.categories = categoriesOf(lists, list);
    if (!list.empty() && !lists.field(list, Need::Optional))
        row.complain("categories", errors::unknown_category_list(list));
    if (auto notes = row.object("notes", Need::Optional))
        for (const std::string& mark : notes->names())
            table.notes[mark] = notes->filledText(mark, Need::Required).value_or("");
    row.field("readings", Need::Optional); // for who holds the tables against their sources
    TableReading reading(row, faults, table);
    reading.cells("cells", Need::Required, table.cells);
    reading.cells("before_2014_07", Need::Optional, table.before_2014_07);
    if (row.field("cells", Need::Optional))
        reading.complete();
    row.complainOfTheRest();
    return table;
}

} // namespace

Checked<FireTables> fireTablesFrom(std::string_view text, Phrase name) {
    JsonFaults faults{std::move(name)};
    const Json document = jsonIn(text);
    if (!document.is_object()) {
        faults.add("", errors::shipped_file_no_object());
        return tl::unexpected(faults.take());
    }
    JsonObject top(document, "", faults);
    FireTables tables;
    tables.edition = top.filledText("edition", Need::Required).value_or("");
    tables.remarks = textsOf(top, "remarks");
    std::optional<JsonObject> lists = top.object("category_lists", Need::Required);
    for (JsonObject& row :
         top.filledObjects("tables", Need::Required, errors::not_a_list_of_tables())) {
        if (!lists)
            break;
        FireTable table = tableFrom(row, *lists, faults);
        if (faults.empty() && findTable(tables, table.ship, table.division))
            row.complain(errors::table_there_already());
        tables.tables.push_back(std::move(table));
    }
    top.complainOfTheRest();
    if (!faults.empty())
        return tl::unexpected(faults.take());
    tables.text = std::make_shared<const std::string>(text);
    return tables;
}

const FireTable* findTable(const FireTables& tables, ShipKind ship, DivisionKind division) {
    const auto found = std::ranges::find_if(tables.tables, [&](const FireTable& table) {
        return table.ship == ship && table.division == division;
    });
    return found == tables.tables.end() ? nullptr : &*found;
}

} // namespace latchround
