// Whether a row is asked of a door aboard a vessel, and why or why not, so that a surveyor can
// check it.
#pragma once

#include "core/phrase/phrase.h"
#include "core/requirement/requirement.h"
#include "core/vessel/arrangement.h"

namespace latchround {

enum class Asked { Yes, Advice, No };

/// SOLAS II-2/9.4.1.1.5: fire doors in main vertical zone bulkheads, galley boundaries and stairway
/// enclosures, except power-operated watertight doors and those normally locked.
bool isListed(const Door& door, Place place);

/// What the conditions ask of the boundary a door stands in.
struct DoorLocation {
    DoorLocation(Place where, Division upright = Division::Bulkhead)
        : place(where)
        , division(upright) {}
    /// A door whose boundary is not known stands in some other boundary.
    explicit DoorLocation(const Boundary* boundary)
        : DoorLocation(boundary ? boundary->place : Place::Other,
                       boundary ? boundary->division : Division::Bulkhead) {}
    Place place;
    Division division;
};

/// The row itself, or the variant of it that stands in its place at this door.
const Requirement& inForce(const Requirement& requirement, const Particulars& vessel,
                           const Door& door, DoorLocation location);

Asked howAsked(const Requirement& requirement, const Particulars& vessel, const Door& door,
               DoorLocation location);

/// Whether the row speaks to ships of this flag at all, as a rule or as advice.
bool speaksTo(const Requirement& requirement, const Particulars& vessel);

/// The door meets one of these conditions, or there are none.
bool meetsOneOf(const std::vector<DoorCondition>& conditions, const Door& door,
                DoorLocation location);

/// Why howAsked() answers as it does: "zone bulkhead, sliding"; for No the condition that fails.
Phrase askedBecause(const Requirement& requirement, const Particulars& vessel, const Door& door,
                    DoorLocation location);

} // namespace latchround
