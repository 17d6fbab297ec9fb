// boundary: the fire class of the division between two kinds of space.
#pragma once

#include <optional>
#include <string>

#include "app/headless/answer.h"
#include "core/division/fire_table.h"

namespace latchround::headless {

/// As written on the command line.
struct DivisionAsked {
    std::string ship;
    std::string division;
    std::optional<std::string> spaces; ///< "A,B"; of a deck the space below, then the one above
    bool sprinklers = false;
    bool special_category = false;
    std::optional<std::string> built; ///< YYYY-MM-DD
};

/// JSON: class, table, cell, notes, cite. A blank cell has no class and says whom to ask.
Answer boundaryClass(const DivisionAsked& asked, const FireTables& tables);

} // namespace latchround::headless
