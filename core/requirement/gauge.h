// How finely a figure is read off: the step of the instrument it was taken with.
#pragma once

#include <string_view>

#include "core/requirement/requirement.h"

namespace latchround {

/// What lies between two marks of the instrument, in this unit: rule 1 mm, caliper 0.1 mm, gap
/// gauge 0.5 mm, tape 5 mm, spring gauge 1 N (common practice, no source). 0 where it measures no
/// such thing.
double stepOf(Instrument instrument, std::string_view unit);

/// What such a row is usually measured with: its own instrument, else the rule for millimetres, the
/// tape for metres, the spring gauge for newtons.
Instrument usualInstrument(const Requirement& row);

/// The step of a figure of this row whose instrument is not known; of an area 5 cm2 (our choice, no
/// source).
double usualStep(const Requirement& row);

/// The coarsest step that a figure of this row can have been read with: a tape's for a length, else
/// the usual one.
double coarsestStep(const Requirement& row);

} // namespace latchround
