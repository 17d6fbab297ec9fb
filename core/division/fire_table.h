// The tables that say what fire class the division between two spaces needs: SOLAS II-2 tables 9.1
// to 9.8 and those of 46 CFR 72.05-10 and 116.415. They are data (resources/boundaries); a cell is
// kept as it is printed.
#pragma once

#include <array>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/division/printed_cell.h"
#include "core/error/error.h"
#include "core/vessel/words.h"

namespace latchround {

/// Whose table a ship goes by.
enum class ShipKind { PassengerOver36, Passenger36OrFewer, Cargo, Tanker, UsH, UsK };

/// ZoneBulkhead bounds a main vertical zone; ZoneStep is a deck that forms a step of one.
enum class DivisionKind { Bulkhead, Deck, ZoneBulkhead, ZoneStep };

inline constexpr std::array<Word<ShipKind>, 6> shipKindWords{
    {{ShipKind::PassengerOver36, "passenger-over-36"},
     {ShipKind::Passenger36OrFewer, "passenger-36-or-fewer"},
     {ShipKind::Cargo, "cargo"},
     {ShipKind::Tanker, "tanker"},
     {ShipKind::UsH, "us-h"},
     {ShipKind::UsK, "us-k"}}};
inline constexpr std::array<Word<DivisionKind>, 4> divisionKindWords{
    {{DivisionKind::Bulkhead, "bulkhead"},
     {DivisionKind::Deck, "deck"},
     {DivisionKind::ZoneBulkhead, "zone-bulkhead"},
     {DivisionKind::ZoneStep, "zone-step"}}};

constexpr std::string_view word(ShipKind value) {
    return wordIn<ShipKind>(shipKindWords, value);
}
constexpr std::string_view word(DivisionKind value) {
    return wordIn<DivisionKind>(divisionKindWords, value);
}

/// A kind of space as a table numbers it, with examples to choose it by.
struct SpaceCategory {
    int number = 0; ///< 1 to 14 at most
    std::string name;
    std::vector<std::string> examples;
};

/// Two categories: of a bulkhead the lower first; of a deck the space below it, then the one above.
using SpacePair = std::pair<int, int>;

struct FireTable {
    std::string id;    ///< "solas-9.1"
    std::string name;  ///< "SOLAS II-2 table 9.1"
    std::string title; ///< what it is of, in our words
    std::string cite;
    ShipKind ship = ShipKind::PassengerOver36;
    DivisionKind division = DivisionKind::Bulkhead;
    std::vector<SpaceCategory> categories;
    std::map<SpacePair, PrintedCell> cells;
    std::map<SpacePair, PrintedCell> before_2014_07; ///< of ships built before 1 July 2014
    std::map<std::string, std::string> notes;        ///< by their mark in a cell
    std::vector<std::string> remarks;                ///< that hold for the whole table
};

/// Decks are not symmetric: what is below matters.
constexpr bool hasDirection(DivisionKind division) {
    return division == DivisionKind::Deck || division == DivisionKind::ZoneStep;
}

struct FireTables {
    std::string edition;
    std::vector<std::string> remarks;
    std::vector<FireTable> tables;
    std::shared_ptr<const std::string> text{}; ///< that they were read from
};

/// All faults by JSON pointer in one pass, or all tables. `name` stands in errors for the file.
/// A table must have a cell, printed or not, for every pair of its categories.
Checked<FireTables> fireTablesFrom(std::string_view json, Phrase name);

/// The table of such divisions, or null where there is none.
const FireTable* findTable(const FireTables& tables, ShipKind ship, DivisionKind division);

} // namespace latchround
