// The same matter for other programs: tables as CSV, and JSON.
#pragma once

#include <string>

#include "app/report/report_matter.h"

namespace latchround::report {

/// A row of the catalogue at a door a line: verdict, figure, limits, reason.
std::string surveyCsv(const Matter& matter);
/// An item a line, closed ones included.
std::string itemsCsv(const Matter& matter);

/// Both as resources/schema/report.schema.json says; the survey is a grade output too.
std::string surveyJson(const Matter& matter);
std::string itemsJson(const Matter& matter);

} // namespace latchround::report
