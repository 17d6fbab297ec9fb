#include "ui/screens/practice/close_up_words.h"

#include <cmath>

#include <QCoreApplication>
#include <QLocale>

#include "ui/look/plain_text.h"

namespace latchround::ui {
namespace {

QString seenOf(const char* words) {
    return QCoreApplication::translate("CloseUpWords", words);
}

QString plateSeen(const Seen& seen) {
    switch (seen.truth.plate_state) {
    case PlateState::Read:
        return seenOf("A plate engraved %1").arg(plainText(word(seen.truth.plate)));
    case PlateState::Illegible:
        return seenOf("A plate scoured bare; no letter is left");
    case PlateState::None:
        break;
    }
    return seenOf("Four screw holes round a pale patch");
}

QString holdBackSeen(const Seen& seen) {
    const QString magnet = seen.door.hold_back
                               ? seenOf("A magnet on its arm, its armature on the leaf")
                               : seenOf("Lining and frame");
    return seen.truth.hook ? seenOf("%1; a hook hangs from an eye plate on the lining").arg(magnet)
                           : seenOf("%1; nothing else").arg(magnet);
}

QString portSeen(const Seen& seen) {
    if (!seen.door.hose_port)
        return seenOf("The lower corner of the leaf, plain");
    const QString port = seenOf("A port 150 mm square, %1");
    if (seen.port_open >= 0.99)
        return port.arg(seenOf("its cover lifted"));
    return port.arg(seen.port_open > 0 ? seenOf("its cover hangs part open")
                                       : seenOf("its cover lies flat on it"));
}

QString panelSeen(const Seen& seen) {
    if (!seen.panel_shut)
        return seenOf("Two lamps, nobody has told of them yet");
    return *seen.panel_shut ? seenOf("The lamp marked shut is lit")
                            : seenOf("The lamp marked open is lit");
}

QString edgeSeen(const Seen& seen) {
    if (!seen.reopened_m)
        return seenOf("A soft edge on the leaf and a block before it; nothing was run onto it yet");
    return seenOf("The edge stands %1 m back from the block, by the tape")
        .arg(QLocale().toString(*seen.reopened_m, 'f', 2));
}

} // namespace

QString seenWords(Spot spot, const Seen& seen) {
    switch (spot) {
    case Spot::Sill:
        return seen.truth.sill
                   ? seenOf("A steel sill screwed down, the floor covering ends at its trim")
                   : seenOf("The floor covering runs on under the leaf; four holes in the deck");
    case Spot::Gap:
        return seenOf("The rule reads %1 mm at the foot of the leaf")
            .arg(std::lround(seen.truth.gap_mm));
    case Spot::Path:
        return seen.view.wedge ? seenOf("The deck, and a wooden wedge under the edge of the leaf")
                               : seenOf("The deck on both sides, nothing on it");
    case Spot::Pocket:
        return seen.truth.pocket_litter
                   ? seenOf("A cup, crumpled paper and an end of line on the bottom rail")
                   : seenOf("Two plates and the bottom rail between them, nothing on it");
    case Spot::Rails:
        return seenOf("Bright rail, two hangers, their rollers on it");
    case Spot::SafetyEdge:
        return edgeSeen(seen);
    case Spot::Seals:
        return seen.truth.painted_seal ? seenOf("Paint of the bulkhead runs over the seal")
                                       : seenOf("A dark strip in its groove, from top to bottom");
    case Spot::Hinges:
        return seenOf("Hinges with all their screws, the gap at the head even");
    case Spot::Closer:
        return seenOf("A dry body, the arm in its shoe on the frame");
    case Spot::Latch:
        return seen.truth.latches ? seenOf("The bolt stands well out of its case")
                                  : seenOf("The tip of the bolt just shows out of its case");
    case Spot::HoldBack:
        return holdBackSeen(seen);
    case Spot::LeafFace:
        return seenOf("Leaf and frame, their paint even, nothing fixed to them");
    case Spot::HosePort:
        return portSeen(seen);
    case Spot::Plate:
        return plateSeen(seen);
    case Spot::Switch:
        return seenOf("The release at this side under its cover, lever upright");
    case Spot::Panel:
        return panelSeen(seen);
    case Spot::Papers:
        break;
    }
    return {};
}

} // namespace latchround::ui
