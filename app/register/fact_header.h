// What every kind of fact has in common as a row: the table of its kind.
#pragma once

#include <algorithm>
#include <cstddef>
#include <string>

#include "core/evidence/fact.h"

namespace latchround {

/// Where the body of a kind lies, by its index in FactBody: its word with underscores.
inline std::string bodyTableOf(std::size_t kind) {
    std::string table(factKindWords[kind]);
    std::ranges::replace(table, '-', '_');
    return table;
}

} // namespace latchround
