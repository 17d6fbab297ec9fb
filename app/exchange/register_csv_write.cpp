#include <array>
#include <charconv>
#include <cmath>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

#include "app/exchange/register_columns.h"
#include "app/exchange/register_csv.h"

namespace latchround {

namespace {

/// Shortest decimal text that reads back as the same number, never with an exponent.
std::string figure(double value) {
    if (value == 0)
        return "0"; // and not "-0"
    std::array<char, 400> text{};
    const auto end =
        std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed);
    return {text.data(), end.ptr};
}

std::string metres(double value) {
    std::string text = figure(value);
    const std::size_t point = text.find('.');
    if (point == std::string::npos)
        return text + ".00";
    const std::size_t decimals = text.size() - point - 1;
    return decimals < 2 ? text + "0" : text;
}

/// Blanks at an end would be taken off on reading if they stood outside quotes.
bool needsQuotes(std::string_view cell) {
    constexpr std::string_view blanks = " \t";
    return cell.find_first_of(",\"\r\n") != cell.npos ||
           (!cell.empty() &&
            (blanks.find(cell.front()) != blanks.npos || blanks.find(cell.back()) != blanks.npos));
}

void appendCell(std::string& csv, std::string_view cell) {
    csv += ',';
    if (!needsQuotes(cell)) {
        csv += cell;
        return;
    }
    csv += '"';
    for (const char c : cell)
        csv.append(c == '"' ? 2 : 1, c);
    csv += '"';
}

/// Writes each field into a cell.
struct CellWriter {
    std::string& csv;

    void operator()(const ArrangementColumn&, const auto& member) const {
        appendCell(csv, cell(member));
    }

private:
    static std::string_view cell(const std::string& text) { return text; }
    static std::string cell(double value) { return metres(value); }
    static std::string cell(const std::optional<double>& value) {
        return value ? figure(*value) : std::string{};
    }
    static std::string cell(int value) { return std::to_string(value); }
    static std::string_view cell(bool value) { return value ? "yes" : "no"; }
    static std::string_view cell(const Said& said) {
        return said.isKnown() ? cell(*said.word) : std::string_view{};
    }
    static std::string cell(const std::optional<CalendarDate>& day) {
        return day ? isoText(*day) : std::string{};
    }
    static std::string cell(const std::vector<std::string>& names) {
        std::string text;
        for (const std::string& name : names)
            text += (text.empty() ? "" : " ") + name;
        return text;
    }
    /// With a blank between: a spreadsheet takes 3-7 for a date.
    static std::string cell(const std::optional<std::pair<int, int>>& spaces) {
        return spaces ? std::to_string(spaces->first) + " " + std::to_string(spaces->second)
                      : std::string{};
    }
    template <class Closed>
    requires std::is_enum_v<Closed>
    static std::string_view cell(Closed value) { return word(value); }
    template <class Closed>
    requires std::is_enum_v<Closed>
    static std::string_view cell(const std::optional<Closed>& value) {
        return value ? word(*value) : std::string_view{};
    }
};

void appendHeader(std::string& csv, ArrangementTable table) {
    if (!csv.empty())
        csv += '\n';
    csv += word(table);
    csv += ':';
    for (const ArrangementColumn& column : columnsOf(table))
        appendCell(csv, column.name);
    csv += '\n';
}

template <class Listed>
void appendRow(std::string& csv, ArrangementTable table, const Listed& row) {
    csv += word(table);
    eachField(row, CellWriter{csv});
    csv += '\n';
}

template <class Listed>
void appendTable(std::string& csv, ArrangementTable table, const std::vector<Listed>& rows) {
    appendHeader(csv, table);
    for (const Listed& row : rows)
        appendRow(csv, table, row);
}

} // namespace

std::string csvFrom(const Arrangement& arrangement) {
    std::string csv;
    appendHeader(csv, ArrangementTable::Vessel);
    appendRow(csv, ArrangementTable::Vessel, arrangement.particulars);
    appendTable(csv, ArrangementTable::Deck, arrangement.decks);
    appendTable(csv, ArrangementTable::Zone, arrangement.zones);
    appendTable(csv, ArrangementTable::Boundary, arrangement.boundaries);
    appendTable(csv, ArrangementTable::Door, arrangement.doors);
    return csv;
}

} // namespace latchround
