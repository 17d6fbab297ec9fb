// What one walkdown knows of one door: its facts with the superseded ones gone, sorted by what they
// answer.
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

#include "core/evidence/fact.h"

namespace latchround {

/// A run put together again from its facts. Without an end it is unfinished.
struct RunRecord {
    FactId id;
    RunKind kind = RunKind::Closing;
    Release release = Release::LetGo;
    std::string release_group; ///< of a remote run; empty where it is not known
    double heel_deg = 0;
    Moment started;
    struct MarkRecord {
        FactId id;
        Mark mark;
    };
    std::vector<MarkRecord> marks; ///< in the order they were recorded, taken-back ones gone
    std::optional<RunEnded> end;
    /// Complete as it was recorded, and void here all the same: these two were marked against
    /// their order (mark_interval.h).
    std::optional<std::pair<MarkKind, MarkKind>> reversed{};
    /// The same where this event was not marked.
    std::optional<MarkKind> unmarked{};
    /// The newest fact that makes it what it is: start, mark, end or what takes one of them back.
    FactId newest{};
    /// The last drill on this device of the person who ran it, done before; null where there is
    /// none.
    std::shared_ptr<const ThumbDrill> drill{};
};

template <class Body>
struct Recorded {
    Stamp stamp;
    Body body;
};

struct DoorEvidence {
    std::string door;
    std::map<std::pair<std::string, Side>, Recorded<Observation>> observations;
    std::map<std::string, Recorded<MeasuredValue>> measured;
    std::map<std::string, Recorded<Judgement>> judgements;
    std::map<std::string, Recorded<CouldNotTest>> could_not_test;
    std::optional<Recorded<PlateRead>> plate;
    std::vector<RunRecord> runs;       ///< in the order they were started
    std::vector<FactId> remote_starts; ///< of remote runs, in their order; taken back or not
    std::vector<Recorded<CautionAnswered>> cautions;
    std::vector<Recorded<Note>> notes;
    std::vector<Recorded<Photograph>> photographs;
    std::vector<Recorded<Deficiency>> deficiencies;
    DecisionLimits limits;         ///< that figures of this walkdown are judged by
    std::optional<Stamp> newest{}; ///< of the facts sorted here, marks and ends of runs aside
    /// By row, what was on record of the door when the judgement above was made; none where all
    /// evidence is of one moment, as in a file.
    std::map<std::string, std::shared_ptr<const DoorEvidence>> when_judged{};

    bool empty() const;
};

/// What was answered to this row for this side; null where nothing was.
const Recorded<Observation>* observationOf(const DoorEvidence& evidence, const std::string& row,
                                           Side side);

/// Came to its end, as it was recorded and as it is read.
bool isComplete(const RunRecord& run);

/// The runs that count as measurements: complete, of this kind.
std::vector<const RunRecord*> completeRuns(const DoorEvidence& evidence, RunKind kind);

/// The last run that was started and never ended, if any.
const RunRecord* unfinishedRun(const DoorEvidence& evidence);

} // namespace latchround
