#include "app/report/cautions_section.h"
#include "app/report/closing_matter.h"
#include "app/report/door_details.h"
#include "app/report/door_table.h"
#include "app/report/front_matter.h"
#include "app/report/item_table.h"
#include "app/report/printed_kinds.h"
#include "app/report/report_words.h"
#include "app/report/run_table.h"
#include "app/report/signed_section.h"
#include "app/report/snapshot_section.h"

namespace latchround::report {

Pieces surveyPieces(const ReportData& data, Pictures& pictures, const ProgressRange& pace) {
    Pieces pieces{{titleHtml(data, Report::tr("Survey report")) + summaryHtml(data, pictures) +
                   zonesHtml(data)},
                  {openItemsHtml(data)},
                  {vesselHtml(data) + walkdownHtml(data)}};
    for (Piece& table : doorTable(data, pictures))
        pieces.push_back(std::move(table));
    for (Piece& door : doorDetails(data, pictures, pace))
        pieces.push_back(std::move(door));
    pieces.push_back({otherRunsHtml(data)});
    pieces.push_back({cautionsHtml(data)});
    pieces.push_back({standingCautionsHtml(data)});
    pieces.push_back({signaturesHtml(data)});
    pieces.push_back({snapshotHtml(data, snapshotOf(data))});
    return pieces;
}

} // namespace latchround::report
