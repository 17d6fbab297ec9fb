// The closing times of a door through the years as a small drawing: every figure with its
// uncertainty, and the limits.
#pragma once

#include <optional>
#include <span>

#include <QImage>

#include "core/trend/outlook.h"

namespace latchround::report {

/// `days` oldest first, not empty. Three times as wide as high.
QImage timeChart(std::span<const TimedDay> days, std::optional<double> low,
                 std::optional<double> high);

} // namespace latchround::report
