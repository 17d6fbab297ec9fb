// One row of an answer, read column by column into values of core. A word outside its closed set or
// a date that does not exist means that the file was damaged; the row remembers it.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include <sqlite3.h>

#include "core/vessel/calendar_date.h"
#include "core/vessel/words.h"

namespace latchround {

class Row {
public:
    explicit Row(sqlite3_stmt* statement)
        : m_statement(statement) {}

    bool isNull(int column) const {
        return sqlite3_column_type(m_statement, column) == SQLITE_NULL;
    }
    /// NULL reads as an empty text.
    std::string text(int column) const { return std::string(view(column)); }
    std::int64_t whole(int column) const { return sqlite3_column_int64(m_statement, column); }
    int smallWhole(int column) const { return sqlite3_column_int(m_statement, column); }
    double real(int column) const { return sqlite3_column_double(m_statement, column); }
    bool flag(int column) const { return whole(column) != 0; }
    /// Until the next row.
    std::span<const std::byte> bytes(int column) const {
        const auto* begin = static_cast<const std::byte*>(sqlite3_column_blob(m_statement, column));
        return {begin, static_cast<std::size_t>(sqlite3_column_bytes(m_statement, column))};
    }

    template <class E>
    E word(int column) {
        const std::optional<E> value = valueIn<E>(wordsFor(E{}), view(column));
        m_sound = m_sound && value.has_value();
        return value.value_or(E{});
    }
    CalendarDate date(int column) {
        const std::optional<CalendarDate> date = calendarDateFrom(view(column));
        m_sound = m_sound && date.has_value();
        return date.value_or(CalendarDate{});
    }

    /// False once a column held what no register writes.
    bool isSound() const { return m_sound; }

private:
    std::string_view view(int column) const {
        const auto* begin = reinterpret_cast<const char*>(sqlite3_column_text(m_statement, column));
        return {begin, static_cast<std::size_t>(sqlite3_column_bytes(m_statement, column))};
    }

    sqlite3_stmt* m_statement;
    bool m_sound = true;
};

} // namespace latchround
