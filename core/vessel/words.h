// The word by which a value of a closed set is written in files, registers and reports, both ways.
// Every enum of the core has one table of these beside it; there is no second spelling anywhere.
// What a fact or an arrangement says has wordsFor(E) as well, which finds the table by the type.
#pragma once

#include <optional>
#include <span>
#include <string_view>

namespace latchround {

template <class E>
struct Word {
    E value;
    std::string_view word;
};

/// The word of a value; the tables hold every enumerator, so an empty answer is a bug.
template <class E>
constexpr std::string_view wordIn(std::span<const Word<E>> table, E value) {
    for (const auto& entry : table)
        if (entry.value == value)
            return entry.word;
    return {};
}

/// The value of a word, exactly as written in the table; nothing for any other spelling.
template <class E>
constexpr std::optional<E> valueIn(std::span<const Word<E>> table, std::string_view word) {
    for (const auto& entry : table)
        if (entry.word == word)
            return entry.value;
    return std::nullopt;
}

} // namespace latchround
