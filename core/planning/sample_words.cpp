#include "core/planning/sample_words.h"

namespace latchround {

namespace {

std::string doorsText(int doors) {
    return doors == 1 ? "1 door" : std::to_string(doors) + " doors";
}

std::string claimed(int doors, int defective) {
    const std::string of = " of " + doorsText(doors);
    if (defective == 0)
        return "none" + of + " is defective";
    return "at most " + std::to_string(defective) + of +
           (defective == 1 ? " is defective" : " are defective");
}

std::string nextWords(const SampleResult& result) {
    switch (result.next) {
    case NextStep::Proven:
        return "The claim stands.";
    case NextStep::GoOn:
        return "Go on: test " + std::to_string(result.more) + " more.";
    case NextStep::Extend:
        return "Extend: test " + std::to_string(result.more) +
               " more; if none of those fails, the claim stands, with a little less confidence "
               "than "
               "stated, for the doors themselves made the sample larger.";
    case NextStep::TestAll:
        break;
    }
    return result.more == 0
               ? "Every door was tested: the claim does not stand."
               : "Test all: the " + std::to_string(result.more) + " doors that are left as well.";
}

} // namespace

std::string percentText(ConfidencePpm confidence) {
    std::string digits = std::to_string(confidence % 10'000 + 10'000).substr(1);
    while (!digits.empty() && digits.back() == '0')
        digits.pop_back();
    return std::to_string(confidence / 10'000) + (digits.empty() ? "" : "." + digits) + " %";
}

std::string claimWords(const SampleClaim& claim) {
    return claimed(claim.doors, claim.defective);
}

std::string planWords(const SampleClaim& claim, int n) {
    return "Test " + doorsText(n) +
           ", drawn by lot. If none fails: " + percentText(claim.confidence) + " confident that " +
           claimWords(claim) + ".";
}

std::string findWords(const SampleClaim& claim, int n) {
    return "Another claim, not to be mixed up with it: where exactly " +
           std::to_string(claim.defective) + " of " + doorsText(claim.doors) +
           " are defective, testing " + std::to_string(n) + " gives a chance of at least " +
           percentText(claim.confidence) + " to find one of them or more.";
}

std::string provedWords(const SampleDrawn& sample, const Tally& tally) {
    const auto countOf = [&](Verdict verdict) {
        const auto found = tally.by_verdict.find(verdict);
        return found == tally.by_verdict.end() ? 0 : found->second;
    };
    const SampleClaim claim{sample.of_doors, sample.at_most, sample.confidence_ppm};
    const int failed = countOf(Verdict::Unsatisfactory);
    const int tested = failed + countOf(Verdict::Satisfactory);
    const auto result =
        sampleResult(claim.doors, claim.defective, claim.confidence, tested, failed);
    return result ? resultWords(claim, tested, failed, *result) : std::string();
}

std::string resultWords(const SampleClaim& claim, int tested, int failed,
                        const SampleResult& result) {
    return std::to_string(tested) + " of " + doorsText(claim.doors) + " tested, " +
           (failed == 0 ? "none" : std::to_string(failed)) +
           " failed: " + percentText(claim.confidence) + " confident that " +
           claimed(claim.doors, result.at_most) + ". " + nextWords(result);
}

} // namespace latchround
