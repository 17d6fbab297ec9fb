#include "ui/figures/trend_chart.h"

#include <algorithm>
#include <cmath>

#include <QLocale>
#include <QPainter>
#include <QPainterPath>

#include "ui/words/date_words.h"

namespace latchround::ui {

namespace {

constexpr int steps_of_band = 48;

QString figure(double value, const QString& unit) {
    return QLocale().toString(value, 'f', unit == QStringLiteral("s") ? 1 : 3) + QChar(0x00a0) +
           unit;
}

QString timesWords(int count) {
    return count == 1 ? TrendChart::tr("One timing") : TrendChart::tr("%1 timings").arg(count);
}

double decimalYear(CalendarDate day) {
    return int(day.year()) + (unsigned(day.month()) - 1 + (unsigned(day.day()) - 1) / 31.0) / 12;
}

} // namespace

QString outlookWords(const Outlook& outlook, std::optional<double> low, std::optional<double> high,
                     const QString& unit) {
    const auto count = int(outlook.days.size() - outlook.line_from);
    QString words;
    if (outlook.line_from > 0)
        words = TrendChart::tr("Since the repair of about %1: ")
                    .arg(dateWords(outlook.days[outlook.line_from].day));
    if (outlook.prospect == Prospect::TooFew)
        return words + TrendChart::tr("%1 so far, too few to predict from: five over at least a "
                                      "year are needed.")
                           .arg(timesWords(count));
    const double drift = outlook.line->slope;
    words += TrendChart::tr("%1, changing by %2 a year. ")
                 .arg(timesWords(count), (drift < 0 ? QStringLiteral("−") : QStringLiteral("+")) +
                                             figure(std::abs(drift), unit));
    const QString limit = outlook.crosses
                              ? figure(outlook.over_high ? high.value_or(0) : low.value_or(0), unit)
                              : QString();
    switch (outlook.prospect) {
    case Prospect::AlreadyOver:
        return words + TrendChart::tr("Expect a result beyond %1 now: the 95 % interval already "
                                      "reaches it.")
                           .arg(limit);
    case Prospect::InSight:
        return words + TrendChart::tr("The 95 % interval first reaches %1 in %2: have the door "
                                      "serviced before then.")
                           .arg(limit, monthWords(*outlook.crosses));
    case Prospect::NotInSight:
        return words + TrendChart::tr("No limit is reached by %1; these timings say nothing "
                                      "beyond that.")
                           .arg(int(outlook.looked_until->year()));
    case Prospect::TooFew:
        break;
    }
    return words;
}

/// Where years and figures lie on the widget.
struct TrendChart::Frame {
    QRectF area;
    double from_year = 0;
    double to_year = 1;
    double from = 0;
    double to = 1;

    double x(double year) const {
        return area.left() + (year - from_year) / (to_year - from_year) * area.width();
    }
    double y(double value) const {
        return area.bottom() - (value - from) / (to - from) * area.height();
    }
};

TrendChart::TrendChart(QWidget* parent)
    : Part(parent) {
    setLayoutDirection(Qt::LeftToRight); // years run as figures do, whichever side words begin on
    setObjectName(QStringLiteral("trend-chart"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void TrendChart::setOutlook(Outlook outlook, std::optional<double> low, std::optional<double> high,
                            const QString& unit) {
    m_outlook = std::move(outlook);
    m_low = low;
    m_high = high;
    m_unit = unit;
    setAccessibleName(outlookWords(m_outlook, low, high, unit));
    update();
}

QSize TrendChart::sizeHint() const {
    constexpr double high_mm = 75;
    return {int(mm(150)), heightWithin(high_mm)};
}

QSize TrendChart::minimumSizeHint() const {
    constexpr double high_mm = 60;
    return {int(mm(60)), heightWithin(high_mm)};
}

/// No higher than what the window leaves it beside the keys of a sheet.
int TrendChart::heightWithin(double most_mm) const {
    constexpr double least_mm = 30;
    constexpr double others_mm = 55;
    const double room = window() == this ? mm(most_mm) : window()->height() - mm(others_mm);
    return int(std::clamp(room, mm(least_mm), mm(most_mm)));
}

TrendChart::Frame TrendChart::frameOf() const {
    Frame frame;
    const double left = mm(16);
    frame.area = QRectF(left, mm(3), width() - left - mm(4), height() - mm(12));
    double points_low = HUGE_VAL;
    double points_high = -HUGE_VAL;
    for (const TimedDay& day : m_outlook.days) {
        points_low = std::min(points_low, day.value - 2 * day.u);
        points_high = std::max(points_high, day.value + 2 * day.u);
    }
    // A limit far from every point would press the points flat: it is then left outside.
    const double room = 3 * std::max(points_high - points_low, std::abs(points_high) * 0.1);
    const double lowest =
        std::max(std::min(points_low, m_low.value_or(points_low)), points_low - room);
    const double highest =
        std::min(std::max(points_high, m_high.value_or(points_high)), points_high + room);
    const double margin = std::max((highest - lowest) * 0.08, 1e-6);
    frame.from = lowest - margin;
    frame.to = highest + margin;
    frame.from_year = std::floor(decimalYear(m_outlook.days.front().day));
    CalendarDate last = m_outlook.days.back().day;
    if (m_outlook.crosses)
        last = std::max(last, *m_outlook.crosses);
    else if (m_outlook.looked_until)
        last = std::max(last, *m_outlook.looked_until);
    frame.to_year = std::floor(decimalYear(last)) + 1;
    return frame;
}

void TrendChart::paintEvent(QPaintEvent*) {
    if (m_outlook.days.empty())
        return;
    QPainter painter(this);
    painter.setLayoutDirection(layoutDirection()); // else the whole program's
    painter.setRenderHint(QPainter::Antialiasing);
    const Frame frame = frameOf();
    paintAxes(painter, frame);
    paintLine(painter, frame);
    paintLimits(painter, frame);
    paintDays(painter, frame);
}

void TrendChart::paintAxes(QPainter& painter, const Frame& frame) const {
    painter.setPen(QPen(colours().edge, 1));
    painter.drawLine(frame.area.bottomLeft(), frame.area.bottomRight());
    painter.setFont(font(TextSize::Small));
    painter.setPen(colours().muted);
    const int years = int(frame.to_year - frame.from_year);
    const double room = frame.area.width() / std::max(1, years);
    const int step = std::max(1, int(std::ceil(mm(13) / room)));
    for (int i = 0; i <= years; i += step) {
        const double x = frame.x(frame.from_year + i);
        painter.drawLine(QPointF(x, frame.area.bottom()), QPointF(x, frame.area.bottom() + mm(1)));
        painter.drawText(QRectF(x - mm(8), frame.area.bottom() + mm(1.5), mm(16), mm(6)),
                         Qt::AlignHCenter | Qt::AlignTop,
                         QString::number(int(frame.from_year) + i));
    }
}

void TrendChart::paintLimits(QPainter& painter, const Frame& frame) const {
    painter.setFont(font(TextSize::Small));
    for (const auto& limit : {m_low, m_high}) {
        if (!limit || *limit < frame.from || *limit > frame.to)
            continue;
        const double y = frame.y(*limit);
        painter.setPen(QPen(colours().bad, mm(0.4)));
        painter.drawLine(QPointF(frame.area.left(), y), QPointF(frame.area.right(), y));
        painter.drawText(QRectF(0, y - mm(3), frame.area.left() - mm(1), mm(6)),
                         Qt::AlignRight | Qt::AlignVCenter,
                         QLocale().toString(*limit, 'g', 4) + QLatin1Char(' ') + m_unit);
    }
    if (!m_outlook.crosses)
        return;
    const double x = frame.x(decimalYear(*m_outlook.crosses));
    painter.setPen(QPen(colours().again, mm(0.4), Qt::DashLine));
    painter.drawLine(QPointF(x, frame.area.top()), QPointF(x, frame.area.bottom()));
}

/// The line over the years it rests on and ahead, with the band of what is to be expected.
void TrendChart::paintLine(QPainter& painter, const Frame& frame) const {
    if (!m_outlook.line || m_outlook.prospect == Prospect::TooFew)
        return;
    const CalendarDate first = m_outlook.days[m_outlook.line_from].day;
    const double begin = decimalYear(first);
    const Prediction prediction(*m_outlook.line, outlook_confidence);
    QPolygonF upper;
    QPolygonF lower;
    QPolygonF middle;
    for (int i = 0; i <= steps_of_band; ++i) {
        const double year = begin + (frame.to_year - begin) * i / steps_of_band;
        const Band band = prediction.at(year - begin);
        upper << QPointF(frame.x(year), frame.y(band.high));
        lower.prepend(QPointF(frame.x(year), frame.y(band.low)));
        middle << QPointF(frame.x(year), frame.y(m_outlook.line->at(year - begin)));
    }
    painter.save();
    painter.setClipRect(frame.area);
    QColor shade = colours().band;
    shade.setAlpha(90); // the points stay the strongest
    painter.setPen(Qt::NoPen);
    painter.setBrush(shade);
    painter.drawPolygon(upper + lower);
    painter.setPen(QPen(colours().accent, mm(0.5)));
    painter.drawPolyline(middle);
    painter.restore();
}

void TrendChart::paintDays(QPainter& painter, const Frame& frame) const {
    for (std::size_t i = 0; i < m_outlook.days.size(); ++i) {
        const TimedDay& day = m_outlook.days[i];
        const bool earlier = i < m_outlook.line_from;
        const QColor colour = day.outside ? colours().bad
                              : earlier   ? colours().muted
                                          : colours().ink;
        const QPointF point(frame.x(decimalYear(day.day)), frame.y(day.value));
        painter.setPen(QPen(colour, mm(0.3)));
        painter.drawLine(QPointF(point.x(), frame.y(day.value - 2 * day.u)),
                         QPointF(point.x(), frame.y(day.value + 2 * day.u)));
        painter.setBrush(earlier ? colours().card : colour);
        painter.drawEllipse(point, mm(0.9), mm(0.9));
    }
}

} // namespace latchround::ui

#include "moc_trend_chart.cpp"
