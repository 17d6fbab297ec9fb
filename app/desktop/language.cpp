#include "app/desktop/language.h"

#include <QApplication>
#include <QLibraryInfo>

#include "app/languages/translations.h"

namespace latchround {

namespace {

/// The program's own words, and those of the toolkit's file dialog.
struct Spoken {
    Speech words;
    Speech toolkit;
};

Spoken& spoken() {
    static Spoken both;
    return both;
}

} // namespace

void setLanguage(const QString& setting) {
    const QLocale machine = QLocale::system();
    const QString language = languageFor(setting, machine.uiLanguages());
    spoken().words.putOn(translationOf(language));
    spoken().toolkit.putOn(QStringLiteral("%1/qtbase_%2.qm")
                               .arg(QLibraryInfo::path(QLibraryInfo::TranslationsPath), language));
    const QLocale figures = figuresOf(language, machine);
    QLocale::setDefault(figures);
    QApplication::setLayoutDirection(figures.textDirection());
}

} // namespace latchround
