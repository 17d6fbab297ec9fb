// The languages the tour is taken in.
#pragma once

#include <QString>
#include <QStringList>

namespace latchround::tour {

/// English and those there is a translation for.
QStringList languages();

/// The same on every machine, whatever language that speaks. "qps" is the tests' own language.
void speakOnTour(const QString& code);

} // namespace latchround::tour
