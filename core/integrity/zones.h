// Which main vertical zones act as one while doors between them do not hold, and how long that is.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/grading/verdict.h"
#include "core/vessel/arrangement.h"

namespace latchround {

/// Length of a zone as a rule, and at most, metres (SOLAS II-2/3.32, 9.2.2.1.2).
inline constexpr double zone_length_rule_m = 40;
inline constexpr double zone_length_most_m = 48;
/// Area of an extended zone on any deck, square metres (SOLAS II-2/9.2.2.1.2).
inline constexpr double zone_area_most_m2 = 1600;

struct ActingZone {
    std::vector<std::string> zones;      ///< numbers, from aft to forward
    double length_m = 0;                 ///< from the aftermost limit to the foremost
    std::optional<double> area_m2{};     ///< of all of them; nothing where one is not known
    std::vector<std::string> doors;      ///< the doors that join them
    std::vector<std::string> boundaries; ///< the bulkheads they stand in
};

/// Whether a door is to be taken as open to fire.
using IsOpen = std::function<bool(const Door&)>;

/// Only groups of two or more zones; empty when every zone bulkhead holds.
std::vector<ActingZone> actingZones(const Arrangement& arrangement, const IsOpen& is_open);

/// The group this door would join if it stayed open, with all that is open already; no zones where
/// the door stands in no zone bulkhead.
ActingZone ifItStaysOpen(const Arrangement& arrangement, const IsOpen& is_open, const Door& door);

} // namespace latchround
