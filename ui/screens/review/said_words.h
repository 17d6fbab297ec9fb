// What a fact says, and what a difference is about, in words to decide by.
#pragma once

#include "core/evidence/differences.h"
#include "ui/round/round.h"

namespace latchround::ui {

/// "yes", "12.5 mm", "A-60 on the plate", "could not be tested: locked".
QString saidWords(const Fact& fact, const Round& round);

/// "5-31, annual of 24 Nov 2026: Travel path clear on both sides, side one".
QString aboutWords(const Difference& difference, const Round& round);

} // namespace latchround::ui
