// What the marks of a run say about a door: its closing time, its closing rate, the alarm's lead
// and whether the alarm held. Rules: SOLAS II-2/9.4.1.1.5.2 (time and rate), 9.4.1.1.5.10 (alarm).
#pragma once

#include <optional>
#include <vector>

#include "core/evidence/door_evidence.h"
#include "core/measure/reading.h"
#include "core/vessel/door.h"

namespace latchround {

/// First movement to shut, seconds; on a double leaf to the second leaf home.
std::optional<Reading> closingTime(const RunRecord& run, DoorKind kind, const ThumbError& thumb);

/// Length over time with its uncertainty by the law of propagation (JCGM 100, 5.1.2); m and s give
/// m/s. Nothing where time is not above 0.
std::optional<Reading> rateOf(const Reading& length_m, const Reading& time_s);

/// Clear opening divided by closing time, m/s. Standard uncertainty of the opening 5 mm (common
/// practice, no source). Nothing where the opening is unknown (not above 0).
std::optional<Reading> closingRate(const RunRecord& run, const Door& door, const ThumbError& thumb);

/// Rates of the first and the second half of the opening, where the half-way mark was taken.
std::vector<Reading> halfRates(const RunRecord& run, const Door& door, const ThumbError& thumb);

/// Alarm on to first movement, seconds.
std::optional<Reading> alarmLead(const RunRecord& run, const ThumbError& thumb);

/// Shut to alarm off, seconds; negative where the alarm stopped before the door was shut.
std::optional<Reading> alarmAfterShut(const RunRecord& run, DoorKind kind, const ThumbError& thumb);

/// Several readings of the same thing as one. They agree when no two lie further apart than
/// 2 sqrt(2) u_random (a coverage of 95 % for their difference).
struct Together {
    Reading mean;
    int count = 0;
    bool agree = true;
};
Together together(const std::vector<Reading>& readings);

} // namespace latchround
