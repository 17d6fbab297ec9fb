// The decision rule, written down once: how probable it is that the true value lies inside the
// limits, and what follows (JCGM 106:2012, 7.2 to 7.4, normal or Student's t distribution).
#pragma once

#include <optional>

#include "core/evidence/fact.h"
#include "core/measure/reading.h"

namespace latchround {

/// Probability, 0 to 1, that the true value lies inside [low, high] given value and u. An absent
/// limit is no limit. With u = 0 the answer is 0 or 1, and 0.5 exactly on a limit. Infinite degrees
/// of freedom: the normal distribution; finite ones, truncated to a whole number of at least 1:
/// Student's t (GUM G.3.2).
double conformanceProbability(double value, double u, std::optional<double> low,
                              std::optional<double> high,
                              double degrees_of_freedom = known_exactly);
double conformanceProbability(const Reading& reading, std::optional<double> low,
                              std::optional<double> high);

enum class Conformity { Inside, TooClose, Outside };

/// Inside at the upper probability or more, outside at the lower one or less, between them too
/// close to say. Unless set otherwise 0.95 and 0.05 (our choice; JCGM 106 leaves it to the user).
Conformity conformityOf(double probability, const DecisionLimits& limits = {});

} // namespace latchround
