// The words a widget paints, as its painter set them: place, colour, and what they were clipped to.
// Taken from the paint event itself, so that parts that paint their own words are known as well as
// labels and keys.
#pragma once

#include <vector>

#include <QColor>
#include <QRectF>
#include <QString>

class QWidget;

namespace latchround::tour {

struct PaintedText {
    QString words;
    QRectF ink_box; ///< of the letters' shapes, in pixels of the widget
    QRectF clip;    ///< the letters outside it are not seen; pixels of the widget
    QColor ink;
};

/// What this widget itself paints, its children not.
std::vector<PaintedText> paintedBy(QWidget& widget);

} // namespace latchround::tour
