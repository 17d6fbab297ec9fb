// First part of the report: title, vessel, walkdown, summary and what it means for the zones.
#pragma once

#include "app/report/pictures.h"
#include "app/report/report_data.h"

namespace latchround::report {

/// The document's name over vessel and walkdown, and that it is practice where it is.
QString titleHtml(const ReportData& data, const QString& name);
/// "annual walkdown begun 25 Nov 2026 10:42".
QString walkdownWords(const ReportData& data);
QString vesselHtml(const ReportData& data);
QString walkdownHtml(const ReportData& data);
QString summaryHtml(const ReportData& data, Pictures& pictures);
QString zonesHtml(const ReportData& data);

} // namespace latchround::report
