// The fire class that is asked of a door where it stands: by the approved plan or by the tables.
#pragma once

#include <optional>

#include "core/division/required_class.h"
#include "core/requirement/applicability.h"
#include "core/vessel/arrangement.h"

namespace latchround {

/// The class a door must have where it stands, and who says so.
struct DoorClass {
    enum class Kind { Class, Free, NotPrinted, NotKnown };
    Kind kind = Kind::NotKnown;                ///< Free: no class is asked
    ShipKind ship = ShipKind::PassengerOver36; ///< by whose tables
    std::optional<FireClass> division;         ///< class of the division
    std::optional<FireClass> door;             ///< class its door needs
    bool from_plan = false;                    ///< the register's own (the approved plan)
    RequiredClass by_rule;                     ///< what rules and tables say
};

/// The approved plan's class where the register has it, else that of the rules and tables. A door
/// needs the class of its division; by the US rule less (doorClassIn).
DoorClass doorClassAsked(const Particulars& vessel, const Boundary* boundary,
                         const FireTables& tables);

/// The approved plan shows no A class where a rule or the tables ask for one.
bool isPlanBelowTables(const DoorClass& asked);

/// Where the door stands, for the conditions of a row. A boundary that is not known is some other;
/// one that is of an A class by rule is asked as such whatever the plan shows, and so is a zone
/// bulkhead or stairway that nobody has classed.
DoorLocation locationOf(const Boundary* boundary, const DoorClass& asked);
DoorLocation locationOf(const Particulars& vessel, const Boundary* boundary,
                        const FireTables& tables);

} // namespace latchround
