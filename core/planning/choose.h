// Binomial coefficients as whole numbers of any size: nothing that is counted is ever rounded.
#pragma once

#include <boost/multiprecision/cpp_int.hpp>

namespace latchround {

using Whole = boost::multiprecision::cpp_int;

/// Ways to take k of n; 0 where k lies outside 0 to n.
Whole choose(int n, int k);

} // namespace latchround
