#include "ui/parts/date_words.h"

#include <QDate>
#include <QLocale>

namespace latchround::ui {

namespace {

QString inFormat(CalendarDate day, const QString& format) {
    return QLocale().toString(
        QDate(int(day.year()), int(unsigned(day.month())), int(unsigned(day.day()))), format);
}

} // namespace

QString dateWords(CalendarDate day) {
    return inFormat(day, QStringLiteral("d MMM yyyy"));
}

QString monthWords(CalendarDate day) {
    return inFormat(day, QStringLiteral("MMMM yyyy"));
}

} // namespace latchround::ui
