#include "app/exchange/utf8.h"

#include <algorithm>
#include <cstdint>

namespace latchround {

namespace {

struct Lead {
    std::size_t length; ///< of the character in bytes; 0: no character begins so
    std::uint8_t low;   ///< of the second byte
    std::uint8_t high;
};

/// RFC 3629, section 4: the second byte's range is narrower after E0, ED, F0 and F4.
Lead leadOf(std::uint8_t byte) {
    if (byte >= 0x01 && byte <= 0x7F)
        return {1, 0, 0};
    if (byte >= 0xC2 && byte <= 0xDF)
        return {2, 0x80, 0xBF};
    if (byte >= 0xE0 && byte <= 0xEF)
        return {3, static_cast<std::uint8_t>(byte == 0xE0 ? 0xA0 : 0x80),
                static_cast<std::uint8_t>(byte == 0xED ? 0x9F : 0xBF)};
    if (byte >= 0xF0 && byte <= 0xF4)
        return {4, static_cast<std::uint8_t>(byte == 0xF0 ? 0x90 : 0x80),
                static_cast<std::uint8_t>(byte == 0xF4 ? 0x8F : 0xBF)};
    return {0, 0, 0};
}

} // namespace

std::optional<std::size_t> firstByteNotUtf8(std::string_view bytes) {
    const auto byteAt = [&](std::size_t at) { return static_cast<std::uint8_t>(bytes[at]); };
    std::size_t at = 0;
    while (at < bytes.size()) {
        const Lead lead = leadOf(byteAt(at));
        if (lead.length == 0 || at + lead.length > bytes.size())
            return at;
        if (lead.length > 1 && (byteAt(at + 1) < lead.low || byteAt(at + 1) > lead.high))
            return at;
        for (std::size_t i = 2; i < lead.length; ++i)
            if (byteAt(at + i) < 0x80 || byteAt(at + i) > 0xBF)
                return at;
        at += lead.length;
    }
    return std::nullopt;
}

std::size_t charactersIn(std::string_view utf8) {
    return std::size_t(std::ranges::count_if(utf8, [](char byte) {
        return (static_cast<unsigned char>(byte) & 0xC0) != 0x80; // that goes on with no character
    }));
}

} // namespace latchround
