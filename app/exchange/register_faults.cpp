#include "app/exchange/register_faults.h"

#include <algorithm>
#include <utility>

#include "app/exchange/utf8.h"
#include "core/phrase/places.h"

namespace latchround {

namespace {

/// An error may quote a cell that is not UTF-8; who prints it must not stumble over that.
Phrase printable(Phrase phrase) {
    while (const auto bad = firstByteNotUtf8(phrase.text))
        phrase.text[*bad] = '?';
    for (Phrase& part : phrase.parts)
        part = printable(std::move(part));
    return phrase;
}

Phrase whereIs(const CellPlace& cell, const Phrase& file) {
    if (cell.line == 0)
        return cell.field.empty() ? file : place::field_of_file(file, cell.field);
    if (cell.column == 0)
        return cell.field.empty() ? place::line(file, cell.line)
                                  : place::field_of_line(file, cell.line, cell.field);
    return cell.field.empty() ? place::cell(file, cell.line, cell.column)
                              : place::field_of_cell(file, cell.line, cell.column, cell.field);
}

} // namespace

void RegisterFaults::add(const CellPlace& cell, Phrase what) {
    m_found.push_back(
        {cell.line, cell.column, {whereIs(cell, m_file), printable(std::move(what))}});
}

void RegisterFaults::settle(ArrangementTable table, std::size_t row, std::string_view field) {
    m_settled.emplace(table, row, std::string(field));
}

bool RegisterFaults::isSettled(ArrangementTable table, std::size_t row,
                               std::string_view field) const {
    return m_settled.contains({table, row, std::string(field)});
}

Errors RegisterFaults::inOrderOfFile() {
    std::ranges::stable_sort(m_found, [](const Found& one, const Found& other) {
        return std::pair(one.line, one.column) < std::pair(other.line, other.column);
    });
    Errors errors;
    for (Found& found : m_found)
        errors.push_back(std::move(found.error));
    m_found.clear();
    return errors;
}

} // namespace latchround
