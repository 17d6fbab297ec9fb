// The language the program speaks: its words, the form of its figures and dates, and the side a
// line begins on. The translations are built in (resources/languages).
#pragma once

#include <QLocale>
#include <QString>
#include <QStringList>

namespace latchround {

/// Codes of the languages there is a translation for, e.g. "es"; English is none of them.
QStringList translatedLanguages();

/// What the setting means on a machine whose own languages are these, the best first ("es-MX",
/// "pt"): the setting where it names a language spoken here; else the first of the machine's that
/// is; else "en".
QString languageFor(const QString& setting, const QStringList& machine_languages);

/// How figures and days are written in a language on a machine set like `machine`: as the machine
/// does where it speaks that language itself, so that a Mexican's point stays a point. No thousands
/// are marked off: 1.600 is one figure in Madrid and another in London.
QLocale figuresOf(const QString& language, const QLocale& machine);

/// From now on the program speaks the language of the setting ("", "en", "es", "fr", "id"). Texts
/// that are on the screen already stay as they are: windows are made anew by whoever calls.
void setLanguage(const QString& setting);

} // namespace latchround
