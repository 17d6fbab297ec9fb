#include "ui/parts/card.h"

#include <QPainter>

namespace latchround::ui {

Card::Card(QWidget* parent)
    : Part(parent) {
    lookChanged();
}

void Card::lookChanged() {
    const int pad = sizes().pad;
    setContentsMargins(pad, pad, pad, pad);
    Part::lookChanged();
}

void Card::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(colours().hairline, 1));
    painter.setBrush(colours().card);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), sizes().corner,
                            sizes().corner);
}

} // namespace latchround::ui
