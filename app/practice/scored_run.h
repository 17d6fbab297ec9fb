// An exercise done without a screen: the answers' runs are played on the stage, and the debrief
// says what they are worth.
#pragma once

#include "app/practice/answers_json.h"
#include "core/practice/debrief.h"

namespace latchround::practice {

/// The path is clear and the wedge taken away before every run. Somebody who walks in on a run that
/// is not stopped in time is endangered: it is taken as watched by nobody.
Debrief scored(const Exercise& exercise, const Arrangement& vessel, std::uint32_t seed,
               const Answers& answers, const Catalogue& catalogue);

} // namespace latchround::practice
