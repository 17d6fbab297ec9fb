// Yes, no, or nothing: what a register says of a part of a door. Nothing said is not a yes; who
// must tell it from a no asks `word`.
#pragma once

#include <optional>

namespace latchround {

struct Said {
    std::optional<bool> word;

    constexpr Said() = default;
    constexpr Said(bool said)
        : word(said) {}
    constexpr operator bool() const { return word.value_or(false); }

    constexpr bool isKnown() const { return word.has_value(); }
    bool operator==(const Said&) const = default;
};

} // namespace latchround
