// The printed documents, each as the pieces it is made of.
#pragma once

#include "app/report/page/page_printer.h"
#include "app/report/pictures.h"
#include "app/report/report_matter.h"

namespace latchround::report {

/// Not all of them where `pace` stops it.
Pieces surveyPieces(const Matter& matter, Pictures& pictures, const Pace& pace = Pace());

/// Open items for the master, gravest first; a lying sheet.
Pieces deficiencyListPieces(const Matter& matter, Pictures& pictures);

/// Open items for the crew, by whom they are assigned to and by zone, with boxes to tick.
Pieces workListPieces(const Matter& matter, Pictures& pictures);

/// One door on one page, shortened until it fits.
Pieces doorRecordPieces(const Matter& matter, const Door& door, Pictures& pictures,
                        const Pace& pace = Pace());

} // namespace latchround::report
