// The fire class that a division needs, from the two spaces it divides: the rule for main vertical
// zones first, then the rule for special category and ro-ro spaces, then the table of the ship.
// SOLAS II-2/9.2.2.1.1, 9.6.1, 9.2.2.3, 9.2.2.4, 9.2.3.3, 9.2.4.2; 46 CFR 72.05-10, 116.415.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/division/fire_table.h"
#include "core/phrase/phrase.h"
#include "core/vessel/arrangement.h"
#include "core/vessel/calendar_date.h"

namespace latchround {

/// Whether the tables asked are those of the ship's own text. NotShown: the register does not
/// settle it, and too low by them is the inspector's. None: the ship's text has none that was read.
enum class TablesAre { Own, NotShown, None };

struct DivisionQuestion {
    ShipKind ship = ShipKind::PassengerOver36;
    DivisionKind division = DivisionKind::Bulkhead;
    /// Of a deck the space below it, then the one above. Without them only a rule can answer.
    std::optional<SpacePair> spaces;
    bool sprinklers = false; ///< on both sides
    std::optional<CalendarDate> built;
    bool special_category = false; ///< it bounds a special category or ro-ro space
    TablesAre tables = TablesAre::Own;
    std::optional<int> one_space{}; ///< category of one of the two spaces, where no more is known
};

/// What answers: a cell of a table, or one of the rules that come before the tables.
enum class DivisionRule {
    Table,
    ZoneOver36,            ///< SOLAS II-2/9.2.2.1.1.1
    Zone36OrFewer,         ///< SOLAS II-2/9.2.2.1.1.2, with a cell of tables 9.3 and 9.4
    SpecialCategory,       ///< SOLAS II-2/9.6.1
    ZoneSubchapterK,       ///< 46 CFR 116.415(d)(1), with a cell of table (b) where it is known
    ZoneStepSubchapterK,   ///< 46 CFR 116.415(d)(1)
    VehicleDeckSubchapterK ///< 46 CFR 116.415(d)(2), with a cell of table (c)
};

struct RequiredClass {
    /// Class: `required` holds it. Steel: steel or equivalent, no class. Nothing: no requirement.
    /// NotPrinted: the table's cell is blank, ask the Administration. NotKnown: no table for such
    /// a division, or the spaces are not known.
    enum class Kind { Class, Steel, Nothing, NotPrinted, NotKnown };

    Kind kind = Kind::NotKnown;
    std::optional<FireClass> required;
    /// Of an A class by a rule, whatever its minutes and whether or not the spaces are known: it
    /// bounds a main vertical zone, or as `special_category` asks.
    bool a_class_by_rule = false;
    bool a_class_by_table = false; ///< so beside `one_space`, whatever other space is there
    DivisionRule rule = DivisionRule::Table;
    const FireTable* table = nullptr;  ///< into the tables; null where a rule needs none
    const PrintedCell* cell = nullptr; ///< into that table
    SpacePair spaces;                  ///< of the cell
    /// Not shown to be built on or after 1 July 2002, or to go by these tables at all: compare with
    /// the approved plan.
    bool older_tables = false;
    std::optional<FireClass> over_tanks{}; ///< enough in a deck over oil fuel tanks (SOLAS)
};

RequiredClass requiredClass(const FireTables& tables, const DivisionQuestion& question);

/// The question that a boundary of the register puts.
DivisionQuestion questionOf(const Particulars& vessel, const Boundary& boundary);

/// What goes with the answer: the notes at the cell, texts of the data as they stand, then what
/// else is to be known.
std::vector<Phrase> notesOf(const RequiredClass& answer, const DivisionQuestion& question);
std::string citeOf(const RequiredClass& answer);

/// SOLAS: as the division (II-2/9.4.1.1.2). US: a door in an division meets
/// A-15 (46 CFR 72.05-25(b)(1), 116.435(c)(1)).
FireClass doorClassIn(ShipKind ship, FireClass division);

ShipKind shipKindOf(const Particulars& vessel);

constexpr bool isOfUs(ShipKind ship) {
    return ship == ShipKind::UsH || ship == ShipKind::UsK;
}

} // namespace latchround
