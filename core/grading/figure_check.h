// Rows that are a number against limits: timed from marks or typed in after a gauge.
#pragma once

#include "core/grading/row_check.h"

namespace latchround {

/// Runs that agree are averaged; of runs that do not, the worst stands. After three runs still too
/// close to a limit the inspector decides, because the text says "approximate" (SOLAS
/// II-2/9.4.1.1.5.2).
RowCheck checkFigure(const Requirement& requirement, const Door& door,
                     const DoorEvidence& evidence);

/// The step a gauge is read to in this unit: 1 mm for "mm", 10 mm for "m", 5 cm2 for "m2", 1 N for
/// "N" (our choice, no source); 0 for others.
double gaugeStep(std::string_view unit);

} // namespace latchround
