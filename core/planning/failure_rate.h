// How often doors like these fail, by an exact two-sided interval (Clopper and Pearson, Biometrika
// 26, 404 (1934), from memory). It speaks of doors in general, as a sample of one ship's doors
// (sample.h) does not.
#pragma once

#include <optional>

namespace latchround {

struct FailureRate {
    double low = 0;  ///< 0 to 1
    double high = 1; ///< 0 to 1
};

/// Needs 0 <= failed <= tested, tested >= 1 and confidence between 0 and 1; nothing otherwise.
std::optional<FailureRate> failureRate(int failed, int tested, double confidence);

} // namespace latchround
