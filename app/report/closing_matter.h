// Last part of a document: what it may and may not be taken for.
#pragma once

#include "app/report/report_data.h"

namespace latchround::report {

/// Of the survey report.
QString standingCautionsHtml(const ReportData& data);

/// Of lists and of what is written by hand: whose rules stand above it, and that doors can crush.
/// `vessel`: null where it is of none in particular.
QString deferenceHtml(const Catalogue& catalogue, const Particulars* vessel);

} // namespace latchround::report
