#include "app/exchange/register_faults.h"

#include <algorithm>
#include <utility>

#include "app/exchange/utf8.h"

namespace latchround {

namespace {

/// A complaint may quote a cell that is not UTF-8; who prints it must not stumble over that.
std::string printable(std::string text) {
    while (const auto bad = firstByteNotUtf8(text))
        text[*bad] = '?';
    return text;
}

} // namespace

void RegisterFaults::add(const CellPlace& place, std::string what, std::string remedy) {
    std::string where = m_file;
    if (place.line > 0)
        where += " line " + std::to_string(place.line);
    if (place.column > 0)
        where += ", column " + std::to_string(place.column);
    if (!place.field.empty())
        where += " (" + place.field + ")";
    m_found.push_back(
        {place.line,
         place.column,
         {std::move(where), printable(std::move(what)), printable(std::move(remedy))}});
}

void RegisterFaults::settle(ArrangementTable table, std::size_t row, std::string_view field) {
    m_settled.emplace(table, row, std::string(field));
}

bool RegisterFaults::isSettled(ArrangementTable table, std::size_t row,
                               std::string_view field) const {
    return m_settled.contains({table, row, std::string(field)});
}

Complaints RegisterFaults::inOrderOfFile() {
    std::ranges::stable_sort(m_found, [](const Found& one, const Found& other) {
        return std::pair(one.line, one.column) < std::pair(other.line, other.column);
    });
    Complaints complaints;
    for (Found& found : m_found)
        complaints.push_back(std::move(found.complaint));
    m_found.clear();
    return complaints;
}

} // namespace latchround
