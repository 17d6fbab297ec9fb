// Who signed the walkdown in the register, whether the facts are still those that were signed, and
// what was recorded later; and lines for ink.
#pragma once

#include "app/report/report_data.h"

namespace latchround::report {

QString signaturesHtml(const ReportData& data);

/// Lines for ink alone.
QString linesToSignHtml();

} // namespace latchround::report
