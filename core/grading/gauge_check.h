// Rows whose figure is read off a rule, a gauge or a tape.
#pragma once

#include "core/grading/row_check.h"

namespace latchround {

/// What was read off, with its uncertainty: by the step of the instrument, the usual one for the
/// row where it is not on record.
Reading gaugeReading(const Requirement& requirement, const MeasuredValue& measured);

/// A limit includes its own value. By the step s of the instrument: at the limit or inside it is
/// satisfactory; outside it by less than s the inspector decides; further out is unsatisfactory
/// (our choice, no source). Between two figures that the text prints for one limit the inspector
/// decides. Never to be measured again: the same rule would say the same.
RowCheck checkGauge(const Requirement& requirement, const DoorEvidence& evidence);

} // namespace latchround
