// The same matter for other programs: tables as CSV, and JSON.
#pragma once

#include <string>

#include "app/report/report_data.h"

namespace latchround::report {

/// A row of the catalogue at a door a line: verdict, figure, limits, reason.
std::string surveyCsv(const ReportData& data);
/// An item a line, closed ones included.
std::string itemsCsv(const ReportData& data);

/// Both as resources/schema/report.schema.json says; the survey is a grade output too.
std::string surveyJson(const ReportData& data);
std::string itemsJson(const ReportData& data);

} // namespace latchround::report
