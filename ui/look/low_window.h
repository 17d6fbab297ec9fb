// Whether a window has height to spare, as at 200 % it has not when it lies flat: sheets then take
// its whole width, a keypad lies flat, and what can be moved asks for little.
#pragma once

#include "ui/look/look.h"

namespace latchround::ui {

inline bool isLowWindow(const QWidget& window) {
    constexpr double low_mm = 115;
    return window.height() < low_mm * lookOf(&window).sizes.px_per_mm;
}

} // namespace latchround::ui
