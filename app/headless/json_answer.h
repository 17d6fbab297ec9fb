// JSON as the commands answer with it: keys in the order they were set.
#pragma once

#include <nlohmann/json.hpp>

#include "core/reading/written_json.h"

namespace latchround::headless {

using OrderedJson = nlohmann::ordered_json;

} // namespace latchround::headless
