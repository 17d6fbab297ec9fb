// Whether two names written on two tablets are those of one person.
#pragma once

#include <string_view>

namespace latchround {

/// Equal but for capitals (of ASCII letters) and the white space between and around words.
bool isSameName(std::string_view one, std::string_view other);

} // namespace latchround
