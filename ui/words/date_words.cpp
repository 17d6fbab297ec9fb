#include "ui/words/date_words.h"

#include <QDate>
#include <QLocale>

namespace latchround::ui {

namespace {

QDate dateOf(CalendarDate day) {
    return {int(day.year()), int(unsigned(day.month())), int(unsigned(day.day()))};
}

/// The month in letters, so that no order of figures can be misread; the order as the locale has
/// it.
QString dayFormat(const QLocale& locale) {
    const QString usual = locale.dateFormat(QLocale::ShortFormat);
    const auto day = usual.indexOf(QLatin1Char('d'));
    const auto month = usual.indexOf(QLatin1Char('M'));
    const auto year = usual.indexOf(QLatin1Char('y'));
    if (year < month && year < day)
        return QStringLiteral("yyyy MMM d");
    return month < day ? QStringLiteral("MMM d, yyyy") : QStringLiteral("d MMM yyyy");
}

} // namespace

QString dateWords(CalendarDate day) {
    const QLocale locale;
    return locale.toString(dateOf(day), dayFormat(locale));
}

QString monthWords(CalendarDate day) {
    const QLocale locale;
    return QStringLiteral("%1 %2").arg(locale.standaloneMonthName(int(unsigned(day.month()))),
                                       locale.toString(dateOf(day), QStringLiteral("yyyy")));
}

} // namespace latchround::ui
