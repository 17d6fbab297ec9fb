#include "core/evidence/run_sequence.h"

#include <algorithm>

namespace latchround {

namespace {

bool has(std::span<const MarkKind> taken, MarkKind kind) {
    return std::ranges::find(taken, kind) != taken.end();
}

bool mustSoundAlarm(const Door& door) {
    return door.alarm || door.kind == DoorKind::Sliding || door.power_operated;
}

} // namespace

std::vector<Release> releasesOf(const Door& door) {
    std::vector<Release> ways;
    if (door.hold_back || door.power_operated)
        ways = {Release::LocalSideOne, Release::LocalSideTwo};
    if (isRemotelyReleased(door))
        ways.push_back(Release::Remote);
    if (isHinged(door.kind) || ways.empty())
        ways.push_back(Release::LetGo);
    return ways;
}

bool soundsAlarm(const Door& door) {
    return isRemotelyReleased(door) && mustSoundAlarm(door);
}

std::vector<SequenceStep> sequenceOf(const Door& door, Release release, RunKind kind) {
    if (kind == RunKind::Contact)
        return {{MarkKind::Touched}, {MarkKind::Stopped}};
    std::vector<SequenceStep> steps;
    const bool alarmed = release == Release::Remote && mustSoundAlarm(door);
    if (alarmed)
        steps.push_back({MarkKind::AlarmOn});
    steps.push_back({MarkKind::LeafMoves});
    if (door.kind == DoorKind::DoubleLeaf) {
        steps.push_back({MarkKind::FirstLeafHome});
        steps.push_back({MarkKind::SecondLeafHome});
    } else {
        if (door.kind == DoorKind::Sliding)
            steps.push_back({MarkKind::HalfWay, true});
        steps.push_back({MarkKind::Shut});
    }
    if (alarmed)
        steps.push_back({MarkKind::AlarmOff});
    return steps;
}

MarkKind homeMark(DoorKind kind) {
    return kind == DoorKind::DoubleLeaf ? MarkKind::SecondLeafHome : MarkKind::Shut;
}

std::vector<MarkKind> requiredMarks(const Door& door, Release release, RunKind kind) {
    std::vector<MarkKind> marks;
    for (const SequenceStep& step : sequenceOf(door, release, kind))
        if (!step.optional)
            marks.push_back(step.mark);
    return marks;
}

const SequenceStep* nextStep(std::span<const SequenceStep> sequence,
                             std::span<const MarkKind> taken) {
    // The furthest step taken in turn; an early alarm-off does not count as progress of the leaf.
    std::size_t next = 0;
    for (std::size_t i = 0; i < sequence.size(); ++i)
        if (sequence[i].mark != MarkKind::AlarmOff && has(taken, sequence[i].mark))
            next = i + 1;
    const auto isPast = [&](MarkKind mark) {
        const bool never_came_on =
            mark == MarkKind::AlarmOff && next > 0 && !has(taken, MarkKind::AlarmOn);
        return has(taken, mark) || never_came_on;
    };
    while (next < sequence.size() && isPast(sequence[next].mark))
        ++next;
    return next < sequence.size() ? &sequence[next] : nullptr;
}

const SequenceStep* nextRequired(std::span<const SequenceStep> sequence,
                                 std::span<const MarkKind> taken) {
    const SequenceStep* next = nextStep(sequence, taken);
    const SequenceStep* end = sequence.data() + sequence.size();
    while (next && next != end && (next->optional || has(taken, next->mark)))
        ++next;
    return next == end ? nullptr : next;
}

std::optional<MarkKind> alarmOutOfTurn(std::span<const SequenceStep> sequence,
                                       std::span<const MarkKind> taken) {
    if (sequence.empty() || sequence.front().mark != MarkKind::AlarmOn)
        return std::nullopt;
    if (taken.empty())
        return MarkKind::LeafMoves;
    const SequenceStep* next = nextStep(sequence, taken);
    if (!next)
        return std::nullopt;
    if (!has(taken, MarkKind::AlarmOn))
        return MarkKind::AlarmOn;
    return has(taken, MarkKind::AlarmOff) || next->mark == MarkKind::AlarmOff
               ? std::nullopt
               : std::optional(MarkKind::AlarmOff);
}

} // namespace latchround
