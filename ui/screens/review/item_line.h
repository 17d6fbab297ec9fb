// An item as a row of two lines.
#pragma once

#include "core/deficiency/item.h"
#include "ui/lists/two_line_row.h"

namespace latchround::ui {

TwoLineRow lineOf(const Item& item, CalendarDate today);

} // namespace latchround::ui
