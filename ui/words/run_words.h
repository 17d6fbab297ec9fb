// A run and a plate in the fewest words, for the rows of the door screen and the stopwatch's foot.
#pragma once

#include <QString>

#include "core/evidence/door_evidence.h"
#include "core/vessel/door.h"

namespace latchround::ui {

/// "15.3 s", "void", "stopped", "cut short".
QString runWords(const RunRecord& run, const Door& door);

/// "reads A-60", "no plate", "illegible".
QString plateWords(const PlateRead& plate);

/// "alarm on 0.00 · leaf moves 6.41": marks in seconds from the run's first mark.
QString marksLine(const RunRecord& run);

} // namespace latchround::ui
