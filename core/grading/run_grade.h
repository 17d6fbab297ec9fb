// What one run by itself says of its door, beside what all its runs say together.
#pragma once

#include "core/grading/graded_walkdown.h"

namespace latchround {

/// Rows whose figure comes from the marks of this complete closing run alone: its closing time or
/// rate and its alarm, each with the verdict it would have without the door's other runs; and that
/// no alarm was marked, where one is asked for. Empty for
/// any other run. The rows point into the catalogue.
std::vector<RowGrade> rowsOfRun(const Particulars& vessel, const GradedDoor& door,
                                const RunRecord& run, const Catalogue& catalogue);

} // namespace latchround
