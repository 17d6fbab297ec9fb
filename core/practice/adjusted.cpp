#include <algorithm>
#include <cmath>
#include <cstdint>
#include <optional>
#include <utility>

#include <boost/math/tools/toms748_solve.hpp>

#include "core/practice/course.h"

namespace latchround::practice {

namespace {

constexpr double time_tolerance_s = 0.001;
constexpr double rate_tolerance_m_s = 0.0001;

/// The events hang on the tolerance of the integration alone: samples that nobody looks at lie far
/// apart.
constexpr double far_step_s = 10;

using Quiet = boost::math::policies::policy<
    boost::math::policies::evaluation_error<boost::math::policies::ignore_error>>;

/// The setting at which a figure that rises with it is nought, looked for outwards from a guess. A
/// hundredth of the tolerance is near enough. Where there is none it is some other setting: look
/// what it gives.
template <class Figure>
double settingFor(Figure figure, double guess, double tolerance) {
    constexpr int bits = 32;
    std::uintmax_t tries = 100;
    const auto off = [&](double setting) {
        const double value = figure(setting);
        return std::abs(value) <= tolerance / 100 ? 0 : value;
    };
    const auto [low, high] = boost::math::tools::bracket_and_solve_root(
        off, guess, 2.0, true, boost::math::tools::eps_tolerance<double>(bits), tries, Quiet());
    return (low + high) / 2;
}

HingedLeaf damped(HingedLeaf leaf, double factor) {
    leaf.sweep_damping_Nms *= factor;
    leaf.latch_damping_Nms *= factor;
    return leaf;
}

DoubleLeaf damped(DoubleLeaf leaves, double factor) {
    leaves.first = damped(leaves.first, factor);
    leaves.second = damped(leaves.second, factor);
    return leaves;
}

bool hasDamper(const HingedLeaf& leaf) {
    return leaf.sweep_damping_Nms > 0 || leaf.latch_damping_Nms > 0;
}

bool hasDamper(const DoubleLeaf& leaves) {
    return hasDamper(leaves.first) || hasDamper(leaves.second);
}

/// A leaf that never comes home takes longest.
double takes_s(const HingedLeaf& leaf) {
    return closing(leaf, 1, far_step_s).shut_s().value_or(2 * watched_s);
}

double takes_s(const DoubleLeaf& leaves) {
    const TwoMotions motions = closing(leaves, far_step_s);
    return std::max(motions.first.shut_s().value_or(2 * watched_s),
                    motions.second.shut_s().value_or(2 * watched_s));
}

template <class Leaves>
std::optional<Leaves> slowedTo(const Leaves& leaves, double closing_s) {
    const auto off_s = [&](double factor) { return takes_s(damped(leaves, factor)) - closing_s; };
    const auto serves = [&](double factor) { return std::abs(off_s(factor)) <= time_tolerance_s; };
    if (serves(0))
        return damped(leaves, 0);
    if (!(off_s(0) < 0 && closing_s <= watched_s) || !hasDamper(leaves))
        return std::nullopt;
    // Against damping alone time rises with the factor.
    const double guess = closing_s / takes_s(leaves);
    const double factor = settingFor(off_s, guess, time_tolerance_s);
    return serves(factor) ? std::optional(damped(leaves, factor)) : std::nullopt;
}

} // namespace

std::optional<HingedLeaf> adjusted(HingedLeaf leaf, double closing_s) {
    return slowedTo(leaf, closing_s);
}

std::optional<DoubleLeaf> adjusted(DoubleLeaf leaves, double closing_s) {
    return slowedTo(leaves, closing_s);
}

std::optional<SlidingLeaf> adjusted(SlidingLeaf leaf, double mean_rate_m_s) {
    if (!(mean_rate_m_s > 0) || !(leaf.travel_m > 0) || leaf.blocked_m)
        return std::nullopt;
    const auto driven = [&](double rate_m_s) {
        SlidingLeaf made = leaf;
        made.rate_m_s = rate_m_s;
        return made;
    };
    const auto off_m_s = [&](double rate_m_s) {
        const std::optional<double> shut_s = closing(driven(rate_m_s), 1, far_step_s).shut_s();
        return (shut_s ? leaf.travel_m / *shut_s : 0) - mean_rate_m_s;
    };
    const double rate_m_s = settingFor(off_m_s, mean_rate_m_s, rate_tolerance_m_s);
    return std::abs(off_m_s(rate_m_s)) <= rate_tolerance_m_s ? std::optional(driven(rate_m_s))
                                                             : std::nullopt;
}

} // namespace latchround::practice
