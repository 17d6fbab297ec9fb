// Which doors a walk takes in, and in what order.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/vessel/arrangement.h"

namespace latchround {

/// Chosen: those that failed last time. Retest: those whose deficiencies were rectified.
enum class ScopeKind { AllDoors, OneDeck, OneZone, ZoneBulkheads, Chosen, Retest };

struct Scope {
    ScopeKind kind = ScopeKind::AllDoors;
    std::string which;               ///< deck or zone number
    std::vector<std::string> chosen; ///< door numbers, for Chosen and Retest
};

/// Numbers of the doors in scope, in the register's order. Zone bulkheads: the quarterly set of
/// MSC.1/Circ.1432 (local operation of every fire door in main vertical zone bulkheads).
std::vector<std::string> doorsInScope(const Arrangement& arrangement, const Scope& scope);

struct WalkRoute {
    std::vector<std::string> doors;
    double length_m = 0;    ///< from the first door to the last
    double by_number_m = 0; ///< the same doors in the order of their numbers
};

/// The shortest walk found over decks and stairs, from the upper of its two ends, else from the
/// lower number: the doors of one bulkhead on one deck together, and on one deck the bulkheads of
/// one release group. Doors that the arrangement does not have are left out. Under a second for 400
/// doors.
WalkRoute walkRoute(const Arrangement& arrangement, const std::vector<std::string>& doors);

/// Whether door number `one` comes before `other` as people count: 5-9 before 5-10.
bool comesBefore(std::string_view one, std::string_view other);

} // namespace latchround
