// Members of what is described field by field (core/vessel/described.h) in the columns of their
// keys. What is a list, or has fields of its own, is a part and lies in a table of its own:
// `<table>_<key>`.
#pragma once

#include <concepts>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

#include "app/register/row.h"
#include "app/register/sql_values.h"
#include "core/vessel/described.h"
#include "core/vessel/said.h"

namespace latchround {

template <class Member>
inline constexpr bool is_part = false;
template <class Element>
inline constexpr bool is_part<std::vector<Element>> = true;
template <Described Whole>
inline constexpr bool is_part<std::optional<Whole>> = true;

template <class Member>
Value columnValue(const Member& member) {
    if constexpr (std::is_same_v<Member, std::string>)
        return sqlText(member);
    else if constexpr (std::is_same_v<Member, Said>)
        return columnValue(member.word);
    else if constexpr (std::is_same_v<Member, bool>)
        return Value(member ? 1 : 0);
    else if constexpr (std::is_enum_v<Member>)
        return sqlText(word(member));
    else if constexpr (std::is_same_v<Member, CalendarDate>)
        return sqlText(isoText(member));
    else if constexpr (std::is_same_v<Member, double>)
        return Value(member);
    else if constexpr (std::integral<Member>)
        return Value(static_cast<std::int64_t>(member));
    else
        return member ? columnValue(*member) : Value();
}

template <class Member>
void readColumn(Row& row, int column, Member& member) {
    if constexpr (std::is_same_v<Member, std::string>)
        member = row.text(column);
    else if constexpr (std::is_same_v<Member, Said>) {
        member = Said();
        readColumn(row, column, member.word);
    } else if constexpr (std::is_same_v<Member, bool>)
        member = row.flag(column);
    else if constexpr (std::is_enum_v<Member>)
        member = row.word<Member>(column);
    else if constexpr (std::is_same_v<Member, CalendarDate>)
        member = row.date(column);
    else if constexpr (std::is_same_v<Member, double>)
        member = row.real(column);
    else if constexpr (std::integral<Member>)
        member = static_cast<Member>(row.whole(column));
    else if (!row.isNull(column))
        readColumn(row, column, member.emplace());
}

/// Gathers the values of a row, column after column. They look at the members they were made from.
struct RowValues {
    std::vector<Value> values;

    void operator()(const char*, const auto& member) { values.push_back(columnValue(member)); }
};

/// Reads the columns of a row from this one on.
struct RowReader {
    Row& row;
    int column;

    void operator()(const char*, auto& member) { readColumn(row, column++, member); }
};

/// Calls `visit(key, member)` for each column of one row of a part.
template <class Element, class Visit>
void eachColumnOfPart(Element& element, Visit&& visit) {
    if constexpr (std::is_same_v<std::remove_const_t<Element>, std::string>)
        visit("value", element);
    else
        eachField(element, visit);
}

/// Keys may be words that SQL needs itself.
std::string quotedName(std::string_view name);
/// "\"fact\", \"name\", \"role\""
std::string columnList(const std::vector<std::string>& columns);
/// "INSERT INTO note (\"fact\", \"text\") VALUES (?,?)"
std::string insertInto(std::string_view table, const std::vector<std::string>& columns);

} // namespace latchround
