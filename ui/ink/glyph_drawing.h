// The mark for a grade, drawn on screen and paper: a frame with its leaf. Shut and solid:
// satisfactory; ajar: unsatisfactory; a clock in it: time again; a balance in its place: judgement
// needed; dashed: untested; an i: advice; no leaf but a slash: not applicable.
#pragma once

#include <QByteArray>
#include <QRectF>

#include "core/grading/verdict.h"
#include "ui/ink/palette.h"

class QPainter;

namespace latchround::ui {

/// Fills the middle of `box`, upright, from 16 px up.
void drawDoorGlyph(QPainter& painter, const QRectF& box, Verdict verdict, const Colours& colours);
/// The same shape as an SVG document of 82 by 100 units, its title the verdict's words.
QByteArray doorGlyphSvg(Verdict verdict, const Colours& colours);

} // namespace latchround::ui
