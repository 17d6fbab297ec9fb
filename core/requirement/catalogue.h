// The catalogue: every requirement row with the edition it was taken from, what upkeep asks, and
// the fire tables. Parsed from JSON text; all faults by JSON pointer in one pass, nothing half
// loaded.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/division/fire_table.h"
#include "core/error/error.h"
#include "core/requirement/requirement.h"
#include "core/requirement/upkeep.h"

namespace latchround {

struct Catalogue {
    std::string edition;   ///< printed on every screen and page that shows a grade
    std::string deference; ///< whose rules stand above it, one sentence
    std::string flag;      ///< whose own rules stand over it; empty where nobody's do
    std::vector<Requirement> rows;
    std::vector<Upkeep> upkeep;
    FireTables divisions;
};

/// `name` stands in errors for the file. The fire tables are a file of their own.
Checked<Catalogue> catalogueFrom(std::string_view json, Phrase name);

/// Both sets of rows as one catalogue; complains where an id stands in both.
Checked<Catalogue> joined(Catalogue one, Catalogue other);

const Requirement* findRequirement(const Catalogue& catalogue, std::string_view id);

} // namespace latchround
