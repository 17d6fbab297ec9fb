// What is wrong with a practice door, for the debrief.
#pragma once

#include "core/phrase/phrase.h"

namespace latchround::practice_fault {

inline constexpr PhraseCode<0> too_fast{"practice-fault-too-fast"};
inline constexpr PhraseCode<0> too_slow{"practice-fault-too-slow"};
inline constexpr PhraseCode<0> near_limit{"practice-fault-near-limit"};
inline constexpr PhraseCode<0> alarm_short{"practice-fault-alarm-short"};
inline constexpr PhraseCode<0> alarm_stops{"practice-fault-alarm-stops"};
inline constexpr PhraseCode<0> reopens_too_far{"practice-fault-reopens-too-far"};
inline constexpr PhraseCode<0> leaves_reversed{"practice-fault-leaves-reversed"};
inline constexpr PhraseCode<0> no_latch{"practice-fault-no-latch"};
inline constexpr PhraseCode<0> magnet_late{"practice-fault-magnet-late"};
inline constexpr PhraseCode<0> magnet_one_side{"practice-fault-magnet-one-side"};
inline constexpr PhraseCode<0> hook{"practice-fault-hook"};
inline constexpr PhraseCode<0> wedge{"practice-fault-wedge"};
inline constexpr PhraseCode<0> pocket_litter{"practice-fault-pocket-litter"};
inline constexpr PhraseCode<0> sill_missing{"practice-fault-sill-missing"};
inline constexpr PhraseCode<0> gap{"practice-fault-gap"};
inline constexpr PhraseCode<0> wrong_plate{"practice-fault-wrong-plate"};
inline constexpr PhraseCode<0> painted_seal{"practice-fault-painted-seal"};
inline constexpr PhraseCode<0> indicator_lies{"practice-fault-indicator-lies"};
inline constexpr PhraseCode<0> hose_port_stuck{"practice-fault-hose-port-stuck"};
inline constexpr PhraseCode<0> stays_open{"practice-fault-stays-open"};
inline constexpr PhraseCode<0> people_in_path{"practice-fault-people-in-path"};

} // namespace latchround::practice_fault
