// A figure of the data inside a phrase, in the unit and digits of its text.
#pragma once

#include <array>
#include <charconv>
#include <string>

namespace latchround {

/// Six figures at most, none that says nothing: "12.7", "0.065", "5".
inline std::string plainFigure(double value) {
    std::array<char, 32> text{};
    const auto written =
        std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::general, 6);
    return {text.data(), written.ptr};
}

} // namespace latchround
