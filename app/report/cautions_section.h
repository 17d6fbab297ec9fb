// Which safety questions were answered before doors were released, by whom and when, and which
// remote runs went ahead without all of them.
#pragma once

#include "app/report/report_data.h"

namespace latchround::report {

QString cautionsHtml(const ReportData& data);

} // namespace latchround::report
