// The sheet that close-ups are drawn on: 160 units wide and 100 high, whatever the screen, in the
// colours of the look.
#pragma once

#include <functional>

#include <QPainter>

#include "ui/look/look.h"

namespace latchround::ui {

class Sketch {
public:
    static constexpr double wide = 160;
    static constexpr double high = 100;

    /// Fits the sheet into the area and paints on it until it goes.
    Sketch(QPainter& painter, const QRectF& area, const Appearance& look);
    ~Sketch();
    Sketch(const Sketch&) = delete;
    Sketch& operator=(const Sketch&) = delete;

    const Colours& c() const { return m_look.colours; }
    QPainter& painter() { return m_painter; }

    void line(const QPolygonF& through, const QColor& colour, double width = 0.7);
    void shape(const QPolygonF& outline, const QColor& fill, double width = 0.6);
    void box(const QRectF& area, const QColor& fill, double width = 0.6);
    void rounded(const QRectF& area, double radius, const QColor& fill, double width = 0.6);
    void disc(QPointF middle, double radius, const QColor& fill, double width = 0.6);
    /// A slotted screw.
    void screw(QPointF middle, double radius = 1.8);
    void words(const QRectF& area, const QString& text, double height, const QColor& colour,
               bool bold = false, int align = Qt::AlignCenter);
    /// Deck with its covering, from the top edge down.
    void covering(const QRectF& area);
    /// Colour a little away from the paper, of a dark hollow.
    QColor hollow() const;

    /// A graduated rule along one way: `steps` graduations of `step` units from `zero` on; every
    /// fifth is longer, every tenth has its words.
    void upright(QPointF zero, double step, int steps, const std::function<QString(int)>& words_at,
                 int words_every);
    void level(QPointF zero, double step, int steps, const std::function<QString(int)>& words_at,
               int words_every);

private:
    QPainter& m_painter;
    const Appearance& m_look;
};

} // namespace latchround::ui
