// The leaf close by: its face, the hose port in its corner, the plate of its class.
#include <array>

#include <QLocale>

#include "ui/drawings/close_up_drawings.h"
#include "ui/drawings/places.h"
#include "ui/words/plain_text.h"

namespace latchround::ui {

void drawLeafFace(Sketch& sketch, const Seen& seen) {
    const Colours& c = sketch.c();
    sketch.painter().fillRect(QRectF(0, 0, 160, 100), c.hull);
    sketch.box(QRectF(0, 90, 160, 12), c.hairline);
    const bool two = seen.door.kind == DoorKind::DoubleLeaf;
    const double left = two ? 36 : 52;
    const double wide = two ? 88 : 56;
    sketch.box(QRectF(left - 5, 4, wide + 10, 86), c.card);
    for (int i = 0; i < (two ? 2 : 1); ++i) {
        const double each = two ? wide / 2 : wide;
        const QRectF leaf(left + i * each, 9, each, 80);
        sketch.box(leaf, c.leaf);
        if (isHinged(seen.door.kind)) {
            sketch.box(leaf.adjusted(each * 0.3, 8, -each * 0.3, -46), c.card); // glass
            sketch.line({leaf.topLeft() + QPointF(each * 0.36, 26),
                         leaf.topLeft() + QPointF(each * 0.6, 12)},
                        c.edge, 0.5);
            sketch.box(leaf.adjusted(each * 0.16, 46, -each * 0.16, -12), c.leaf, 0.4);
        } else {
            for (const double y : {20.0, 40.0, 60.0})
                sketch.line({{leaf.left(), leaf.top() + y}, {leaf.right(), leaf.top() + y}}, c.ink,
                            0.4);
        }
    }
}

void drawHosePortClose(Sketch& sketch, const Seen& seen) {
    const Colours& c = sketch.c();
    QPainter& painter = sketch.painter();
    painter.fillRect(QRectF(0, 0, 160, 100), c.hull);
    sketch.box(QRectF(-2, -2, 142, 84), c.leaf);
    sketch.line({{140, -2}, {140, 82}}, c.ink, 1.4);
    sketch.box(QRectF(-2, 84, 164, 4), c.edge);
    painter.fillRect(QRectF(0, 88, 160, 12), c.hairline);
    if (!seen.door.hose_port)
        return;
    // 150 mm square are 45 units; the rule below has a graduation each 10 mm.
    const QRectF port(84, 16, 45, 45);
    sketch.box(port.adjusted(-4, -4, 4, 4), c.card);
    sketch.box(port, sketch.hollow());
    const double lifted = seen.port_open;
    const double foot = port.bottom() - lifted * 38;
    const double spread = lifted * 7;
    sketch.shape({port.topLeft(),
                  port.topRight(),
                  {port.right() + spread, foot},
                  {port.left() - spread, foot}},
                 c.selected);
    sketch.line(
        {{port.left() + 17 - spread * 0.3, foot - 4}, {port.right() - 17 + spread * 0.3, foot - 4}},
        c.ink, 1.4);
    for (const double x : {port.left() + 5, port.right() - 15})
        sketch.rounded(QRectF(x, port.top() - 3, 10, 5), 2, c.edge);
    sketch.level(
        {84, 66}, 3, 15, [](int cm) { return QLocale().toString(cm * 10); }, 5);
    sketch.words(QRectF(58, 72, 16, 7), QStringLiteral("mm"), 5, c.ink, false,
                 Qt::AlignRight | Qt::AlignVCenter);
}

void drawPlate(Sketch& sketch, const Seen& seen) {
    const Colours& c = sketch.c();
    sketch.painter().fillRect(QRectF(0, 0, 160, 100), c.hull);
    const QRectF plate(26, 20, 108, 60);
    const std::array corners{plate.topLeft() + QPointF(6, 6), plate.topRight() + QPointF(-6, 6),
                             plate.bottomLeft() + QPointF(6, -6),
                             plate.bottomRight() + QPointF(-6, -6)};
    if (seen.truth.plate_state == PlateState::None) {
        // Four holes and the paint a little paler where something was.
        sketch.painter().fillRect(plate, c.paper);
        for (const QPointF& corner : corners)
            sketch.disc(corner, 1.6, sketch.hollow(), 0.4);
        return;
    }
    sketch.rounded(plate, 3, c.selected);
    for (const QPointF& corner : corners)
        sketch.screw(corner);
    sketch.words(QRectF(plate.left(), 25, plate.width(), 8), plainText(seen.door.number), 6, c.ink);
    sketch.line({{40, 35}, {120, 35}}, c.ink, 0.5);
    if (seen.truth.plate_state == PlateState::Read) {
        sketch.words(QRectF(plate.left(), 38, plate.width(), 30), plainText(word(seen.truth.plate)),
                     26, c.ink, true);
        return;
    }
    // Scoured: strokes are left, no letter is.
    for (const auto& [x, y] : {std::pair{48.0, 46.0}, std::pair{62.0, 60.0}, std::pair{79.0, 48.0},
                               std::pair{95.0, 57.0}, std::pair{110.0, 44.0}})
        sketch.line({{x, y}, {x + 5, y + 7}}, c.edge, 1.4);
    for (const double y : places(40, 74, 4))
        sketch.line({{40, y + 3}, {122, y - 2}}, c.edge, 0.4);
}

} // namespace latchround::ui
