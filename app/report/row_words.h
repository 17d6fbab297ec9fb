// Who recorded what a row's verdict rests on, and when.
#pragma once

#include "app/report/report_data.h"

namespace latchround::report {

/// "Isbel Thornquay, 25 Nov 2026 10:42" of the newest fact behind the row; empty where the register
/// alone speaks.
QString recordedWords(const ReportData& data, const GradedDoor& door, const RowGrade& row);

/// "Isbel Thornquay, 25 Nov 2026 10:42".
QString stampWords(const ReportData& data, const Stamp& stamp);

} // namespace latchround::report
