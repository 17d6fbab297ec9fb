// Which known names a misspelt one may have been meant for: the "did you mean" of every error.
#pragma once

#include <span>
#include <string_view>

#include "core/phrase/phrase.h"

namespace latchround {

/// Changes of one character that lead from one text to the other (Levenshtein distance), letters
/// compared without regard to case and blanks left out.
std::size_t changesBetween(std::string_view one, std::string_view other);

/// `Nearest names here: "3/4" or "4/5".`, at most three names, nearest first; empty where none is
/// close: one change in three characters at most, always at least one.
Phrase didYouMean(std::string_view wanted, std::span<const std::string_view> known);

} // namespace latchround
