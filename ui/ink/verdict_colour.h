// The colour of a verdict, in one place for screen and paper.
#pragma once

#include <QColor>

#include "core/grading/verdict.h"
#include "ui/ink/palette.h"

namespace latchround::ui {

QColor colourOf(Verdict verdict, const Colours& colours);

} // namespace latchround::ui
