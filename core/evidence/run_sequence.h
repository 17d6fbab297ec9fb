// Which events are marked in a run, in which order, for this kind of door and way of release.
// Order of events: common practice, no published source; the events themselves are those of SOLAS
// II-2/9.4.1.1.5.
#pragma once

#include <array>
#include <optional>
#include <span>
#include <utility>
#include <vector>

#include "core/evidence/fact_words.h"
#include "core/vessel/door.h"

namespace latchround {

/// Each way a door can be released: at the door from either side where something holds it, from the
/// control station where it belongs to a release group, let go by hand where it is hinged.
std::vector<Release> releasesOf(const Door& door);

/// Released from the control station it sounds an alarm before it moves.
bool soundsAlarm(const Door& door);

struct SequenceStep {
    MarkKind mark;
    bool optional = false; ///< may be passed over: marking the next step skips it

    bool operator==(const SequenceStep&) const = default;
};

/// sliding or power-operated with alarm, remote: alarm on, leaf moves, [half-way,] shut, alarm off;
/// otherwise: leaf moves, [half-way,] shut; double leaf: leaf moves, first leaf home, second leaf
/// home; contact: touched, stopped. Half-way only on sliding doors.
std::vector<SequenceStep> sequenceOf(const Door& door, Release release, RunKind kind);

/// Events of which the second cannot come before the first, whatever is wrong with the door.
inline constexpr std::array<std::pair<MarkKind, MarkKind>, 9> eventsInTurn{
    {{MarkKind::LeafMoves, MarkKind::HalfWay},
     {MarkKind::LeafMoves, MarkKind::Shut},
     {MarkKind::HalfWay, MarkKind::Shut},
     {MarkKind::LeafMoves, MarkKind::FirstLeafHome},
     {MarkKind::LeafMoves, MarkKind::SecondLeafHome},
     {MarkKind::HalfWay, MarkKind::SecondLeafHome},
     {MarkKind::FirstLeafHome, MarkKind::SecondLeafHome},
     {MarkKind::AlarmOn, MarkKind::AlarmOff},
     {MarkKind::Touched, MarkKind::Stopped}}};

/// The event that ends the closing of such a door.
MarkKind homeMark(DoorKind kind);

/// The events of a run that cannot be passed over: between two of them lies a time.
std::vector<MarkKind> requiredMarks(const Door& door, Release release, RunKind kind);

/// The step that comes after the marks already taken; nothing when the run is complete. An
/// alarm-off mark taken early (the alarm stopped before the leaf was home) is not asked for again,
/// and none is asked for of an alarm that never came on.
const SequenceStep* nextStep(std::span<const SequenceStep> sequence,
                             std::span<const MarkKind> taken);

/// The next step that must be marked, optional ones passed over; nothing when the run is complete.
const SequenceStep* nextRequired(std::span<const SequenceStep> sequence,
                                 std::span<const MarkKind> taken);

/// What may be marked of the alarm out of its turn: that the leaf moves and no alarm has sounded;
/// that it comes on while the leaf moves; that it stops while the leaf still moves.
std::optional<MarkKind> alarmOutOfTurn(std::span<const SequenceStep> sequence,
                                       std::span<const MarkKind> taken);

} // namespace latchround
