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
/// (II-2/20.2.2.3); except power-operated watertight doors and those normally locked. A boundary
/// that is none of those may bound such a space too: where the register does not say whether the
/// door gives access to one, it is not known.
Said isListed(const Door& door, Place place);

BoundaryFamily familyOf(FireClass fire_class);

/// Outside what the text is for, as far as a register tells: fewer than 50 passengers under 46 CFR
/// subchapter K; a Canadian day boat of 100 passengers or more, or under 24 m (SOR/2017-14, s.
/// 201).
bool isOutsideReach(const Particulars& vessel);

/// What the conditions ask of the boundary a door stands in. Of a boundary of the register:
/// locationOf (core/grading/door_class.h), which knows the class that is asked of it.
struct DoorLocation {
    DoorLocation(Place where, Division upright = Division::Bulkhead)
        : place(where)
        , division(upright) {}
    Place place;
    Division division;
    std::optional<std::pair<int, int>> spaces{}; ///< categories, as Boundary has them
    std::optional<BoundaryFamily> family{};      ///< of the class asked of it; unknown if absent
    bool plan_below_tables = false; ///< no A class by the plan, where rules or tables ask for one
};

/// The row itself, or the variant of it that stands in its place at this door.
const Requirement& inForce(const Requirement& requirement, const Particulars& vessel,
                           const Door& door, const DoorLocation& location);

Asked howAsked(const Requirement& requirement, const Particulars& vessel, const Door& door,
               const DoorLocation& location);

/// Of a row that is asked: the register says all that makes it so. Else it is asked for want of a
/// word.
bool isShownToBeAsked(const Requirement& requirement, const Particulars& vessel, const Door& door,
                      const DoorLocation& location);

/// Whether the row speaks to ships of this flag at all, as a rule or as advice.
bool speaksTo(const Requirement& requirement, const Particulars& vessel);

/// The door meets one of these conditions, or there are none.
bool meetsOneOf(const std::vector<DoorCondition>& conditions, const Door& door,
                const DoorLocation& location);

/// The register shows that the door meets one of these; what it does not say shows nothing.
bool isShownToMeetOneOf(const std::vector<DoorCondition>& conditions, const Door& door,
                        const DoorLocation& location);

/// Why howAsked() answers as it does: "zone bulkhead, sliding"; for No the condition that fails.
Phrase askedBecause(const Requirement& requirement, const Particulars& vessel, const Door& door,
                    const DoorLocation& location);

} // namespace latchround
