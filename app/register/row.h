// One row of an answer, read column by column into values of core. A word outside its closed set or
// a date that does not exist means that the file was damaged; the row remembers it.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include <QSqlQuery>
#include <QVariant>

#include "core/vessel/calendar_date.h"

namespace latchround {

class Row {
public:
    explicit Row(const QSqlQuery& query)
        : m_query(query) {}

    bool isNull(int column) const { return m_query.value(column).isNull(); }
    /// NULL reads as an empty text.
    std::string text(int column) const { return m_query.value(column).toString().toStdString(); }
    std::int64_t whole(int column) const { return m_query.value(column).toLongLong(); }
    int smallWhole(int column) const { return m_query.value(column).toInt(); }
    double real(int column) const { return m_query.value(column).toDouble(); }
    bool flag(int column) const { return whole(column) != 0; }
    QByteArray bytes(int column) const { return m_query.value(column).toByteArray(); }

    std::optional<std::string> textIfAny(int column) const {
        return isNull(column) ? std::nullopt : std::optional(text(column));
    }
    template <class T>
    std::optional<T> wholeIfAny(int column) const {
        return isNull(column) ? std::nullopt : std::optional(static_cast<T>(whole(column)));
    }
    std::optional<double> realIfAny(int column) const {
        return isNull(column) ? std::nullopt : std::optional(real(column));
    }
    template <class E>
    E word(int column, std::optional<E> (*from)(std::string_view)) {
        const std::optional<E> value = from(text(column));
        m_sound = m_sound && value.has_value();
        return value.value_or(E{});
    }
    template <class E>
    std::optional<E> wordIfAny(int column, std::optional<E> (*from)(std::string_view)) {
        return isNull(column) ? std::nullopt : std::optional(word<E>(column, from));
    }
    std::optional<CalendarDate> dateIfAny(int column) {
        if (isNull(column))
            return std::nullopt;
        const std::optional<CalendarDate> date = calendarDateFrom(text(column));
        m_sound = m_sound && date.has_value();
        return date;
    }

    /// False once a column held what no register writes.
    bool isSound() const { return m_sound; }

private:
    const QSqlQuery& m_query;
    bool m_sound = true;
};

} // namespace latchround
