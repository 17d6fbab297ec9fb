#include "app/exchange/points_csv.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>
#include <string_view>

#include "app/exchange/csv_row_reader.h"
#include "app/exchange/csv_text.h"

namespace latchround {

namespace {

constexpr std::size_t most_complaints = 50;

std::optional<double> numberFrom(std::string text, char delimiter) {
    if (delimiter != ',')
        std::ranges::replace(text, ',', '.');
    const std::string_view bare = trimmed(text);
    double value = 0;
    const char* begin = bare.data() + (bare.starts_with('+') ? 1 : 0);
    const char* end = bare.data() + bare.size();
    const auto read = std::from_chars(begin, end, value);
    if (bare.empty() || read.ec != std::errc{} || read.ptr != end || !std::isfinite(value))
        return std::nullopt;
    return value;
}

std::string placeOf(const std::string& name, std::size_t line, std::size_t column) {
    return name + " line " + std::to_string(line) + " column " + std::to_string(column);
}

} // namespace

Checked<std::vector<Point>> pointsFromCsv(std::span<const char> bytes, const std::string& name) {
    const Result<CsvText> csv = csvTextFrom(bytes, name);
    if (!csv)
        return tl::unexpected(Complaints{csv.error()});
    Complaints complaints;
    for (const CsvFlaw& flaw : csv->flaws)
        complaints.push_back({placeOf(name, flaw.line, flaw.column), flaw.what, flaw.remedy});
    std::vector<Point> points;
    for (const CsvRow& row : csv->rows) {
        std::vector<std::optional<double>> cells;
        for (const CsvCell& cell : row.cells)
            if (!trimmed(cell.text).empty() || cells.size() < 2)
                cells.push_back(numberFrom(cell.text, csv->delimiter));
        const bool names = &row == &csv->rows.front() &&
                           std::ranges::none_of(cells, [](auto& cell) { return cell.has_value(); });
        if (names || row.broken || complaints.size() >= most_complaints)
            continue;
        if (cells.size() != 2)
            complaints.push_back(
                {name + " line " + std::to_string(row.line),
                 "a point has two numbers, here are " + std::to_string(cells.size()) + " cells",
                 "Write x,y on each line."});
        else if (cells[0] && cells[1])
            points.push_back({*cells[0], *cells[1]});
        for (std::size_t i = 0; i < cells.size() && cells.size() == 2; ++i)
            if (!cells[i])
                complaints.push_back({placeOf(name, row.line, i + 1),
                                      '"' + row.cells[i].text + "\" is not a number",
                                      "Write a number such as 12.4."});
    }
    if (!complaints.empty())
        return tl::unexpected(std::move(complaints));
    return points;
}

} // namespace latchround
