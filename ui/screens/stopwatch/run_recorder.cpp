#include "ui/screens/stopwatch/run_recorder.h"

#include <algorithm>
#include <optional>
#include <utility>

#include "core/error/desktop_errors.h"
#include "core/evidence/references.h"
#include "core/phrase/places.h"
#include "core/safety/cautions.h"
#include "ui/words/offered.h"

namespace latchround::ui {

Result<> RunRecorder::begin(const QString& door, Release release, RunKind kind,
                            const QString& group) {
    const GradedDoor* graded = m_session.door(door);
    if (!graded)
        return tl::unexpected(Error{door.toStdString(), errors::not_a_door_of_walkdown()});
    if (release == Release::Remote && kind == RunKind::Closing && !mayArm(graded->evidence))
        return tl::unexpected(
            Error{place::door(door.toStdString()), errors::cautions_not_confirmed()});
    m_door = door;
    m_release = release;
    m_kind = kind;
    m_group = group;
    m_walkdown = m_session.walkdown()->id;
    m_run = m_session.newId();
    m_end.clear();
    m_called_off = false;
    m_sequence = sequenceOf(*graded->door, release, kind);
    return {};
}

const RunRecord* RunRecorder::record() const {
    const GradedDoor* graded = m_session.door(m_door);
    if (!graded)
        return nullptr;
    const auto found = std::ranges::find(graded->evidence.runs, m_run, &RunRecord::id);
    return found == graded->evidence.runs.end() ? nullptr : &*found;
}

std::optional<RunRecord> RunRecorder::soFar() const {
    const RunRecord* saved = record();
    std::optional<RunRecord> run = saved ? std::optional(*saved) : std::nullopt;
    if (!m_session.isSafeToLeave())
        return run;
    for (const Fact* fact : m_session.waitingFacts()) {
        if (run && std::holds_alternative<TakenBack>(fact->body))
            std::erase_if(run->marks,
                          [fact](const auto& taken) { return taken.id == fact->stamp.supersedes; });
        const auto* mark = std::get_if<Mark>(&fact->body);
        if (!mark || mark->run != m_run)
            continue;
        if (!run) {
            run.emplace();
            run->id = m_run;
            run->kind = m_kind;
            run->release = m_release;
        }
        run->marks.push_back({fact->stamp.id, *mark});
    }
    return run;
}

bool RunRecorder::isOnDisk() const {
    const auto isOfThisRun = [this](const Fact& fact) {
        const std::string* of = referencesOf(fact.body).run;
        return fact.stamp.id == m_run || (of && *of == m_run);
    };
    const auto refused = m_session.refusedBatches();
    return m_session.isSafeToLeave() &&
           std::ranges::none_of(refused, [&](const WaitingBatch* batch) {
               return std::ranges::any_of(batch->facts, isOfThisRun);
           });
}

std::vector<MarkKind> RunRecorder::taken() const {
    std::vector<MarkKind> kinds;
    if (const std::optional<RunRecord> run = soFar())
        for (const auto& each : run->marks)
            kinds.push_back(each.mark.kind);
    return kinds;
}

const SequenceStep* RunRecorder::next() const {
    return isOver() ? nullptr : nextRequired(m_sequence, taken());
}

bool RunRecorder::mayMarkHalfWay() const {
    const SequenceStep* step = isOver() ? nullptr : nextStep(m_sequence, taken());
    return step && step->mark == MarkKind::HalfWay;
}

std::optional<MarkKind> RunRecorder::alarmMark() const {
    return isOver() ? std::nullopt : alarmOutOfTurn(m_sequence, taken());
}

bool RunRecorder::isOver() const {
    const RunRecord* run = record();
    const bool has_ended = run && run->end && !m_end.empty(); // else that is being taken back
    return m_called_off || has_ended || waitingEnd();
}

const Fact* RunRecorder::waitingEnd() const {
    const Fact* end = nullptr;
    for (const Fact* fact : m_session.waitingFacts()) {
        const auto* body = std::get_if<RunEnded>(&fact->body);
        if (body && body->run == m_run)
            end = fact;
        else if (end && fact->stamp.supersedes == end->stamp.id)
            end = nullptr;
    }
    return end;
}

int RunRecorder::number() const {
    const GradedDoor* graded = m_session.door(m_door);
    int before = 0;
    if (graded)
        for (const RunRecord& run : graded->evidence.runs)
            if (run.kind == m_kind && run.release == m_release && run.id < m_run)
                ++before;
    return before + 1;
}

Mark RunRecorder::markOf(MarkKind kind, const MarkPress& press) const {
    return {m_run, kind, press.event_ms, press.steady_ns, press.device, std::nullopt};
}

void RunRecorder::addStart(std::vector<Entry>& entries) {
    if (m_session.knows(m_run))
        return;
    RunStarted start{m_walkdown, m_door.toStdString(), m_kind, m_release, m_session.heel_deg()};
    if (!m_group.isEmpty())
        start.release_group = m_group.toStdString();
    entries.push_back({std::move(start), std::nullopt, m_run});
}

bool RunRecorder::wouldComplete(MarkKind kind) const {
    std::vector<MarkKind> with = taken();
    with.push_back(kind);
    return nextRequired(m_sequence, with) == nullptr;
}

Result<> RunRecorder::mark(MarkKind kind, const MarkPress& press) {
    std::vector<Entry> entries;
    addStart(entries);
    entries.push_back({markOf(kind, press)});
    if (wouldComplete(kind))
        entries.push_back(ended(RunOutcome::Complete, {}));
    return m_session.record(std::move(entries));
}

Entry RunRecorder::ended(RunOutcome outcome, const Wording& reason) {
    std::optional<FactId> before;
    if (waitingEnd() || m_session.ledger().find(m_end)) // else it was refused
        before = m_end;
    m_end = m_session.newId();
    return {RunEnded{m_run, outcome, reason}, before, m_end};
}

Result<> RunRecorder::takeBack() {
    const RunRecord* run = record();
    if (!run || run->marks.empty())
        return {};
    std::vector<Entry> entries;
    entries.push_back({TakenBack{offered("mark-taken-back")}, run->marks.back().id});
    if (!m_end.empty())
        entries.push_back({TakenBack{offered("run-goes-on")}, std::exchange(m_end, {})});
    return m_session.record(std::move(entries));
}

Result<> RunRecorder::end(RunOutcome outcome, const Wording& reason) {
    std::vector<Entry> entries;
    addStart(entries);
    m_called_off = true;
    entries.push_back(ended(outcome, reason));
    return m_session.record(std::move(entries));
}

} // namespace latchround::ui
