#include "ui/frames/list_touch.h"

#include <QAbstractItemView>
#include <QScroller>

namespace latchround::ui {

void scrollByTouch(QAbstractItemView& view) {
    view.setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    scrollByTouch(static_cast<QAbstractScrollArea&>(view));
}

void scrollByTouch(QAbstractScrollArea& area) {
    area.setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    QScroller::grabGesture(area.viewport(), QScroller::TouchGesture);
}

} // namespace latchround::ui
