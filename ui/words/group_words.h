// What stands over a group of items, and on an item's line.
#pragma once

#include "core/deficiency/grouping.h"
#include "ui/lists/two_line_row.h"

namespace latchround::ui {

QString groupWords(GroupBy by, const ItemGroup& group); ///< "zones 3 and 4 · 2 items"

TwoLineRow lineOf(const Item& item, CalendarDate today);

} // namespace latchround::ui
