// What a tap recorded, in a few words: for the key that takes it back.
#pragma once

#include <QString>

#include "ui/round/round.h"

namespace latchround::ui {

/// "5-09, Sill in place, no trip?", "note on 5-09", "end of the walkdown".
QString tapWords(const Fact& fact, const Round& round);

} // namespace latchround::ui
