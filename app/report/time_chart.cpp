#include "app/report/time_chart.h"

#include <algorithm>

#include <QLocale>
#include <QPainter>

#include "app/report/report_look.h"

namespace latchround::report {

namespace {

constexpr int chart_width = 1500;
constexpr int chart_height = 440;
constexpr int letter_px = 26;

CalendarDate newYear(int year) {
    return {std::chrono::year(year), std::chrono::January, std::chrono::day(1)};
}

class Chart {
public:
    Chart(std::span<const TimedDay> days, std::optional<double> low, std::optional<double> high)
        : m_days(days)
        , m_low(low)
        , m_high(high)
        , m_first(days.front().day)
        , m_years(std::max(0.25, yearsBetween(days.front().day, days.back().day))) {
        for (const TimedDay& day : days)
            m_top = std::max({m_top, day.value + 2 * day.u, high.value_or(0)});
        m_top *= 1.1;
    }

    QImage drawn() {
        QImage image(chart_width, chart_height, QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        painter.setRenderHint(QPainter::Antialiasing);
        QFont font = reportFont(body_pt);
        font.setPixelSize(letter_px);
        painter.setFont(font);
        axes(painter);
        limit(painter, m_low);
        limit(painter, m_high);
        for (const TimedDay& day : m_days)
            point(painter, day);
        return image;
    }

private:
    double xOf(CalendarDate day) const {
        return m_frame.left() + 24 + (m_frame.width() - 48) * yearsBetween(m_first, day) / m_years;
    }
    double yOf(double value) const {
        return m_frame.bottom() - m_frame.height() * std::max(0.0, value) / m_top;
    }

    void axes(QPainter& painter) const {
        painter.setPen(QPen(rule_ink, 2));
        painter.drawLine(m_frame.bottomLeft(), m_frame.bottomRight());
        painter.drawLine(m_frame.bottomLeft(), m_frame.topLeft());
        const int first = int(m_first.year());
        const int last = int(m_days.back().day.year());
        const int step = 1 + (last - first) / 12;
        for (int year = first; year <= last; year += step) {
            const double x =
                xOf(std::max(m_first, CalendarDate(std::chrono::year(year), std::chrono::January,
                                                   std::chrono::day(1))));
            painter.setPen(QPen(rule_ink, 2));
            painter.drawLine(QPointF(x, m_frame.bottom()), QPointF(x, m_frame.bottom() + 8));
            painter.setPen(muted_ink);
            // The first year may be all but over: its name would stand on the next one's.
            if (year == first && last > first && xOf(newYear(year + 1)) - x < 110)
                continue;
            painter.drawText(QRectF(x - 60, m_frame.bottom() + 8, 120, 40), Qt::AlignCenter,
                             QString::number(year));
        }
        painter.drawText(QRectF(0, m_frame.bottom() - 20, m_frame.left() - 10, 40),
                         Qt::AlignRight | Qt::AlignVCenter, QStringLiteral("0"));
    }

    void limit(QPainter& painter, std::optional<double> value) const {
        if (!value)
            return;
        const double y = yOf(*value);
        painter.setPen(QPen(bad_ink, 3, Qt::DashLine));
        painter.drawLine(QPointF(m_frame.left(), y), QPointF(m_frame.right(), y));
        painter.drawText(QRectF(0, y - 20, m_frame.left() - 10, 40),
                         Qt::AlignRight | Qt::AlignVCenter, QLocale().toString(*value, 'g', 4));
    }

    void point(QPainter& painter, const TimedDay& day) const {
        const QColor colour = day.outside ? bad_ink : ink;
        const QPointF at(xOf(day.day), yOf(day.value));
        painter.setPen(QPen(colour, 3));
        painter.drawLine(QPointF(at.x(), yOf(day.value - 2 * day.u)),
                         QPointF(at.x(), yOf(day.value + 2 * day.u)));
        painter.setBrush(day.outside ? QBrush(Qt::white) : QBrush(colour));
        painter.drawEllipse(at, 7, 7);
    }

    std::span<const TimedDay> m_days;
    std::optional<double> m_low;
    std::optional<double> m_high;
    CalendarDate m_first;
    double m_years;
    double m_top = 0;
    QRectF m_frame{90, 16, chart_width - 100.0, chart_height - 80.0};
};

} // namespace

QImage timeChart(std::span<const TimedDay> days, std::optional<double> low,
                 std::optional<double> high) {
    return Chart(days, low, high).drawn();
}

} // namespace latchround::report
