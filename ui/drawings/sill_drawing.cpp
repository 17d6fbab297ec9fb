// The foot of a door close by: sill and floor covering, and the gap under the leaf with a rule in
// it.
#include <algorithm>

#include <QLocale>

#include "ui/drawings/close_up_drawings.h"
#include "ui/drawings/places.h"

namespace latchround::ui {

void drawSill(Sketch& sketch, const Seen& seen) {
    const Colours& c = sketch.c();
    QPainter& painter = sketch.painter();
    painter.fillRect(QRectF(0, 0, 160, 46), c.hull);
    // Looking down at the foot of the shut leaf, between the jambs.
    sketch.box(QRectF(18, -2, 124, 48), c.leaf);
    sketch.box(QRectF(-2, -2, 20, 50), c.card);
    sketch.box(QRectF(142, -2, 20, 50), c.card);
    if (seen.truth.sill) {
        const double rises = seen.door.sill_in_frame ? 9 : 4;
        sketch.covering(QRectF(0, 64, 160, 36));
        painter.fillRect(QRectF(0, 48, 160, 16), c.hull);
        sketch.box(QRectF(14, 48 - rises, 132, rises), c.edge);
        sketch.shape({{14, 48}, {146, 48}, {152, 61}, {8, 61}}, c.selected);
        for (const double x : {24.0, 62.0, 98.0, 136.0})
            sketch.screw({x, 54.5});
        // The trim where the covering stops.
        sketch.box(QRectF(0, 61, 160, 4), c.edge);
        return;
    }
    // The covering runs on under the leaf; four holes show where something was screwed down.
    sketch.covering(QRectF(0, 48, 160, 52));
    painter.fillRect(QRectF(18, 44, 124, 5), sketch.hollow());
    sketch.line({{0, 48}, {18, 48}}, c.ink);
    sketch.line({{142, 48}, {160, 48}}, c.ink);
    for (const double x : {24.0, 62.0, 98.0, 136.0})
        sketch.disc({x, 56}, 1.5, sketch.hollow(), 0.4);
    for (const double x : places(22, 140, 6.5))
        sketch.line({{x, 47.5}, {x + 1.6, 51}}, c.edge, 0.4);
}

void drawGap(Sketch& sketch, const Seen& seen) {
    const Colours& c = sketch.c();
    QPainter& painter = sketch.painter();
    constexpr double deck = 84;
    constexpr int longest_mm = 45;
    const double gap = std::clamp(seen.truth.gap_mm, 0.0, double(longest_mm));
    const double foot = deck - gap * gap_units_per_mm;
    painter.fillRect(QRectF(0, 0, 160, 100), c.hull);
    // Light of the room behind shows through.
    painter.fillRect(QRectF(0, foot, 160, deck - foot), c.paper);
    sketch.box(QRectF(-2, -2, 164, foot + 2), c.leaf);
    QColor crease = c.ink;
    crease.setAlpha(110);
    sketch.line({{0, foot - 9}, {160, foot - 9}}, crease, 0.4);
    sketch.box(QRectF(-2, deck, 164, 5), c.edge);
    painter.fillRect(QRectF(0, deck + 5, 160, 11), c.hairline);
    sketch.upright(
        {64, deck}, gap_units_per_mm, longest_mm, [](int mm) { return QLocale().toString(mm); }, 5);
    sketch.words(QRectF(88, 4, 30, 7), QStringLiteral("mm"), 6, c.ink, false,
                 Qt::AlignLeft | Qt::AlignVCenter);
    // The foot of the leaf is read off against the rule.
    sketch.line({{60, foot}, {64, foot}}, c.ink, 0.9);
}

} // namespace latchround::ui
