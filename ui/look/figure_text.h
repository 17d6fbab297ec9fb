// Sets figures so that they stand still while they count: every digit in a cell of one width, the
// point in a narrow cell of its own. A fixed-width typeface would give the point a whole cell and
// tear 5.62 apart.
#pragma once

#include <QFont>
#include <QPointF>
#include <QSizeF>
#include <QString>

class QPainter;

namespace latchround::ui {

class FigureText {
public:
    explicit FigureText(const QFont& font);

    /// Width the text takes; the same for every text with the same places, whatever its digits.
    double widthOf(const QString& text) const;
    double height() const { return m_height; }
    double ascent() const { return m_ascent; }

    /// `left` is the start of the base line. Returns where the text ends.
    double draw(QPainter& painter, QPointF left, const QString& text) const;

private:
    double cellOf(QChar character) const;

    QFont m_font;
    double m_digit = 0;
    double m_height = 0;
    double m_ascent = 0;
};

} // namespace latchround::ui
