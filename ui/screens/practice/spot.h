// Where one looks at a door: the spots of the scene that have a close-up, in the order in which
// hands and eyes go round it.
#pragma once

#include <vector>

#include <QString>

#include "core/vessel/door.h"

namespace latchround::ui {

enum class Spot {
    Sill,
    Gap,
    Path,
    Pocket,
    Rails,
    SafetyEdge,
    Seals,
    Hinges,
    Closer,
    Latch,
    HoldBack,
    LeafFace,
    HosePort,
    Plate,
    Switch, ///< the local release at this side
    Panel,  ///< at the control station, told over the channel
    Papers  ///< what is tried with the engineers, or stands on paper
};

/// Those that a door of this kind and fitting has.
std::vector<Spot> spotsOf(const Door& door);

QString spotWords(Spot spot); ///< "Gap under the leaf"
QString spotName(Spot spot);  ///< "gap": for the names of keys

} // namespace latchround::ui
