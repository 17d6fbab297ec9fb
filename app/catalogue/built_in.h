// The catalogue files as they were when the program was built; generated from
// resources/requirements.
#pragma once

#include <string_view>

namespace latchround {

extern const std::string_view built_in_solas_passenger;
extern const std::string_view built_in_practice;

} // namespace latchround
