// What is due, in a few words.
#pragma once

#include <QString>

#include "core/planning/due.h"

namespace latchround::ui {

QString periodWords(Period every); ///< "weekly"

/// "Lamps of the fire door control panels are tested"; "Passenger ship safety certificate".
QString dueTitle(const DueItem& item);

/// "weekly · due 27 Nov 2026 · last 20 Nov 2026": overdue said first.
QString dueDetail(const DueItem& item, CalendarDate today);

/// The whole list in few words: "2 overdue", "next due 27 Nov 2026".
QString dueSummary(const std::vector<DueItem>& items);

} // namespace latchround::ui
