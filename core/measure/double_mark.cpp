#include "core/measure/double_mark.h"

#include <cmath>

#include "core/measure/interval.h"

namespace latchround {

std::optional<std::size_t> suspectedDouble(const RunRecord& run) {
    for (std::size_t i = 1; i < run.marks.size(); ++i) {
        const auto between = intervalBetween(run.marks[i - 1].mark, run.marks[i].mark);
        if (between && between->clock != IntervalClock::TypedIn &&
            std::abs(between->seconds) < suspected_within_s)
            return i;
    }
    return std::nullopt;
}

} // namespace latchround
