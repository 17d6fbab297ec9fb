// Points from two columns of a CSV file: x, then y. A first row of names is passed over.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/error/error.h"
#include "core/trend/line.h"

namespace latchround {

/// Every fault by line and column; decimal comma where the columns are parted by semicolon or tab.
Checked<std::vector<Point>> pointsFromCsv(std::span<const char> bytes, const std::string& name);

} // namespace latchround
