// The words and the colour of a verdict, in one place for every screen.
#pragma once

#include <QColor>
#include <QString>

#include "core/grading/verdict.h"
#include "ui/look/palette.h"

namespace latchround::ui {

/// "satisfactory", "needs your judgement": lower case, translated.
QString verdictWords(Verdict verdict);

/// The same with a capital, to stand alone.
QString verdictTitle(Verdict verdict);

QColor colourOf(Verdict verdict, const Colours& colours);

} // namespace latchround::ui
