#include "core/measure/double_mark.h"

#include <cmath>

#include "core/measure/closing.h"
#include "core/measure/interval.h"

namespace latchround {

namespace {

bool isHome(MarkKind kind) {
    return kind == MarkKind::Shut || kind == MarkKind::FirstLeafHome ||
           kind == MarkKind::SecondLeafHome;
}

} // namespace

bool isClosing(MarkKind from, MarkKind to) {
    return from == MarkKind::LeafMoves && isHome(to);
}

std::optional<std::size_t> suspectedDouble(const RunRecord& run) {
    for (std::size_t i = 1; i < run.marks.size(); ++i) {
        const Mark& before = run.marks[i - 1].mark;
        const Mark& mark = run.marks[i].mark;
        const double within_s =
            isClosing(before.kind, mark.kind) ? fastest_closing_s : suspected_within_s;
        const auto between = intervalBetween(before, mark);
        if (between && between->clock != IntervalClock::TypedIn &&
            std::abs(between->seconds) < within_s)
            return i;
    }
    return std::nullopt;
}

} // namespace latchround
