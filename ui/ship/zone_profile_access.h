// The zone profile for a screen reader: a list with an item a zone bulkhead and deck, whose doors
// are pressed as keys are.
#pragma once

namespace latchround::ui {

/// Once is enough; more does no harm.
void readyProfileAccess();

} // namespace latchround::ui
