// A picture of the scene on its card: rounded, with a hairline round it, whatever is drawn inside.
#pragma once

#include <QPainter>

#include "ui/look/look.h"

namespace latchround::ui {

class PictureFrame {
public:
    /// Clips the painter to the picture until the frame goes out of scope and draws the hairline.
    PictureFrame(QPainter& painter, const QRect& area, const Appearance& look);
    ~PictureFrame();
    PictureFrame(const PictureFrame&) = delete;
    PictureFrame& operator=(const PictureFrame&) = delete;

    const QRectF& inside() const { return m_inside; }

private:
    QPainter& m_painter;
    QRectF m_inside;
    const Appearance& m_look;
};

} // namespace latchround::ui
