// Open items in the words of every document that shows them.
#pragma once

#include "app/report/report_data.h"

namespace latchround::report {

/// What must be true, in the words of the requirement; of an item about the whole door, that.
QString askedWords(const Item& item);

/// "deck 5, zone bulkhead 2/3, zones 2 and 3".
QString itemPlaceWords(const ReportData& data, const Item& item);

/// "zones 2 and 3", "zone 1": of the boundary the door stands in; "zone not known".
QString zoneOfItem(const ReportData& data, const Item& item);

/// What is wrong: the requirement, what was written of it, its source, whether it is a repeat, and
/// what keeps it open.
QString wrongHtml(const Item& item);

/// When it was found last, and what has been done since: "found 25 Nov 2026 by Maren Holt;
/// rectified 27 Nov 2026 by the carpenter".
QString courseHtml(const ReportData& data, const Item& item);

/// Section of the survey report: one line an open item.
QString openItemsHtml(const ReportData& data);

} // namespace latchround::report
