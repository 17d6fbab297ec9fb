// The vessel's register as a CSV file: five stacked tables, as README describes them. Reading is
// all or nothing: a whole sound arrangement, or every fault of the file with its line and column.
#pragma once

#include <span>
#include <string>

#include "core/error/error.h"
#include "core/vessel/arrangement.h"

namespace latchround {

/// `name` stands in errors for the file: "fleet.csv line 12, column 9 (door.opening_m)". Lines
/// and columns count from 1, a column is a cell.
Checked<Arrangement> arrangementFromCsv(std::span<const char> bytes, const std::string& name);

/// Canonical text of a sound arrangement: comma, LF, no byte order mark, quotes only where needed.
/// Reading it gives an equal arrangement, and writing that the same bytes. Metres have two
/// decimals, more only where the figure has more.
std::string csvFrom(const Arrangement& arrangement);

} // namespace latchround
