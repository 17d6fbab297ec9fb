// Contrast in the picture itself: what is really on the screen, after every painter has been over
// it. Ratios as WCAG 2.2 counts them.
#pragma once

#include <QStringList>

class QImage;
class QWidget;

namespace latchround::tour {

/// Words below 7:1. The ground is the colour that most pixels around the letters have. The ink is
/// the painter's own colour, since the thin strokes of small letters are mixed with the ground when
/// their edges are smoothed; but the strongest pixel of each word must reach 4.5:1 whatever the
/// painter meant. What cannot be used now is exempt. `picture`: of the window, in Format_ARGB32.
QStringList faintWords(QWidget& window, const QImage& picture);

/// Keys of which no side stands out from the ground by 3:1.
QStringList faintKeys(QWidget& window, const QImage& picture);

} // namespace latchround::tour
