// The decimal mark of figures in translated texts. The translations are written with the comma, as
// SOLAS is in print in these languages ("3,5°"); the program writes its own figures as the machine
// does (figuresOf in translations.h), which in Mexico is with a point. A text must not say 0,1
// beside a stopwatch that says 0.1.
#pragma once

#include <QString>

namespace latchround {

/// `translated` with `mark` for the comma of its figures. Only figures that the English has too,
/// with a point, are touched: in "3,7", a pair of numbers in both, the comma stays.
QString withDecimalMark(QString translated, const char* english, const QString& mark);

} // namespace latchround
