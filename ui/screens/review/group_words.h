// What stands over a group of items, and on an item's line.
#pragma once

#include "core/deficiency/grouping.h"
#include "ui/screens/review/item_list.h"

namespace latchround::ui {

QString groupWords(GroupBy by, const ItemGroup& group); ///< "zones 3 and 4 · 2 items"

ItemLine lineOf(const Item& item, CalendarDate today);

} // namespace latchround::ui
