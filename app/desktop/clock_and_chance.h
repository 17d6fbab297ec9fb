// Clock and random numbers: what core may not have, handed in from here.
#pragma once

#include "core/evidence/fact_id.h"

namespace latchround {

/// UTC now, with the machine's own offset as ship's time.
Moment momentNow();

/// Ids for new facts, in order, from the system's random source.
FactId nextFactId(FactIdSequence& sequence);

} // namespace latchround
