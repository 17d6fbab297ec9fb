// Where Tab stops, in the order in which a screen is read. Qt's own order is that of making, and
// rows are made anew all the time: they would come last.
#pragma once

#include <vector>

class QWidget;

namespace latchround::ui {

/// What takes the keyboard below `root` and is shown and can be used, by layouts, line by line. A
/// row's answers come before its help.
std::vector<QWidget*> tabStops(const QWidget& root);

/// The keyboard goes on to the next of them, or back, and round; false where there is none.
bool tabOn(const std::vector<QWidget*>& stops, bool next);

} // namespace latchround::ui
