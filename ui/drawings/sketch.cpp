#include "ui/drawings/sketch.h"
#include "ui/drawings/places.h"

#include <algorithm>

namespace latchround::ui {

Sketch::Sketch(QPainter& painter, const QRectF& area, const Appearance& look)
    : m_painter(painter)
    , m_look(look) {
    m_painter.save();
    const double scale = std::min(area.width() / wide, area.height() / high);
    m_painter.translate(area.center().x() - scale * wide / 2, area.center().y() - scale * high / 2);
    m_painter.scale(scale, scale);
    m_painter.setClipRect(QRectF(0, 0, wide, high), Qt::IntersectClip);
}

Sketch::~Sketch() {
    m_painter.restore();
}

void Sketch::line(const QPolygonF& through, const QColor& colour, double width) {
    QPen pen(colour, width);
    pen.setCapStyle(Qt::RoundCap);
    pen.setJoinStyle(Qt::RoundJoin);
    m_painter.setPen(pen);
    m_painter.setBrush(Qt::NoBrush);
    m_painter.drawPolyline(through);
}

void Sketch::shape(const QPolygonF& outline, const QColor& fill, double width) {
    QPen pen(c().ink, width);
    pen.setJoinStyle(Qt::RoundJoin);
    m_painter.setPen(pen);
    m_painter.setBrush(fill);
    m_painter.drawPolygon(outline);
}

void Sketch::box(const QRectF& area, const QColor& fill, double width) {
    shape(QPolygonF(area), fill, width);
}

void Sketch::rounded(const QRectF& area, double radius, const QColor& fill, double width) {
    m_painter.setPen(QPen(c().ink, width));
    m_painter.setBrush(fill);
    m_painter.drawRoundedRect(area, radius, radius);
}

void Sketch::disc(QPointF middle, double radius, const QColor& fill, double width) {
    m_painter.setPen(QPen(c().ink, width));
    m_painter.setBrush(fill);
    m_painter.drawEllipse(middle, radius, radius);
}

void Sketch::screw(QPointF middle, double radius) {
    disc(middle, radius, c().card, 0.4);
    line({middle + QPointF(-radius * 0.6, radius * 0.4),
          middle + QPointF(radius * 0.6, -radius * 0.4)},
         c().ink, 0.5);
}

void Sketch::words(const QRectF& area, const QString& text, double height, const QColor& colour,
                   bool bold, int align) {
    QFont font = textFont(TextSize::Body, m_look.sizes, bold);
    font.setPixelSize(std::max(1, int(height)));
    m_painter.setFont(font);
    m_painter.setPen(colour);
    m_painter.drawText(area, align | Qt::TextDontClip, text);
}

void Sketch::covering(const QRectF& area) {
    m_painter.setPen(Qt::NoPen);
    m_painter.fillRect(area, c().hairline);
    m_painter.setPen(QPen(c().edge, 0.4));
    int row = 0;
    for (const double y : places(area.top() + 2.5, area.bottom(), 3.5)) {
        for (const double x : places(area.left() + 1 + (row % 2) * 3.5, area.right() - 2, 7))
            m_painter.drawLine(QPointF(x, y), QPointF(std::min(x + 2.4, area.right()), y));
        ++row;
    }
}

QColor Sketch::hollow() const {
    QColor dark = c().bar;
    dark.setAlpha(m_look.light == Light::Day ? 200 : 255);
    return dark;
}

void Sketch::upright(QPointF zero, double step, int steps,
                     const std::function<QString(int)>& words_at, int words_every) {
    const double length = step * steps;
    box(QRectF(zero.x(), zero.y() - length - 3, 22, length + 3), c().card, 0.5);
    for (int i = 0; i <= steps; ++i) {
        const double y = zero.y() - i * step;
        const double mark = i % words_every == 0 ? 10 : i % 5 == 0 ? 7.5 : 5;
        line({{zero.x(), y}, {zero.x() + mark, y}}, c().ink, i % 5 == 0 ? 0.45 : 0.3);
        if (i % words_every == 0 && i > 0)
            words(QRectF(zero.x() + 10, y - 3, 11, 6), words_at(i), 5, c().ink);
    }
}

void Sketch::level(QPointF zero, double step, int steps,
                   const std::function<QString(int)>& words_at, int words_every) {
    const double length = step * steps;
    box(QRectF(zero.x() - 6, zero.y(), length + 14, 15), c().card, 0.5);
    for (int i = 0; i <= steps; ++i) {
        const double x = zero.x() + i * step;
        const double mark = i % words_every == 0 ? 7 : 4;
        line({{x, zero.y()}, {x, zero.y() + mark}}, c().ink, i % words_every == 0 ? 0.45 : 0.3);
        if (i % words_every == 0)
            words(QRectF(x - 8, zero.y() + 7.5, 16, 6), words_at(i), 5, c().ink);
    }
}

} // namespace latchround::ui
