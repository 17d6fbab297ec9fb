// How far the main vertical zones stand apart: which act as one because doors fail, which are not
// shown to stand apart because doors are not tried, and what repair restores most.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/integrity/zones.h"

namespace latchround {

/// NotShown: untested, or not settled yet.
enum class Holding { Holds, NotShown, Fails };
using HoldingOf = std::function<Holding(const Door&)>;

/// The failing doors of one bulkhead, mended together.
struct Repair {
    std::string boundary;
    std::vector<std::string> doors;
    double longest_before_m = 0; ///< longest zones acting as one while it fails
    double longest_after_m = 0;  ///< and when it is mended; 0 where none act as one any more
};

struct ZoneIntegrity {
    std::vector<ActingZone> failing; ///< zones that act as one through doors that fail
    /// Groups that would be larger if the doors that are not shown to hold failed as well.
    std::vector<ActingZone> not_shown;
    /// Of the bulkheads with fewest doors to mend, the one that leaves the shortest zones acting as
    /// one; the aftermost where they are equal. Nothing where no door of a zone bulkhead fails.
    std::optional<Repair> best_repair;
};

ZoneIntegrity zoneIntegrity(const Arrangement& arrangement, const HoldingOf& holding);

} // namespace latchround
