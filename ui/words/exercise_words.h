// How hard an exercise is, what is wrong with a practice door and what became of it, in the words
// of the screen.
#pragma once

#include <QString>

#include "core/practice/debrief.h"

namespace latchround::ui {

QString levelWords(practice::Level level); ///< "first steps", "exam"

/// The fault as a heading: "closes too fast". What was wrong with it in a sentence is
/// practice::sentence.
QString faultWords(practice::Fault fault);

QString outcomeWords(practice::Outcome outcome); ///< "found", "missed", "reported but absent"

} // namespace latchround::ui
