// What is asked before a door moves that nobody at the door has set moving.
#pragma once

#include "core/phrase/phrase.h"

namespace latchround::caution {

inline constexpr PhraseCode<0> announced{"caution-announced"};
inline constexpr PhraseCode<0> people_clear{"caution-people-clear"};
inline constexpr PhraseCode<0> watch_posted{"caution-watch-posted"};
inline constexpr PhraseCode<0> station_ready{"caution-station-ready"};
inline constexpr PhraseCode<0> words_agreed{"caution-words-agreed"};
inline constexpr PhraseCode<0> path_free{"caution-path-free"};

} // namespace latchround::caution
