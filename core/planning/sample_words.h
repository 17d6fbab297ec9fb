// What a sample claims and what its result proves, in plain English; one wording for shell, screen
// and paper. Translations start from the numbers, not from this.
#pragma once

#include <string>

#include "core/grading/graded_walkdown.h"
#include "core/planning/sample.h"

namespace latchround {

struct SampleClaim {
    int doors = 0;     ///< that the claim is about
    int defective = 0; ///< at most so many of them
    ConfidencePpm confidence = usual_confidence_ppm;
};

/// "95 %", "99.5 %".
std::string percentText(ConfidencePpm confidence);

/// "at most 5 of 100 doors are defective".
std::string claimWords(const SampleClaim& claim);

/// What a clean result of `n` doors would prove.
std::string planWords(const SampleClaim& claim, int n);

/// The other convention, and that it is another.
std::string findWords(const SampleClaim& claim, int n);

/// What the doors of a walkdown prove so far: satisfactory ones and unsatisfactory ones count as
/// tested, what is still open proves nothing. Empty where the numbers do not go together.
std::string provedWords(const SampleDrawn& sample, const Tally& tally);

std::string resultWords(const SampleClaim& claim, int tested, int failed,
                        const SampleResult& result);

} // namespace latchround
