#include "app/languages/translations.h"

#include <QDir>
#include <QRegularExpression>

namespace latchround {

QStringList translatedLanguages() {
    QStringList codes;
    for (const QString& file : QDir(QStringLiteral(":/languages"))
                                   .entryList({QStringLiteral("latchround_*.qm")}, QDir::Files))
        codes << file.section(QLatin1Char('_'), 1).section(QLatin1Char('.'), 0, 0);
    return codes;
}

QString languageFor(const QString& setting, const QStringList& machine_languages) {
    QString english = QStringLiteral("en");
    const QStringList translated = translatedLanguages();
    for (const QString& wanted : QStringList(setting) + machine_languages) {
        // "es-MX" and "es_MX.UTF-8" are both Spanish.
        QString code = wanted.left(wanted.indexOf(QRegularExpression(QStringLiteral("[-_.]"))));
        if (code == english || translated.contains(code))
            return code;
    }
    return english;
}

QLocale figuresOf(const QString& language, const QLocale& machine) {
    QLocale figures = language == QLatin1String("en")
                          ? QLocale(QLocale::English, QLocale::UnitedKingdom)
                          : QLocale(language);
    if (machine.language() == figures.language())
        figures = machine;
    figures.setNumberOptions(figures.numberOptions() | QLocale::OmitGroupSeparator);
    return figures;
}

QString translationOf(const QString& language) {
    return QStringLiteral(":/languages/latchround_%1.qm").arg(language);
}

InLanguage::InLanguage(const QString& language) {
    if (language == QLatin1String("en"))
        return;
    m_speech.putOn(translationOf(language));
    QLocale::setDefault(figuresOf(language, QLocale::c()));
}

InLanguage::~InLanguage() {
    m_speech.takeOff();
    QLocale::setDefault(m_before);
}

} // namespace latchround
