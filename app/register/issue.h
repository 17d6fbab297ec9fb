// One issue of a vessel's arrangement: the moment it was adopted, and what it says. The same moment
// and the same content are the same issue, on whichever tablet.
#pragma once

#include "core/evidence/stamp.h"
#include "core/vessel/arrangement.h"

namespace latchround {

struct Issue {
    Moment adopted;
    Arrangement arrangement;

    bool operator==(const Issue&) const = default;
};

/// The order of issues, the same on every tablet: by moment, then by content. The last one is in
/// force.
bool isEarlier(const Issue& one, const Issue& other);

} // namespace latchround
