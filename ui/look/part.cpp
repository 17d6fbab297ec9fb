#include "ui/look/part.h"

#include <QEvent>
#include <QPainter>

namespace latchround::ui {

Part::Part(QWidget* parent)
    : QWidget(parent) {}

void Part::paintPanel() {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(colours().hairline, 1));
    painter.setBrush(colours().card);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), sizes().corner,
                            sizes().corner);
}

void Part::lookChanged() {
    updateGeometry();
    update();
}

void Part::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange)
        lookChanged();
}

} // namespace latchround::ui

#include "moc_part.cpp"
