// A flag Administration's own rules over the catalogue: rows that it adds, limits that it tightens,
// rows that it replaces. Every such row says whose it is.
#pragma once

#include <string_view>

#include "core/requirement/catalogue.h"

namespace latchround {

/// The catalogue with a flag's file over it. A row of that file says "change": "add" (a new id),
/// "tighten" (known id, limits no wider than before) or "replace" (known id, a whole row). All
/// faults by JSON pointer in one pass, or all changes. `name` stands in errors for the file.
Checked<Catalogue> withFlagRules(Catalogue base, std::string_view json, Phrase name);

} // namespace latchround
