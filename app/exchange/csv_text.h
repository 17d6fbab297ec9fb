// The bytes of a CSV file as rows of cells that know their line, whichever spreadsheet saved them:
// comma, semicolon or tab, LF, CRLF or CR, with or without a byte order mark. Knows nothing of
// doors.
#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <vector>

#include "core/error/error.h"

namespace latchround {

struct CsvCell {
    std::string text;
    std::size_t line = 0; ///< 1-based line of the file on which the cell begins
};

struct CsvRow {
    std::size_t line = 0;
    std::vector<CsvCell> cells;
    /// Quoting went wrong in the cell after the last one here; what followed it is lost.
    bool broken = false;
};

/// A place where quoting went wrong. `column` counts cells from 1.
struct CsvFlaw {
    std::size_t line = 0;
    std::size_t column = 0;
    Phrase what;
};

struct CsvText {
    std::vector<CsvRow> rows; ///< rows without any text left out
    std::vector<CsvFlaw> flaws;
    bool given_up = false; ///< too many flaws: the rows after the last one were not read
    char delimiter = ',';
};

/// Larger files are refused: a register of 400 doors is about 50 kB.
inline constexpr std::size_t largest_csv_bytes = 64u * 1024 * 1024;

/// An error where the file as a whole cannot be read: empty, too large, UTF-16. The cells are
/// bytes; whether they are UTF-8 is asked cell by cell (firstByteNotUtf8).
Result<CsvText> csvTextFrom(std::span<const char> bytes, const std::string& name);

} // namespace latchround
