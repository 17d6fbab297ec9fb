#include "ui/help/help_topic.h"

#include <algorithm>
#include <array>
#include <span>

namespace latchround::ui {
namespace {

struct Belongs {
    std::string_view id;
    HelpTopic topic;
};

constexpr std::array row_topics{
    Belongs{"rating", HelpTopic::Rating},
    Belongs{"h-rating", HelpTopic::Rating},
    Belongs{"k-rating", HelpTopic::Rating},
    Belongs{"plate", HelpTopic::Plate},
    Belongs{"h-number", HelpTopic::Number},
    Belongs{"seals-whole", HelpTopic::Seals},
    Belongs{"hinges-tight", HelpTopic::Hinges},
    Belongs{"closer-sound", HelpTopic::Closer},
    Belongs{"auto-latch", HelpTopic::Latch},
    Belongs{"latches", HelpTopic::Latch},
    Belongs{"latch-throw", HelpTopic::LatchThrow},
    Belongs{"meeting-gap", HelpTopic::MeetingGap},
    Belongs{"frame-stop", HelpTopic::FrameStop},
    Belongs{"leaf-width", HelpTopic::LeafWidth},
    Belongs{"leaf-whole", HelpTopic::LeafWhole},
    Belongs{"glass", HelpTopic::Glass},
    Belongs{"no-louver", HelpTopic::Louver},
    Belongs{"b-vent", HelpTopic::Vent},
    Belongs{"hose-port", HelpTopic::HosePort},
    Belongs{"us-hose-port", HelpTopic::HosePort},
    Belongs{"sill-sound", HelpTopic::SillSound},
    Belongs{"a-sill", HelpTopic::SillCovering},
    Belongs{"a-gap", HelpTopic::Gap},
    Belongs{"b-gap", HelpTopic::Gap},
    Belongs{"undercut", HelpTopic::Gap},
    Belongs{"path-clear", HelpTopic::PathClear},
    Belongs{"pocket-clear", HelpTopic::Pocket},
    Belongs{"not-held", HelpTopic::NotHeld},
    Belongs{"no-hook", HelpTopic::Hook},
    Belongs{"rails-clean", HelpTopic::Rails},
    Belongs{"one-person", HelpTopic::OnePerson},
    Belongs{"self-closing", HelpTopic::SelfClosing},
    Belongs{"h-self-closing", HelpTopic::SelfClosing},
    Belongs{"k-self-closing", HelpTopic::SelfClosing},
    Belongs{"hinged-time", HelpTopic::ClosingTime},
    Belongs{"sliding-rate", HelpTopic::SlidingRate},
    Belongs{"smooth", HelpTopic::Smooth},
    Belongs{"leaf-order", HelpTopic::LeafOrder},
    Belongs{"k-order", HelpTopic::LeafOrder},
    Belongs{"h-leaves", HelpTopic::EitherLeaf},
    Belongs{"b-cabin", HelpTopic::CabinDoor},
    Belongs{"reopen-local", HelpTopic::ReopenLocal},
    Belongs{"edge-stops", HelpTopic::EdgeStops},
    Belongs{"reopen-distance", HelpTopic::ReopenDistance},
    Belongs{"k-horizontal", HelpTopic::DeckDoor},
    Belongs{"k-horizontal-unlatch", HelpTopic::DeckUnlatch},
    Belongs{"k-horizontal-start", HelpTopic::DeckStart},
    Belongs{"k-horizontal-open", HelpTopic::DeckOpen},
    Belongs{"local-release", HelpTopic::LocalRelease},
    Belongs{"remote-release", HelpTopic::RemoteRelease},
    Belongs{"h-release", HelpTopic::RemoteRelease},
    Belongs{"k-release", HelpTopic::RemoteRelease},
    Belongs{"switch-on-off", HelpTopic::SwitchStays},
    Belongs{"indicator", HelpTopic::Indicator},
    Belongs{"alarm-lead", HelpTopic::AlarmLead},
    Belongs{"alarm-holds", HelpTopic::AlarmHolds},
    Belongs{"fail-safe", HelpTopic::FailSafe},
    Belongs{"machinery", HelpTopic::Machinery},
    Belongs{"accumulator", HelpTopic::Accumulator},
    Belongs{"independence", HelpTopic::Independence},
    Belongs{"accessible", HelpTopic::Access},
    Belongs{"control-heat", HelpTopic::Papers},
    Belongs{"release-system", HelpTopic::Papers},
};

constexpr std::array caution_topics{
    Belongs{"announced", HelpTopic::Announced},
    Belongs{"people-clear", HelpTopic::PeopleClear},
    Belongs{"watch-posted", HelpTopic::WatchPosted},
    Belongs{"station-ready", HelpTopic::StationReady},
    Belongs{"words-agreed", HelpTopic::WordsAgreed},
    Belongs{"path-free", HelpTopic::PathFree},
};

std::optional<HelpTopic> topicIn(std::span<const Belongs> all, std::string_view id) {
    const auto found = std::ranges::find(all, id, &Belongs::id);
    return found == all.end() ? std::nullopt : std::optional(found->topic);
}

} // namespace

std::optional<HelpTopic> topicOfRow(std::string_view requirement) {
    return topicIn(row_topics, requirement);
}

std::optional<HelpTopic> topicOfCaution(std::string_view caution) {
    return topicIn(caution_topics, caution);
}

} // namespace latchround::ui
