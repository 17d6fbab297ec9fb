// The digits our files are written with: 0 to 9, whatever the language.
#pragma once

namespace latchround {

constexpr bool isDigit(char letter) {
    return letter >= '0' && letter <= '9';
}

} // namespace latchround
