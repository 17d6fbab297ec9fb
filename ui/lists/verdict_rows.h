// The rows of a verdict list: each requirement with its verdict, what was measured, why, and by
// which text.
#pragma once

#include <vector>

#include "core/grading/grade.h"
#include "ui/lists/two_line_row.h"

namespace latchround::ui {

/// In the order in which they are given; `key` is the requirement's id. Everything shown is copied;
/// nothing points into the grade.
std::vector<TwoLineRow> verdictRows(const std::vector<const RowGrade*>& rows);

} // namespace latchround::ui
