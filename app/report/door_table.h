// One line a door: where it is, its three classes, its verdict, what is wrong with it and its
// figures.
#pragma once

#include "app/report/page/page_printer.h"
#include "app/report/pictures.h"
#include "app/report/report_data.h"

namespace latchround::report {

/// In the order of the walk; of a large vessel a table each time the walk comes to another deck.
Pieces doorTable(const ReportData& data, Pictures& pictures);

/// "zone bulkhead 2/3", "stairway (stair 1)".
QString boundaryPlaceWords(const Boundary& boundary);

/// "A-60" as read at the door, "none", "illegible" or "not read".
QString plateReadWords(const DoorEvidence& evidence);

} // namespace latchround::report
