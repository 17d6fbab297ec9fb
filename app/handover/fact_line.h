// Facts out of their lines at the speed of a register. A line that this program wrote itself, with
// its fields in their order and nothing to escape, is read straight through; every other one goes
// the long way of app/exchange/fact_json.h, which knows all that JSON allows and names each fault.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/error/error.h"
#include "core/evidence/fact.h"
#include "core/progress_range.h"

namespace latchround {

/// Nothing where the line has to go the long way; otherwise the same fact as that would give.
std::optional<Fact> factFromPlainLine(std::string_view line);

/// All facts of the text, by id and none twice, whatever their order in it; or the first fault.
/// Refuses two different facts of one id. `name` stands in errors for the text.
/// `pace` may stop it.
Result<std::vector<Fact>> factsById(std::string_view text, const std::string& name,
                                    const ProgressRange& pace = ProgressRange());

} // namespace latchround
