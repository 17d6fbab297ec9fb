#include "app/headless/text_table.h"

#include <algorithm>

namespace latchround::headless {

namespace {

/// Characters of UTF-8 text: every byte that does not continue one.
std::size_t widthOf(const std::string& text) {
    return static_cast<std::size_t>(std::ranges::count_if(
        text, [](char byte) { return (static_cast<unsigned char>(byte) & 0xc0) != 0x80; }));
}

} // namespace

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
            widths[column] = std::max(widths[column], widthOf(row[column]));
    std::string all;
    for (const auto& row : m_rows) {
        std::string line;
        for (std::size_t column = 0; column < row.size(); ++column)
            line += row[column] + std::string(widths[column] - widthOf(row[column]) + 2, ' ');
        line.erase(line.find_last_not_of(' ') + 1);
        all += line + "\n";
    }
    return all;
}

} // namespace latchround::headless
