// The tables and columns of the register CSV, in the order they are written: the one list both
// ways.
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string_view>

#include "core/vessel/arrangement_check.h"
#include "core/vessel/words.h"

namespace latchround {

struct ColumnSpec {
    std::string_view name;
    bool required; ///< a header without it is a fault, and so is an empty cell
};

inline constexpr std::array<Word<ArrangementTable>, 5> arrangementTableWords{
    {{ArrangementTable::Vessel, "vessel"},
     {ArrangementTable::Deck, "deck"},
     {ArrangementTable::Zone, "zone"},
     {ArrangementTable::Boundary, "boundary"},
     {ArrangementTable::Door, "door"}}};

inline constexpr std::array<ColumnSpec, 7> vesselColumns{{{"name", true},
                                                          {"number", false},
                                                          {"regime", true},
                                                          {"passengers", true},
                                                          {"keel_laid", false},
                                                          {"sprinklers", false},
                                                          {"length_m", false}}};
inline constexpr std::array<ColumnSpec, 3> deckColumns{
    {{"number", true}, {"name", false}, {"height_m", false}}};
inline constexpr std::array<ColumnSpec, 4> zoneColumns{
    {{"number", true}, {"aft_m", true}, {"forward_m", true}, {"area_m2", false}}};
inline constexpr std::array<ColumnSpec, 8> boundaryColumns{{{"id", true},
                                                            {"place", true},
                                                            {"zone_aft", true},
                                                            {"zone_forward", true},
                                                            {"x_m", true},
                                                            {"required", false},
                                                            {"division", false},
                                                            {"spaces", false}}};
inline constexpr std::array<ColumnSpec, 27> doorColumns{{{"number", true},
                                                         {"deck", true},
                                                         {"x_m", true},
                                                         {"y_m", true},
                                                         {"boundary", true},
                                                         {"kind", true},
                                                         {"class", true},
                                                         {"plate", false},
                                                         {"opening_m", true},
                                                         {"leaf_mass_kg", false},
                                                         {"power", false},
                                                         {"hold_back", false},
                                                         {"release_groups", false},
                                                         {"alarm", false},
                                                         {"designed_to_reopen", false},
                                                         {"hose_port", false},
                                                         {"escape_route", false},
                                                         {"sill_in_frame", false},
                                                         {"latch", false},
                                                         {"watertight", false},
                                                         {"weathertight", false},
                                                         {"escape_trunk", false},
                                                         {"special_category", false},
                                                         {"faces_embarkation", false},
                                                         {"normally", false},
                                                         {"installed", false},
                                                         {"maker", false}}};

constexpr std::string_view word(ArrangementTable value) {
    return wordIn<ArrangementTable>(arrangementTableWords, value);
}

constexpr std::span<const ColumnSpec> columnsOf(ArrangementTable table) {
    switch (table) {
    case ArrangementTable::Vessel:
        return vesselColumns;
    case ArrangementTable::Deck:
        return deckColumns;
    case ArrangementTable::Zone:
        return zoneColumns;
    case ArrangementTable::Boundary:
        return boundaryColumns;
    case ArrangementTable::Door:
        break;
    }
    return doorColumns;
}

/// The column by which other rows refer to a row of the table.
constexpr std::string_view keyColumn(ArrangementTable table) {
    return table == ArrangementTable::Boundary ? "id"
           : table == ArrangementTable::Vessel ? "name"
                                               : "number";
}

} // namespace latchround
