// Who recorded what a row's verdict rests on, and when.
#pragma once

#include "app/report/report_matter.h"

namespace latchround::report {

/// "Isbel Thornquay, 25 Nov 2026 10:42" of the newest fact behind the row; empty where the register
/// alone speaks.
QString recordedWords(const Matter& matter, const GradedDoor& door, const RowGrade& row);

/// "Isbel Thornquay, 25 Nov 2026 10:42".
QString stampWords(const Matter& matter, const Stamp& stamp);

} // namespace latchround::report
