// Exercises, attempts and a debrief made up for tests of what shows them.
#pragma once

#include "core/practice/debrief.h"
#include "memory_register.h"

namespace latchround::ui {

std::vector<ExerciseOffered> sampleExercises();
practice::Exercise sampleExam();
/// Three of one person, a week apart: 52 %, 74 % and 91 % in the exam; ten marks of a leaf that
/// starts and ten of one that stops in each.
std::vector<practice::Attempt> sampleAttempts(const std::string& person);
/// Of the doors of the small vessel; points into the catalogue.
practice::Debrief sampleDebrief(const Catalogue& catalogue);

} // namespace latchround::ui
