// Makes an item view scroll by finger. Only for views that record nothing: a scroller delays
// presses and may drop their time stamps.
#pragma once

class QAbstractItemView;
class QAbstractScrollArea;

namespace latchround::ui {

void scrollByTouch(QAbstractItemView& view);
void scrollByTouch(QAbstractScrollArea& area);

} // namespace latchround::ui
