#include "core/evidence/fact_id.h"

#include <utility>

namespace latchround {

namespace {

constexpr std::string_view hex = "0123456789abcdef";

bool isHyphenPlace(std::size_t at) {
    return at == 8 || at == 13 || at == 18 || at == 23;
}

} // namespace

FactId factIdOf(std::int64_t unix_ms, const std::array<std::uint8_t, 10>& random) {
    std::array<std::uint8_t, 16> bytes{};
    for (std::size_t i = 0; i < 6; ++i)
        bytes[i] = static_cast<std::uint8_t>(unix_ms >> (40 - 8 * i));
    for (std::size_t i = 0; i < 10; ++i)
        bytes[6 + i] = random[i];
    bytes[6] = static_cast<std::uint8_t>((bytes[6] & 0x0f) | 0x70);
    bytes[8] = static_cast<std::uint8_t>((bytes[8] & 0x3f) | 0x80);
    FactId id;
    id.reserve(36);
    for (const std::uint8_t byte : bytes) {
        if (isHyphenPlace(id.size()))
            id += '-';
        id += hex[byte >> 4];
        id += hex[byte & 0x0f];
    }
    return id;
}

FactId FactIdSequence::next(std::int64_t unix_ms, std::array<std::uint8_t, 10> random) {
    if (unix_ms > m_last_ms) {
        m_last_ms = unix_ms;
        // Start low in the 12-bit counter so that a busy millisecond has room to count up.
        m_counter = static_cast<std::uint16_t>(((random[0] & 0x07) << 8) | random[1]);
    } else if (++m_counter > 0x0fff) {
        ++m_last_ms;
        m_counter = 0;
    }
    random[0] = static_cast<std::uint8_t>(m_counter >> 8);
    random[1] = static_cast<std::uint8_t>(m_counter & 0xff);
    return factIdOf(m_last_ms, random);
}

void FactIdSequence::continueAfter(const FactId& last) {
    if (!isFactId(last))
        return;
    const auto number = [&last](std::size_t from, std::size_t digits) {
        std::int64_t value = 0;
        for (std::size_t i = from; digits > 0; ++i)
            if (last[i] != '-') {
                value = value * 16 + static_cast<std::int64_t>(hex.find(last[i]));
                --digits;
            }
        return value;
    };
    const std::int64_t ms = number(0, 12);
    const auto counter = static_cast<std::uint16_t>(number(15, 3));
    if (std::pair(ms, counter) > std::pair(m_last_ms, m_counter)) {
        m_last_ms = ms;
        m_counter = counter;
    }
}

bool isFactId(std::string_view text) {
    if (text.size() != 36)
        return false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool right = isHyphenPlace(i) ? text[i] == '-' : hex.find(text[i]) != hex.npos;
        if (!right)
            return false;
    }
    return text[14] == '7' && std::string_view("89ab").find(text[19]) != std::string_view::npos;
}

} // namespace latchround
