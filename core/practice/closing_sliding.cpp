#include <algorithm>
#include <utility>

#include "core/practice/course.h"

namespace latchround::practice {

namespace {

/// Shorter than this no drive comes to its rate.
constexpr double shortest_ramp_s = 1e-3;

/// The drive gives what quickens the leaf and takes up what slows it.
Leg legOf(const SlidingLeaf& leaf, Heading heading, double until_m, double rate_m_s) {
    const double ramp_s = std::max(leaf.ramp_s, shortest_ramp_s);
    const double wanted = heading == Heading::Closing ? -rate_m_s : rate_m_s;
    const auto law = [mass_kg = leaf.mass_kg, ramp_s, wanted](double, double rate) {
        const double acceleration = (wanted - rate) / ramp_s;
        const double power_W = mass_kg * acceleration * rate;
        return Flow{acceleration, std::max(power_W, 0.0), std::max(-power_W, 0.0)};
    };
    return {heading, until_m, law};
}

double placeAt(const SlidingLeaf& leaf, double open) {
    return std::clamp(open, 0.0, 1.0) * leaf.travel_m;
}

} // namespace

Motion closing(const SlidingLeaf& leaf, double from_open, double step_s) {
    const double from_m = placeAt(leaf, from_open);
    Course course(from_m, leaf.travel_m, leaf.mass_kg, step_s);
    const bool is_blocked = leaf.blocked_m && *leaf.blocked_m <= from_m + block_slack;
    const double ends_m = is_blocked ? std::clamp(*leaf.blocked_m, 0.0, from_m) : 0;
    while (course.place() > ends_m) {
        const bool creeps = course.place() <= leaf.creep_from_m;
        const double rate_m_s =
            creeps ? std::min(leaf.creep_rate_m_s, leaf.rate_m_s) : leaf.rate_m_s;
        const double until_m = creeps ? ends_m : std::max(leaf.creep_from_m, ends_m);
        // What it has still may carry it home.
        if (course.isAtRest() && rate_m_s <= rest_rate)
            break;
        if (course.go(legOf(leaf, Heading::Closing, until_m, rate_m_s)) != LegEnd::Reached)
            break;
    }
    course.stop();
    const bool shut = course.place() <= 0;
    return std::move(course).motion(shut);
}

Motion reopening(const SlidingLeaf& leaf, double from_open, double back_m, double step_s) {
    const double from_m = placeAt(leaf, from_open);
    Course course(from_m, leaf.travel_m, leaf.mass_kg, step_s);
    const double until_m = std::min(from_m + back_m, leaf.travel_m);
    if (until_m > from_m && leaf.rate_m_s > rest_rate)
        course.go(legOf(leaf, Heading::Opening, until_m, leaf.rate_m_s));
    course.stop();
    const bool shut = course.place() <= 0;
    return std::move(course).motion(shut);
}

} // namespace latchround::practice
