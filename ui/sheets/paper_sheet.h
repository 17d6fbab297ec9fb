// Making a paper and saying where it lies, with a key that shows it.
#pragma once

#include "ui/round/round.h"

class QWidget;

namespace latchround::ui {

void makePaper(Round& round, Paper paper, const FactId& walkdown, const QString& door,
               QWidget* over);

} // namespace latchround::ui
