// The tables of the register CSV and their columns, in the order they are written
// (core/vessel/arrangement_fields.h).
#pragma once

#include <array>
#include <span>
#include <string_view>

#include "core/vessel/arrangement_check.h"
#include "core/vessel/arrangement_fields.h"
#include "core/vessel/words.h"

namespace latchround {

inline constexpr std::array<Word<ArrangementTable>, 5> arrangementTableWords{
    {{ArrangementTable::Vessel, "vessel"},
     {ArrangementTable::Deck, "deck"},
     {ArrangementTable::Zone, "zone"},
     {ArrangementTable::Boundary, "boundary"},
     {ArrangementTable::Door, "door"}}};

constexpr std::string_view word(ArrangementTable value) {
    return wordIn<ArrangementTable>(arrangementTableWords, value);
}

/// The columns of a table, as the fields of its rows name them.
std::span<const ArrangementColumn> columnsOf(ArrangementTable table);

/// The column by which other rows refer to a row of the table.
constexpr std::string_view keyColumn(ArrangementTable table) {
    return table == ArrangementTable::Boundary ? "id"
           : table == ArrangementTable::Vessel ? "name"
                                               : "number";
}

} // namespace latchround
