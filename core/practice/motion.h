// How a leaf moves once it is let go, worked out before it does: the equation of motion integrated
// with Boost.Odeint, and its events. Position is a fraction: 1 fully open, 0 shut.
#pragma once

#include <optional>
#include <vector>

#include "core/practice/mechanism.h"

namespace latchround::practice {

/// Seconds between samples, which lie closer where the law of motion jumps. The integration keeps
/// its own step by tolerance; halved, no event moves by 1 ms.
inline constexpr double usual_step_s = 0.01;

struct Sample {
    double t_s = 0;
    double open = 1;
    double kinetic_J = 0;
    double spent_J = 0; ///< into dampers, friction, latch, brake and what stops it since the start
    double given_J = 0; ///< by spring, drive and heel since the start

    bool operator==(const Sample&) const = default;
};

/// The course of one leaf. Time counts from the moment it is let go.
class Motion {
public:
    /// It stands still, open by this much; shut, it came home at 0 s.
    explicit Motion(double open = 1);
    /// In order of time; at least one.
    explicit Motion(std::vector<Sample> samples, std::optional<double> shut_s);

    /// Between the samples by a straight line; before and after them it stands.
    double open(double t_s) const;
    /// When it came home first; nothing where it never does.
    std::optional<double> shut_s() const { return m_shut_s; }
    /// When it is at this opening first, not before the first sample; nothing where it never is.
    std::optional<double> passes_s(double open) const;
    /// When it stands for good.
    double rests_s() const;
    const std::vector<Sample>& samples() const { return m_samples; }

    /// The same, begun later.
    Motion later(double by_s) const;
    /// This one until `at_s`, then standing there.
    Motion stoppedAt(double at_s) const;
    /// This one until `at_s`, then the other from its beginning. The other begins where this one
    /// is then.
    Motion followedBy(double at_s, const Motion& other) const;

private:
    std::vector<Sample> m_samples;
    std::optional<double> m_shut_s;
};

/// Let go, at rest, open by this fraction; shut already where that is 0. What cannot move it faster
/// than a tenth of a millimetre a second leaves it standing, and after ten minutes it counts as
/// standing. Against the heel it may swing open, as far as `open_rad`.
Motion closing(const HingedLeaf& leaf, double from_open = 1, double step_s = usual_step_s);
Motion closing(const SlidingLeaf& leaf, double from_open = 1, double step_s = usual_step_s);

struct TwoMotions {
    Motion first;
    Motion second;
};
/// Both let go at once. Where the selector works the second waits for the first, and where it does
/// not each goes as its closer has it.
TwoMotions closing(const DoubleLeaf& leaves, double step_s = usual_step_s);

/// The drive takes the leaf back by `back_m` at its set rate, as a safety edge has it do.
Motion reopening(const SlidingLeaf& leaf, double from_open, double back_m,
                 double step_s = usual_step_s);

} // namespace latchround::practice
