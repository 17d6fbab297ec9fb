// Last part of the report: what it may and may not be taken for, and the signatures.
#pragma once

#include "app/report/report_matter.h"

namespace latchround::report {

QString standingCautionsHtml(const Matter& matter);
QString signaturesHtml();
QString printedHtml(const Matter& matter);

} // namespace latchround::report
