// libcsv in strict mode behind a value-like face: fed one line at a time, it fills rows.
#pragma once

#include <csv.h>

#include <string_view>
#include <vector>

#include "app/exchange/csv_text.h"

namespace latchround {

class CsvParser {
public:
    CsvParser(char delimiter, std::vector<CsvRow>& rows);
    CsvParser(const CsvParser&) = delete;
    CsvParser& operator=(const CsvParser&) = delete;
    ~CsvParser();

    /// One line of the file with its line break. False where quoting went wrong: feed nothing more.
    bool feed(std::string_view line, std::size_t line_number);
    /// The file is at its end. False where a quoted cell is still open.
    bool finish();

    /// The line on which the cell begins that is not complete yet.
    std::size_t openCellLine() const { return m_open_line; }
    /// The complete cells of the row that is not complete yet.
    CsvRow takeOpenRow();

private:
    static void onCell(void* text, std::size_t size, void* self);
    static void onRow(int terminator, void* self);

    csv_parser m_parser{};
    std::vector<CsvRow>& m_rows;
    CsvRow m_row;
    std::size_t m_line = 0;
    std::size_t m_open_line = 0;
};

} // namespace latchround
