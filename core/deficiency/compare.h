// Two walkdowns side by side: which rows failed only now, which fail no longer, and which went for
// the worse or the better without that.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/grading/graded_walkdown.h"

namespace latchround {

/// New: unsatisfactory now, and not before. Gone: unsatisfactory before, satisfactory now. Worse,
/// Better: the verdict went down or up otherwise, or the figure moved towards its nearest limit or
/// away from it by more than both its uncertainties explain (at k = 2). A row that either walk
/// left untested, or did not ask, is not compared, but that New takes in what was not tested
/// before.
enum class Change { New, Worse, Gone, Better };

struct RowChange {
    Change change = Change::New;
    const GradedDoor* door = nullptr; ///< of the later walk
    const RowGrade* before = nullptr; ///< null where the earlier walk did not have the row
    const RowGrade* after = nullptr;
};

/// New, worse, gone, better; of each the doors in the order of the later walk. Into the doors
/// given.
std::vector<RowChange> compare(const std::vector<GradedDoor>& before,
                               const std::vector<GradedDoor>& after);

} // namespace latchround
