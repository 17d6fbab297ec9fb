// Whether a row is asked of a door aboard a vessel, and why or why not, so that a surveyor can
// check it.
#pragma once

#include <optional>
#include <utility>

#include "core/phrase/phrase.h"
#include "core/requirement/requirement.h"
#include "core/vessel/arrangement.h"

namespace latchround {

/// Judge: asked, but its text was not read for ships of this date: a failure is the inspector's to
/// decide.
enum class Asked { Yes, Judge, Advice, No };

/// SOLAS II-2/9.4.1.1.5: fire doors in main vertical zone bulkheads, galley boundaries and stairway
/// enclosures, and in the boundaries of horizontal zones, which special category spaces are
/// (II-2/20.2.2.3); except power-operated watertight doors and those normally locked. Of a boundary
/// that is none of those the register may not say whether it bounds such a space.
Said isListed(const Door& door, Place place);

/// What the conditions ask of the boundary a door stands in.
struct DoorLocation {
    DoorLocation(Place where, Division upright = Division::Bulkhead)
        : place(where)
        , division(upright) {}
    explicit DoorLocation(const Boundary& boundary)
        : place(boundary.place)
        , division(boundary.division)
        , spaces(boundary.spaces)
        , asked_class(boundary.required) {}
    /// A door whose boundary is not known stands in some other boundary.
    explicit DoorLocation(const Boundary* boundary)
        : DoorLocation(boundary ? DoorLocation(*boundary) : DoorLocation(Place::Other)) {}
    /// By the fire tables where the register has no class for the boundary (DoorClass::division).
    DoorLocation(const Boundary* boundary, std::optional<FireClass> by_tables)
        : DoorLocation(boundary) {
        if (!asked_class)
            asked_class = by_tables;
    }
    Place place;
    Division division;
    std::optional<std::pair<int, int>> spaces{}; ///< categories, as Boundary has them
    std::optional<FireClass> asked_class{};      ///< of the boundary; unknown if absent
};

/// The row itself, or the variant of it that stands in its place at this door.
const Requirement& inForce(const Requirement& requirement, const Particulars& vessel,
                           const Door& door, const DoorLocation& location);

Asked howAsked(const Requirement& requirement, const Particulars& vessel, const Door& door,
               const DoorLocation& location);

/// Whether the row speaks to ships of this flag at all, as a rule or as advice.
bool speaksTo(const Requirement& requirement, const Particulars& vessel);

/// The door meets one of these conditions, or there are none.
bool meetsOneOf(const std::vector<DoorCondition>& conditions, const Door& door,
                const DoorLocation& location);

/// Why howAsked() answers as it does: "zone bulkhead, sliding"; for No the condition that fails.
Phrase askedBecause(const Requirement& requirement, const Particulars& vessel, const Door& door,
                    const DoorLocation& location);

} // namespace latchround
