// One block a door that needs attention: each row that is not in order with its limit, figure,
// reason and source, and everything written, photographed and timed at the door.
#pragma once

#include "app/report/page/page_printer.h"
#include "app/report/pictures.h"
#include "app/report/report_data.h"

namespace latchround::report {

/// A piece a door, worst doors first; none where no door needs one.
Pieces doorDetails(const ReportData& data, Pictures& pictures,
                   const ProgressRange& pace = ProgressRange());

} // namespace latchround::report
