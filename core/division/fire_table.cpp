#include "core/division/fire_table.h"

#include <algorithm>
#include <charconv>

#include "core/reading/json_reader.h"
#include "core/reading/written_json.h"

namespace latchround {

namespace {

using nlohmann::json;

std::vector<std::string> textsOf(JsonReader& reader, const json& object, const std::string& at,
                                 const char* key) {
    std::vector<std::string> texts;
    if (!object.contains(key))
        return texts;
    if (!object[key].is_array())
        reader.complain(at + "/" + key, "must be a list of texts", "");
    else
        for (const json& text : object[key])
            if (text.is_string())
                texts.push_back(text.get<std::string>());
            else
                reader.complain(at + "/" + key, "must hold texts only", "");
    return texts;
}

std::vector<SpaceCategory> categoriesOf(JsonReader& reader, const json& list,
                                        const std::string& at) {
    std::vector<SpaceCategory> categories;
    if (!list.is_array() || list.empty()) {
        reader.complain(at, "must be a list of categories", "");
        return categories;
    }
    for (std::size_t i = 0; i < list.size(); ++i) {
        const std::string here = at + "/" + std::to_string(i);
        if (!list[i].is_object()) {
            reader.complain(here, "a category must be an object", "");
            continue;
        }
        reader.onlyKnown(list[i], here, {"number", "name", "examples"});
        const auto number = reader.number(list[i], here, "number");
        if (number != static_cast<double>(i + 1))
            reader.complain(here + "/number", "categories must be numbered from 1 without a gap",
                            "");
        categories.push_back({static_cast<int>(i) + 1, reader.text(list[i], here, "name", true),
                              textsOf(reader, list[i], here, "examples")});
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
    TableReading(JsonReader& reader, FireTable& table, std::string at)
        : m_reader(reader)
        , m_table(table)
        , m_at(std::move(at)) {}

    void cells(const json& row, const char* key, std::map<SpacePair, PrintedCell>& into) {
        if (!row.contains(key))
            return;
        if (!row[key].is_object()) {
            m_reader.complain(m_at + "/" + key, "must be an object of cells", "");
            return;
        }
        for (const auto& [name, value] : row[key].items())
            cell(m_at + "/" + key + "/" + name, name, value, into);
    }

    void complete() {
        const int last = static_cast<int>(m_table.categories.size());
        for (int one = 1; one <= last; ++one)
            for (int other = hasDirection(m_table.division) ? 1 : one; other <= last; ++other)
                if (!m_table.cells.contains({one, other}))
                    m_reader.complain(m_at + "/cells/" + std::to_string(one) + "-" +
                                          std::to_string(other),
                                      "is missing", "Write null where nothing is printed.");
    }

private:
    void cell(const std::string& here, const std::string& name, const json& value,
              std::map<SpacePair, PrintedCell>& into) {
        const int last = static_cast<int>(m_table.categories.size());
        const auto pair = pairFrom(name);
        const auto known = [last](int number) { return number >= 1 && number <= last; };
        if (!pair || !known(pair->first) || !known(pair->second) ||
            (!hasDirection(m_table.division) && pair->first > pair->second)) {
            m_reader.complain(here, "is no cell of this table",
                              "Write two of its categories, of a bulkhead the lower first.");
            return;
        }
        const std::string text = value.is_string() ? value.get<std::string>() : std::string();
        const auto printed = printedCellFrom(text);
        if ((!value.is_string() && !value.is_null()) || !printed) {
            m_reader.complain(here, onOneLine(value) + " is no value that a table prints",
                              "Write a class with its notes in brackets, *, - or null.");
            return;
        }
        const bool starred = printed->kind == PrintedCell::Kind::Steel ||
                             printed->kind == PrintedCell::Kind::Nothing;
        for (const std::string& mark : printed->marks)
            if (!m_table.notes.contains(mark) && !starred)
                m_reader.complain(here, "note '" + mark + "' is not in this table's notes",
                                  "Add the note.");
        into[*pair] = *printed;
    }

    JsonReader& m_reader;
    FireTable& m_table;
    std::string m_at;
};

FireTable tableFrom(JsonReader& reader, const json& row, const json& lists, const std::string& at) {
    FireTable table;
    if (!row.is_object()) {
        reader.complain(at, "a table must be an object", "");
        return table;
    }
    reader.onlyKnown(row, at,
                     {"id", "name", "title", "ship", "division", "categories", "cite", "cells",
                      "before_2014_07", "notes", "remarks", "readings"});
    table.id = reader.text(row, at, "id", true);
    table.name = reader.text(row, at, "name", true);
    table.title = reader.text(row, at, "title", true);
    table.cite = reader.text(row, at, "cite", true);
    reader.word<ShipKind>(row, at, "ship", shipKindWords, table.ship, true);
    reader.word<DivisionKind>(row, at, "division", divisionKindWords, table.division, true);
    table.remarks = textsOf(reader, row, at, "remarks");
    const std::string list = reader.text(row, at, "categories", true);
    if (lists.contains(list))
        table.categories = categoriesOf(reader, lists[list], "/category_lists/" + list);
    else if (!list.empty())
        reader.complain(at + "/categories", "'" + list + "' is no list of categories here", "");
    if (row.contains("notes") && row["notes"].is_object())
        for (const auto& [mark, note] : row["notes"].items())
            table.notes[mark] = reader.text(row["notes"], at + "/notes", mark.c_str(), true);
    TableReading reading(reader, table, at);
    reading.cells(row, "cells", table.cells);
    reading.cells(row, "before_2014_07", table.before_2014_07);
    reading.complete();
    return table;
}

} // namespace

Checked<FireTables> fireTablesFrom(std::string_view text, std::string_view name) {
    JsonReader reader{std::string(name)};
    const json document = jsonIn(text);
    if (!document.is_object()) {
        reader.complain("", "is not a JSON object", "Restore the file from a good copy.");
        return tl::unexpected(reader.complaints());
    }
    reader.onlyKnown(document, "", {"edition", "remarks", "category_lists", "tables"});
    FireTables tables;
    tables.edition = reader.text(document, "", "edition", true);
    tables.remarks = textsOf(reader, document, "", "remarks");
    const json lists = document.value("category_lists", json::object());
    const json rows = document.value("tables", json::array());
    if (!lists.is_object() || !rows.is_array() || rows.empty()) {
        reader.complain("/tables", "must be a list with at least one table", "");
        return tl::unexpected(reader.complaints());
    }
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const std::string at = "/tables/" + std::to_string(i);
        FireTable table = tableFrom(reader, rows[i], lists, at);
        if (reader.complaints().empty() && findTable(tables, table.ship, table.division))
            reader.complain(at, "there is a table of such divisions already", "Keep one of them.");
        tables.tables.push_back(std::move(table));
    }
    if (!reader.complaints().empty())
        return tl::unexpected(reader.complaints());
    return tables;
}

const FireTable* findTable(const FireTables& tables, ShipKind ship, DivisionKind division) {
    const auto found = std::ranges::find_if(tables.tables, [&](const FireTable& table) {
        return table.ship == ship && table.division == division;
    });
    return found == tables.tables.end() ? nullptr : &*found;
}

} // namespace latchround
