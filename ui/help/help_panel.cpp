#include "ui/help/help_panel.h"

#include <algorithm>

#include <QPainterPath>

#include "ui/look/button_drawing.h"

namespace latchround::ui {

HelpPanelView::HelpPanelView(HelpPanel panel, QWidget* parent)
    : Part(parent)
    , m_panel(std::move(panel)) {
    setLayoutDirection(Qt::LeftToRight); // the door is as it is, whichever side words begin on
    setAccessibleName(tr("Drawing. %1").arg(words()));
}

QString HelpPanelView::words() const {
    switch (m_panel.says) {
    case PanelSays::Good:
        return tr("Good: %1").arg(m_panel.caption);
    case PanelSays::Bad:
        return tr("Bad: %1").arg(m_panel.caption);
    case PanelSays::Shows:
        break;
    }
    return m_panel.caption;
}

void HelpPanelView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setLayoutDirection(layoutDirection()); // else the whole program's
    painter.setRenderHint(QPainter::Antialiasing);
    const double scale = std::min((width() - 2) / Sketch::wide, (height() - 2) / Sketch::high);
    QRectF inside(0, 0, Sketch::wide * scale, Sketch::high * scale);
    inside.moveCenter(QRectF(rect()).center());
    QPainterPath round;
    round.addRoundedRect(inside, sizes().corner, sizes().corner);
    painter.setClipPath(round);
    {
        Sketch sketch(painter, inside, look());
        m_panel.draw(sketch);
    }
    painter.setClipping(false);
    painter.setPen(QPen(colours().edge, 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(inside, sizes().corner, sizes().corner);
    if (m_panel.says == PanelSays::Shows)
        return;
    const bool good = m_panel.says == PanelSays::Good;
    const double side = 15 * scale;
    const QRectF badge(inside.right() - side - 2 * scale, inside.top() + 2 * scale, side, side);
    const QColor colour = good ? colours().good : colours().bad;
    painter.setPen(QPen(colour, 1.2 * scale));
    painter.setBrush(colours().card);
    painter.drawEllipse(badge);
    const double inset = side * 0.26;
    drawMarkShape(painter, badge.adjusted(inset, inset, -inset, -inset),
                  good ? MarkShape::Tick : MarkShape::Cross, colour);
}

} // namespace latchround::ui

#include "moc_help_panel.cpp"
