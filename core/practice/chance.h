// Numbers by lot that are the same for a seed on every machine: the engine is fixed by the C++
// standard, and the library's distributions, which are not, are left aside.
#pragma once

#include <cstdint>
#include <random>
#include <string_view>

namespace latchround::practice {

class Chance {
public:
    /// `of`: what the numbers are for; another text gives others from the same seed.
    Chance(std::uint32_t seed, std::string_view of);

    double between(double low, double high);
    /// 0 to n - 1; n above 0.
    std::size_t below(std::size_t n);
    bool coin() { return below(2) == 1; }

private:
    std::mt19937 m_engine;
};

} // namespace latchround::practice
