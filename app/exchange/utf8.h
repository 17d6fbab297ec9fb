// Bytes as UTF-8 (RFC 3629): whether they are well-formed, that is no overlong forms, no
// surrogates, nothing past U+10FFFF; and how many characters they are.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

namespace latchround {

/// Index of the first byte that does not belong to a well-formed character; a NUL does not either,
/// no text has one.
std::optional<std::size_t> firstByteNotUtf8(std::string_view bytes);

/// How many characters well-formed bytes are.
std::size_t charactersIn(std::string_view utf8);

} // namespace latchround
