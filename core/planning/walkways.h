// How far it is on foot from one door to another: along and across a deck at right angles, as
// alleyways run, and between decks by the stairs that the register knows.
#pragma once

#include <string>
#include <vector>

#include "core/vessel/arrangement.h"

namespace latchround {

/// A stairway of the register: a boundary of place `stairway` with doors on more than one deck. It
/// is taken to serve every deck from its lowest to its highest door.
struct Stairs {
    std::string boundary;
    double x_m = 0;
    double y_m = 0;                 ///< mean of its doors
    std::vector<std::size_t> decks; ///< into Arrangement::decks, from the lowest up
};

std::vector<Stairs> stairsOf(const Arrangement& arrangement);

/// Metres walked on a flight per metre of height: a stair of 38 degrees (our choice, no source).
inline constexpr double flight_per_height = 1.62;

/// Shortest way between every two of these doors, metres, as rows of a square table. Doors on decks
/// that no stairs join are taken to have stairs just where they are needed. Doors that are not in
/// the arrangement must not be asked for.
std::vector<std::vector<double>> walkingDistances(const Arrangement& arrangement,
                                                  const std::vector<const Door*>& doors);

} // namespace latchround
