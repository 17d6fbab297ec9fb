// A long job on a thread of its own, while the screen stays alive: it paints and its timers ring.
// The job must touch nothing that the screen's thread holds, and opens its own connection to a
// register.
#pragma once

#include <functional>
#include <optional>

#include "core/progress_range.h"

namespace latchround {

/// Returns when the job has. Each time the job asks, `on_screen` is asked on this thread, and its
/// answer is what the job hears.
void doOnWorker(const Progress& on_screen, const std::function<void(const Progress&)>& job);

/// The same for a job that gives something: `Result job(const Progress&)`.
template <class Job>
auto onWorker(const Progress& on_screen, const Job& job) {
    std::optional<decltype(job(Progress()))> result;
    doOnWorker(on_screen, [&](const Progress& progress) { result.emplace(job(progress)); });
    return std::move(*result);
}

} // namespace latchround
