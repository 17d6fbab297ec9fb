// The plate that a yard could have put on a door by mistake.
#pragma once

#include <optional>

#include "core/vessel/fire_class.h"

namespace latchround::practice {

/// The class of the same letter that is one weaker; nothing below the weakest.
constexpr std::optional<FireClass> nextLowerClass(FireClass value) {
    const auto next = static_cast<FireClass>(static_cast<int>(value) + 1);
    const bool same_letter =
        (isAClass(value) && isAClass(next)) || (isBClass(value) && isBClass(next));
    return same_letter ? std::optional(next) : std::nullopt;
}

} // namespace latchround::practice
