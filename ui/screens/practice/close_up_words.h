// What is seen at a spot, in neutral words, for a screen that is heard. Never a conclusion.
#pragma once

#include <QString>

#include "ui/drawings/close_up_drawings.h"
#include "ui/screens/practice/spot.h"

namespace latchround::ui {

QString seenWords(Spot spot, const Seen& seen);

} // namespace latchround::ui
