// The words of a grade, for a row and for a door.
#pragma once

#include <array>
#include <optional>
#include <string_view>

#include "core/vessel/words.h"

namespace latchround {

/// Worst first. Advice is for rows only: shown, and never a reason to fail a door.
enum class Verdict {
    Unsatisfactory,
    Judge,
    TimeAgain,
    Untested,
    Satisfactory,
    Advice,
    NotApplicable
};

inline constexpr std::array<Word<Verdict>, 7> verdictWords{
    {{Verdict::Unsatisfactory, "unsatisfactory"},
     {Verdict::Judge, "judge"},
     {Verdict::TimeAgain, "time-again"},
     {Verdict::Untested, "untested"},
     {Verdict::Satisfactory, "satisfactory"},
     {Verdict::Advice, "advice"},
     {Verdict::NotApplicable, "not-applicable"}}};

constexpr std::string_view word(Verdict value) {
    return wordIn<Verdict>(verdictWords, value);
}
constexpr std::optional<Verdict> verdictFrom(std::string_view text) {
    return valueIn<Verdict>(verdictWords, text);
}

/// Order of badness: a smaller value is worse.
constexpr bool isWorse(Verdict one, Verdict other) {
    return one < other;
}

} // namespace latchround
