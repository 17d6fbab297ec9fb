// A measured number with the budget of its uncertainty.
#pragma once

#include "core/measure/budget.h"

namespace latchround {

struct Reading {
    double value = 0;
    Budget budget; ///< in the unit of the value

    /// Standard uncertainty (k = 1).
    double u() const { return combinedUncertainty(budget); }
    /// What differs from run to run, alone.
    Budget randomPart() const;
    double uRandom() const { return combinedUncertainty(randomPart()); }
    double degreesOfFreedom() const { return effectiveDegreesOfFreedom(budget); }
};

/// Expanded uncertainty U: the coverage of k = 2 (95.45 %), by Student's t where the degrees of
/// freedom are few.
double expanded(const Budget& budget);
inline double expanded(const Reading& reading) {
    return expanded(reading.budget);
}

/// One reading divided by another, above 0, that has no error in common with it (JCGM 100, 5.1.2).
Reading quotient(const Reading& numerator, const Reading& denominator);

} // namespace latchround
