// What a perfect trainee would record of a practice door.
#include <algorithm>

#include "core/evidence/run_sequence.h"
#include "core/grading/door_class.h"
#include "core/practice/door_truth.h"
#include "core/practice/true_run.h"
#include "core/requirement/applicability.h"

namespace latchround::practice {

namespace {

/// What is seen of a row that a fault can change; nothing for the others, which are always in
/// order on a practice door.
struct Seen {
    std::string_view row;
    Answer one = Answer::Yes;
    Answer two = Answer::Yes;
};

Answer yesIf(bool in_order) {
    return in_order ? Answer::Yes : Answer::No;
}

Seen both(std::string_view row, bool in_order) {
    return {row, yesIf(in_order), yesIf(in_order)};
}

std::vector<Seen> seenOf(const DoorTruth& truth) {
    const auto* two = std::get_if<DoubleLeaf>(&truth.mechanism);
    constexpr double at_once_s = 5; // later is taken as not released (common practice, no source)
    return {both("remote-release", truth.hold_back_takes_s < at_once_s),
            {"local-release", yesIf(truth.lets_go_side_one), yesIf(truth.lets_go_side_two)},
            both("no-hook", !truth.hook),
            both("not-held", !truth.wedge),
            both("pocket-clear", !truth.pocket_litter),
            both("sill-sound", truth.sill),
            both("a-sill", truth.sill),
            both("seals-whole", !truth.painted_seal),
            both("indicator", !truth.indicator_lies),
            both("hose-port", !truth.hose_port_stuck),
            both("reopen-local", truth.shuts_again),
            both("leaf-order", two == nullptr || two->selector_works),
            both("latches", truth.latches),
            both("auto-latch", truth.latches)};
}

double measureOf(const DoorTruth& truth, const Requirement& row) {
    constexpr double usual_vent_m2 = 0.03;
    constexpr double usual_release_mm = 950;
    constexpr double usual_release_n = 40;
    if (row.id == "reopen-distance")
        return truth.reopens_m;
    if (row.id == "b-vent")
        return usual_vent_m2;
    if (row.id == "release-height")
        return usual_release_mm;
    if (row.id == "release-force")
        return usual_release_n;
    return truth.gap_mm;
}

void answer(DoorEvidence& evidence, const std::vector<Seen>& all, const Requirement& row) {
    const auto found = std::ranges::find(all, row.id, &Seen::row);
    const Seen seen = found == all.end() ? Seen{row.id} : *found;
    const auto put = [&](Side side, Answer answer) {
        evidence.observations[{row.id, side}] =
            Recorded<Observation>{{}, {{}, evidence.door, row.id, side, answer}};
    };
    if (row.check == CheckKind::SeenBothSides) {
        put(Side::One, seen.one);
        put(Side::Two, seen.two);
    } else {
        const bool in_order = seen.one == Answer::Yes && seen.two == Answer::Yes;
        put(Side::None, yesIf(in_order));
    }
}

void readPlate(DoorEvidence& evidence, const DoorTruth& truth) {
    const bool read = truth.plate_state == PlateState::Read;
    evidence.plate = Recorded<PlateRead>{
        {},
        {{}, evidence.door, truth.plate_state, read ? std::optional(truth.plate) : std::nullopt}};
}

/// Timed by a thumb that is never late. Nothing where it never comes to an end.
std::optional<RunRecord> perfectRun(const DoorTruth& truth, const Door& door, Release release) {
    RunRecord run;
    run.id = door.number + " " + std::string(word(release));
    run.release = release;
    const std::vector<TrueEvent> events = trueEvents(truth, door, release, RunKind::Closing);
    for (const SequenceStep& step : sequenceOf(door, release, RunKind::Closing)) {
        const auto event = std::ranges::find(events, step.mark, &TrueEvent::mark);
        if (event == events.end())
            return std::nullopt;
        Mark mark;
        mark.kind = step.mark;
        mark.steady_ns = static_cast<std::int64_t>(event->t_s * 1e9);
        mark.device = InputDevice::Key;
        run.marks.push_back({run.id + " " + std::string(word(step.mark)), mark});
    }
    run.end = RunEnded{run.id, RunOutcome::Complete, {}};
    return run;
}

} // namespace

DoorEvidence perfectEvidence(const DoorTruth& truth, const Particulars& vessel, const Door& door,
                             const Boundary* boundary, const Catalogue& catalogue) {
    DoorEvidence evidence;
    evidence.door = door.number;
    const DoorLocation location = locationOf(vessel, boundary, catalogue.divisions);
    const std::vector<Seen> seen = seenOf(truth);
    for (const Requirement& base : catalogue.rows) {
        const Requirement& row = inForce(base, vessel, door, location);
        if (howAsked(row, vessel, door, location) == Asked::No)
            continue;
        if (row.check == CheckKind::Seen || row.check == CheckKind::SeenBothSides)
            answer(evidence, seen, row);
        else if (row.source == Source::Gauge)
            evidence.measured[row.id] = Recorded<MeasuredValue>{
                {}, {{}, door.number, row.id, measureOf(truth, row), row.unit}};
    }
    readPlate(evidence, truth);
    DoorTruth freed = truth; // the wedge is written up and taken away before anything is timed
    freed.wedge = false;
    for (const Release release : releasesOf(door))
        if (auto run = perfectRun(freed, door, release))
            evidence.runs.push_back(std::move(*run));
    return evidence;
}

} // namespace latchround::practice
