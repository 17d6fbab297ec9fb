#include "core/planning/failure_rate.h"

#include <boost/math/distributions/binomial.hpp>

namespace latchround {

std::optional<FailureRate> failureRate(int failed, int tested, double confidence) {
    if (tested < 1 || failed < 0 || failed > tested || !(confidence > 0 && confidence < 1))
        return std::nullopt;
    using Binomial = boost::math::binomial_distribution<double>;
    const double tail = (1 - confidence) / 2;
    FailureRate rate;
    if (failed > 0)
        rate.low = Binomial::find_lower_bound_on_p(tested, failed, tail);
    if (failed < tested)
        rate.high = Binomial::find_upper_bound_on_p(tested, failed, tail);
    return rate;
}

} // namespace latchround
