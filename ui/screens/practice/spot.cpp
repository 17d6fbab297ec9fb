#include "ui/screens/practice/spot.h"

#include <algorithm>
#include <array>

#include <QCoreApplication>

namespace latchround::ui {
namespace {

struct SpotNamed {
    Spot spot;
    const char* name;
    const char* words;
};

constexpr std::array spots_named{
    SpotNamed{Spot::Sill, "sill", QT_TRANSLATE_NOOP("SpotWords", "Sill and floor")},
    SpotNamed{Spot::Gap, "gap", QT_TRANSLATE_NOOP("SpotWords", "Gap below")},
    SpotNamed{Spot::Path, "path", QT_TRANSLATE_NOOP("SpotWords", "Travel path")},
    SpotNamed{Spot::Pocket, "pocket", QT_TRANSLATE_NOOP("SpotWords", "Pocket")},
    SpotNamed{Spot::Rails, "rails", QT_TRANSLATE_NOOP("SpotWords", "Rails")},
    SpotNamed{Spot::SafetyEdge, "safety-edge", QT_TRANSLATE_NOOP("SpotWords", "Safety edge")},
    SpotNamed{Spot::Seals, "seals", QT_TRANSLATE_NOOP("SpotWords", "Seals")},
    SpotNamed{Spot::Hinges, "hinges", QT_TRANSLATE_NOOP("SpotWords", "Hinges")},
    SpotNamed{Spot::Closer, "closer", QT_TRANSLATE_NOOP("SpotWords", "Closer")},
    SpotNamed{Spot::Latch, "latch", QT_TRANSLATE_NOOP("SpotWords", "Latch")},
    SpotNamed{Spot::HoldBack, "hold-back", QT_TRANSLATE_NOOP("SpotWords", "Hold-back")},
    SpotNamed{Spot::LeafFace, "leaf", QT_TRANSLATE_NOOP("SpotWords", "Leaf")},
    SpotNamed{Spot::HosePort, "hose-port", QT_TRANSLATE_NOOP("SpotWords", "Hose port")},
    SpotNamed{Spot::Plate, "plate", QT_TRANSLATE_NOOP("SpotWords", "Plate")},
    SpotNamed{Spot::Switch, "switch", QT_TRANSLATE_NOOP("SpotWords", "Local release")},
    SpotNamed{Spot::Panel, "panel", QT_TRANSLATE_NOOP("SpotWords", "Panel lamps")},
    SpotNamed{Spot::Papers, "papers", QT_TRANSLATE_NOOP("SpotWords", "Records, tests")}};

const SpotNamed& named(Spot spot) {
    return *std::ranges::find(spots_named, spot, &SpotNamed::spot);
}

} // namespace

std::vector<Spot> spotsOf(const Door& door) {
    std::vector<Spot> spots{Spot::Sill, Spot::Gap, Spot::Path};
    if (isHinged(door.kind)) {
        spots.insert(spots.end(), {Spot::Hinges, Spot::Closer});
    } else {
        spots.insert(spots.end(), {Spot::Pocket, Spot::Rails});
        if (door.designed_to_reopen)
            spots.push_back(Spot::SafetyEdge);
    }
    spots.push_back(Spot::Seals);
    if (door.latch)
        spots.push_back(Spot::Latch);
    spots.insert(spots.end(), {Spot::HoldBack, Spot::LeafFace});
    if (door.hose_port || isAClass(door.fire_class))
        spots.push_back(Spot::HosePort);
    spots.insert(spots.end(), {Spot::Plate, Spot::Switch, Spot::Panel, Spot::Papers});
    return spots;
}

QString spotWords(Spot spot) {
    return QCoreApplication::translate("SpotWords", named(spot).words);
}

QString spotName(Spot spot) {
    return QString::fromLatin1(named(spot).name);
}

} // namespace latchround::ui
