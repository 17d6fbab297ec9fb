#include "tests/tour/language.h"

#include <QLocale>

#include "app/desktop/language.h"
#include "app/languages/translations.h"
#include "tests/tour/pseudo_language.h"

namespace latchround::tour {

QStringList languages() {
    return QStringList{QStringLiteral("en")} + translatedLanguages();
}

void speakOnTour(const QString& code) {
    setLanguage(code);
    speakPseudo(code == QLatin1String("qps"));
    QLocale::setDefault(figuresOf(code, QLocale::c()));
}

} // namespace latchround::tour
