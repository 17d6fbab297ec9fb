// The course of a thumb drill: twenty trials, each an alarm (where it can be heard), a leaf that
// starts unannounced and a leaf that stops. Knows times, not clocks or pictures.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <random>

#include "core/evidence/fact.h"

namespace latchround::ui {

inline constexpr int drill_trials = 20;

class DrillCourse {
public:
    /// `sound`: trials have an alarm. The same seed gives the same waits. `pace`: how much longer
    /// or shorter they are than usual.
    DrillCourse(bool sound, std::uint32_t seed, double pace = 1);

    /// Seconds after the trial's begin at which the event is due; nothing where the trial has none.
    std::optional<double> due(Cue cue) const;
    /// The event was seen or heard on the tablet at this time of the trial.
    void happened(Cue cue, double at_s);
    bool hasHappened(Cue cue) const;
    /// A touch of the key. It answers the event that is awaited, which it may precede; one far
    /// ahead of a leaf that is seen to come answers nothing.
    void mark(double at_s);
    /// The event the next touch answers; nothing when the trial is answered.
    std::optional<Cue> awaited() const;
    /// An event was left unanswered for so long that the trial has to be made again.
    bool isMissed(double at_s) const;

    /// Keeps an answered trial, drops a missed one, and sets up the next.
    void next();
    int done() const { return m_done; }
    bool isOver() const { return m_done == drill_trials; }
    const ThumbDrill& drill() const { return m_drill; }

private:
    struct Event {
        double due_s = 0;
        std::optional<double> at_s;
        std::optional<double> answered_s;
    };
    void setUp();
    Event& of(Cue cue) { return m_events[static_cast<std::size_t>(cue)]; }
    const Event& of(Cue cue) const { return m_events[static_cast<std::size_t>(cue)]; }

    double between(double low, double high);

    bool m_sound;
    double m_pace;
    std::mt19937 m_chance;
    std::array<Event, cueWords.size()> m_events;
    int m_done = 0;
    ThumbDrill m_drill;
};

} // namespace latchround::ui
