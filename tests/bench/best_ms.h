// How long a piece of work takes at best, milliseconds.
#pragma once

#include <algorithm>
#include <chrono>

namespace latchround {

template <class Work>
double bestMs(int rounds, Work work) {
    double best = 1e9;
    for (int i = 0; i < rounds; ++i) {
        const auto start = std::chrono::steady_clock::now();
        work();
        const std::chrono::duration<double, std::milli> took =
            std::chrono::steady_clock::now() - start;
        best = std::min(best, took.count());
    }
    return best;
}

} // namespace latchround
