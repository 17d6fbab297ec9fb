#include "app/desktop/language.h"

#include <QApplication>
#include <QDir>
#include <QLibraryInfo>
#include <QRegularExpression>
#include <QTranslator>

#include "ui/words/in_english.h"

namespace latchround {

namespace {

/// A translation that is silent while papers and records are worded, without an event to every
/// window.
class Speech : public QTranslator {
public:
    QString translate(const char* context, const char* source, const char* disambiguation,
                      int n) const override {
        return ui::InEnglish::isSpoken()
                   ? QString()
                   : QTranslator::translate(context, source, disambiguation, n);
    }
};

/// The program's own words, and those of the toolkit's file dialog.
struct Spoken {
    Speech words;
    Speech toolkit;
};

Spoken& spoken() {
    static Spoken both;
    return both;
}

QString fileOf(const QString& language) {
    return QStringLiteral(":/languages/latchround_%1.qm").arg(language);
}

void putOn(Speech& speech, const QString& file) {
    QCoreApplication::removeTranslator(&speech);
    if (QFile::exists(file) && speech.load(file))
        QCoreApplication::installTranslator(&speech);
}

} // namespace

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

void setLanguage(const QString& setting) {
    const QLocale machine = QLocale::system();
    const QString language = languageFor(setting, machine.uiLanguages());
    putOn(spoken().words, fileOf(language));
    putOn(spoken().toolkit, QStringLiteral("%1/qtbase_%2.qm")
                                .arg(QLibraryInfo::path(QLibraryInfo::TranslationsPath), language));
    const QLocale figures = figuresOf(language, machine);
    QLocale::setDefault(figures);
    QApplication::setLayoutDirection(figures.textDirection());
}

} // namespace latchround
