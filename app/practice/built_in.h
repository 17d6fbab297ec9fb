// The practice vessel and its exercises as they were when the program was built; generated from
// resources/practice.
#pragma once

#include <span>
#include <string_view>

namespace latchround::practice {

struct BuiltInExercise {
    std::string_view id; ///< that its file must have, too
    std::string_view json;
};

extern const std::string_view built_in_vessel_csv;

/// In the order in which they are offered.
std::span<const BuiltInExercise> builtInExercises();

} // namespace latchround::practice
