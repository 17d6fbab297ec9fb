// Which doors a sample takes in: shared out over zones and kinds of door, then drawn by lot.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/planning/sample.h"
#include "core/vessel/arrangement.h"

namespace latchround {

/// Doors of one kind whose boundary belongs to one zone (the after one of a zone bulkhead).
struct Stratum {
    std::string zone; ///< empty where the boundary names none
    DoorKind kind = DoorKind::SingleLeaf;
    std::vector<std::string> doors; ///< numbers, in the order given
    int drawn = 0;                  ///< how many of them the sample takes in
};

/// Sorted by zone, then kind.
std::vector<Stratum> strataOf(const Arrangement& arrangement,
                              const std::vector<std::string>& doors);

/// Shares `sample` out in proportion to the strata, largest remainder first.
void shareOut(std::vector<Stratum>& strata, int sample);

/// The smallest sample, shared out like that, whose clean result gives the claim wherever the
/// defective doors may lie: the largest probability of a clean result over all ways to spread
/// `defective` + 1 defective doors over the strata is at most 1 - confidence, in exact fractions.
/// A little more than sampleForAtMost, which draws from all doors alike. `strata` comes back shared
/// out. Nothing where sampleForAtMost has nothing.
std::optional<int> stratifiedSample(std::vector<Stratum>& strata, int defective,
                                    ConfidencePpm confidence);

/// A sample worth offering, and what a clean result of it proves.
struct SampleOffer {
    int doors = 0; ///< to test
    int at_most = 0;
    ConfidencePpm confidence = usual_confidence_ppm;
};

/// Claims of none, 2, 5 and 10 % defective at 95 %, and of 5 % at 90 and 99 %, fewest doors first;
/// those that ask for every door left out.
std::vector<SampleOffer> sampleOffers(const Arrangement& arrangement,
                                      const std::vector<std::string>& doors);

/// The doors drawn from this number, in the order of the strata; the same number draws the same
/// doors on every machine.
std::vector<std::string> drawn(const std::vector<Stratum>& strata, std::uint32_t random_seed);

} // namespace latchround
