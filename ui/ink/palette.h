// Every colour the program draws with, named by what it is for, in three lights: day (dark ink on
// paper), dusk (light ink on dark) and night (dim amber on near black, no bright areas, for a dark
// bridge). Contrast: at least 7:1 for text (WCAG 2.2, 1.4.6) and 3:1 for shapes and edges (1.4.11),
// kept by a test.
#pragma once

#include <QColor>
#include <QPalette>

namespace latchround::ui {

enum class Light { Day, Dusk, Night };

/// A filled area, what is written on it, and the edge that keeps it apart from the card it lies on.
struct Fill {
    QColor area;
    QColor ink;
    QColor edge;
};

struct Colours {
    QColor paper;    ///< the window
    QColor card;     ///< panels, lists, fields
    QColor selected; ///< the chosen row of a list
    QColor ink;      ///< text
    QColor muted;    ///< secondary text
    QColor hairline; ///< separators that carry no meaning of their own
    QColor edge;     ///< borders of controls
    QColor accent;   ///< outlined buttons and links: text and border
    QColor focus;    ///< ring around what has the keyboard

    QColor bar; ///< the strip at the top
    QColor bar_ink;
    QColor bar_muted;
    QColor bar_track; ///< the unfilled part of the progress line on the bar
    QColor bar_filled;

    QColor good; ///< verdicts, as text and glyph on card, paper and selected
    QColor bad;
    QColor again;
    QColor judge;
    QColor advice;
    QColor untested;

    Fill primary;      ///< the one main action of a screen
    Fill good_fill;    ///< a chosen Yes
    Fill bad_fill;     ///< a chosen No
    Fill neutral_fill; ///< a chosen n/a
    Fill key;          ///< the mark key
    Fill key_down;     ///< the mark key while it is touched
    QColor stop;       ///< stop the test: text and border

    QColor hull;       ///< the ship's side
    QColor leaf;       ///< a moving leaf
    QColor band;       ///< the allowed band of a gauge
    QColor band_edge;  ///< where the uncertainty covers a limit
    QColor band_track; ///< the rest of the scale
    QColor alarm;      ///< the alarm's visible sign
};

const Colours& coloursOf(Light light);

/// The same colours for Qt's own widgets.
QPalette paletteOf(Light light);

/// Relative luminance contrast of two opaque colours, 1 to 21 (WCAG 2.2, "contrast ratio").
double contrastOf(const QColor& one, const QColor& other);

} // namespace latchround::ui
