// What stands over a group of items.
#pragma once

#include <QString>

#include "core/deficiency/grouping.h"

namespace latchround::ui {

QString groupWords(GroupBy by, const ItemGroup& group); ///< "zones 3 and 4 · 2 items"

} // namespace latchround::ui
