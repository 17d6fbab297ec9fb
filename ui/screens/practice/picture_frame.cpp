#include "ui/screens/practice/picture_frame.h"

#include <QPainterPath>

namespace latchround::ui {

PictureFrame::PictureFrame(QPainter& painter, const QRect& area, const Appearance& look)
    : m_painter(painter)
    , m_inside(QRectF(area).adjusted(1, 1, -1, -1))
    , m_look(look) {
    painter.setRenderHint(QPainter::Antialiasing);
    QPainterPath session;
    session.addRoundedRect(m_inside, look.sizes.corner, look.sizes.corner);
    painter.setClipPath(session);
    painter.fillRect(area, look.colours.card);
}

PictureFrame::~PictureFrame() {
    m_painter.setClipping(false);
    m_painter.setPen(QPen(m_look.colours.hairline, 1));
    m_painter.setBrush(Qt::NoBrush);
    m_painter.drawRoundedRect(m_inside, m_look.sizes.corner, m_look.sizes.corner);
}

} // namespace latchround::ui
