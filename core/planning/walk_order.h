// Which doors a walk takes in, and in what order.
#pragma once

#include <string>
#include <vector>

#include "core/vessel/arrangement.h"

namespace latchround {

enum class ScopeKind { AllDoors, OneDeck, OneZone, ZoneBulkheads, Chosen };

struct Scope {
    ScopeKind kind = ScopeKind::AllDoors;
    std::string which;               ///< deck or zone number
    std::vector<std::string> chosen; ///< door numbers, for Chosen
};

/// Numbers of the doors in scope, in the order of walkOrder. Zone bulkheads: the quarterly set of
/// MSC.1/Circ.1432 (local operation of every fire door in main vertical zone bulkheads).
std::vector<std::string> doorsInScope(const Arrangement& arrangement, const Scope& scope);

/// Deck by deck from the top, along the ship there and back, the doors of one bulkhead together.
std::vector<std::string> walkOrder(const Arrangement& arrangement,
                                   const std::vector<std::string>& doors);

} // namespace latchround
