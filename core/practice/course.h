// The course of one leaf while it is worked out: legs on which one smooth law holds, integrated by
// Boost.Odeint (Dormand and Prince's method of order 5, its step kept by tolerance) and ended where
// they end exactly. What jumps - damping, latch, friction, block - jumps between two legs only, so
// the method keeps its order. Place: radians or metres from shut.
#pragma once

#include <array>
#include <functional>
#include <vector>

#include "core/practice/motion.h"

namespace latchround::practice {

/// Per second; slower than this, a leaf stands: its edge goes a tenth of a millimetre a second, and
/// nobody sees it. Common practice, no source.
inline constexpr double rest_rate = 1e-4;

/// So long a leaf is watched; still moving then, it counts as standing. Our choice, no source.
inline constexpr double watched_s = 600;

/// Closer than this to its place, a block is met. Radians or metres.
inline constexpr double block_slack = 1e-6;

struct Flow {
    double acceleration = 0; ///< of the place; negative: towards shut
    double given_W = 0;
    double spent_W = 0;
};

enum class Heading { Closing = -1, Opening = 1 };

struct Leg {
    Heading heading = Heading::Closing;
    double until = 0; ///< place
    std::function<Flow(double place, double rate)> law;
};

enum class LegEnd { Reached, Stands, GivenUp };

class Course {
public:
    /// At rest. `full`: the place that is fully open; `inertia`: kg, or kg m^2.
    Course(double place, double full, double inertia, double step_s);

    double place() const { return m_state[at_place]; }
    bool isAtRest() const { return m_state[at_rate] == 0; }
    /// Goes on to the end of the leg, or until it stands before. Standing, the rate is nought.
    LegEnd go(const Leg& leg);
    /// Something stops it here: what it carried is spent.
    void stop();
    Motion motion(bool shut) &&;

private:
    enum Part { at_place, at_rate, at_given, at_spent };
    using State = std::array<double, 4>;

    void sample(double t_s, const State& state);

    State m_state{};
    double m_full;
    double m_inertia;
    double m_step_s;
    double m_t_s = 0;
    std::vector<Sample> m_samples;
};

} // namespace latchround::practice
