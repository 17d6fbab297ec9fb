#include "ui/parts/part.h"

#include <QEvent>

namespace latchround::ui {

Part::Part(QWidget* parent)
    : QWidget(parent) {}

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
