// Rows that are a number against limits: timed from marks or typed in after a gauge.
#pragma once

#include "core/grading/row_check.h"

namespace latchround {

/// Runs that agree are averaged; of runs that do not, the worst stands. After three runs still too
/// close to a limit the inspector decides. Outside a band that its text calls approximate the
/// inspector decides as far as the row's margin reaches. A figure of a gauge is settled at once, by
/// the step of its instrument.
RowCheck checkFigure(const Requirement& requirement, const Door& door,
                     const DoorEvidence& evidence);

} // namespace latchround
