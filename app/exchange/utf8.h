// Whether bytes are well-formed UTF-8 (RFC 3629): no overlong forms, no surrogates, nothing past
// U+10FFFF.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

namespace latchround {

/// Index of the first byte that does not belong to a well-formed character; a NUL does not either,
/// no text has one.
std::optional<std::size_t> firstByteNotUtf8(std::string_view bytes);

} // namespace latchround
