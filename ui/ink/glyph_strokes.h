// The shape of the door glyph, once for the screen, paper and SVG: strokes and fills inside a box.
#pragma once

#include <vector>

#include <QColor>
#include <QPainterPath>
#include <QRectF>

#include "core/grading/verdict.h"
#include "ui/ink/palette.h"

namespace latchround::ui {

struct GlyphStroke {
    QPainterPath path;
    QColor colour;
    double width = 0;             ///< of the line; 0: the path is filled
    std::vector<double> dashes{}; ///< line and gap in widths of the line; none: unbroken
};

/// From the back to the front. The glyph stands upright in the middle of `box`.
std::vector<GlyphStroke> glyphStrokes(const QRectF& box, Verdict verdict, const Colours& colours);

} // namespace latchround::ui
