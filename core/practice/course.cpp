#include "core/practice/course.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <optional>
#include <utility>

#include <boost/math/tools/toms748_solve.hpp>
#include <boost/numeric/odeint/stepper/controlled_runge_kutta.hpp>
#include <boost/numeric/odeint/stepper/dense_output_runge_kutta.hpp>
#include <boost/numeric/odeint/stepper/generation/generation_dense_output_runge_kutta.hpp>
#include <boost/numeric/odeint/stepper/generation/generation_runge_kutta_dopri5.hpp>
#include <boost/numeric/odeint/stepper/generation/make_dense_output.hpp>
#include <boost/numeric/odeint/stepper/runge_kutta_dopri5.hpp>

namespace latchround::practice {

namespace {

constexpr double step_tolerance = 1e-10; // radians, metres, joules; and relative
constexpr double first_try_s = 1e-3;
constexpr int root_bits = 40;
constexpr std::uintmax_t root_tries = 100;

/// A straight line between samples is late or early by an eighth of their distance, times the part
/// by which the rate changes over it: where that is much, after a jump and near rest, they lie
/// closer.
constexpr double closest_samples = 1.0 / 16; // of a step
constexpr double rate_change = 0.25;         // from one sample to the next

/// Where in the step the value, at its two ends of different sign, is nought.
template <class Value>
double rootBetween(double from_s, double value_from, double to_s, double value_to, Value value) {
    if (value_from == 0)
        return from_s;
    if (value_to == 0)
        return to_s;
    std::uintmax_t tries = root_tries;
    const auto [low, high] = boost::math::tools::toms748_solve(
        value, from_s, to_s, value_from, value_to,
        boost::math::tools::eps_tolerance<double>(root_bits), tries);
    return (low + high) / 2;
}

} // namespace

Course::Course(double place, double full, double inertia, double step_s)
    : m_state{place, 0, 0, 0}
    , m_full(full)
    , m_inertia(inertia)
    , m_step_s(step_s) {
    sample(0, m_state);
}

void Course::sample(double t_s, const State& state) {
    if (!m_samples.empty() && t_s <= m_samples.back().t_s)
        m_samples.pop_back();
    m_samples.push_back({t_s, std::clamp(state[at_place] / m_full, 0.0, 1.0),
                         m_inertia * state[at_rate] * state[at_rate] / 2, state[at_spent],
                         state[at_given]});
}

void Course::stop() {
    m_state[at_spent] += m_inertia * m_state[at_rate] * m_state[at_rate] / 2;
    m_state[at_rate] = 0;
    sample(m_t_s, m_state);
}

LegEnd Course::go(const Leg& leg) {
    namespace odeint = boost::numeric::odeint;
    const double heading = static_cast<double>(static_cast<int>(leg.heading));
    const auto pace = [&](const State& state) { return heading * state[at_rate]; };
    const auto left = [&](const State& state) { return heading * (leg.until - state[at_place]); };
    const auto slows = [&](const State& state) {
        return heading * leg.law(state[at_place], state[at_rate]).acceleration <= 0;
    };
    const auto system = [&](const State& state, State& change, double) {
        const Flow flow = leg.law(state[at_place], state[at_rate]);
        change = {state[at_rate], flow.acceleration, flow.given_W, flow.spent_W};
    };
    if (pace(m_state) <= rest_rate && slows(m_state)) {
        stop();
        return LegEnd::Stands;
    }
    auto stepper = odeint::make_dense_output(step_tolerance, step_tolerance,
                                             odeint::runge_kutta_dopri5<State>());
    stepper.initialize(m_state, m_t_s, first_try_s);
    State looked_at{};
    const auto stateAt = [&](double t_s) -> const State& {
        stepper.calc_state(t_s, looked_at);
        return looked_at;
    };
    const auto nextSample = [&](double t_s, const State& state) {
        const double acceleration = leg.law(state[at_place], state[at_rate]).acceleration;
        const double wanted_s = rate_change * std::abs(state[at_rate] / acceleration);
        // Written so that nought by nought takes the closest.
        return t_s + (wanted_s >= m_step_s * closest_samples ? std::min(wanted_s, m_step_s)
                                                             : m_step_s * closest_samples);
    };
    double next_sample_s = nextSample(m_t_s, m_state);
    while (true) {
        const auto [from_s, to_s] = stepper.do_step(system);
        const State before = stepper.previous_state();
        State reached = stepper.current_state();
        double end_s = to_s;
        std::optional<LegEnd> end;
        if (pace(reached) < rest_rate && slows(reached)) {
            end = LegEnd::Stands;
            if (pace(before) > rest_rate)
                end_s =
                    rootBetween(from_s, pace(before) - rest_rate, to_s, pace(reached) - rest_rate,
                                [&](double t_s) { return pace(stateAt(t_s)) - rest_rate; });
            reached = stateAt(end_s);
        }
        // Until it stands it goes one way only, so the end of the leg is passed once.
        if (left(reached) <= 0) {
            end = LegEnd::Reached;
            end_s = rootBetween(from_s, left(before), end_s, left(reached),
                                [&](double t_s) { return left(stateAt(t_s)); });
            reached = stateAt(end_s);
            reached[at_place] = leg.until;
        }
        if (!end && end_s >= watched_s)
            end = LegEnd::GivenUp;
        while (next_sample_s < end_s) {
            sample(next_sample_s, stateAt(next_sample_s));
            next_sample_s = nextSample(next_sample_s, looked_at);
        }
        if (!end)
            continue;
        m_t_s = end_s;
        m_state = reached;
        sample(m_t_s, m_state);
        if (*end != LegEnd::Reached)
            stop();
        return *end;
    }
}

Motion Course::motion(bool shut) && {
    return Motion(std::move(m_samples), shut ? std::optional(m_t_s) : std::nullopt);
}

} // namespace latchround::practice
