// What the profile says of bulkheads that do not hold: which zones act as one, and how long that
// is.
#pragma once

#include <QStringList>

#include "core/integrity/zone_integrity.h"

namespace latchround::ui {

/// "bulkhead 2/3 open at deck 7 (door 7-02): zones 2 and 3 act as one, 69 m long; limit 40 m,
/// 48 m maximum".
QString actingWords(const Arrangement& arrangement, const ActingZone& acting);

/// "; limit 40 m, 48 m maximum", to follow a length; empty where no limit was read for the ship.
QString limitWords(const ZoneLimits& limits);

/// "repairing door 7-02 in bulkhead 2/3 restores most separation".
QString repairWords(const Repair& repair);

/// "not yet proven: bulkheads 1/2 and 3/4".
QString notShownWords(const std::vector<ActingZone>& not_shown,
                      const std::vector<ActingZone>& failing);

} // namespace latchround::ui
