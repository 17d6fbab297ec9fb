#include "app/headless/text_table.h"

#include <algorithm>

#include "app/exchange/utf8.h"

namespace latchround::headless {

TextTable::TextTable(std::vector<std::string> heads) {
    add(std::move(heads));
}

void TextTable::add(std::vector<std::string> cells) {
    // A line break in a cell would tear the table apart.
    for (std::string& cell : cells)
        std::ranges::replace_if(
            cell, [](char byte) { return byte == '\n' || byte == '\r' || byte == '\t'; }, ' ');
    m_rows.push_back(std::move(cells));
}

std::string TextTable::text() const {
    std::vector<std::size_t> widths(m_rows.front().size());
    for (const auto& row : m_rows)
        for (std::size_t column = 0; column < row.size(); ++column)
            widths[column] = std::max(widths[column], charactersIn(row[column]));
    std::string all;
    for (const auto& row : m_rows) {
        std::string line;
        for (std::size_t column = 0; column < row.size(); ++column)
            line += row[column] + std::string(widths[column] - charactersIn(row[column]) + 2, ' ');
        line.erase(line.find_last_not_of(' ') + 1);
        all += line + "\n";
    }
    return all;
}

} // namespace latchround::headless
