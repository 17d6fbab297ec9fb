// sample: how many doors to test so that the result proves something, and what a result proves.
#pragma once

#include <optional>

#include "app/headless/answer.h"

namespace latchround::headless {

struct SampleAsked {
    int doors = 0;
    int defective = 0;
    double confidence = 0.95;
    std::optional<int> failed;
    std::optional<int> tested;
};

/// JSON: the claim in words, the smallest number that can prove it, the other convention under its
/// own name and, where a result was given, what it proves and what to do next.
Answer planSample(const SampleAsked& asked);

} // namespace latchround::headless
