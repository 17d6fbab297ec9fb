#include "core/practice/chance.h"

#include <vector>

namespace latchround::practice {

namespace {

std::mt19937 engineFor(std::uint32_t seed, std::string_view of) {
    std::vector<std::uint32_t> words{seed};
    for (const char letter : of)
        words.push_back(static_cast<unsigned char>(letter));
    std::seed_seq sequence(words.begin(), words.end());
    return std::mt19937(sequence);
}

} // namespace

Chance::Chance(std::uint32_t seed, std::string_view of)
    : m_engine(engineFor(seed, of)) {}

double Chance::between(double low, double high) {
    return low + (high - low) * (static_cast<double>(m_engine()) / 4294967296.0);
}

std::size_t Chance::below(std::size_t n) {
    // The remainder favours small numbers by less than n in 2^32.
    return m_engine() % n;
}

} // namespace latchround::practice
