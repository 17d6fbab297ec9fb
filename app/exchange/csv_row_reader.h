// Takes one row of a register table apart by the names of its columns, as a spreadsheet may have
// left the cells: blanks around them, decimal comma, any case. A cell that cannot be read is
// complained of and gives a value that offends no later check (not-a-number, nothing, the default).
#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "app/exchange/csv_text.h"
#include "app/exchange/register_columns.h"
#include "app/exchange/register_faults.h"
#include "core/error/reading_errors.h"
#include "core/vessel/calendar_date.h"

namespace latchround {

/// Column name -> index of the cell in the row.
struct CsvHeader {
    std::map<std::string, std::size_t, std::less<>> columns;
    std::size_t cells = 0; ///< how many cells the header has, trailing empty ones not counted
};

std::string_view trimmed(std::string_view text);
std::string lowerCase(std::string_view text);

class CsvRowReader {
public:
    CsvRowReader(ArrangementTable table, std::size_t index, const CsvHeader& header,
                 const CsvRow& row, RegisterFaults& faults)
        : m_table(table)
        , m_index(index)
        , m_header(header)
        , m_row(row)
        , m_faults(faults) {}

    /// Free text, kept as it is.
    std::string text(std::string_view column);
    /// A name that others refer to, or such a reference: blanks around it taken off.
    std::string name(std::string_view column);
    std::vector<std::string> names(std::string_view column);
    double number(std::string_view column, double if_empty);
    std::optional<double> numberOrNothing(std::string_view column);
    int wholeNumber(std::string_view column);
    /// "3 7": categories of two spaces.
    std::optional<std::pair<int, int>> spaces(std::string_view column);
    Said yesNo(std::string_view column);
    std::optional<CalendarDate> date(std::string_view column);

    template <class E>
    std::optional<E> wordOrNothing(std::string_view column, std::span<const Word<E>> table) {
        const std::optional<std::string> cell = filled(column);
        if (!cell)
            return std::nullopt;
        std::string allowed;
        for (const Word<E>& entry : table) {
            if (lowerCase(entry.word) == lowerCase(*cell))
                return entry.value;
            allowed += (allowed.empty() ? "" : ", ") + std::string(entry.word);
        }
        complain(column, errors::not_one_of(*cell, allowed));
        return std::nullopt;
    }

    CellPlace placeOf(std::string_view column) const;

private:
    const CsvCell* cellOf(std::string_view column) const;
    /// The trimmed cell; nothing where it is empty (complained of if required) or lost.
    std::optional<std::string> filled(std::string_view column);
    std::optional<double> numberIn(std::string_view column, const std::string& cell);
    void complain(std::string_view column, Phrase what);
    bool isRequired(std::string_view column) const;

    ArrangementTable m_table;
    std::size_t m_index;
    const CsvHeader& m_header;
    const CsvRow& m_row;
    RegisterFaults& m_faults;
};

} // namespace latchround
