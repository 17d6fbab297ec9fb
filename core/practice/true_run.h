// One run of a practice door as it really goes, from the release on.
#pragma once

#include <limits>
#include <vector>

#include "core/practice/door_truth.h"
#include "core/practice/motion.h"

namespace latchround::practice {

inline constexpr double never_s = std::numeric_limits<double>::infinity();

/// Seconds from the release. Of a double door `first` is the leaf that should come home first.
struct TrueCourse {
    Motion first;
    Motion second;
    double alarm_on_s = never_s;
    double alarm_off_s = never_s;
    std::vector<TrueEvent> events; ///< in order of time
};

/// `truth` as it stands: a wedge in place keeps the leaf where it is.
TrueCourse courseOf(const DoorTruth& truth, const Door& door, Release release, RunKind kind);

/// Whether the leaf meets whoever walks in: nobody stopped it within `stop_within_s` of the first
/// step into the opening. `until_s`: until when the run was watched; seconds from the release.
bool meetsPasserBy(const DoorTruth& truth, const TrueCourse& course,
                   std::optional<double> stopped_s, double until_s);

/// A person who watches the leaf stops it within this time (our choice, no source).
inline constexpr double stop_within_s = 3;

/// How far the leaf still is from the frame, as a part of the opening, when it runs onto the block
/// of a contact run.
inline constexpr double block_at_open = 0.1;

} // namespace latchround::practice
