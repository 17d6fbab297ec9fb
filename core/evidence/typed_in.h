// The note that says who typed in what was recorded at a door from a paper form. It stands whatever
// becomes of the entries: undo does not reach it.
#pragma once

#include <string>

#include "core/evidence/fact.h"

namespace latchround {

inline constexpr std::string_view typed_in_by = "Typed in from a paper form by ";
inline constexpr std::string_view typed_in_phrase = "typed-in-from-blank-form";

inline Note noteOfTyping(const FactId& walkdown, const std::string& door, const std::string& name) {
    return {walkdown, door,
            Wording(std::string(typed_in_by) + name + ".", std::string(typed_in_phrase))};
}

inline bool saysWhoTyped(const Note& note) {
    return note.text.phrase == typed_in_phrase;
}

} // namespace latchround
