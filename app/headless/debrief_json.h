// What an exercise says about whoever did it, as JSON.
#pragma once

#include <cstdint>
#include <string>

#include "app/headless/json_answer.h"
#include "core/practice/debrief.h"

namespace latchround::headless {

OrderedJson debriefJson(const practice::Exercise& exercise, std::uint32_t seed,
                        const std::string& person, const practice::Debrief& debrief);

} // namespace latchround::headless
