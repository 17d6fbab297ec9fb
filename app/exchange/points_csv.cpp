#include "app/exchange/points_csv.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>
#include <string_view>

#include "app/exchange/csv_row_reader.h"
#include "app/exchange/csv_text.h"
#include "core/error/exchange_errors.h"
#include "core/phrase/places.h"

namespace latchround {

namespace {

constexpr std::size_t most_errors = 50;

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

} // namespace

Checked<std::vector<Point>> pointsFromCsv(std::span<const char> bytes, const std::string& name) {
    const Result<CsvText> csv = csvTextFrom(bytes, name);
    if (!csv)
        return tl::unexpected(Errors{csv.error()});
    Errors errors;
    for (const CsvFlaw& flaw : csv->flaws)
        errors.emplace_back(place::cell(name, flaw.line, flaw.column), flaw.what);
    std::vector<Point> points;
    for (const CsvRow& row : csv->rows) {
        std::vector<std::optional<double>> cells;
        for (const CsvCell& cell : row.cells)
            if (!trimmed(cell.text).empty() || cells.size() < 2)
                cells.push_back(numberFrom(cell.text, csv->delimiter));
        const bool names = &row == &csv->rows.front() &&
                           std::ranges::none_of(cells, [](auto& cell) { return cell.has_value(); });
        if (names || row.broken || errors.size() >= most_errors)
            continue;
        if (cells.size() != 2)
            errors.emplace_back(place::line(name, row.line), errors::not_two_cells(cells.size()));
        else if (cells[0] && cells[1])
            points.push_back({*cells[0], *cells[1]});
        for (std::size_t i = 0; i < cells.size() && cells.size() == 2; ++i)
            if (!cells[i])
                errors.emplace_back(place::cell(name, row.line, i + 1),
                                    errors::point_not_a_number(row.cells[i].text));
    }
    if (!errors.empty())
        return tl::unexpected(std::move(errors));
    return points;
}

} // namespace latchround
