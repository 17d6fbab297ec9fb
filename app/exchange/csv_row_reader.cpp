#include "app/exchange/csv_row_reader.h"

#include <algorithm>
#include <charconv>
#include <limits>
#include <utility>

#include "core/error/exchange_errors.h"

namespace latchround {

namespace {

constexpr double unreadable = std::numeric_limits<double>::quiet_NaN();
constexpr std::string_view white_space = " \t\r\n";

/// Digits with at most one point or comma between them, and a minus: what a spreadsheet writes for
/// a number.
std::optional<double> numberFrom(std::string text) {
    const auto isPart = [](char c) { return (c >= '0' && c <= '9') || c == '.' || c == '-'; };
    if (std::ranges::count(text, ',') == 1 && text.find('.') == std::string::npos)
        std::ranges::replace(text, ',', '.');
    if (!std::ranges::all_of(text, isPart))
        return std::nullopt;
    double value = 0;
    const char* end = text.data() + text.size();
    const auto read = std::from_chars(text.data(), end, value, std::chars_format::fixed);
    if (read.ec != std::errc{} || read.ptr != end)
        return std::nullopt;
    return value;
}

} // namespace

std::string_view trimmed(std::string_view text) {
    const std::size_t from = text.find_first_not_of(white_space);
    if (from == text.npos)
        return {};
    return text.substr(from, text.find_last_not_of(white_space) - from + 1);
}

std::string lowerCase(std::string_view text) {
    std::string lower(text);
    for (char& c : lower)
        if (c >= 'A' && c <= 'Z')
            c = static_cast<char>(c - 'A' + 'a');
    return lower;
}

const CsvCell* CsvRowReader::cellOf(std::string_view column) const {
    const auto found = m_header.columns.find(column);
    if (found == m_header.columns.end() || found->second >= m_row.cells.size())
        return nullptr;
    return &m_row.cells[found->second];
}

CellPlace CsvRowReader::placeOf(std::string_view column) const {
    const CsvCell* cell = cellOf(column);
    const auto found = m_header.columns.find(column);
    return {cell ? cell->line : m_row.line, found == m_header.columns.end() ? 1 : found->second + 1,
            std::string(word(m_table)) + "." + std::string(column)};
}

bool CsvRowReader::isRequired(std::string_view column) const {
    const auto columns = columnsOf(m_table);
    const auto found = std::ranges::find(columns, column, &ArrangementColumn::name);
    return found != columns.end() && found->is_required;
}

void CsvRowReader::complain(std::string_view column, Phrase what) {
    if (!m_faults.isSettled(m_table, m_index, column))
        m_faults.add(placeOf(column), std::move(what));
    m_faults.settle(m_table, m_index, column);
}

std::optional<std::string> CsvRowReader::filled(std::string_view column) {
    const CsvCell* cell = cellOf(column);
    if (cell && !trimmed(cell->text).empty())
        return std::string(trimmed(cell->text));
    const bool in_header = m_header.columns.contains(column);
    if (!isRequired(column))
        return std::nullopt;
    // A missing column is complained of at the header, a broken row where its quoting went wrong.
    if (in_header && (cell || !m_row.broken))
        complain(column, errors::cell_empty());
    m_faults.settle(m_table, m_index, column);
    return std::nullopt;
}

std::string CsvRowReader::text(std::string_view column) {
    filled(column); // for its error
    const CsvCell* cell = cellOf(column);
    return cell ? cell->text : std::string{};
}

std::string CsvRowReader::name(std::string_view column) {
    return filled(column).value_or("");
}

std::vector<std::string> CsvRowReader::names(std::string_view column) {
    std::vector<std::string> found;
    const std::string cell = filled(column).value_or("");
    std::string_view rest = cell;
    while (!rest.empty()) {
        const std::size_t end = rest.find_first_of(white_space);
        found.emplace_back(rest.substr(0, end));
        rest = end == rest.npos ? std::string_view{} : trimmed(rest.substr(end));
    }
    return found;
}

std::optional<double> CsvRowReader::numberIn(std::string_view column, const std::string& cell) {
    const std::optional<double> value = numberFrom(cell);
    if (!value)
        complain(column, errors::cell_not_a_number(cell));
    return value;
}

double CsvRowReader::number(std::string_view column, double if_empty) {
    const std::optional<std::string> cell = filled(column);
    if (!cell)
        return isRequired(column) ? unreadable : if_empty;
    return numberIn(column, *cell).value_or(unreadable);
}

std::optional<double> CsvRowReader::numberOrNothing(std::string_view column) {
    const std::optional<std::string> cell = filled(column);
    return cell ? numberIn(column, *cell) : std::nullopt;
}

int CsvRowReader::wholeNumber(std::string_view column) {
    const std::optional<std::string> cell = filled(column);
    if (!cell)
        return 0;
    int value = 0;
    const char* end = cell->data() + cell->size();
    const auto read = std::from_chars(cell->data(), end, value);
    if (read.ec == std::errc{} && read.ptr == end)
        return value;
    complain(column, errors::cell_not_a_whole_number(*cell));
    return 0;
}

std::optional<std::pair<int, int>> CsvRowReader::spaces(std::string_view column) {
    const std::vector<std::string> cells = names(column);
    if (cells.empty())
        return std::nullopt;
    std::vector<int> numbers;
    for (const std::string& cell : cells) {
        int number = 0;
        const char* end = cell.data() + cell.size();
        const auto read = std::from_chars(cell.data(), end, number);
        if (read.ec == std::errc{} && read.ptr == end)
            numbers.push_back(number);
    }
    if (cells.size() == 2 && numbers.size() == 2)
        return std::pair(numbers[0], numbers[1]);
    complain(column, errors::cell_not_two_spaces());
    return std::nullopt;
}

Said CsvRowReader::yesNo(std::string_view column) {
    const std::optional<std::string> cell = filled(column);
    if (!cell)
        return {};
    const std::string answer = lowerCase(*cell);
    if (answer != "yes" && answer != "no")
        complain(column, errors::cell_not_yes_or_no(*cell));
    return answer == "yes";
}

std::optional<CalendarDate> CsvRowReader::date(std::string_view column) {
    const std::optional<std::string> cell = filled(column);
    if (!cell)
        return std::nullopt;
    const auto day = calendarDateFrom(*cell);
    if (!day)
        complain(column, errors::cell_not_a_date(*cell));
    return day;
}

} // namespace latchround
