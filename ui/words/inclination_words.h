// What arithmetic can say of a text that asks a door to close against an inclination.
#pragma once

#include <QString>

#include "core/grading/graded_walkdown.h"

namespace latchround::ui {

/// Empty where the row's text asks for no inclination.
QString inclinationWords(const Requirement& row, const GradedDoor& door);

/// A closing force by spring gauge was recorded for a row that asks for an inclination.
bool isGauged(const RowGrade& row, const GradedDoor& door);

} // namespace latchround::ui
