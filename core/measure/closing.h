// What the marks of a run say about a door: its closing time, its closing rate, the alarm's lead
// and whether the alarm held. Rules: SOLAS II-2/9.4.1.1.5.2 (time and rate), 9.4.1.1.5.10 (alarm).
#pragma once

#include <optional>
#include <vector>

#include "core/evidence/door_evidence.h"
#include "core/measure/reaction_model.h"
#include "core/measure/reading.h"
#include "core/vessel/door.h"

namespace latchround {

/// First movement to shut, seconds; on a double leaf to the second leaf home.
std::optional<Reading> closingTime(const RunRecord& run, DoorKind kind, const ReactionModel& thumb);

/// Clear opening divided by closing time, m/s. Standard uncertainty of the opening 5 mm (common
/// practice, no source). Nothing where the opening is unknown (not above 0).
std::optional<Reading> closingRate(const RunRecord& run, const Door& door,
                                   const ReactionModel& thumb);

/// Rates of the first and the second half of the opening, where the half-way mark was taken.
std::vector<Reading> halfRates(const RunRecord& run, const Door& door, const ReactionModel& thumb);

/// Alarm on to first movement, seconds.
std::optional<Reading> alarmLead(const RunRecord& run, const ReactionModel& thumb);

/// The alarm was marked, as it came on or as it stopped. A remote run without was silent, as far as
/// anybody says.
bool hasAlarmMark(const RunRecord& run);

/// The alarm was marked on later than the door shut.
bool alarmComesOnShut(const RunRecord& run, DoorKind kind);

/// Shut to alarm off, seconds; negative where the alarm stopped before the door was shut.
std::optional<Reading> alarmAfterShut(const RunRecord& run, DoorKind kind,
                                      const ReactionModel& thumb);

/// Sooner than this no leaf is home, seconds (our choice, no source): one finger made both marks.
inline constexpr double fastest_closing_s = 0.5;

/// Marked as home faster than a leaf can move.
bool isTooFastForALeaf(const RunRecord& run, DoorKind kind);

/// The complete closing runs that show something of the door: too fast for a leaf, they do not.
std::vector<const RunRecord*> countedRuns(const DoorEvidence& evidence, DoorKind kind);

/// How far apart releases of one door in good order lie, as a part of their mean: 5 per cent (our
/// choice, no source).
inline constexpr double door_repeatability = 0.05;

/// Several readings of the same thing as one. Of the mean, what differs from run to run falls with
/// the square root of their number; the rest does not. They agree when no two lie further apart
/// than sqrt 2 times one reading's random uncertainty at the coverage of k = 2 together with
/// `repeatability`, the part of the mean by which they may differ of themselves (root of the sum of
/// squares).
struct PooledReading {
    Reading mean;
    int count = 0;
    bool agree = true;
};
PooledReading pooled(const std::vector<Reading>& readings, double repeatability = 0);

} // namespace latchround
