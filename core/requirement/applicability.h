// Whether a row is asked of a door aboard a vessel, and why or why not, in words a surveyor can
// check.
#pragma once

#include <string>

#include "core/requirement/requirement.h"
#include "core/vessel/arrangement.h"

namespace latchround {

enum class Asked { Yes, Advice, No };

/// SOLAS II-2/9.4.1.1.5: fire doors in main vertical zone bulkheads, galley boundaries and stairway
/// enclosures, except power-operated watertight doors and those normally locked.
bool isListed(const Door& door, Place place);

Asked howAsked(const Requirement& requirement, const Particulars& vessel, const Door& door,
               Place place);

/// Why howAsked() answers as it does: "zone bulkhead, sliding"; for No the condition that fails.
std::string askedBecause(const Requirement& requirement, const Particulars& vessel,
                         const Door& door, Place place);

} // namespace latchround
