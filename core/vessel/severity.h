// How much hangs on something that is not in order, whatever else is known of it.
#pragma once

#include <array>
#include <optional>
#include <string_view>

#include "core/vessel/words.h"

namespace latchround {

/// Critical: fire or smoke passes, or a person can be hurt. Serious: the door does not do what the
/// text asks. Minor: maintenance and marking.
enum class Severity { Critical, Serious, Minor };

inline constexpr std::array<Word<Severity>, 3> severityWords{
    {{Severity::Critical, "critical"}, {Severity::Serious, "serious"}, {Severity::Minor, "minor"}}};

constexpr std::string_view word(Severity value) {
    return wordIn<Severity>(severityWords, value);
}
constexpr const auto& wordsFor(Severity) {
    return severityWords;
}

} // namespace latchround
