// Fire classes of divisions and doors: SOLAS II-2/3.2 (A), 3.4 (B), 3.10 (C).
#pragma once

#include <array>
#include <optional>
#include <string_view>

#include "core/vessel/words.h"

namespace latchround {

/// Strongest first: the order of requirements B, "A-60, A-30, A-15, A-0, B-15, B-0, C".
enum class FireClass { A60, A30, A15, A0, B15, B0, C };

inline constexpr std::array<Word<FireClass>, 7> fireClassWords{{{FireClass::A60, "A-60"},
                                                                {FireClass::A30, "A-30"},
                                                                {FireClass::A15, "A-15"},
                                                                {FireClass::A0, "A-0"},
                                                                {FireClass::B15, "B-15"},
                                                                {FireClass::B0, "B-0"},
                                                                {FireClass::C, "C"}}};

constexpr std::string_view word(FireClass value) {
    return wordIn<FireClass>(fireClassWords, value);
}
constexpr std::optional<FireClass> fireClassFrom(std::string_view text) {
    return valueIn<FireClass>(fireClassWords, text);
}
constexpr const auto& wordsFor(FireClass) {
    return fireClassWords;
}

constexpr bool isAClass(FireClass value) {
    return value <= FireClass::A0;
}
constexpr bool isBClass(FireClass value) {
    return value == FireClass::B15 || value == FireClass::B0;
}

constexpr bool isStronger(FireClass one, FireClass other) {
    return one < other;
}

/// A door of class `door` may stand in a boundary that asks for `boundary` (SOLAS II-2/9.4.1.1.2).
/// Any A class satisfies any B-class boundary.
constexpr bool suits(FireClass door, FireClass boundary) {
    return door <= boundary;
}

} // namespace latchround
