// The rule book as JSON (resources/schema/rules.schema.json).
#pragma once

#include "app/headless/json_answer.h"
#include "app/report/rule_book.h"

namespace latchround::headless {

/// Every row, or the one of this id. Conditions and dates stand as words, limits and dates as
/// figures too.
OrderedJson rulesJson(const RuleBook& book, const std::optional<std::string>& row);

} // namespace latchround::headless
