// A measured number with its uncertainty, split into what repeating can reduce and what it cannot.
#pragma once

#include <cmath>

namespace latchround {

/// Standard uncertainties (k = 1) in the unit of the value. JCGM 100 (GUM) 5.1.2: independent parts
/// add in quadrature.
struct Reading {
    double value = 0;
    double u_random = 0; ///< differs from run to run; falls with the mean of several
    double u_common = 0; ///< the same each time: bias of the person, tolerance of the opening

    double u() const { return std::hypot(u_random, u_common); }
};

/// What a thumb is worth. Until a person's own figures are known: spread of a start-stop pair 0.10
/// s (Am. J. Phys. 87, 110 (2019), abstract), bias within +-0.05 s, rectangular: the two ends of a
/// door's run are different kinds of event, so their delays need not cancel (half-width: our
/// choice, no source).
struct ThumbError {
    double spread_s = 0.10;
    double bias_half_width_s = 0.05;
};

} // namespace latchround
