#include "core/planning/sample.h"

#include <algorithm>

#include "core/planning/choose.h"

namespace latchround {

namespace {

bool isUsable(ConfidencePpm confidence) {
    return confidence > 0 && confidence < certain_ppm;
}

/// Ways to draw `tested` of `doors` with at most `failures` of the `defective` ones among them.
Whole waysToPass(int doors, int defective, int tested, int failures) {
    Whole ways = choose(doors - defective, tested);
    Whole found = 1; // ways to draw i of the defective doors
    for (int i = 1; i <= std::min({failures, defective, tested}); ++i) {
        found *= defective - i + 1;
        found /= i;
        ways += found * choose(doors - defective, tested - i);
    }
    return ways;
}

/// The probability of a result no worse than this is at most 1 - confidence.
bool isRuledOut(int doors, int defective, int tested, int failures, ConfidencePpm confidence) {
    return waysToPass(doors, defective, tested, failures) * certain_ppm <=
           choose(doors, tested) * (certain_ppm - confidence);
}

/// Smallest number in [low, high] that fits, where all above one that fits fit as well and `high`
/// does.
template <class Fits>
int smallest(int low, int high, Fits fits) {
    while (low < high) {
        const int middle = low + (high - low) / 2;
        if (fits(middle))
            high = middle;
        else
            low = middle + 1;
    }
    return high;
}

bool isPopulation(int doors, ConfidencePpm confidence) {
    return doors >= 1 && doors <= most_doors && isUsable(confidence);
}

} // namespace

std::optional<int> sampleForAtMost(int doors, int defective, ConfidencePpm confidence,
                                   int failures) {
    if (!isPopulation(doors, confidence) || defective < 0 || defective >= doors || failures < 0 ||
        failures > defective)
        return std::nullopt;
    return smallest(failures, doors, [&](int tested) {
        return isRuledOut(doors, defective + 1, tested, failures, confidence);
    });
}

std::optional<int> sampleToFind(int doors, int defective, ConfidencePpm confidence) {
    if (!isPopulation(doors, confidence) || defective < 1 || defective > doors)
        return std::nullopt;
    return smallest(
        0, doors, [&](int tested) { return isRuledOut(doors, defective, tested, 0, confidence); });
}

std::optional<int> defectiveAtMost(int doors, int tested, int failed, ConfidencePpm confidence) {
    if (!isPopulation(doors, confidence) || failed < 0 || failed > tested || tested > doors)
        return std::nullopt;
    const int most = doors - tested + failed; // more cannot be, whatever the confidence
    if (!isRuledOut(doors, most, tested, failed, confidence))
        return most;
    return smallest(failed, most,
                    [&](int defective) {
                        return isRuledOut(doors, defective, tested, failed, confidence);
                    }) -
           1;
}

std::optional<SampleResult> sampleResult(int doors, int defective, ConfidencePpm confidence,
                                         int tested, int failed) {
    const auto at_most = defectiveAtMost(doors, tested, failed, confidence);
    if (!at_most || !sampleForAtMost(doors, defective, confidence))
        return std::nullopt;
    if (*at_most <= defective)
        return SampleResult{*at_most, NextStep::Proven, 0};
    const int rest = doors - tested;
    const auto needed = sampleForAtMost(doors, defective, confidence, failed);
    if (!needed || *needed >= doors)
        return SampleResult{*at_most, NextStep::TestAll, rest};
    return SampleResult{*at_most, failed == 0 ? NextStep::Continue : NextStep::Extend,
                        std::max(0, *needed - tested)};
}

} // namespace latchround
