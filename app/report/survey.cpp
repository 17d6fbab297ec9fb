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

Pieces surveyPieces(const Matter& matter, Pictures& pictures, const Pace& pace) {
    Pieces pieces{{titleHtml(matter, say("Fire door walkdown report")) +
                   summaryHtml(matter, pictures) + zonesHtml(matter)},
                  {openItemsHtml(matter)},
                  {vesselHtml(matter) + walkdownHtml(matter)}};
    for (Piece& table : doorTable(matter, pictures))
        pieces.push_back(std::move(table));
    for (Piece& door : doorDetails(matter, pictures, pace))
        pieces.push_back(std::move(door));
    pieces.push_back({otherRunsHtml(matter)});
    pieces.push_back({cautionsHtml(matter)});
    pieces.push_back({standingCautionsHtml(matter)});
    pieces.push_back({signaturesHtml(matter)});
    pieces.push_back({snapshotHtml(matter, snapshotOf(matter))});
    return pieces;
}

} // namespace latchround::report
