#include "app/practice/scored_run.h"

#include "core/practice/stage.h"

namespace latchround::practice {

namespace {

constexpr std::int64_t to_its_end_ns = 3'600'000'000'000; // an hour: every leaf stands

} // namespace

Debrief scored(const Exercise& exercise, const Arrangement& vessel, std::uint32_t seed,
               const Answers& answers, const Catalogue& catalogue) {
    Stage stage(exercise, vessel, seed);
    for (const AnsweredRun& run : answers.runs) {
        stage.clearPath(run.door);
        stage.setReady(run.door, run.release, run.kind);
        stage.release(run.released_ns);
        if (run.stopped_ns)
            stage.stop(*run.stopped_ns);
        stage.finish(run.id, run.released_ns + to_its_end_ns);
    }
    return debriefOf(exercise, vessel, catalogue, stage.truths(), answers.evidence, stage.runs(),
                     stage.cautionsUntrue());
}

} // namespace latchround::practice
