// What a screen reader is told of everything in front, and where the keyboard goes.
#pragma once

#include <QStringList>

class QWidget;

namespace latchround::tour {

/// Controls without a name or a role of a control; keys that can be chosen and do not say whether
/// they are; parts that show a value and do not say it; two keys of the same name.
QStringList poorlySpoken(QWidget& window);

/// The way of Tab: controls that it does not come to, or comes to twice; steps back within one
/// panel; controls that look the same with the keyboard on them.
QStringList poorlyFocused(QWidget& window);

} // namespace latchround::tour
