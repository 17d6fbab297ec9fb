// What the profile says of bulkheads that do not hold: which zones act as one, and how long that
// is.
#pragma once

#include <QStringList>

#include "core/integrity/zone_integrity.h"

namespace latchround::ui {

/// "bulkhead 2/3 open at deck 7 (door 7-02): zones 2 and 3 act as one, 69 m against 40 m, at
/// most 48 m".
QString actingWords(const Arrangement& arrangement, const ActingZone& acting);

/// "mending door 7-02 in bulkhead 2/3 restores most".
QString repairWords(const Repair& repair);

/// "not shown to hold yet: bulkheads 1/2 and 3/4".
QString notShownWords(const std::vector<ActingZone>& not_shown,
                      const std::vector<ActingZone>& failing);

} // namespace latchround::ui
