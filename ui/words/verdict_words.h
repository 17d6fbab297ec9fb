// The words of a verdict, in one place for screen and paper.
#pragma once

#include <QString>

#include "core/grading/verdict.h"

namespace latchround::ui {

/// "satisfactory", "judgement needed": lower case, translated.
QString verdictWords(Verdict verdict);
/// The same with a capital, to stand alone.
QString verdictTitle(Verdict verdict);

} // namespace latchround::ui
