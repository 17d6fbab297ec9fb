// Things at a door that help has a drawing of, and which of them belongs to which row of the
// catalogue. One drawing may serve several rows.
#pragma once

#include <optional>
#include <string_view>

namespace latchround::ui {

enum class HelpTopic {
    // the leaf and what is fixed to it
    Rating,
    Plate,
    Number,
    Seals,
    Hinges,
    Closer,
    Latch,
    LatchThrow,
    MeetingGap,
    FrameStop,
    LeafWidth,
    LeafWhole,
    Glass,
    Louver,
    Vent,
    HosePort,
    // its foot and its way
    SillSound,
    SillCovering,
    Gap,
    PathClear,
    Pocket,
    NotHeld,
    Hook,
    Rails,
    // how it moves
    OnePerson,
    SelfClosing,
    ClosingTime,
    SlidingRate,
    Smooth,
    LeafOrder,
    EitherLeaf,
    CabinDoor,
    ReopenLocal,
    EdgeStops,
    ReopenDistance,
    DeckDoor,
    DeckUnlatch,
    DeckStart,
    DeckOpen,
    SpringGauge,
    Heel,
    // release, control and power
    LocalRelease,
    RemoteRelease,
    SwitchStays,
    Indicator,
    AlarmLead,
    AlarmHolds,
    FailSafe,
    Machinery,
    Accumulator,
    Independence,
    Access,
    Papers,
    // people, before a remote release
    Announced,
    PeopleClear,
    WatchPosted,
    StationReady,
    WordsAgreed,
    PathFree
};

inline constexpr int help_topics = int(HelpTopic::PathFree) + 1;

/// Nothing for a row that no drawing belongs to: one of a flag's own.
std::optional<HelpTopic> topicOfRow(std::string_view requirement);

/// The same for a question before a remote release (core/safety/cautions.h).
std::optional<HelpTopic> topicOfCaution(std::string_view caution);

} // namespace latchround::ui
