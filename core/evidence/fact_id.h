// Makes UUIDv7 ids (RFC 9562, 5.7). Pure: the caller brings the clock and the random bits.
#pragma once

#include <array>
#include <cstdint>
#include <string_view>

#include "core/evidence/fact.h"

namespace latchround {

/// `unix_ms`: milliseconds since 1970 UTC, 0 to 2^48-1. `random`: ten random bytes; the version and
/// variant bits are set over them. RFC 9562 A.6 is the reference vector of the test.
FactId factIdOf(std::int64_t unix_ms, const std::array<std::uint8_t, 10>& random);

/// Ids of one device in the order they were asked for, even within a millisecond or when the wall
/// clock steps back: the 12 bits rand_a count up (RFC 9562, 6.2 method 1).
class FactIdSequence {
public:
    FactId next(std::int64_t unix_ms, std::array<std::uint8_t, 10> random);
    /// No id that comes now sorts before this one: the device's last before the program was closed.
    void continueAfter(const FactId& last);

private:
    std::int64_t m_last_ms = -1;
    std::uint16_t m_counter = 0;
};

/// Lower-case, hyphenated, version 7, variant 2.
bool isFactId(std::string_view text);

} // namespace latchround
