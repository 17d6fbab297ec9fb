// One fire door as the vessel's register describes it. What is seen of it is evidence, not here.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/vessel/calendar_date.h"
#include "core/vessel/fire_class.h"
#include "core/vessel/said.h"
#include "core/vessel/words.h"

namespace latchround {

enum class DoorKind { SingleLeaf, DoubleLeaf, Sliding, DoubleSwing };
enum class NormalPosition { Open, Closed, Locked };

inline constexpr std::array<Word<DoorKind>, 4> doorKindWords{
    {{DoorKind::SingleLeaf, "single"},
     {DoorKind::DoubleLeaf, "double"},
     {DoorKind::Sliding, "sliding"},
     {DoorKind::DoubleSwing, "double-swing"}}};
inline constexpr std::array<Word<NormalPosition>, 3> normalPositionWords{
    {{NormalPosition::Open, "open"},
     {NormalPosition::Closed, "closed"},
     {NormalPosition::Locked, "locked"}}};

constexpr std::string_view word(DoorKind value) {
    return wordIn<DoorKind>(doorKindWords, value);
}
constexpr const auto& wordsFor(DoorKind) {
    return doorKindWords;
}
constexpr std::string_view word(NormalPosition value) {
    return wordIn<NormalPosition>(normalPositionWords, value);
}
constexpr const auto& wordsFor(NormalPosition) {
    return normalPositionWords;
}

constexpr bool isHinged(DoorKind kind) {
    return kind != DoorKind::Sliding;
}

struct Door {
    std::string number;   ///< as painted on the door and printed on the fire plan; unique aboard
    std::string deck;     ///< number of a Deck
    double x_m = 0;       ///< along the ship from the aft perpendicular, metres, forward positive
    double y_m = 0;       ///< across the ship from the centreline, metres, starboard positive
    std::string boundary; ///< id of the Boundary it stands in
    DoorKind kind = DoorKind::SingleLeaf;
    FireClass fire_class = FireClass::A60; ///< by the register (the approved fire plan)
    std::string plate;    ///< what the register says the plate reads; empty: no plate recorded
    double opening_m = 0; ///< clear opening width, metres; a sliding leaf's travel
    std::optional<double> leaf_mass_kg; ///< heaviest leaf, kilograms
    Said power_operated = false;
    Said hold_back = false;                  ///< held open by magnet or other releasable means
    std::vector<std::string> release_groups; ///< groups that the control station releases together
    /// Where no group is named: a register that names none says no, a grade file may say nothing.
    Said remote_release = false;
    Said alarm = false;              ///< fitted with a closing alarm
    Said designed_to_reopen = false; ///< re-opens on contact (safety edge)
    Said hose_port = false;
    Said escape_route = false;
    Said sill_in_frame = true; ///< approved with a sill in its frame
    Said latch = true;         ///< a latch is needed for its fire integrity
    Said watertight = false;
    Said weathertight = false;     ///< or reasonably gastight
    Said escape_trunk = false;     ///< door of an emergency escape trunk
    Said special_category = false; ///< gives direct access to a special category space
    /// An exterior door that faces life-saving appliances, embarkation or outside assembly
    /// stations, outside stairs or escape decks (SOLAS II-2/9.4.1.1.7).
    Said faces_embarkation = false;
    NormalPosition normally = NormalPosition::Closed;
    std::optional<CalendarDate> installed;
    std::string maker; ///< who built it, as the builder's papers name him; empty: not on record

    bool operator==(const Door&) const = default;
};

/// How a door is asked of which nobody says how it stands: open, if anything may hold it so.
inline NormalPosition positionIfNotSaid(const Door& door) {
    const bool may_be_held = door.hold_back || !door.hold_back.isKnown();
    return may_be_held ? NormalPosition::Open : NormalPosition::Closed;
}

/// The control station can release it: it belongs to at least one release group.
inline Said isRemotelyReleased(const Door& door) {
    return door.release_groups.empty() ? door.remote_release : Said(true);
}

} // namespace latchround
