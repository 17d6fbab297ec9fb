// The vessel whose doors are not there: invented, the same for every exercise, compiled in.
#pragma once

#include "core/vessel/arrangement.h"

namespace latchround::practice {

const Arrangement& practiceVessel();

} // namespace latchround::practice
