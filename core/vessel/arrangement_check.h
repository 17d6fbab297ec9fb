// Whether an arrangement hangs together: numbers unique, references there, dimensions possible.
// Knows no file: a fault names table, row and field, and whoever read the file turns that into line
// and column.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/phrase/phrase.h"
#include "core/vessel/arrangement.h"

namespace latchround {

enum class ArrangementTable { Vessel, Deck, Zone, Boundary, Door };

struct ArrangementFault {
    ArrangementTable table;
    std::size_t row;   ///< index into the table's vector; 0 for the vessel
    std::string field; ///< column name as in the register CSV, e.g. "boundary", "opening_m"
    Phrase what;
};

/// Every fault in one pass, in the order of tables and rows; empty when the arrangement is sound.
std::vector<ArrangementFault> faultsOf(const Arrangement& arrangement);

} // namespace latchround
