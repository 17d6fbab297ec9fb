// The printed documents, each as the pieces it is made of.
#pragma once

#include "app/report/page/page_printer.h"
#include "app/report/pictures.h"
#include "app/report/report_data.h"

namespace latchround::report {

/// Not all of them where `pace` stops it.
Pieces surveyPieces(const ReportData& data, Pictures& pictures,
                    const ProgressRange& pace = ProgressRange());

/// Open items for the master, most severe first; a lying sheet.
Pieces deficiencyListPieces(const ReportData& data, Pictures& pictures);

/// Open items for the crew, by whom they are assigned to and by zone, with boxes to tick.
Pieces workListPieces(const ReportData& data, Pictures& pictures);

/// One door on one page, shortened until it fits.
Pieces doorRecordPieces(const ReportData& data, const Door& door, Pictures& pictures,
                        const ProgressRange& pace = ProgressRange());

} // namespace latchround::report
