// The way of the leaf: the deck it passes over, the pocket it comes from, its rails.
#include "ui/drawings/close_up_drawings.h"

namespace latchround::ui {
namespace {

void drawWedge(Sketch& sketch, QPointF tip) {
    const Colours& c = sketch.c();
    sketch.shape({tip, tip + QPointF(30, 2), tip + QPointF(30, -13)}, c.bar_filled);
    sketch.shape({tip + QPointF(30, 2), tip + QPointF(30, -13), tip + QPointF(35, -15),
                  tip + QPointF(35, -1)},
                 c.key.area);
}

} // namespace

void drawPath(Sketch& sketch, const Seen& seen) {
    const Colours& c = sketch.c();
    QPainter& painter = sketch.painter();
    painter.fillRect(QRectF(0, 0, 160, 30), c.hull);
    sketch.covering(QRectF(0, 30, 160, 70));
    sketch.line({{0, 30}, {160, 30}}, c.ink);
    if (isHinged(seen.door.kind)) {
        // The arc that the edge sweeps, chalked on the deck.
        QPen arc(c.edge, 0.7);
        arc.setDashPattern({5, 3});
        painter.setPen(arc);
        painter.setBrush(Qt::NoBrush);
        painter.drawArc(QRectF(-72, -18, 200, 96), 0, -90 * 16);
        sketch.shape({{18, -2}, {18, 34}, {70, 72}, {70, 8}, {58, -2}}, c.leaf);
        sketch.line({{70, 72}, {70, 8}}, c.ink, 1.4);
        sketch.box(QRectF(8, -2, 10, 34), c.card);
        sketch.box(QRectF(118, -2, 10, 34), c.card);
        if (seen.view.wedge)
            drawWedge(sketch, {63, 70});
        return;
    }
    sketch.box(QRectF(0, -2, 52, 32), c.hull);
    sketch.box(QRectF(44, -2, 40, 38), c.leaf);
    sketch.line({{84, -2}, {84, 36}}, c.ink, 1.4);
    sketch.box(QRectF(34, -2, 10, 38), c.card);
    sketch.box(QRectF(140, -2, 10, 38), c.card);
    sketch.shape({{34, 36}, {150, 36}, {154, 44}, {30, 44}}, c.edge);
    sketch.line({{36, 40}, {150, 40}}, c.ink, 0.8);
    if (seen.view.wedge)
        drawWedge(sketch, {81, 39});
}

void drawPocket(Sketch& sketch, const Seen& seen) {
    const Colours& c = sketch.c();
    QPainter& painter = sketch.painter();
    // Into the slot with a lamp: the two plates of the bulkhead, the bottom rail between them.
    painter.fillRect(QRectF(0, 0, 160, 100), sketch.hollow());
    const QColor lit = c.hull;
    sketch.shape({{-2, -2}, {44, -2}, {66, 24}, {66, 74}, {44, 102}, {-2, 102}}, lit);
    sketch.shape({{162, -2}, {116, -2}, {94, 24}, {94, 74}, {116, 102}, {162, 102}}, lit);
    sketch.shape({{44, 102}, {66, 74}, {94, 74}, {116, 102}}, c.hairline);
    sketch.shape({{72, 102}, {77, 74}, {83, 74}, {88, 102}}, c.edge);
    sketch.line({{80, 102}, {80, 74}}, c.ink, 0.8);
    for (const double y : {14.0, 50.0, 86.0}) {
        sketch.screw({26, y});
        sketch.screw({134, y});
    }
    if (!seen.truth.pocket_litter)
        return;
    // A cup on its side, crumpled paper, an end of line across the rail, dust.
    sketch.shape({{56, 92}, {72, 84}, {78, 93}, {60, 99}}, c.card);
    sketch.disc({75.5, 88.6}, 4.4, c.paper);
    sketch.shape({{84, 90}, {88, 82}, {95, 80}, {101, 85}, {103, 92}, {96, 97}, {88, 96}}, c.card);
    sketch.line({{88, 82}, {93, 89}, {101, 85}}, c.ink, 0.4);
    sketch.line({{93, 89}, {88, 96}}, c.ink, 0.4);
    sketch.line({{70, 80}, {76, 77}, {82, 81}, {90, 77}, {95, 79}}, c.leaf, 1.2);
    for (const QPointF& speck :
         {QPointF(80, 96), QPointF(66, 82), QPointF(106, 97), QPointF(79, 84)})
        sketch.disc(speck, 0.8, c.muted, 0.2);
}

void drawRails(Sketch& sketch, const Seen& seen) {
    const Colours& c = sketch.c();
    sketch.painter().fillRect(QRectF(0, 0, 160, 100), c.hull);
    // The head rail from the side, two hangers with their rollers on it.
    sketch.box(QRectF(-2, 22, 164, 6), c.edge);
    sketch.box(QRectF(-2, 28, 164, 3), c.selected);
    for (const double x : {44.0, 116.0}) {
        sketch.box(QRectF(x - 12, 22, 24, 40), c.card);
        for (const double roller : {x - 7, x + 7}) {
            sketch.disc({roller, 17}, 5, c.selected);
            sketch.disc({roller, 17}, 1.4, c.ink);
        }
        sketch.screw({x - 7, 54});
        sketch.screw({x + 7, 54});
    }
    sketch.box(QRectF(14, 60, 132, 44), c.leaf);
    if (seen.door.power_operated)
        sketch.line({{-2, 8}, {162, 8}}, c.muted, 1.2);
}

} // namespace latchround::ui
