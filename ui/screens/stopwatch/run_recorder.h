// One run being recorded: which mark comes next, and the facts each touch becomes. Its state is
// read back from what is on disk: what the register has said is saved, and marks that are kept
// elsewhere until it is, however long that takes. Nothing is counted before that.
#pragma once

#include <vector>

#include "core/evidence/run_sequence.h"
#include "ui/keys/mark_key.h"
#include "ui/session/vessel_session.h"

namespace latchround::ui {

class RunRecorder {
public:
    explicit RunRecorder(VesselSession& session)
        : m_session(session) {}

    /// A new run. Refused for a remote release whose cautions do not all stand confirmed.
    /// `group`: the release group that moves with it; empty for a release at the door.
    Result<> begin(const QString& door, Release release, RunKind kind, const QString& group = {});

    Release release() const { return m_release; }
    RunKind kind() const { return m_kind; }
    const QString& door() const { return m_door; }

    /// The run as it is on record; null before its first fact is saved. What the end says may still
    /// wait.
    const RunRecord* record() const;
    /// With the marks that are kept until they are saved; nothing before there is a mark or a
    /// record.
    std::optional<RunRecord> soFar() const;
    /// All that was touched is on record or kept until it is, and nothing of it was refused.
    bool isOnDisk() const;
    std::vector<MarkKind> taken() const;
    /// The main key's event; null when the run is over.
    const SequenceStep* next() const;
    /// An event that may be marked now besides the next one.
    bool mayMarkHalfWay() const;
    /// Of the alarm, out of its turn (alarmOutOfTurn).
    std::optional<MarkKind> alarmMark() const;
    /// Its end is on record or waits to be, or it was called off: no mark is taken any more.
    bool isOver() const;
    /// Number of this run among the door's runs of its kind and release, from 1.
    int number() const;

    /// Each records at once; the run ends by itself with its last mark.
    Result<> mark(MarkKind kind, const MarkPress& press);
    Result<> takeBack();
    Result<> end(RunOutcome outcome, const Wording& reason);

private:
    Mark markOf(MarkKind kind, const MarkPress& press) const;
    /// The end that waits to be saved; null where none does, or what waits takes it back again.
    const Fact* waitingEnd() const;
    /// The run's first fact where none is recorded yet, nor waits to be.
    void addStart(std::vector<Entry>& entries);
    bool wouldComplete(MarkKind kind) const;
    Entry ended(RunOutcome outcome, const Wording& reason);

    VesselSession& m_session;
    QString m_door;
    Release m_release = Release::LetGo;
    RunKind m_kind = RunKind::Closing;
    QString m_group;
    FactId m_walkdown;
    FactId m_run;
    FactId m_end; ///< by which the run was ended here; it may still wait to be saved
    bool m_called_off = false;
    std::vector<SequenceStep> m_sequence;
};

} // namespace latchround::ui
