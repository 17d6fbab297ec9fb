// Doors, releases and marks in the words of the screen, translated, in one place.
#pragma once

#include <QString>

#include "core/evidence/fact_words.h"
#include "core/vessel/arrangement.h"

namespace latchround::ui {

QString kindWords(DoorKind kind);                ///< "sliding"
QString placeWords(Place place);                 ///< "zone bulkhead"
QString acrossWords(double y_m);                 ///< "port", "centreline", "starboard"
QString doorWords(const Door& door);             ///< "sliding, centreline"
QString doorCountWords(int doors);               ///< "1 door", "84 doors"
QString boundaryWords(const Boundary& boundary); ///< "bulkhead 3/4", "stairway 2 port"
QString purposeWords(Purpose purpose);           ///< "annual"
QString releaseWords(Release release);           ///< "from the control station"
QString markWords(MarkKind kind);                ///< "Leaf moves": the name on the key
QString markHint(MarkKind kind);                 ///< when to press
QString outcomeWords(RunOutcome outcome);        ///< "void"

} // namespace latchround::ui
