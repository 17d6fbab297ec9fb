#include "ui/screens/drill/drill_course.h"

#include <algorithm>

namespace latchround::ui {

namespace {

constexpr std::array<Cue, 3> in_order{Cue::AlarmHeard, Cue::LeafStarts, Cue::LeafStops};
constexpr double longest_answer_s = 2.0;
constexpr double far_ahead_s = 0.6;

} // namespace

DrillCourse::DrillCourse(bool sound, std::uint32_t seed, double pace)
    : m_sound(sound)
    , m_pace(pace)
    , m_chance(seed) {
    setUp();
}

double DrillCourse::between(double low, double high) {
    constexpr int steps = 1000;
    return m_pace * (low + (high - low) * static_cast<double>(m_chance() % (steps + 1)) / steps);
}

void DrillCourse::setUp() {
    m_events = {};
    double at = between(1.0, 2.5);
    if (m_sound) {
        of(Cue::AlarmHeard).due_s = at;
        at += between(1.2, 2.6);
    }
    of(Cue::LeafStarts).due_s = at;
    of(Cue::LeafStops).due_s = at + between(1.4, 2.6);
}

std::optional<double> DrillCourse::due(Cue cue) const {
    return cue == Cue::AlarmHeard && !m_sound ? std::nullopt : std::optional(of(cue).due_s);
}

void DrillCourse::happened(Cue cue, double at_s) {
    of(cue).at_s = at_s;
}

bool DrillCourse::hasHappened(Cue cue) const {
    return of(cue).at_s.has_value();
}

std::optional<Cue> DrillCourse::awaited() const {
    for (const Cue cue : in_order)
        if (due(cue) && !of(cue).answered_s)
            return cue;
    return std::nullopt;
}

void DrillCourse::mark(double at_s) {
    const auto cue = awaited();
    if (!cue)
        return;
    if (*cue == Cue::LeafStops && at_s < of(*cue).due_s - far_ahead_s)
        return;
    of(*cue).answered_s = at_s;
}

bool DrillCourse::isMissed(double at_s) const {
    const auto cue = awaited();
    return cue && of(*cue).at_s && at_s > *of(*cue).at_s + longest_answer_s;
}

void DrillCourse::next() {
    if (!awaited() && !isOver()) {
        for (const Cue cue : in_order)
            if (due(cue))
                m_drill.trials.push_back(
                    {cue, *of(cue).answered_s - of(cue).at_s.value_or(of(cue).due_s)});
        ++m_done;
    }
    setUp();
}

} // namespace latchround::ui
