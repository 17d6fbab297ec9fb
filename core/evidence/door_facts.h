// The kinds of facts that are filed by their door.
#pragma once

#include "core/evidence/references.h"

namespace latchround {

template <class Body>
constexpr bool is_door_evidence =
    is_one_of<Body, Observation, PlateRead, MeasuredValue, RunStarted, CautionAnswered, Note,
              Photograph, Deficiency, CouldNotTest, Judgement>;

} // namespace latchround
