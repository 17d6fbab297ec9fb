#include "core/measure/reading.h"

namespace latchround {

Budget Reading::randomPart() const {
    Budget random;
    for (const Component& component : budget)
        if (component.falls_with_runs)
            random.push_back(component);
    return random;
}

double expanded(const Budget& budget) {
    return coverageFactor(effectiveDegreesOfFreedom(budget), level_of_k2) *
           combinedUncertainty(budget);
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
