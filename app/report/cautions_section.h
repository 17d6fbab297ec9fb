// Which safety questions were answered before doors were released, by whom and when, and which
// remote runs went ahead without all of them.
#pragma once

#include "app/report/report_matter.h"

namespace latchround::report {

QString cautionsHtml(const Matter& matter);

} // namespace latchround::report
