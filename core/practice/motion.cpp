#include "core/practice/motion.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <utility>

namespace latchround::practice {

namespace {

/// Linear in everything, so that what was given less what was spent is still what is carried.
Sample sampleAt(const std::vector<Sample>& samples, double t_s) {
    const auto after =
        std::upper_bound(samples.begin(), samples.end(), t_s,
                         [](double time_s, const Sample& sample) { return time_s < sample.t_s; });
    Sample found = after == samples.begin() ? samples.front() : *(after - 1);
    if (after != samples.begin() && after != samples.end()) {
        const Sample& before = *(after - 1);
        const double part = (t_s - before.t_s) / (after->t_s - before.t_s);
        found.open = std::lerp(before.open, after->open, part);
        found.kinetic_J = std::lerp(before.kinetic_J, after->kinetic_J, part);
        found.spent_J = std::lerp(before.spent_J, after->spent_J, part);
        found.given_J = std::lerp(before.given_J, after->given_J, part);
    }
    found.t_s = t_s;
    return found;
}

} // namespace

Motion::Motion(double open)
    : m_samples{Sample{0, open, 0, 0, 0}} {
    if (open <= 0)
        m_shut_s = 0;
}

Motion::Motion(std::vector<Sample> samples, std::optional<double> shut_s)
    : m_samples(std::move(samples))
    , m_shut_s(shut_s) {
    assert(!m_samples.empty());
}

double Motion::open(double t_s) const {
    return sampleAt(m_samples, t_s).open;
}

std::optional<double> Motion::passes_s(double open) const {
    if (m_samples.front().open == open)
        return m_samples.front().t_s;
    for (std::size_t i = 1; i < m_samples.size(); ++i) {
        const Sample& before = m_samples[i - 1];
        const Sample& after = m_samples[i];
        if (after.open == open)
            return after.t_s;
        if ((before.open < open) != (after.open < open))
            return std::lerp(before.t_s, after.t_s,
                             (open - before.open) / (after.open - before.open));
    }
    return std::nullopt;
}

double Motion::rests_s() const {
    std::size_t last = m_samples.size() - 1;
    while (last > 0 && m_samples[last - 1].open == m_samples[last].open)
        --last;
    return m_samples[last].t_s;
}

Motion Motion::later(double by_s) const {
    Motion made = *this;
    for (Sample& sample : made.m_samples)
        sample.t_s += by_s;
    if (made.m_shut_s)
        *made.m_shut_s += by_s;
    return made;
}

Motion Motion::stoppedAt(double at_s) const {
    if (at_s >= m_samples.back().t_s)
        return *this;
    Sample stopped = sampleAt(m_samples, at_s);
    stopped.spent_J += std::exchange(stopped.kinetic_J, 0);
    Motion made = *this;
    std::erase_if(made.m_samples, [&](const Sample& sample) { return sample.t_s >= at_s; });
    made.m_samples.push_back(stopped);
    if (made.m_shut_s && *made.m_shut_s > at_s)
        made.m_shut_s.reset();
    return made;
}

Motion Motion::followedBy(double at_s, const Motion& other) const {
    Motion made = stoppedAt(at_s);
    const Sample joint = made.m_samples.back();
    for (Sample sample : other.later(at_s).m_samples) {
        sample.spent_J += joint.spent_J;
        sample.given_J += joint.given_J;
        if (sample.t_s > made.m_samples.back().t_s)
            made.m_samples.push_back(sample);
    }
    if (!made.m_shut_s && other.m_shut_s)
        made.m_shut_s = at_s + *other.m_shut_s;
    return made;
}

} // namespace latchround::practice
