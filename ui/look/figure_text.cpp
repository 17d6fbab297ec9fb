#include "ui/look/figure_text.h"

#include <algorithm>

#include <QFontMetricsF>
#include <QPainter>

namespace latchround::ui {

FigureText::FigureText(const QFont& font)
    : m_font(font) {
    const QFontMetricsF metrics(font);
    for (char digit = '0'; digit <= '9'; ++digit)
        m_digit = std::max(m_digit, metrics.horizontalAdvance(QChar::fromLatin1(digit)));
    m_height = metrics.height();
    m_ascent = metrics.ascent();
}

double FigureText::cellOf(QChar character) const {
    if (character.isDigit())
        return m_digit;
    // A figure space keeps the place of a digit that is not there.
    if (character.unicode() == 0x2007)
        return m_digit;
    return QFontMetricsF(m_font).horizontalAdvance(character);
}

double FigureText::widthOf(const QString& text) const {
    double width = 0;
    for (const QChar character : text)
        width += cellOf(character);
    return width;
}

double FigureText::draw(QPainter& painter, QPointF left, const QString& text) const {
    painter.save();
    painter.setFont(m_font);
    const QFontMetricsF metrics(m_font);
    double x = left.x();
    for (const QChar character : text) {
        const double cell = cellOf(character);
        const double slack = cell - metrics.horizontalAdvance(character);
        painter.drawText(QPointF(x + slack / 2, left.y()), QString(character));
        x += cell;
    }
    painter.restore();
    return x;
}

} // namespace latchround::ui
