// Facts as JSON Lines: one fact a line, the form they travel and are kept in. What is written reads
// back equal, to the last bit of every number.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/error/error.h"
#include "core/evidence/fact.h"

namespace latchround {

/// Without a line break. Bytes that are not UTF-8 become U+FFFD: every way in should have refused
/// them.
std::string jsonLineFrom(const Fact& fact);

/// `where` stands in the error for the line: place::line of its file.
Result<Fact> factFromJson(std::string_view line, const Phrase& where);

/// All facts of the text or every fault of every line. Blank lines are passed over.
Checked<std::vector<Fact>> factsFromJsonLines(std::string_view text, const std::string& name);

} // namespace latchround
