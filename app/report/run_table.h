// Runs of a door in words: every mark of a complete run in seconds, and what became of the others.
// A run that was stopped, void or never ended shows no time: it is no measurement.
#pragma once

#include "app/report/report_data.h"

namespace latchround::report {

/// A table; empty where the door has no runs.
QString runTableHtml(const ReportData& data, const GradedDoor& door);

/// All runs of the doors without a block of their own, by door; empty where there are none.
QString otherRunsHtml(const ReportData& data);

} // namespace latchround::report
