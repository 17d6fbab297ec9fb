// The catalogue files as they were when the program was built; generated from resources.
#pragma once

#include <array>
#include <string_view>

namespace latchround {

struct BuiltInFile {
    std::string_view path; ///< below the folder of resources
    std::string_view text;
};

/// In the order in which their rows stand in the catalogue.
extern const std::array<BuiltInFile, 9> built_in_requirements;
extern const BuiltInFile built_in_fire_tables;

} // namespace latchround
