// How large the window is when the program starts.
#pragma once

#include <QSize>

namespace latchround {

/// 1280 by 800, px; all of a screen that is narrower or lower than that, as a tablet held upright.
inline QSize firstSize(const QSize& screen) {
    const QSize usual(1280, 800);
    const bool fits = usual.width() <= screen.width() && usual.height() <= screen.height();
    return fits || screen.isEmpty() ? usual : screen;
}

} // namespace latchround
