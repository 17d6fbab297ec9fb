#include "app/report/moment_words.h"

#include <cstdlib>

#include <QDateTime>
#include <QLocale>
#include <QTimeZone>

#include "app/report/report_words.h"

namespace latchround::report {

namespace {

constexpr auto day_pattern = "d MMM yyyy";
constexpr auto minute_pattern = "hh:mm";

QDateTime utc(const Moment& moment) {
    return QDateTime::fromMSecsSinceEpoch(moment.utc_ms, Qt::UTC);
}

/// The clock on the ship's bulkhead, kept as if it were UTC so that nothing converts it again.
QDateTime shipsClock(const Moment& moment) {
    return utc(moment).addSecs(qint64{60} * moment.ship_offset_minutes);
}

QString day(const QDateTime& when) {
    return QLocale().toString(when.date(), QLatin1String(day_pattern));
}

QString minute(const QDateTime& when) {
    return when.time().toString(QLatin1String(minute_pattern));
}

QString offset(int minutes) {
    const int size = std::abs(minutes);
    return QStringLiteral("UTC%1%2:%3")
        .arg(minutes < 0 ? QChar(0x2212) : QChar('+'))
        .arg(size / 60, 2, 10, QChar('0'))
        .arg(size % 60, 2, 10, QChar('0'));
}

} // namespace

QString dayAndTime(const Moment& moment) {
    const QDateTime ship = shipsClock(moment);
    return day(ship) + QChar(' ') + minute(ship);
}

QString timeOfDay(const Moment& moment) {
    return shipsClock(moment).time().toString(QStringLiteral("hh:mm:ss"));
}

QString shipsTimeAndUtc(const Moment& moment) {
    const QDateTime ship = shipsClock(moment);
    const QDateTime universal = utc(moment);
    const QString there = ship.date() == universal.date()
                              ? minute(universal)
                              : day(universal) + QChar(' ') + minute(universal);
    return Report::tr("%1 ship's time (%2), %3 UTC")
        .arg(dayAndTime(moment), offset(moment.ship_offset_minutes), there);
}

} // namespace latchround::report
