#include "ui/screens/practice/close_up_words.h"

#include <cmath>

#include <QCoreApplication>

#include "ui/words/plain_text.h"
#include "ui/words/units.h"

namespace latchround::ui {
namespace {

struct CloseUpWords {
    Q_DECLARE_TR_FUNCTIONS(CloseUpWords)
};

QString plateSeen(const Seen& seen) {
    switch (seen.truth.plate_state) {
    case PlateState::Read:
        return CloseUpWords::tr("A plate engraved %1").arg(plainText(word(seen.truth.plate)));
    case PlateState::Illegible:
        return CloseUpWords::tr("A plate worn bare; no letter is legible");
    case PlateState::None:
        break;
    }
    return CloseUpWords::tr("Four screw holes round a pale patch");
}

QString holdBackSeen(const Seen& seen) {
    const QString magnet = seen.door.hold_back
                               ? CloseUpWords::tr("A magnet on its arm, its armature on the leaf")
                               : CloseUpWords::tr("Lining and frame");
    return seen.truth.hook
               ? CloseUpWords::tr("%1; a hook hangs from an eye plate on the lining").arg(magnet)
               : CloseUpWords::tr("%1; nothing else").arg(magnet);
}

QString portSeen(const Seen& seen) {
    if (!seen.door.hose_port)
        return CloseUpWords::tr("The lower corner of the leaf, plain");
    const QString port = CloseUpWords::tr("A port 150 mm by 150 mm, %1");
    if (seen.port_open >= 0.99)
        return port.arg(CloseUpWords::tr("its cover lifted"));
    return port.arg(seen.port_open > 0 ? CloseUpWords::tr("its cover hangs part open")
                                       : CloseUpWords::tr("its cover lies flat on it"));
}

QString panelSeen(const Seen& seen) {
    if (!seen.panel_shut)
        return CloseUpWords::tr("Two lamps; no one has read them out yet");
    return *seen.panel_shut ? CloseUpWords::tr("The lamp marked shut is lit")
                            : CloseUpWords::tr("The lamp marked open is lit");
}

QString edgeSeen(const Seen& seen) {
    if (!seen.reopened_m)
        return CloseUpWords::tr(
            "A soft edge on the leaf and a block in front of it; no run against it yet");
    return CloseUpWords::tr("The edge is %1 back from the block, by tape measure")
        .arg(statedWords(*seen.reopened_m, "m", 2));
}

} // namespace

QString seenWords(Spot spot, const Seen& seen) {
    switch (spot) {
    case Spot::Sill:
        return seen.truth.sill
                   ? CloseUpWords::tr(
                         "A steel sill screwed down, the floor covering ends at its trim")
                   : CloseUpWords::tr(
                         "The floor covering runs on under the leaf; four holes in the deck");
    case Spot::Gap:
        return CloseUpWords::tr("The rule reads %1 mm at the foot of the leaf")
            .arg(std::lround(seen.truth.gap_mm));
    case Spot::Path:
        return seen.view.wedge
                   ? CloseUpWords::tr("The deck, and a wooden wedge under the edge of the leaf")
                   : CloseUpWords::tr("The deck on both sides, nothing on it");
    case Spot::Pocket:
        return seen.truth.pocket_litter
                   ? CloseUpWords::tr(
                         "A cup, crumpled paper and a length of rope on the bottom rail")
                   : CloseUpWords::tr("Two plates and the bottom rail between them, nothing on it");
    case Spot::Rails:
        return CloseUpWords::tr("Bright rail, two hangers, their rollers on it");
    case Spot::SafetyEdge:
        return edgeSeen(seen);
    case Spot::Seals:
        return seen.truth.painted_seal
                   ? CloseUpWords::tr("Bulkhead paint runs over the seal")
                   : CloseUpWords::tr("A dark strip in its groove, from top to bottom");
    case Spot::Hinges:
        return CloseUpWords::tr("Hinges with all their screws, the gap at the head even");
    case Spot::Closer:
        return CloseUpWords::tr("A dry body, the arm in its shoe on the frame");
    case Spot::Latch:
        return seen.truth.latches
                   ? CloseUpWords::tr("The bolt projects well out of its case")
                   : CloseUpWords::tr("Only the tip of the bolt projects from its case");
    case Spot::HoldBack:
        return holdBackSeen(seen);
    case Spot::LeafFace:
        return CloseUpWords::tr("Leaf and frame, their paint even, nothing fixed to them");
    case Spot::HosePort:
        return portSeen(seen);
    case Spot::Plate:
        return plateSeen(seen);
    case Spot::Switch:
        return CloseUpWords::tr("The release on this side under its cover, lever upright");
    case Spot::Panel:
        return panelSeen(seen);
    case Spot::Papers:
        break;
    }
    return {};
}

} // namespace latchround::ui
