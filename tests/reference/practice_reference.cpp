// Moving leaves against closed forms. All of them are from memory, as in any textbook of mechanics
// (motion under a constant force, with linear friction, of a damped spring); figures agree to 1e-8
// of a radian or metre and to a microsecond.
#include <cmath>
#include <complex>
#include <optional>
#include <random>

#include <gtest/gtest.h>

#include "core/practice/motion.h"

using namespace latchround::practice;

namespace {

constexpr double place = 1e-8;
constexpr double time_s = 1e-6;

double inertia(const HingedLeaf& leaf) {
    return leaf.mass_kg * leaf.width_m * leaf.width_m / 3;
}

/// Nothing but a constant moment.
HingedLeaf bare(double moment_Nm) {
    HingedLeaf leaf;
    leaf.spring_Nm = moment_Nm;
    leaf.spring_rate_Nm = leaf.sweep_damping_Nms = leaf.latch_damping_Nms = 0;
    leaf.friction_Nm = leaf.latch_Nm = 0;
    return leaf;
}

/// Way under a constant force with linear friction, from this rate: the rate comes to `final` with
/// the time constant tau.
double way(double t_s, double from, double final, double tau_s) {
    return final * t_s + (from - final) * tau_s * (1 - std::exp(-t_s / tau_s));
}

/// J theta'' + c theta' + k theta = -constant, from this place and rate: two exponentials, of
/// complex exponents where it is underdamped.
struct Swing {
    double inertia, damping, rate, constant;
    double from, speed;

    std::complex<double> exponent(double sign) const {
        const std::complex<double> root =
            std::sqrt(std::complex<double>(damping * damping - 4 * inertia * rate));
        return (-damping + sign * root) / (2 * inertia);
    }
    /// Place, or its rate for `order` 1.
    double at(double t_s, int order = 0) const {
        const double rest = -constant / rate;
        const std::complex<double> one = exponent(1);
        const std::complex<double> two = exponent(-1);
        const std::complex<double> a = (speed - two * (from - rest)) / (one - two);
        const std::complex<double> b = (from - rest) - a;
        const auto sum = a * std::pow(one, order) * std::exp(one * t_s) +
                         b * std::pow(two, order) * std::exp(two * t_s);
        return sum.real() + (order == 0 ? rest : 0);
    }
    /// When it is at this place first; nothing where it turns back before.
    std::optional<double> reaches_s(double where) const {
        constexpr double stride_s = 1e-3;
        double low_s = 0;
        while (at(low_s + stride_s) > where) {
            low_s += stride_s;
            if (at(low_s, 1) >= 0 || low_s > 300)
                return std::nullopt;
        }
        double high_s = low_s + stride_s;
        for (int halvings = 0; halvings < 60; ++halvings) {
            const double middle_s = (low_s + high_s) / 2;
            (at(middle_s) > where ? low_s : high_s) = middle_s;
        }
        return high_s;
    }
};

/// Closing time, swing by swing: over the sweep, to the latch, through it.
std::optional<double> exactlyShut_s(const HingedLeaf& leaf) {
    double time = 0;
    double from = leaf.open_rad;
    double speed = 0;
    for (const double until : {leaf.latch_angle_rad, leaf.latch_from_rad, 0.0}) {
        const double damping =
            from > leaf.latch_angle_rad ? leaf.sweep_damping_Nms : leaf.latch_damping_Nms;
        const double latch = until == 0 ? leaf.latch_Nm : 0;
        const Swing swing{inertia(leaf),
                          damping,
                          leaf.spring_rate_Nm,
                          leaf.spring_Nm - leaf.heel_Nm - leaf.friction_Nm - latch,
                          from,
                          speed};
        const std::optional<double> takes = swing.reaches_s(until);
        if (!takes)
            return std::nullopt;
        time += *takes;
        from = until;
        speed = swing.at(*takes, 1);
    }
    return time;
}

} // namespace

// theta = theta0 - M t^2 / 2J.
TEST(ConstantMoment, FallsWithTheSquareOfTime) {
    const HingedLeaf leaf = bare(5);
    const Motion motion = closing(leaf);
    EXPECT_NEAR(*motion.shut_s(), std::sqrt(2 * inertia(leaf) * leaf.open_rad / 5), time_s);
    EXPECT_NEAR(*motion.shut_s(), 2.6043041297052847,
                time_s); // 10.8 kg m^2, 1.57 rad, computed apart
    for (const Sample& sample : motion.samples()) {
        const double fallen_rad = 5 * sample.t_s * sample.t_s / (2 * inertia(leaf));
        EXPECT_NEAR(sample.open * leaf.open_rad, leaf.open_rad - fallen_rad, place);
        EXPECT_NEAR(sample.given_J, 5 * fallen_rad, place);
    }
}

// A straight line from rest would be late by milliseconds were the samples evenly spread.
TEST(ConstantMoment, IsSeenToBeginInTime) {
    const HingedLeaf leaf = bare(5);
    const Motion motion = closing(leaf);
    for (const double fallen : {1e-6, 1e-5, 1e-4, 1e-3})
        EXPECT_NEAR(*motion.passes_s(1 - fallen),
                    std::sqrt(2 * inertia(leaf) * leaf.open_rad * fallen / 5), 4e-4)
            << fallen;
}

// What friction and heel take off the moment, they take off M.
TEST(ConstantMoment, LessFrictionAndHeel) {
    HingedLeaf leaf = bare(9);
    leaf.friction_Nm = 1.5;
    leaf.heel_Nm = 2.5;
    EXPECT_NEAR(*closing(leaf).shut_s(), 2.6043041297052847, time_s);
}

// theta = (theta0 + M/k) cos(t sqrt(k/J)) - M/k.
TEST(SpringAlone, SwingsAsACosine) {
    HingedLeaf leaf = bare(4);
    leaf.spring_rate_Nm = 8;
    const double turn_s = std::sqrt(inertia(leaf) / 8);
    EXPECT_NEAR(*closing(leaf).shut_s(), turn_s * std::acos(0.5 / (leaf.open_rad + 0.5)), time_s);
}

// The rate comes to M/c with the time constant J/c.
TEST(ConstantMoment, DampedComesToItsRate) {
    HingedLeaf leaf = bare(15);
    leaf.sweep_damping_Nms = leaf.latch_damping_Nms = 60;
    const Motion motion = closing(leaf);
    const double tau_s = inertia(leaf) / 60;
    for (const Sample& sample : motion.samples())
        EXPECT_NEAR(sample.open * leaf.open_rad, leaf.open_rad - way(sample.t_s, 0, 0.25, tau_s),
                    place);
    EXPECT_NEAR(way(*motion.shut_s(), 0, 0.25, tau_s), leaf.open_rad, place);
}

// At the latch angle it comes from 0.25 rad/s to 0.05 rad/s with the other time constant.
TEST(ConstantMoment, DampedMoreFromTheLatchAngle) {
    HingedLeaf leaf = bare(15);
    leaf.sweep_damping_Nms = 60;
    leaf.latch_damping_Nms = 300;
    leaf.latch_angle_rad = 0.17;
    const Motion motion = closing(leaf);
    const double tau_s = inertia(leaf) / 60;
    const double jump_s = *motion.passes_s(leaf.latch_angle_rad / leaf.open_rad);
    EXPECT_NEAR(way(jump_s, 0, 0.25, tau_s), 1.4, place);
    const double jump_rate = 0.25 * (1 - std::exp(-jump_s / tau_s));
    for (const Sample& sample : motion.samples()) {
        if (sample.t_s <= jump_s)
            continue;
        const double since_s = sample.t_s - jump_s;
        EXPECT_NEAR(sample.open * leaf.open_rad,
                    0.17 - way(since_s, jump_rate, 0.05, inertia(leaf) / 300), place);
    }
    EXPECT_NEAR(way(*motion.shut_s() - jump_s, jump_rate, 0.05, inertia(leaf) / 300), 0.17, place);
}

// Overdamped: A exp(-a t) + B exp(-b t) - M/k; J 10.8, c 100, k 20 give a, b by the quadratic.
TEST(OverdampedSpring, IsTwoExponentials) {
    HingedLeaf leaf = bare(6);
    leaf.spring_rate_Nm = 20;
    leaf.sweep_damping_Nms = leaf.latch_damping_Nms = 100;
    const double root = std::sqrt(100.0 * 100.0 - 4 * 10.8 * 20);
    const double a = (100 - root) / 21.6;
    const double b = (100 + root) / 21.6;
    const double above = leaf.open_rad + 0.3;
    const auto angle = [&](double t_s) {
        return above * (b * std::exp(-a * t_s) - a * std::exp(-b * t_s)) / (b - a) - 0.3;
    };
    const Motion motion = closing(leaf);
    ASSERT_TRUE(motion.shut_s());
    EXPECT_NEAR(angle(*motion.shut_s()), 0, place);
    for (const Sample& sample : motion.samples())
        EXPECT_NEAR(sample.open * leaf.open_rad, angle(sample.t_s), place);
}

// Two hundred leaves with everything on them, each swing solved by its two exponentials.
TEST(AnyLeaf, ShutsWhenItsSwingsSay) {
    std::mt19937 draw(20240611);
    const auto between = [&](double low, double high) {
        return low + (high - low) * static_cast<double>(draw()) / 4294967296.0;
    };
    int shut = 0;
    for (int leaves = 0; leaves < 200; ++leaves) {
        HingedLeaf leaf;
        leaf.mass_kg = between(30, 130);
        leaf.width_m = between(0.6, 1.1);
        leaf.open_rad = between(1.2, 2);
        leaf.spring_Nm = between(8, 30);
        leaf.spring_rate_Nm = between(1, 40);
        leaf.sweep_damping_Nms = between(0, 500);
        leaf.latch_damping_Nms = between(0, 500);
        leaf.friction_Nm = between(0, 2);
        leaf.latch_Nm = between(0, 20);
        leaf.heel_Nm = between(-5, 5);
        const std::optional<double> expected_s = exactlyShut_s(leaf);
        const std::optional<double> found_s = closing(leaf).shut_s();
        ASSERT_EQ(found_s.has_value(), expected_s.has_value()) << "leaf " << leaves;
        if (!found_s)
            continue;
        EXPECT_NEAR(*found_s, *expected_s, time_s) << "leaf " << leaves;
        ++shut;
    }
    EXPECT_GT(shut, 120);
    EXPECT_LT(shut, 200) << "some stall in the latch";
}

// x = v (t - tau (1 - exp(-t/tau))).
TEST(UniformRate, AfterARampOfTheFirstOrder) {
    SlidingLeaf leaf;
    leaf.creep_from_m = 0;
    const Motion motion = closing(leaf);
    EXPECT_NEAR(way(*motion.shut_s(), 0, leaf.rate_m_s, leaf.ramp_s), leaf.travel_m, place);
    for (const Sample& sample : motion.samples()) {
        EXPECT_NEAR((1 - sample.open) * leaf.travel_m,
                    way(sample.t_s, 0, leaf.rate_m_s, leaf.ramp_s), place);
        const double rate_m_s = leaf.rate_m_s * (1 - std::exp(-sample.t_s / leaf.ramp_s));
        EXPECT_NEAR(sample.given_J, leaf.mass_kg * rate_m_s * rate_m_s / 2, place);
    }
    const Motion back = reopening(leaf, 0.3, 0.5);
    for (const Sample& sample : back.samples())
        EXPECT_NEAR((sample.open - 0.3) * leaf.travel_m,
                    way(sample.t_s, 0, leaf.rate_m_s, leaf.ramp_s), place);
    EXPECT_NEAR(way(back.rests_s(), 0, leaf.rate_m_s, leaf.ramp_s), 0.5, place);
}

// From 0.15 m/s, reached long before, to 0.1 m/s over the last 50 mm.
TEST(UniformRate, SlowsIntoTheFrame) {
    const SlidingLeaf leaf;
    const Motion motion = closing(leaf);
    const double at_speed_s = (leaf.travel_m - leaf.creep_from_m) / leaf.rate_m_s + leaf.ramp_s;
    EXPECT_NEAR(*motion.passes_s(leaf.creep_from_m / leaf.travel_m), at_speed_s, time_s);
    EXPECT_NEAR(way(*motion.shut_s() - at_speed_s, 0.15, 0.1, leaf.ramp_s), 0.05, place);
}
