// First part of the report: title, vessel, walkdown, summary and what it means for the zones.
#pragma once

#include "app/report/pictures.h"
#include "app/report/report_matter.h"

namespace latchround::report {

/// The document's name over vessel and walkdown, and that it is practice where it is.
QString titleHtml(const Matter& matter, const QString& name);
/// "annual walkdown begun 25 Nov 2026 10:42".
QString walkdownWords(const Matter& matter);
QString vesselHtml(const Matter& matter);
QString walkdownHtml(const Matter& matter);
QString summaryHtml(const Matter& matter, Pictures& pictures);
QString zonesHtml(const Matter& matter);

} // namespace latchround::report
