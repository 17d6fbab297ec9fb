// Bytes as lower-case hex, and back.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace latchround {

inline std::string hexOf(std::span<const std::byte> bytes) {
    constexpr std::string_view digits = "0123456789abcdef";
    std::string text;
    text.reserve(2 * bytes.size());
    for (const std::byte byte : bytes) {
        text += digits[std::to_integer<std::size_t>(byte >> 4)];
        text += digits[std::to_integer<std::size_t>(byte & std::byte{15})];
    }
    return text;
}

/// Nothing where it is not exactly so many bytes in lower-case hex.
template <std::size_t Size>
std::optional<std::array<std::byte, Size>> bytesOfHex(std::string_view text) {
    constexpr std::string_view digits = "0123456789abcdef";
    std::array<std::byte, Size> bytes{};
    if (text.size() != 2 * Size)
        return std::nullopt;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const std::size_t value = digits.find(text[i]);
        if (value == std::string_view::npos)
            return std::nullopt;
        bytes[i / 2] = (bytes[i / 2] << 4) | static_cast<std::byte>(value);
    }
    return bytes;
}

} // namespace latchround
