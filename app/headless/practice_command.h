// practice: exercises listed, shown, locked, and scored without a screen. Nothing here tells what
// is wrong with a door before answers are given.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>

#include "app/headless/answer.h"
#include "app/headless/collect_command.h"

namespace latchround::headless {

struct PracticeAsked {
    std::string exercise; ///< id or path
    std::optional<std::uint32_t> seed;
    std::string answers;                      ///< file
    std::optional<std::string> password_from; ///< else LATCHROUND_PASSWORD
    std::string lock;                         ///< file to lock
    std::string output;
};

Answer listExercises();
Answer showExercise(const PracticeAsked& asked, const Catalogue& catalogue);
Answer scoreExercise(const PracticeAsked& asked, const Catalogue& catalogue);
Answer lockExercise(const PracticeAsked& asked);

void addPracticeCommands(CLI::App& program, PracticeAsked& asked, std::function<Answer()>& command,
                         const Graded& graded);

} // namespace latchround::headless
