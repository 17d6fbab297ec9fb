// How many doors must be tested so that a clean result proves something about the rest, and what a
// result that is not clean still proves. Exact: counts of draws without replacement
// (hypergeometric) are compared as whole numbers, never as rounded ones. Tests: ISPM 31 and cells
// worked out apart.
#pragma once

#include <optional>

namespace latchround {

/// Confidence of a claim in millionths: 950000 is 95 %. Above 0, below 1000000.
using ConfidencePpm = int;
inline constexpr ConfidencePpm certain_ppm = 1'000'000;
inline constexpr ConfidencePpm usual_confidence_ppm = 950'000;

/// Largest population a plan is worked out for.
inline constexpr int most_doors = 2000;

/// "At most so many of these doors are defective."
struct SampleClaim {
    int doors = 0;     ///< that the claim is about
    int defective = 0; ///< at most so many of them
    ConfidencePpm confidence = usual_confidence_ppm;
};

/// Smallest number of doors out of `doors` whose clean result (at most `failures` of them
/// defective) gives this confidence that AT MOST `defective` of all are defective. Nothing where no
/// test can show that: doors < 1 or > most_doors, defective outside [0, doors), failures outside
/// [0, defective].
std::optional<int> sampleForAtMost(int doors, int defective, ConfidencePpm confidence,
                                   int failures = 0);

/// The other convention: smallest number that has at least this chance of taking in one defective
/// door or more where `defective` (1 to doors) of all are. One defective more or less apart from
/// sampleForAtMost: the two must never be mixed up.
std::optional<int> sampleToFind(int doors, int defective, ConfidencePpm confidence);

/// Largest number of defective doors among all that the result does not rule out at this
/// confidence: an exact one-sided upper bound. Needs 0 <= failed <= tested <= doors <= most_doors;
/// nothing otherwise.
std::optional<int> defectiveAtMost(int doors, int tested, int failed, ConfidencePpm confidence);

enum class NextStep {
    Proven,   ///< the claim stands
    Continue, ///< nothing failed so far; the plan is not complete
    Extend,   ///< something failed; more doors can still prove the claim
    TestAll   ///< more failed than the claim allows, or only all doors can still prove it
};

struct SampleResult {
    int at_most = 0; ///< defective doors not ruled out
    NextStep next = NextStep::Continue;
    int more = 0; ///< doors to test besides those tested, for Continue, Extend and TestAll
};

/// What a result proves about the claim "at most `defective` of `doors`", and what to do next. A
/// sample that is extended after a failure gives a little less confidence than stated, since the
/// decision to go on came from the doors themselves: testing all gives certainty.
std::optional<SampleResult> sampleResult(int doors, int defective, ConfidencePpm confidence,
                                         int tested, int failed);

} // namespace latchround
