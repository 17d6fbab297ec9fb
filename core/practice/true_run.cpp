#include "core/practice/true_run.h"

#include <algorithm>

#include "core/evidence/run_sequence.h"

namespace latchround::practice {

namespace {

constexpr double hand_takes_s = 0.1; // from the handle to the hold-back letting go, no source
constexpr double edge_takes_s = 0.3; // from contact to standing still, no source

/// When the leaf begins to move; never where the release does nothing.
double movesAfter_s(const DoorTruth& truth, const Door& door, Release release) {
    if (truth.wedge || (release == Release::LocalSideOne && !truth.lets_go_side_one) ||
        (release == Release::LocalSideTwo && !truth.lets_go_side_two))
        return never_s;
    if (release != Release::Remote)
        return hand_takes_s;
    return truth.station_takes_s +
           (soundsAlarm(door) ? truth.alarm_lead_s : truth.hold_back_takes_s);
}

TwoMotions leavesOf(const DoorTruth& truth) {
    if (const auto* two = std::get_if<DoubleLeaf>(&truth.mechanism))
        return closing(*two);
    if (const auto* hinged = std::get_if<HingedLeaf>(&truth.mechanism))
        return {closing(*hinged), Motion()};
    return {closing(std::get<SlidingLeaf>(truth.mechanism)), Motion()};
}

void add(TrueCourse& course, MarkKind mark, double t_s) {
    if (t_s < never_s)
        course.events.push_back({mark, t_s});
}

/// When the door is shut, by every leaf of it.
double addHome(TrueCourse& course, DoorKind kind) {
    const double one = course.first.shut_s().value_or(never_s);
    if (kind != DoorKind::DoubleLeaf) {
        add(course, MarkKind::Shut, one);
        return one;
    }
    const double two = course.second.shut_s().value_or(never_s);
    add(course, MarkKind::FirstLeafHome, std::min(one, two));
    add(course, MarkKind::SecondLeafHome, std::max(one, two));
    return std::max(one, two);
}

void addAlarm(TrueCourse& course, const DoorTruth& truth, double home_s) {
    course.alarm_on_s = truth.station_takes_s;
    course.alarm_off_s = truth.alarm_stops_before_s > 0 ? home_s - truth.alarm_stops_before_s
                                                        : home_s + truth.alarm_after_s;
    add(course, MarkKind::AlarmOn, course.alarm_on_s);
    add(course, MarkKind::AlarmOff, course.alarm_off_s);
}

/// The leaf runs onto the block, stands, and is taken back.
TrueCourse contact(const DoorTruth& truth, const Door& door) {
    TrueCourse course;
    const auto* leaf = std::get_if<SlidingLeaf>(&truth.mechanism);
    if (leaf == nullptr || movesAfter_s(truth, door, Release::LetGo) == never_s)
        return course;
    const Motion towards = closing(*leaf).later(hand_takes_s);
    const double touched_s = towards.passes_s(block_at_open).value_or(0);
    const Motion back = reopening(*leaf, block_at_open, truth.reopens_m).later(edge_takes_s);
    course.first = towards.stoppedAt(touched_s).followedBy(touched_s, back);
    add(course, MarkKind::LeafMoves, hand_takes_s);
    add(course, MarkKind::Touched, touched_s);
    add(course, MarkKind::Stopped, touched_s + edge_takes_s);
    return course;
}

} // namespace

TrueCourse courseOf(const DoorTruth& truth, const Door& door, Release release, RunKind kind) {
    if (kind == RunKind::Contact)
        return contact(truth, door);
    TrueCourse course;
    const double moves_s = movesAfter_s(truth, door, release);
    double home_s = never_s;
    if (moves_s < never_s) {
        const TwoMotions leaves = leavesOf(truth);
        course.first = leaves.first.later(moves_s);
        course.second = leaves.second.later(moves_s);
        add(course, MarkKind::LeafMoves, moves_s);
        if (door.kind == DoorKind::Sliding)
            add(course, MarkKind::HalfWay, course.first.passes_s(0.5).value_or(never_s));
        home_s = addHome(course, door.kind);
    }
    if (release == Release::Remote && soundsAlarm(door))
        addAlarm(course, truth, home_s);
    std::ranges::stable_sort(course.events, {}, &TrueEvent::t_s);
    return course;
}

bool meetsPasserBy(const DoorTruth& truth, const TrueCourse& course,
                   std::optional<double> stopped_s, double until_s) {
    const auto moves = std::ranges::find(course.events, MarkKind::LeafMoves, &TrueEvent::mark);
    if (!truth.passer_by || moves == course.events.end())
        return false;
    const double steps_in_s = moves->t_s + truth.passer_by->steps_in_s;
    if (stopped_s && *stopped_s <= steps_in_s + stop_within_s)
        return false;
    return until_s >= steps_in_s;
}

std::vector<TrueEvent> trueEvents(const DoorTruth& truth, const Door& door, Release release,
                                  RunKind kind) {
    return courseOf(truth, door, release, kind).events;
}

} // namespace latchround::practice
