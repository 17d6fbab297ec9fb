// What carries, shuts and holds a leaf: hinges, closer, hold-back.
#include "ui/drawings/close_up_drawings.h"

namespace latchround::ui {

void drawHinges(Sketch& sketch, const Seen&) {
    const Colours& c = sketch.c();
    sketch.painter().fillRect(QRectF(0, 0, 160, 100), c.hull);
    sketch.box(QRectF(44, -2, 34, 104), c.card);
    sketch.box(QRectF(80, 8, 84, 96), c.leaf);
    sketch.box(QRectF(44, -2, 120, 8), c.card);
    for (const double y : {18.0, 62.0}) {
        sketch.box(QRectF(58, y, 20, 26), c.selected);
        sketch.box(QRectF(80, y, 20, 26), c.selected);
        for (int i = 0; i < 3; ++i)
            sketch.rounded(QRectF(75.5, y + i * 8.7, 7, 8.5), 2, c.edge);
        for (const double hole : {y + 5, y + 13, y + 21}) {
            sketch.screw({64, hole});
            sketch.screw({94, hole});
        }
    }
}

void drawCloserClose(Sketch& sketch, const Seen&) {
    const Colours& c = sketch.c();
    sketch.painter().fillRect(QRectF(0, 0, 160, 100), c.hull);
    sketch.box(QRectF(-2, 4, 164, 20), c.card);
    sketch.box(QRectF(10, 28, 152, 76), c.leaf);
    // Arm and its shoe on the frame, the body on the leaf.
    sketch.box(QRectF(108, 9, 26, 10), c.selected);
    sketch.screw({113, 14});
    sketch.screw({129, 14});
    sketch.line({{121, 14}, {84, 26}, {52, 46}}, c.ink, 5);
    sketch.line({{121, 14}, {84, 26}, {52, 46}}, c.edge, 3.4);
    sketch.rounded(QRectF(26, 42, 86, 26), 3, c.card);
    sketch.disc({52, 50}, 5.5, c.edge);
    sketch.disc({52, 50}, 2, c.card);
    sketch.screw({104, 48});
    sketch.screw({104, 62});
    sketch.screw({34, 62});
}

void drawHoldBackClose(Sketch& sketch, const Seen& seen) {
    const Colours& c = sketch.c();
    sketch.painter().fillRect(QRectF(0, 0, 160, 100), c.hull);
    sketch.box(QRectF(-2, 82, 164, 4), c.edge);
    if (seen.door.hold_back) {
        // The magnet on its arm, the armature on the leaf.
        sketch.box(QRectF(104, -2, 60, 84), c.leaf);
        sketch.line({{104, -2}, {104, 82}}, c.ink, 1.4);
        sketch.box(QRectF(58, 22, 10, 30), c.edge);
        sketch.rounded(QRectF(68, 24, 22, 26), 3, c.card);
        sketch.box(QRectF(90, 27, 6, 20), c.muted);
        sketch.box(QRectF(97, 25, 7, 24), c.selected);
        sketch.line({{63, 52}, {63, 82}}, c.ink, 4);
        sketch.line({{63, 52}, {63, 82}}, c.edge, 2.6);
    } else {
        sketch.box(QRectF(104, -2, 18, 84), c.card);
        sketch.box(QRectF(122, -2, 42, 84), c.leaf);
    }
    if (!seen.truth.hook)
        return;
    // A cabin hook from its eye plate on the lining, hanging free.
    sketch.rounded(QRectF(20, 16, 16, 20), 2, c.card);
    sketch.screw({28, 20}, 1.5);
    sketch.screw({28, 32}, 1.5);
    const QPolygonF hook({{28, 26}, {28, 64}, {25, 70}, {18, 70}, {16, 64}});
    sketch.line(hook, c.ink, 4.4);
    sketch.line(hook, c.edge, 3);
    sketch.disc({28, 26}, 3, c.edge);
    if (seen.door.hold_back) {
        sketch.disc({112, 64}, 4, c.leaf, 1.6);
        return;
    }
    sketch.disc({130, 64}, 4, c.leaf, 1.6);
}

} // namespace latchround::ui
