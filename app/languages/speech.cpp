#include "app/languages/speech.h"

#include <QCoreApplication>
#include <QFile>
#include <QLocale>

#include "app/languages/decimal_mark.h"
#include "ui/words/in_english.h"

namespace latchround {

QString Speech::translate(const char* context, const char* source, const char* disambiguation,
                          int n) const {
    if (ui::InEnglish::isSpoken())
        return {};
    return withDecimalMark(QTranslator::translate(context, source, disambiguation, n), source,
                           QLocale().decimalPoint());
}

void Speech::putOn(const QString& file) {
    takeOff();
    if (QFile::exists(file) && load(file))
        QCoreApplication::installTranslator(this);
}

void Speech::takeOff() {
    QCoreApplication::removeTranslator(this);
}

} // namespace latchround
