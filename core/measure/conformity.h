// The decision rule, written down once: how probable it is that the true value lies inside the
// limits, and what follows (JCGM 106:2012, 7.2 to 7.4, normal distribution).
#pragma once

#include <optional>

#include "core/measure/reading.h"

namespace latchround {

/// Probability, 0 to 1, that the true value lies inside [low, high] given value and u. An absent
/// limit is no limit. With u = 0 the answer is 0 or 1, and 0.5 exactly on a limit.
double conformanceProbability(double value, double u, std::optional<double> low,
                              std::optional<double> high);

enum class Conformity { Inside, TooClose, Outside };

/// Inside at 0.95 or more, outside at 0.05 or less, between them too close to say.
inline constexpr double inside_from = 0.95;
inline constexpr double outside_to = 0.05;
Conformity conformityOf(double probability);

} // namespace latchround
