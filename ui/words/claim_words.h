// What a sample claims and what its result proves: one wording for screen, paper and shell.
#pragma once

#include <QString>

#include "core/planning/sample_so_far.h"

namespace latchround::ui {

/// "95 %", "99,5 %".
QString confidenceWords(ConfidencePpm confidence);

/// "at most 5 of 100 doors are defective".
QString claimedWords(int doors, int defective);

/// What a clean result of `n` doors would prove.
QString planWords(const SampleClaim& claim, int n);

/// The other convention (sampleToFind), and that it is another.
QString findWords(const SampleClaim& claim, int n);

/// What a result proves, and what to do next.
QString resultWords(const SampleSoFar& so_far);

/// The same of the doors of a walkdown; empty where the numbers do not go together.
QString resultSoFarWords(const SampleDrawn& sample, const Tally& tally);

} // namespace latchround::ui
