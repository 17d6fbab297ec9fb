// One block a door that needs attention: each row that is not in order with its limit, figure,
// reason and source, and everything written, photographed and timed at the door.
#pragma once

#include "app/report/pictures.h"
#include "app/report/report_matter.h"

namespace latchround::report {

/// Worst doors first; empty where no door needs a block.
QString doorDetailsHtml(const Matter& matter, Pictures& pictures);

} // namespace latchround::report
