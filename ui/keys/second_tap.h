// A key that a quick second tap of the same finger passes over: its first tap has changed what it
// stands for.
#pragma once

class QAbstractButton;

namespace latchround::ui {

/// From now on the second press of a double click, as the window system counts it, does nothing.
void passOverSecondTap(QAbstractButton& key);

} // namespace latchround::ui
