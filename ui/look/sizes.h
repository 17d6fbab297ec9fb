// Sizes in millimetres of the hand, turned to pixels of the screen. Targets: 20 mm for main
// actions, 12 mm for all others, 25 and 15 mm with gloves (number-entry studies: errors fall up to
// 20 mm; WCAG 2.2, 2.5.5 asks 11.6 mm). Text sizes follow the same scale, so that the arm's length
// decides and not the pixel.
#pragma once

#include <QFont>

class QScreen;

namespace latchround::ui {

struct Sizes {
    double px_per_mm = 5.0;
    bool gloves = false;
    int main_target = 100; ///< stop, next, yes and no where they fit: px
    int target = 60;       ///< everything else that is touched: px
    int row = 60;          ///< height of a list row: px
    int gap = 10;          ///< between targets: px
    int main_gap = 20;     ///< between main targets, and page margins: px
    int pad = 16;          ///< inside a card: px
    int corner = 10;       ///< radius of cards and buttons: px
    int border = 2;        ///< width of a control's border: px
    int ring = 3;          ///< width of the focus ring: px
    int scroll_bar = 24;   ///< px
    int indicator = 28;    ///< box of a check box: px
};

/// Steps of text, small to large. Clock is the running time of the stopwatch.
enum class TextSize { Small, Body, Lead, Heading, Title, Display, Clock };

/// Pixels a millimetre on a screen that does not know its own size: 5, so that 12 mm are 60 px.
inline constexpr double unknown_px_per_mm = 5.0;

/// Density from what a screen says of itself, dots per inch, kept within 80 to 400. Below 110 the
/// figure is what window systems say when they do not know (72, 75, 96), and the sane value stands.
double pxPerMmFrom(double physical_dots_per_inch);
double pxPerMmOf(const QScreen* screen);

Sizes sizesOf(double px_per_mm, bool gloves);

int pixelsOf(TextSize size, const Sizes& sizes);

/// B612, a typeface made for cockpit displays; its figures are all one width. See typeface.h.
QFont textFont(TextSize size, const Sizes& sizes, bool bold = false);

} // namespace latchround::ui
