// From the cells of one row of the register to the value it stands for, table by table.
#pragma once

#include <cstddef>
#include <string>

#include "app/exchange/csv_row_reader.h"
#include "core/vessel/arrangement.h"

namespace latchround {

/// Appends the row to its table of `arrangement`, or sets the vessel's particulars.
void appendRow(ArrangementTable table, CsvRowReader& row, Arrangement& arrangement);

/// What other rows call this row: its number or id.
const std::string& keyOf(const Arrangement& arrangement, ArrangementTable table, std::size_t row);

} // namespace latchround
