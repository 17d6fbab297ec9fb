// The faults that a practice door can have, each with the rows of the catalogue that it changes.
// What each does to a door is in door_truth.h.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/phrase/phrase.h"
#include "core/vessel/arrangement.h"
#include "core/vessel/words.h"

namespace latchround::practice {

enum class Fault {
    TooFast,
    TooSlow,
    NearLimit,      ///< within a hair of a limit: to be timed again, not passed or failed
    AlarmShort,     ///< less than 5 s before it moves
    AlarmStops,     ///< before the leaf is home
    ReopensTooFar,  ///< more than 1 m from the point of contact
    LeavesReversed, ///< the leaf that must wait comes home first
    NoLatch,        ///< shuts, and opens again when pushed
    MagnetLate,     ///< the control station's release takes hold only after half a minute
    MagnetOneSide,  ///< no release from one side
    Hook,
    Wedge,
    PocketLitter,
    SillMissing,
    Gap,        ///< under a door that is approved without a sill
    WrongPlate, ///< for the boundary it stands in
    PaintedSeal,
    IndicatorLies,
    HosePortStuck,
    StaysOpen,   ///< opened again locally after remote closing, it does not shut by itself
    PeopleInPath ///< somebody walks into the path while it moves: Stop is the answer
};

inline constexpr std::array<Word<Fault>, 21> faultWords{{{Fault::TooFast, "too-fast"},
                                                         {Fault::TooSlow, "too-slow"},
                                                         {Fault::NearLimit, "near-limit"},
                                                         {Fault::AlarmShort, "alarm-short"},
                                                         {Fault::AlarmStops, "alarm-stops"},
                                                         {Fault::ReopensTooFar, "reopens-too-far"},
                                                         {Fault::LeavesReversed, "leaves-reversed"},
                                                         {Fault::NoLatch, "no-latch"},
                                                         {Fault::MagnetLate, "magnet-late"},
                                                         {Fault::MagnetOneSide, "magnet-one-side"},
                                                         {Fault::Hook, "hook"},
                                                         {Fault::Wedge, "wedge"},
                                                         {Fault::PocketLitter, "pocket-litter"},
                                                         {Fault::SillMissing, "sill-missing"},
                                                         {Fault::Gap, "gap"},
                                                         {Fault::WrongPlate, "wrong-plate"},
                                                         {Fault::PaintedSeal, "painted-seal"},
                                                         {Fault::IndicatorLies, "indicator-lies"},
                                                         {Fault::HosePortStuck, "hose-port-stuck"},
                                                         {Fault::StaysOpen, "stays-open"},
                                                         {Fault::PeopleInPath, "people-in-path"}}};

constexpr std::string_view word(Fault value) {
    return wordIn<Fault>(faultWords, value);
}
constexpr std::optional<Fault> faultFrom(std::string_view text) {
    return valueIn<Fault>(faultWords, text);
}

/// One sentence for the debrief: what was wrong.
Phrase sentence(Fault fault);

/// Whether a door of this kind and fitting can have it.
bool fits(Fault fault, const Door& door, const Boundary* boundary);

/// Ids of the catalogue rows whose verdict it changes on a door that has nothing else wrong; those
/// that are not asked of the door are left out of the debrief by themselves. Empty for
/// PeopleInPath: it is answered by Stop.
std::vector<std::string_view> rowsChangedBy(Fault fault, const Door& door);

/// Two faults that would hide one another, or speak of the same figure.
bool exclude(Fault one, Fault other);

} // namespace latchround::practice
