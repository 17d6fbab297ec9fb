// The languages that there is a translation for (resources/languages), and how figures and days are
// written in them.
#pragma once

#include <QLocale>
#include <QString>
#include <QStringList>

#include "app/languages/speech.h"

namespace latchround {

/// Their codes, e.g. "es"; English is none of them.
QStringList translatedLanguages();

/// What the setting means on a machine whose own languages are these, the best first ("es-MX",
/// "pt"): the setting where it names a language spoken here; else the first of the machine's that
/// is; else "en".
QString languageFor(const QString& setting, const QStringList& machine_languages);

/// How figures and days are written in a language on a machine set like `machine`: as the machine
/// does where it speaks that language itself, so that a Mexican's point stays a point. No thousands
/// are marked off: 1.600 is one figure in Madrid and another in London.
QLocale figuresOf(const QString& language, const QLocale& machine);

/// Where the translation of this language is built in.
QString translationOf(const QString& language);

/// While one lives words are made in this language, the same on every machine; for a program that
/// speaks English otherwise. "en" changes nothing.
class InLanguage {
public:
    explicit InLanguage(const QString& language);
    ~InLanguage();
    InLanguage(const InLanguage&) = delete;
    InLanguage& operator=(const InLanguage&) = delete;

private:
    QLocale m_before;
    Speech m_speech;
};

} // namespace latchround
