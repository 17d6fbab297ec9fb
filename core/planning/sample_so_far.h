// What the doors of a walkdown prove so far about the sample that they are.
#pragma once

#include <optional>

#include "core/grading/graded_walkdown.h"
#include "core/planning/sample.h"

namespace latchround {

struct SampleSoFar {
    SampleClaim claim;
    int tested = 0; ///< satisfactory and unsatisfactory doors: what is still open proves nothing
    int failed = 0;
    SampleResult result;
};

/// Nothing where the numbers do not go together.
std::optional<SampleSoFar> sampleSoFar(const SampleDrawn& sample, const Tally& tally);

} // namespace latchround
