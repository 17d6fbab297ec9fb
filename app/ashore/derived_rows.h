// What the core works out of a vessel's facts, as rows for the tables ashore that hold what SQL
// cannot work out by itself (resources/schema/ashore_1.sql, part three).
#pragma once

#include <string>
#include <vector>

#include <nlohmann/json.hpp>

#include "core/evidence/ledger.h"
#include "core/requirement/catalogue.h"
#include "core/vessel/arrangement.h"

namespace latchround {

struct DerivedTable {
    std::string name;
    nlohmann::json rows; ///< array of objects by column; the vessel is not among the columns
};

/// A row of each table in the order of its doors, items or days. Nothing in it hangs on the day on
/// which it is worked out.
std::vector<DerivedTable> derivedRows(const Arrangement& arrangement, const Ledger& ledger,
                                      const Catalogue& catalogue);

} // namespace latchround
