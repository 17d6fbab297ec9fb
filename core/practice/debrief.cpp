#include "core/practice/debrief.h"

#include <algorithm>
#include <cmath>

#include "core/evidence/same_name.h"
#include "core/measure/interval.h"
#include "core/practice/right_verdict.h"

namespace latchround::practice {

namespace {

/// Later or earlier than this a mark was not of the event; it says nothing of the thumb (our
/// choice, no source).
constexpr double still_of_the_thumb_s = 1.5;

constexpr int points_for_danger = 10;

/// A place that is judged by eye is no event that a thumb answers.
bool isForTheThumb(MarkKind mark) {
    return mark != MarkKind::HalfWay && mark != MarkKind::Touched && mark != MarkKind::Stopped;
}

const RunRecord* recordOf(const std::vector<DoorEvidence>& evidence, const TrueRun& run) {
    for (const DoorEvidence& door : evidence)
        for (const RunRecord& record : door.runs)
            if (record.id == run.run)
                return &record;
    return nullptr;
}

std::optional<double> lateBy(const RunRecord::MarkRecord& taken, const TrueRun& run) {
    const auto event = std::ranges::find(run.events, taken.mark.kind, &TrueEvent::mark);
    if (event == run.events.end() || !taken.mark.steady_ns)
        return std::nullopt;
    return static_cast<double>(*taken.mark.steady_ns - run.released_ns) / 1e9 - event->t_s;
}

void compareMarks(Debrief& debrief, const std::vector<DoorEvidence>& evidence,
                  const std::vector<TrueRun>& runs) {
    for (const TrueRun& run : runs) {
        debrief.endangered += run.endangered;
        const RunRecord* record = recordOf(evidence, run);
        if (record == nullptr)
            continue;
        for (const RunRecord::MarkRecord& taken : record->marks) {
            const auto late_s = lateBy(taken, run);
            debrief.marks.push_back({run.door, taken.mark.kind, late_s});
            if (late_s && isForTheThumb(taken.mark.kind) &&
                std::abs(*late_s) <= still_of_the_thumb_s)
                debrief.delays.push_back({cueOf(taken.mark.kind), *late_s});
        }
    }
}

bool isFinding(Verdict verdict) {
    return verdict == Verdict::Unsatisfactory || verdict == Verdict::Judge ||
           verdict == Verdict::TimeAgain;
}

std::optional<double> figureOf(const RowGrade& row) {
    return row.figure ? std::optional(row.figure->value) : std::nullopt;
}

void compareVerdicts(Debrief& debrief, const DoorGrade& given, const DoorGrade& right) {
    for (std::size_t i = 0; i < right.rows.size(); ++i) {
        const RowGrade& truly = right.rows[i];
        if (!isAsked(truly))
            continue;
        const RowGrade& said = given.rows[i];
        debrief.verdicts.push_back({right.door, truly.requirement, said.verdict, truly.verdict,
                                    figureOf(said), figureOf(truly)});
        debrief.rows_right += isRight(said.verdict, truly.verdict) ? 1 : 0;
    }
}

/// In time, once: whoever walks by does so on the first closing from the control station.
bool stoppedInTime(const std::string& door, const std::vector<TrueRun>& runs) {
    const auto remote = [&](const TrueRun& run) {
        return run.door == door && run.release == Release::Remote && run.kind == RunKind::Closing;
    };
    const auto first = std::ranges::find_if(runs, remote);
    return first != runs.end() && first->stopped_ns && first->endangered == 0;
}

void compareFaults(Debrief& debrief, const Door& door, const DoorTruth& truth,
                   const DoorGrade& given, const DoorGrade& right,
                   const std::vector<TrueRun>& runs) {
    std::vector<std::string_view> explained;
    for (const Fault fault : truth.faults) {
        FaultCompared compared{door.number, fault, Outcome::Missed, {}};
        if (fault == Fault::PeopleInPath && stoppedInTime(door.number, runs))
            compared.outcome = Outcome::Found;
        for (const std::string_view id : rowsChangedBy(fault, door)) {
            explained.push_back(id);
            const RowGrade* truly = findRow(right, id);
            if (truly == nullptr || !isAsked(*truly))
                continue;
            if (compared.requirement.empty())
                compared.requirement = id;
            if (isFinding(findRow(given, id)->verdict))
                compared.outcome = Outcome::Found;
        }
        debrief.faults.push_back(std::move(compared));
    }
    for (std::size_t i = 0; i < right.rows.size(); ++i) {
        const Verdict said = given.rows[i].verdict;
        const std::string& id = right.rows[i].requirement->id;
        if (isAsked(right.rows[i]) && right.rows[i].verdict == Verdict::Satisfactory &&
            (said == Verdict::Unsatisfactory || said == Verdict::Judge) &&
            std::ranges::find(explained, id) == explained.end())
            debrief.faults.push_back({door.number, std::nullopt, Outcome::Absent, id});
    }
}

} // namespace

int countOf(const Debrief& debrief, Outcome outcome) {
    return static_cast<int>(std::ranges::count(debrief.faults, outcome, &FaultCompared::outcome));
}

int percentOf(const Debrief& debrief) {
    if (debrief.verdicts.empty())
        return 0;
    const double rows = debrief.rows_right / static_cast<double>(debrief.verdicts.size());
    const int found = countOf(debrief, Outcome::Found);
    const int all = static_cast<int>(debrief.faults.size());
    // Where nothing is wrong, whatever was reported though absent takes away from that.
    const int there = all - countOf(debrief, Outcome::Absent);
    const double faults = there > 0 ? found / static_cast<double>(all) : 1.0 / (1 + all);
    const int reached = static_cast<int>(std::floor(50 * rows + 50 * faults + 1e-9));
    const int danger = points_for_danger * (debrief.endangered + debrief.cautions_untrue);
    return std::max(0, reached - danger);
}

Debrief debriefOf(const Exercise& exercise, const Arrangement& vessel, const Catalogue& catalogue,
                  const std::map<std::string, DoorTruth>& truths,
                  const std::vector<DoorEvidence>& evidence, const std::vector<TrueRun>& runs,
                  int cautions_untrue) {
    Debrief debrief;
    debrief.cautions_untrue = cautions_untrue;
    compareMarks(debrief, evidence, runs);
    for (const DoorTask& task : exercise.doors) {
        const Door& door = *findDoor(vessel, task.door);
        const Boundary* boundary = findBoundary(vessel, door.boundary);
        const DoorTruth& truth = truths.at(task.door);
        const auto recorded = std::ranges::find(evidence, task.door, &DoorEvidence::door);
        const DoorEvidence nothing;
        const DoorGrade given = grade(vessel.particulars, door, boundary,
                                      recorded == evidence.end() ? nothing : *recorded, catalogue);
        const DoorGrade right =
            grade(vessel.particulars, door, boundary,
                  perfectEvidence(truth, vessel.particulars, door, boundary, catalogue), catalogue);
        compareVerdicts(debrief, given, right);
        compareFaults(debrief, door, truth, given, right, runs);
    }
    debrief.percent = percentOf(debrief);
    return debrief;
}

Attempt attemptOf(const Debrief& debrief, const Exercise& exercise, std::uint32_t seed,
                  Moment ended, std::string person) {
    Attempt attempt;
    attempt.ended = ended;
    attempt.person = std::move(person);
    attempt.exercise = exercise.id;
    attempt.title = exercise.title;
    attempt.level = exercise.level;
    attempt.seed = seed;
    attempt.percent = debrief.percent;
    attempt.pass_percent = exercise.pass_percent;
    attempt.found = countOf(debrief, Outcome::Found);
    attempt.missed = countOf(debrief, Outcome::Missed);
    attempt.absent = countOf(debrief, Outcome::Absent);
    attempt.endangered = debrief.endangered;
    attempt.cautions_untrue = debrief.cautions_untrue;
    attempt.delays = debrief.delays;
    return attempt;
}

ThumbDrill drillFrom(const std::vector<Attempt>& attempts, std::string_view person,
                     std::size_t most) {
    ThumbDrill drill;
    std::map<Cue, std::size_t> taken;
    std::for_each(attempts.rbegin(), attempts.rend(), [&](const Attempt& attempt) {
        if (!isSameName(attempt.person, person))
            return;
        for (const ThumbTrial& trial : attempt.delays)
            if (taken[trial.cue]++ < most)
                drill.trials.push_back(trial);
    });
    return drill;
}

} // namespace latchround::practice
