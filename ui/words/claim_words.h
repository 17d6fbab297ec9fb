// What a sample claims and what its result proves, in the language of the screen; the same in
// English for shell and paper is core/planning/sample_words.h.
#pragma once

#include <QString>

#include "core/planning/sample_words.h"

namespace latchround::ui {

/// "95 %", "99,5 %".
QString confidenceWords(ConfidencePpm confidence);

/// "at most 5 of 100 doors are defective".
QString claimedWords(int doors, int defective);

/// What the doors of a walkdown prove so far, and what to do next; empty where the numbers do not
/// go together.
QString resultSoFarWords(const SampleDrawn& sample, const Tally& tally);

} // namespace latchround::ui
