// What an inspector reacts to, and how late, in the words of the screen.
#pragma once

#include <QString>

#include "core/measure/reaction_model.h"

namespace latchround::ui {

QString cueTitle(Cue cue); ///< "Leaf seen to start"

/// "182 ms late", "12 ms early": to the millisecond.
QString lateWords(double late_s);

/// "42 marks, bias 182 ms late, spread 61 ms"; where too few count, how many do and how many are
/// needed.
QString thumbLine(Cue cue, const ThumbDrill& drill);

} // namespace latchround::ui
