#include "ui/figures/band_gauge.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include <QLocale>
#include <QPainter>
#include <QPainterPath>

#include "ui/figures/spoken_figures.h"
#include "ui/look/figure_text.h"

namespace latchround::ui {

BandGauge::BandGauge(QWidget* parent)
    : Part(parent) {
    setLayoutDirection(
        Qt::LeftToRight); // a scale runs as figures do, whichever side words begin on
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    readFiguresWhenAsked();
    updateSpokenText();
}

void BandGauge::setTitle(const QString& title) {
    m_title = title;
    updateSpokenText();
}

void BandGauge::setBand(std::optional<double> low, std::optional<double> high, const QString& unit,
                        int decimals) {
    m_low = low;
    m_high = high;
    m_unit = unit;
    m_decimals = decimals;
    // A scale that shows the band whole, until setScale says otherwise.
    const double reach = high ? *high * 1.4 : low ? *low * 2 : 1.0;
    m_from = 0;
    m_to = reach > 0 ? reach : 1.0;
    updateSpokenText();
}

void BandGauge::setUncertainty(double expanded) {
    m_uncertainty = std::max(0.0, expanded);
    updateSpokenText();
}

void BandGauge::setScale(double from, double to) {
    m_from = from;
    m_to = to > from ? to : from + 1;
    updateSpokenText();
}

void BandGauge::setValue(std::optional<double> value) {
    if (m_value == value)
        return;
    m_value = value;
    if (stretch() != m_told)
        updateSpokenText();
    update();
}

void BandGauge::setCompact(bool compact) {
    m_compact = compact;
    updateGeometry();
    update();
}

QString BandGauge::figureOf(double value) const {
    return QLocale().toString(value, 'f', m_decimals);
}

QString BandGauge::limitWords() const {
    if (m_low && m_high)
        return tr("allowed %1 to %2 %3").arg(figureOf(*m_low), figureOf(*m_high), m_unit).trimmed();
    if (m_high)
        return tr("at most %1 %2").arg(figureOf(*m_high), m_unit).trimmed();
    if (m_low)
        return tr("at least %1 %2").arg(figureOf(*m_low), m_unit).trimmed();
    return tr("no limit");
}

BandGauge::Stretch BandGauge::stretch() const {
    if (!m_value || (!m_low && !m_high))
        return Stretch::None;
    for (const auto& limit : {m_low, m_high})
        if (limit && std::abs(*m_value - *limit) <= m_uncertainty)
            return Stretch::AtLimit;
    if (m_low && *m_value < *m_low)
        return Stretch::Below;
    return m_high && *m_value > *m_high ? Stretch::Above : Stretch::Within;
}

QString BandGauge::placeWords() const {
    switch (stretch()) {
    case Stretch::None:
        return {};
    case Stretch::Below:
        return tr("below the limit");
    case Stretch::AtLimit:
        return tr("at the limit");
    case Stretch::Within:
        return tr("within the limits");
    case Stretch::Above:
        break;
    }
    return tr("above the limit");
}

QString BandGauge::spoken() const {
    QStringList words;
    if (!m_title.isEmpty())
        words << m_title;
    words << limitWords();
    if (m_value)
        words << tr("now %1 %2").arg(figureOf(*m_value), m_unit).trimmed();
    if (const QString place = placeWords(); !place.isEmpty())
        words << place;
    return words.join(QStringLiteral(", "));
}

void BandGauge::updateSpokenText() {
    m_told = stretch();
    setAccessibleName(spoken());
    update();
}

QSize BandGauge::sizeHint() const {
    return {int(mm(100)), int(mm(m_compact ? 14.6 : 23))};
}

QSize BandGauge::minimumSizeHint() const {
    return {int(mm(44)), sizeHint().height()};
}

double BandGauge::xOf(double value, const QRectF& track) const {
    const double share = std::clamp((value - m_from) / (m_to - m_from), 0.0, 1.0);
    return track.left() + share * track.width();
}

void BandGauge::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setLayoutDirection(layoutDirection()); // else the whole program's
    painter.setRenderHint(QPainter::Antialiasing);
    const double inset = mm(2); // room for the needle's head at either end
    const QRectF head(inset, 0, width() - 2 * inset, mm(6));
    const QRectF track(inset, mm(m_compact ? 8.6 : 10), width() - 2 * inset,
                       mm(m_compact ? 4.4 : 5.6));
    drawHead(painter, head);
    drawBand(painter, track);
    if (!m_compact)
        drawTicks(painter, track);
    drawNeedle(painter, track);
}

void BandGauge::drawHead(QPainter& painter, const QRectF& head) const {
    for (const TextSize size : {TextSize::Lead, TextSize::Body, TextSize::Small}) {
        painter.setFont(font(size));
        const QFontMetricsF metrics(painter.font());
        if (metrics.horizontalAdvance(m_title) + mm(3) + metrics.horizontalAdvance(limitWords()) <=
            head.width())
            break;
    }
    painter.setPen(colours().ink);
    const QString limits = limitWords();
    const double limits_width = QFontMetricsF(painter.font()).horizontalAdvance(limits);
    const QRectF title = head.adjusted(0, 0, -limits_width - mm(3), 0);
    const bool fits = QFontMetricsF(painter.font()).horizontalAdvance(m_title) <= title.width();
    if (fits || !m_compact) // half a word helps nobody
        painter.drawText(
            title, Qt::AlignLeft | Qt::AlignVCenter,
            QFontMetricsF(painter.font()).elidedText(m_title, Qt::ElideRight, title.width()));
    painter.setPen(colours().muted);
    painter.drawText(head, Qt::AlignRight | Qt::AlignVCenter, limits);
}

void BandGauge::drawBand(QPainter& painter, const QRectF& track) const {
    QPainterPath shape;
    shape.addRoundedRect(track, mm(1), mm(1));
    painter.fillPath(shape, colours().band_track);
    painter.save();
    painter.setClipPath(shape);
    const double low = m_low.value_or(m_from);
    const double high = m_high.value_or(m_to);
    if (m_low || m_high)
        painter.fillRect(QRectF(QPointF(xOf(low, track), track.top()),
                                QPointF(xOf(high, track), track.bottom())),
                         colours().band);
    for (const auto& limit : {m_low, m_high}) {
        if (!limit)
            continue;
        // The edge is drawn even for a perfect reading: a limit needs a line.
        const double left = std::min(xOf(*limit - m_uncertainty, track), xOf(*limit, track) - 1);
        const double right = std::max(xOf(*limit + m_uncertainty, track), xOf(*limit, track) + 1);
        const QRectF edge(QPointF(left, track.top()), QPointF(right, track.bottom()));
        painter.fillRect(edge, colours().band_edge);
        painter.save();
        painter.setClipRect(edge, Qt::IntersectClip);
        painter.setPen(QPen(colours().card, 1.2));
        const int strokes = int((right - left + track.height()) / mm(1.1)) + 1;
        for (int i = 0; i < strokes; ++i) {
            const double x = left - track.height() + i * mm(1.1);
            painter.drawLine(QPointF(x, track.bottom()), QPointF(x + track.height(), track.top()));
        }
        painter.restore();
    }
    painter.restore();
    painter.setPen(QPen(colours().edge, 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(shape);
}

void BandGauge::drawTicks(QPainter& painter, const QRectF& track) const {
    painter.setFont(font(TextSize::Small));
    const QFontMetricsF metrics(painter.font());
    const auto label_of = [this](double value) {
        QString text = QLocale().toString(value, 'f', std::max(m_decimals, 0));
        const QString point = QLocale().decimalPoint();
        if (text.contains(point)) {
            while (text.endsWith(QLatin1Char('0')))
                text.chop(1);
            if (text.endsWith(point))
                text.chop(point.size());
        }
        return text;
    };
    // The limits come first: where an end of the scale would touch one, the limit stays.
    std::vector<double> values;
    for (const auto& limit : {m_low, m_high})
        if (limit && *limit >= m_from && *limit <= m_to)
            values.push_back(*limit);
    values.push_back(m_from);
    values.push_back(m_to);
    std::vector<QRectF> taken;
    for (const double value : values) {
        const double x = xOf(value, track);
        const QString label = label_of(value);
        const double width = metrics.horizontalAdvance(label);
        const double left =
            std::clamp(x - width / 2, track.left() - mm(1.5), track.right() + mm(1.5) - width);
        const QRectF place(left, track.bottom() + mm(2.2), width, metrics.height());
        const bool clear = std::none_of(taken.begin(), taken.end(), [&](const QRectF& other) {
            return other.intersects(place.adjusted(-mm(1.2), 0, mm(1.2), 0));
        });
        if (!clear)
            continue;
        taken.push_back(place);
        painter.setPen(QPen(colours().muted, 1));
        painter.drawLine(QPointF(x, track.bottom() + mm(0.5)),
                         QPointF(x, track.bottom() + mm(1.8)));
        painter.drawText(place, Qt::AlignCenter | Qt::TextDontClip, label);
    }
}

void BandGauge::drawNeedle(QPainter& painter, const QRectF& track) const {
    if (!m_value)
        return;
    const double x = xOf(*m_value, track);
    const double top = track.top() - mm(2.6);
    painter.setPen(QPen(colours().card, mm(1.1)));
    painter.drawLine(QPointF(x, track.top()), QPointF(x, track.bottom()));
    painter.setPen(QPen(colours().ink, mm(0.55)));
    painter.drawLine(QPointF(x, top), QPointF(x, track.bottom() + mm(1.6)));
    painter.setPen(Qt::NoPen);
    painter.setBrush(colours().ink);
    const double half = mm(2);
    painter.drawPolygon(QPolygonF(
        {QPointF(x - half, top), QPointF(x + half, top), QPointF(x, track.top() + mm(0.2))}));
}

} // namespace latchround::ui

#include "moc_band_gauge.cpp"
