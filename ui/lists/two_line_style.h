// How the rows of one list are set.
#pragma once

#include <QSizeF>
#include <QStyle>

#include "ui/look/sizes.h"

namespace latchround::ui {

/// Lengths in millimetres of the hand.
struct TwoLineStyle {
    enum class Hairline { Between, Above, Below };

    QSizeF glyph{6.2, 7};
    double before = 0;     ///< the glyph
    double beside = 2.2;   ///< between glyph and words
    double after = 0.5;    ///< the words
    double above = 1;      ///< the words, and below them
    double between = 0;    ///< the lines
    double name_gap = 1.6; ///< between name and title
    TextSize name_size = TextSize::Body;
    /// The first line is cut short after so many, the second after one, and all rows are of one
    /// height. 0: all words, over as many lines as they take.
    int lines = 1;
    bool detail_below_title = false; ///< else below the name
    bool from_top = false; ///< words and glyph stand at the top of a high row, not in its middle
    bool coloured = false; ///< the name in the colour of the glyph
    /// The chosen row has a bar at its edge; the hairlines of the others begin with the glyph.
    bool bar = false;
    Hairline hairline = Hairline::Between;
    QStyle::State chosen = QStyle::State_Selected; ///< what shades a row
};

} // namespace latchround::ui
