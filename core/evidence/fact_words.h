// The closed sets that facts are made of, each with the one word it is written by.
#pragma once

#include <array>
#include <optional>
#include <string_view>

#include "core/vessel/words.h"

namespace latchround {

/// PortState: any port State control. DoorCampaign: its campaign on fire doors.
enum class Purpose {
    Annual,
    Quarterly,
    AfterRepair,
    PortState,
    DoorCampaign,
    Blackout,
    Drill,
    Other
};
enum class Side { None, One, Two };
enum class Answer { Yes, No, NotApplicable };
enum class PlateState { Read, None, Illegible };
/// Closing: the door is released and shuts. Contact: something is held in its way and it re-opens.
enum class RunKind { Closing, Contact };
enum class Release { Remote, LocalSideOne, LocalSideTwo, LetGo };
enum class MarkKind {
    AlarmOn,
    LeafMoves,
    HalfWay,
    Shut,
    AlarmOff,
    FirstLeafHome,
    SecondLeafHome,
    Touched,
    Stopped
};
/// What a thumb answers to: a sound; a leaf that starts unannounced; a leaf seen to arrive.
enum class Cue { AlarmHeard, LeafStarts, LeafStops };
enum class InputDevice { Mouse, Touch, Key, Hand };
/// Stopped: somebody called stop; it is never a measurement.
enum class RunOutcome { Complete, Void, Stopped };
/// What a port State control officer decides about a deficiency, by the code it is written with in
/// the published lists: 10 rectified, 15 at the next port, 16 within 14 days, 17 before departure,
/// 18 within three months, 30 ship detained.
enum class PortAction {
    Rectified,
    NextPort,
    Within14Days,
    BeforeDeparture,
    Within3Months,
    Detained
};
/// As what somebody signs a walkdown.
enum class Capacity { Inspector, ChiefOfficer };
/// What a report shows. Survey: a whole walkdown. DeficiencyList: for the master. WorkList: for the
/// crew. DoorRecord: one door.
enum class ReportKind { Survey, DeficiencyList, WorkList, DoorRecord };

inline constexpr std::array<Word<Purpose>, 8> purposeWords{
    {{Purpose::Annual, "annual"},
     {Purpose::Quarterly, "quarterly"},
     {Purpose::AfterRepair, "after-repair"},
     {Purpose::PortState, "port-state"},
     {Purpose::DoorCampaign, "door-campaign"},
     {Purpose::Blackout, "blackout"},
     {Purpose::Drill, "drill"},
     {Purpose::Other, "other"}}};
inline constexpr std::array<Word<Side>, 3> sideWords{
    {{Side::None, "none"}, {Side::One, "one"}, {Side::Two, "two"}}};
inline constexpr std::array<Word<Answer>, 3> answerWords{
    {{Answer::Yes, "yes"}, {Answer::No, "no"}, {Answer::NotApplicable, "n/a"}}};
inline constexpr std::array<Word<PlateState>, 3> plateStateWords{
    {{PlateState::Read, "read"}, {PlateState::None, "none"}, {PlateState::Illegible, "illegible"}}};
inline constexpr std::array<Word<RunKind>, 2> runKindWords{
    {{RunKind::Closing, "closing"}, {RunKind::Contact, "contact"}}};
inline constexpr std::array<Word<Release>, 4> releaseWords{{{Release::Remote, "remote"},
                                                            {Release::LocalSideOne, "local-1"},
                                                            {Release::LocalSideTwo, "local-2"},
                                                            {Release::LetGo, "let-go"}}};
inline constexpr std::array<Word<MarkKind>, 9> markKindWords{
    {{MarkKind::AlarmOn, "alarm-on"},
     {MarkKind::LeafMoves, "moves"},
     {MarkKind::HalfWay, "half-way"},
     {MarkKind::Shut, "shut"},
     {MarkKind::AlarmOff, "alarm-off"},
     {MarkKind::FirstLeafHome, "first-home"},
     {MarkKind::SecondLeafHome, "second-home"},
     {MarkKind::Touched, "touched"},
     {MarkKind::Stopped, "stopped"}}};
inline constexpr std::array<Word<Cue>, 3> cueWords{{{Cue::AlarmHeard, "alarm-heard"},
                                                    {Cue::LeafStarts, "leaf-starts"},
                                                    {Cue::LeafStops, "leaf-stops"}}};
inline constexpr std::array<Word<InputDevice>, 4> inputDeviceWords{{{InputDevice::Mouse, "mouse"},
                                                                    {InputDevice::Touch, "touch"},
                                                                    {InputDevice::Key, "key"},
                                                                    {InputDevice::Hand, "hand"}}};
inline constexpr std::array<Word<RunOutcome>, 3> runOutcomeWords{
    {{RunOutcome::Complete, "complete"},
     {RunOutcome::Void, "void"},
     {RunOutcome::Stopped, "stopped"}}};
inline constexpr std::array<Word<PortAction>, 6> portActionWords{
    {{PortAction::Rectified, "10"},
     {PortAction::NextPort, "15"},
     {PortAction::Within14Days, "16"},
     {PortAction::BeforeDeparture, "17"},
     {PortAction::Within3Months, "18"},
     {PortAction::Detained, "30"}}};
inline constexpr std::array<Word<Capacity>, 2> capacityWords{
    {{Capacity::Inspector, "inspector"}, {Capacity::ChiefOfficer, "chief-officer"}}};
inline constexpr std::array<Word<ReportKind>, 4> reportKindWords{
    {{ReportKind::Survey, "survey"},
     {ReportKind::DeficiencyList, "deficiency-list"},
     {ReportKind::WorkList, "work-list"},
     {ReportKind::DoorRecord, "door-record"}}};

constexpr std::string_view word(Purpose value) {
    return wordIn<Purpose>(purposeWords, value);
}
constexpr std::string_view word(Side value) {
    return wordIn<Side>(sideWords, value);
}
constexpr std::string_view word(Answer value) {
    return wordIn<Answer>(answerWords, value);
}
constexpr std::string_view word(PlateState value) {
    return wordIn<PlateState>(plateStateWords, value);
}
constexpr std::string_view word(RunKind value) {
    return wordIn<RunKind>(runKindWords, value);
}
constexpr std::string_view word(Release value) {
    return wordIn<Release>(releaseWords, value);
}
constexpr std::string_view word(MarkKind value) {
    return wordIn<MarkKind>(markKindWords, value);
}
constexpr std::string_view word(Cue value) {
    return wordIn<Cue>(cueWords, value);
}
constexpr std::string_view word(InputDevice value) {
    return wordIn<InputDevice>(inputDeviceWords, value);
}
constexpr std::string_view word(RunOutcome value) {
    return wordIn<RunOutcome>(runOutcomeWords, value);
}
constexpr std::string_view word(PortAction value) {
    return wordIn<PortAction>(portActionWords, value);
}
constexpr std::string_view word(Capacity value) {
    return wordIn<Capacity>(capacityWords, value);
}
constexpr std::string_view word(ReportKind value) {
    return wordIn<ReportKind>(reportKindWords, value);
}
constexpr const auto& wordsFor(Purpose) {
    return purposeWords;
}
constexpr const auto& wordsFor(Side) {
    return sideWords;
}
constexpr const auto& wordsFor(Answer) {
    return answerWords;
}
constexpr const auto& wordsFor(PlateState) {
    return plateStateWords;
}
constexpr const auto& wordsFor(RunKind) {
    return runKindWords;
}
constexpr const auto& wordsFor(Release) {
    return releaseWords;
}
constexpr const auto& wordsFor(MarkKind) {
    return markKindWords;
}
constexpr const auto& wordsFor(Cue) {
    return cueWords;
}
constexpr const auto& wordsFor(InputDevice) {
    return inputDeviceWords;
}
constexpr const auto& wordsFor(RunOutcome) {
    return runOutcomeWords;
}
constexpr const auto& wordsFor(PortAction) {
    return portActionWords;
}
constexpr const auto& wordsFor(Capacity) {
    return capacityWords;
}
constexpr const auto& wordsFor(ReportKind) {
    return reportKindWords;
}
constexpr std::optional<Answer> answerFrom(std::string_view text) {
    return valueIn<Answer>(answerWords, text);
}
constexpr std::optional<PlateState> plateStateFrom(std::string_view text) {
    return valueIn<PlateState>(plateStateWords, text);
}
constexpr std::optional<ReportKind> reportKindFrom(std::string_view text) {
    return valueIn<ReportKind>(reportKindWords, text);
}

} // namespace latchround
