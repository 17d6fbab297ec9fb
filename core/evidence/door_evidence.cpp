#include "core/evidence/door_evidence.h"

#include <algorithm>

namespace latchround {

bool DoorEvidence::empty() const {
    return observations.empty() && measured.empty() && judgements.empty() &&
           could_not_test.empty() && !plate && runs.empty() && cautions.empty() && notes.empty() &&
           photographs.empty() && deficiencies.empty();
}

const Recorded<Observation>* observationOf(const DoorEvidence& evidence, const std::string& row,
                                           Side side) {
    const auto found = evidence.observations.find({row, side});
    return found == evidence.observations.end() ? nullptr : &found->second;
}

bool isComplete(const RunRecord& run) {
    return run.end && run.end->outcome == RunOutcome::Complete;
}

std::vector<const RunRecord*> completeRuns(const DoorEvidence& evidence, RunKind kind) {
    std::vector<const RunRecord*> runs;
    for (const RunRecord& run : evidence.runs)
        if (run.kind == kind && isComplete(run))
            runs.push_back(&run);
    return runs;
}

const RunRecord* unfinishedRun(const DoorEvidence& evidence) {
    const auto last = std::find_if(evidence.runs.rbegin(), evidence.runs.rend(),
                                   [](const RunRecord& run) { return !run.end; });
    return last == evidence.runs.rend() ? nullptr : &*last;
}

} // namespace latchround
