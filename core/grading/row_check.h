// The check kinds of the catalogue, one function each: evidence of one door against one row, as if
// it were asked.
#pragma once

#include <optional>

#include "core/evidence/door_evidence.h"
#include "core/grading/door_class.h"
#include "core/grading/reason.h"
#include "core/grading/verdict.h"
#include "core/measure/reading.h"
#include "core/requirement/requirement.h"
#include "core/vessel/arrangement.h"

namespace latchround {

/// Over this heel a time is advice only: the rule speaks of the upright ship (SOLAS
/// II-2/9.4.1.1.5.2); the figure of 1 degree is our choice, no source.
inline constexpr double upright_within_deg = 1.0;

struct RowCheck {
    Verdict verdict = Verdict::Untested;
    Reason reason;
    std::optional<Reading> figure; ///< measured or timed, with its uncertainty
    std::optional<double> inside;  ///< probability that it lies inside the limits
    bool indicative = false;
};

/// Why nothing is shown by runs: none was begun, or none came to its end.
ReasonKind whyNothingRun(const DoorEvidence& evidence);

RowCheck checkRow(const Requirement& requirement, const Door& door, const DoorClass& asked,
                  const DoorEvidence& evidence);

} // namespace latchround
