// Which main vertical zones act as one while doors between them do not hold, and how long that is.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/grading/verdict.h"
#include "core/vessel/arrangement.h"

namespace latchround {

/// How large a main vertical zone may be on any deck, by the text of the ship as far as that was
/// read. It decides no verdict.
struct ZoneLimits {
    std::optional<double> rule_m{};  ///< mean length as a rule, metres
    std::optional<double> most_m{};  ///< of an extended zone, metres
    std::optional<double> area_m2{}; ///< of an extended zone, square metres
    bool in_cabin_areas = false;     ///< only there
    std::string_view cite{};         ///< empty where nothing was read for this ship

    bool operator==(const ZoneLimits&) const = default;
};

/// SOLAS, built on or after 1 July 2002: II-2/3.32, 9.2.2.1.2, and what takes that in (SOR/2017-14,
/// ss. 101, 102). From 1 October 1994: 48 m and 1600 m2 came with MSC.27(61) (II-2/24.1.1, 24.2);
/// the 40 m before it are from memory. Subchapter H: 131 ft, without extension or area (46 CFR
/// 72.05-10(b)). Subchapter K: 40 m (131 ft); 44 m (144 ft) by leave of the Marine Safety Center,
/// without area (116.415(d)(1)(i), (iv)). Inland vessels of the EU: partitions every 40 m at most
/// in cabin areas (Directive 2006/87/EC, annex II, art. 15.11(10)). Ships of other dates or of no
/// known date, and other flags: nothing.
ZoneLimits zoneLimits(const Particulars& vessel);

struct ActingZone {
    std::vector<std::string> zones;      ///< numbers, from aft to forward
    double length_m = 0;                 ///< from the aftermost limit to the foremost
    std::optional<double> area_m2{};     ///< of all of them; nothing where one is not known
    ZoneLimits limits{};                 ///< of one zone of this ship
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
