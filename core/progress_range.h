// How far a long job is, told to whoever waits for it, who says whether to go on.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <functional>
#include <memory>
#include <utility>

#include "core/error/error.h"
#include "core/error/reading_errors.h"

namespace latchround {

/// Told how much is done; false stops the work, and nothing has changed.
using Progress = std::function<bool(int done, int of)>;

/// A stretch of a job. The job tells it where it is, as often as it can; whoever waits hears ten
/// thousandths of the whole. Copies of it, and its parts, are one job: once stopped, all are.
class ProgressRange {
public:
    /// Without progress nobody asks, and nothing stops.
    explicit ProgressRange(const Progress& progress = {})
        : m_job(std::make_shared<Job>(Job{progress})) {}

    /// From `from` to `to` of this stretch, in hundredths.
    ProgressRange part(double from, double to) const {
        ProgressRange part = *this;
        part.m_from = m_from + (m_to - m_from) * from / 100;
        part.m_to = m_from + (m_to - m_from) * to / 100;
        return part;
    }
    /// False: stop, and change nothing.
    bool at(std::size_t done, std::size_t of) const {
        if (!m_job->progress || m_job->stopped)
            return !m_job->stopped;
        const double share =
            of == 0 ? 0 : std::min(1.0, static_cast<double>(done) / static_cast<double>(of));
        const int there = static_cast<int>(std::lround(whole * (m_from + (m_to - m_from) * share)));
        m_job->furthest = std::max(m_job->furthest, there); // a bar never goes back
        m_job->stopped = !m_job->progress(m_job->furthest, whole);
        return !m_job->stopped;
    }
    bool isStopped() const { return m_job->stopped; }
    /// This stretch for a job that asks for a Progress; its last word is the end of the stretch.
    Progress progress() const {
        return [pace = *this](int done, int of) {
            return pace.at(static_cast<std::size_t>(std::max(0, done)),
                           static_cast<std::size_t>(std::max(0, of)));
        };
    }

private:
    static constexpr int whole = 10000;
    struct Job {
        Progress progress;
        bool stopped = false;
        int furthest = 0;
    };
    std::shared_ptr<Job> m_job;
    double m_from = 0;
    double m_to = 1;
};

/// What a job that was stopped answers.
inline Error stoppedAsAsked(Phrase where) {
    return {std::move(where), errors::stopped_as_asked()};
}

} // namespace latchround
