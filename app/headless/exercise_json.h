// An exercise as the command line shows it: what is to be done, nothing of how a door really is.
#pragma once

#include "app/headless/json_answer.h"
#include "app/practice/exercise_files.h"
#include "core/requirement/catalogue.h"

namespace latchround::headless {

OrderedJson frontJson(const practice::ExerciseFile& file);

/// As the register has it, with the rows that are asked and the runs that can be made.
OrderedJson practiceDoorJson(const Arrangement& vessel, const Door& door,
                             const Catalogue& catalogue);

} // namespace latchround::headless
