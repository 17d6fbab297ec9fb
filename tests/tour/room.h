// Whether everything in front has its room: words that are not cut off and do not lie over each
// other, controls that lie within what they lie on, apart from each other, under nothing, and large
// enough for a finger.
#pragma once

#include <QStringList>

namespace latchround::ui {
struct Sizes;
}

class QWidget;

namespace latchround::tour {

/// One sentence for each fault, empty for none.
QStringList clippedWords(QWidget& window);
QStringList wordsOverWords(QWidget& window);
QStringList controlsInTheWay(QWidget& window);
/// Targets: 12 mm, 15 mm with gloves; 8 px between them.
QStringList smallTargets(QWidget& window, double px_per_mm, bool gloves);

} // namespace latchround::tour
