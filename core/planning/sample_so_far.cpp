#include "core/planning/sample_so_far.h"

namespace latchround {

std::optional<SampleSoFar> sampleSoFar(const SampleDrawn& sample, const Tally& tally) {
    const auto countOf = [&](Verdict verdict) {
        const auto found = tally.by_verdict.find(verdict);
        return found == tally.by_verdict.end() ? 0 : found->second;
    };
    const SampleClaim claim{sample.of_doors, sample.at_most, sample.confidence_ppm};
    const int failed = countOf(Verdict::Unsatisfactory);
    const int tested = failed + countOf(Verdict::Satisfactory);
    const auto result =
        sampleResult(claim.doors, claim.defective, claim.confidence, tested, failed);
    return result ? std::optional(SampleSoFar{claim, tested, failed, *result}) : std::nullopt;
}

} // namespace latchround
