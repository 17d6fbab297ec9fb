// How buttons, check marks and focus rings look. Called by TouchStyle, and by parts that paint
// their own keys.
#pragma once

#include <QRectF>

#include "ui/look/look.h"

class QPainter;
class QPushButton;
class QStyleOptionButton;
class QWidget;

namespace latchround::ui {

/// Ring of at least 3:1 just inside `around`, with a gap of card colour so that it shows on filled
/// keys too.
void drawFocusRing(QPainter& painter, const QRectF& around, const Appearance& look);

/// Area, border and corner of a key; `down` while it is touched.
void drawKeyArea(QPainter& painter, const QRectF& area, const Fill& fill, double border,
                 const Appearance& look);

void drawPushButtonArea(QPainter& painter, const QStyleOptionButton& option, const QWidget* widget,
                        const Appearance& look);
void drawPushButtonWords(QPainter& painter, const QStyleOptionButton& option, const QWidget* widget,
                         const Appearance& look);
/// How high a key's words are over so much width, px, with the English beneath them.
int keyWordsHeight(const QPushButton& key, int width);
/// Of the English beneath a key's words on one line, px; empty for a key without.
QSize keyEnglishSize(const QWidget* key);

enum class MarkShape { Tick, Cross, Dash, Dot };
void drawMarkShape(QPainter& painter, const QRectF& box, MarkShape shape, const QColor& colour);

} // namespace latchround::ui
