#include "app/exchange/csv_parser.h"

#include <utility>

namespace latchround {

CsvParser::CsvParser(char delimiter, std::vector<CsvRow>& rows)
    : m_rows(rows) {
    csv_init(&m_parser, CSV_STRICT | CSV_STRICT_FINI);
    csv_set_delim(&m_parser, static_cast<unsigned char>(delimiter));
}

CsvParser::~CsvParser() {
    csv_free(&m_parser);
}

bool CsvParser::feed(std::string_view line, std::size_t line_number) {
    m_line = line_number;
    // Nothing is held over from the lines before: a row, and its first cell, can only begin here.
    if (m_row.cells.empty() && m_parser.entry_pos == 0)
        m_open_line = line_number;
    return csv_parse(&m_parser, line.data(), line.size(), &CsvParser::onCell, &CsvParser::onRow,
                     this) == line.size();
}

bool CsvParser::finish() {
    return csv_fini(&m_parser, &CsvParser::onCell, &CsvParser::onRow, this) == 0;
}

CsvRow CsvParser::takeOpenRow() {
    if (m_row.cells.empty())
        m_row.line = m_open_line;
    return std::exchange(m_row, {});
}

void CsvParser::onCell(void* text, std::size_t size, void* self) {
    CsvParser& parser = *static_cast<CsvParser*>(self);
    if (parser.m_row.cells.empty())
        parser.m_row.line = parser.m_open_line;
    parser.m_row.cells.push_back(
        {size == 0 ? std::string{} : std::string(static_cast<const char*>(text), size),
         parser.m_open_line});
    parser.m_open_line = parser.m_line;
}

void CsvParser::onRow(int, void* self) {
    CsvParser& parser = *static_cast<CsvParser*>(self);
    parser.m_rows.push_back(std::exchange(parser.m_row, {}));
}

} // namespace latchround
