// Who signed the walkdown in the register, whether the facts are still those that were signed, and
// what was recorded later; and lines for ink.
#pragma once

#include "app/report/report_matter.h"

namespace latchround::report {

QString signaturesHtml(const Matter& matter);

/// Lines for ink alone.
QString linesToSignHtml();

} // namespace latchround::report
