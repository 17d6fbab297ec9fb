#include "core/measure/reading.h"

namespace latchround {

double Reading::uRandom() const {
    Budget random;
    for (const Component& component : budget)
        if (component.falls_with_runs)
            random.push_back(component);
    return combinedUncertainty(random);
}

double expanded(const Reading& reading) {
    return coverageFactor(reading.degreesOfFreedom(), level_of_k2) * reading.u();
}

Reading quotient(const Reading& numerator, const Reading& denominator) {
    Reading result{numerator.value / denominator.value, {}};
    const auto take = [&](const Budget& parts, double factor) {
        for (Component component : parts) {
            component.sensitivity *= factor;
            result.budget.push_back(component);
        }
    };
    take(denominator.budget, -result.value / denominator.value);
    take(numerator.budget, 1 / denominator.value);
    return result;
}

} // namespace latchround
