// The colours of practice, used for nothing else: no verdict, no key and no bar of a real record
// has them. Contrast as in palette.h: 7:1 for text, 3:1 for shapes, kept by the same test.
#pragma once

#include "ui/ink/palette.h"

namespace latchround::ui {

struct PracticeColours {
    QColor area;   ///< the strip over every screen, and the ground of the hatching
    QColor ink;    ///< words on the strip
    QColor stripe; ///< the hatching on its ground
    QColor word;   ///< the word that lies over every screen
};

const PracticeColours& practiceColoursOf(Light light);

} // namespace latchround::ui
