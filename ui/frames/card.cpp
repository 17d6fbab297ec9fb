#include "ui/frames/card.h"

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
    paintPanel();
}

} // namespace latchround::ui

#include "moc_card.cpp"
