#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

#include "core/practice/course.h"

namespace latchround::practice {

namespace {

double inertia_kgm2(const HingedLeaf& leaf) {
    return leaf.mass_kg * leaf.width_m * leaf.width_m / 3;
}

/// By the closer's spring and the heel, towards shut.
double driving_Nm(const HingedLeaf& leaf, double angle_rad) {
    return leaf.spring_Nm + leaf.spring_rate_Nm * angle_rad - leaf.heel_Nm;
}

/// What holds between two angles: the next jump of damping, latch, block or stop ends it.
struct Stretch {
    Heading heading = Heading::Closing;
    double until_rad = 0;
    double damping_Nms = 0;
    double resisting_Nm = 0; ///< friction, and going shut the latch
};

Stretch stretchFrom(const HingedLeaf& leaf, double angle_rad, Heading heading) {
    Stretch made;
    made.heading = heading;
    const bool closes = heading == Heading::Closing;
    made.until_rad = closes ? 0 : leaf.open_rad;
    const auto endsAt = [&](double jump_rad) {
        if (closes ? jump_rad < angle_rad && jump_rad > made.until_rad
                   : jump_rad > angle_rad && jump_rad < made.until_rad)
            made.until_rad = jump_rad;
    };
    endsAt(leaf.latch_angle_rad);
    endsAt(leaf.latch_from_rad);
    if (closes && leaf.blocked_rad)
        endsAt(*leaf.blocked_rad);
    const double middle_rad = (angle_rad + made.until_rad) / 2;
    made.damping_Nms =
        middle_rad > leaf.latch_angle_rad ? leaf.sweep_damping_Nms : leaf.latch_damping_Nms;
    made.resisting_Nm = leaf.friction_Nm;
    if (closes && middle_rad < leaf.latch_from_rad)
        made.resisting_Nm += leaf.latch_Nm;
    return made;
}

bool isAtBlock(const HingedLeaf& leaf, double angle_rad) {
    return leaf.blocked_rad && std::abs(angle_rad - *leaf.blocked_rad) <= block_slack;
}

/// Where a leaf at rest goes from here, if what is left to move it keeps it moving visibly.
std::optional<Stretch> stretchFromRest(const HingedLeaf& leaf, double angle_rad) {
    for (const Heading heading : {Heading::Closing, Heading::Opening}) {
        const bool closes = heading == Heading::Closing;
        if (closes ? isAtBlock(leaf, angle_rad) : angle_rad >= leaf.open_rad)
            continue;
        const Stretch stretch = stretchFrom(leaf, angle_rad, heading);
        const double along_Nm = (closes ? 1 : -1) * driving_Nm(leaf, angle_rad);
        if (along_Nm - stretch.resisting_Nm > stretch.damping_Nms * rest_rate)
            return stretch;
    }
    return std::nullopt;
}

Leg legOf(const HingedLeaf& leaf, const Stretch& stretch) {
    const double heading = stretch.heading == Heading::Closing ? -1 : 1;
    const auto law = [leaf, stretch, heading](double angle_rad, double rate) {
        const double driving = driving_Nm(leaf, angle_rad);
        const double against = stretch.damping_Nms * rate + heading * stretch.resisting_Nm;
        return Flow{(-driving - against) / inertia_kgm2(leaf), -driving * rate, against * rate};
    };
    return {stretch.heading, stretch.until_rad, law};
}

} // namespace

Motion closing(const HingedLeaf& leaf, double from_open, double step_s) {
    const double from_rad = std::clamp(from_open, 0.0, 1.0) * leaf.open_rad;
    Course course(from_rad, leaf.open_rad, inertia_kgm2(leaf), step_s);
    if (from_rad <= 0)
        return std::move(course).motion(true);
    std::optional<Stretch> stretch = stretchFromRest(leaf, from_rad);
    while (stretch) {
        const LegEnd end = course.go(legOf(leaf, *stretch));
        if (end == LegEnd::GivenUp)
            break;
        const double angle_rad = course.place();
        const bool closes = stretch->heading == Heading::Closing;
        const bool home = closes && end == LegEnd::Reached && angle_rad <= 0;
        const bool stopped = closes ? angle_rad == leaf.blocked_rad : angle_rad >= leaf.open_rad;
        if (end == LegEnd::Reached && (home || stopped))
            course.stop();
        if (home)
            return std::move(course).motion(true);
        stretch = end == LegEnd::Stands || stopped ? stretchFromRest(leaf, angle_rad)
                                                   : stretchFrom(leaf, angle_rad, stretch->heading);
    }
    return std::move(course).motion(false);
}

TwoMotions closing(const DoubleLeaf& leaves, double step_s) {
    TwoMotions both{closing(leaves.first, 1, step_s), closing(leaves.second, 1, step_s)};
    if (!leaves.selector_works || leaves.selector_rad <= 0)
        return both;
    // The selector is a block until the first leaf is home.
    HingedLeaf held = leaves.second;
    const double holds_at_rad = std::min(leaves.selector_rad, held.open_rad);
    held.blocked_rad = std::max(holds_at_rad, held.blocked_rad.value_or(0));
    const Motion waiting = closing(held, 1, step_s);
    const std::optional<double> free_s = both.first.shut_s();
    if (!free_s) {
        both.second = waiting;
        return both;
    }
    // Not yet there when the first is home, it never knows of the selector.
    const double holds_at = (holds_at_rad + block_slack) / held.open_rad;
    const std::optional<double> met_s =
        waiting.open(0) <= holds_at ? 0 : waiting.passes_s(holds_at);
    if (met_s && *met_s <= *free_s)
        both.second =
            waiting.followedBy(*free_s, closing(leaves.second, waiting.open(*free_s), step_s));
    return both;
}

} // namespace latchround::practice
