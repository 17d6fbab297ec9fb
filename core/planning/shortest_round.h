// The shortest open round through places, by exchange of two legs, shifting of runs of places and a
// fixed number of kicks; the same answer on every machine. General: knows nothing of doors.
#pragma once

#include <cstddef>
#include <vector>

namespace latchround {

/// Places 0 to n - 1.
struct Places {
    std::vector<std::vector<double>> distance; ///< square and symmetric, not negative
    /// Places with the same number stay together in the round, at every level; level 0 is the
    /// widest. Any number of levels, each with one number a place.
    std::vector<std::vector<int>> together;
};

/// An order of all places, as short as could be found among those that leave no group of a level
/// more often than they must.
std::vector<std::size_t> shortestRound(const Places& places);

double lengthOf(const std::vector<std::size_t>& round,
                const std::vector<std::vector<double>>& distance);

} // namespace latchround
