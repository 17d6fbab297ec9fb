// The edge of a door close by: seal, latch and strike, safety edge with the tape along it.
#include <QLocale>

#include "ui/drawings/close_up_drawings.h"

namespace latchround::ui {

void drawSeals(Sketch& sketch, const Seen& seen) {
    const Colours& c = sketch.c();
    sketch.painter().fillRect(QRectF(0, 0, 160, 100), c.hull);
    sketch.box(QRectF(-2, -2, 70, 104), c.leaf);
    sketch.box(QRectF(72, -2, 40, 104), c.card);
    // The strip lies in its groove, two lips and a core.
    sketch.box(QRectF(78, -2, 13, 104), c.ink);
    sketch.line({{81.5, -2}, {81.5, 102}}, c.edge, 0.8);
    sketch.line({{87.5, -2}, {87.5, 102}}, c.edge, 0.8);
    for (const double y : {16.0, 50.0, 84.0})
        sketch.screw({102, y});
    if (!seen.truth.painted_seal)
        return;
    // Paint over strip and frame, with brush marks and runs.
    sketch.shape({{74, 12},
                  {96, 8},
                  {112, 10},
                  {112, 66},
                  {104, 69},
                  {101, 82},
                  {98, 68},
                  {93, 71},
                  {91, 90},
                  {88, 71},
                  {84, 70},
                  {82, 79},
                  {80, 70},
                  {74, 66}},
                 c.hull, 0.5);
    for (const double x : {79.0, 85.0, 90.0, 97.0, 104.0})
        sketch.line({{x, 17 + (x - 79) * 0.2}, {x + 0.8, 60}}, c.edge, 0.5);
}

void drawLatch(Sketch& sketch, const Seen& seen) {
    const Colours& c = sketch.c();
    // From above, cut through: leaf left, frame with its strike right.
    const bool home = seen.view.open < 0.004;
    const double ajar = home ? 0 : 16;
    sketch.painter().fillRect(QRectF(0, 0, 160, 100), c.hull);
    sketch.box(QRectF(96, -2, 66, 104), c.card);
    sketch.box(QRectF(96, 24, 5, 52), c.edge);
    sketch.box(QRectF(96, 42, 16, 16), sketch.hollow());
    sketch.screw({98.5, 30}, 1.6);
    sketch.screw({98.5, 70}, 1.6);
    sketch.box(QRectF(-2, 12, 94 - ajar, 76), c.leaf);
    sketch.box(QRectF(48 - ajar, 32, 44, 36), c.selected);
    // The bolt stands out of its case, or as far as it comes.
    const double out = seen.truth.latches ? 15 : 3;
    const double x = 92 - ajar;
    sketch.shape({{x - 30, 44}, {x + out * 0.5, 44}, {x + out, 50}, {x + out, 56}, {x - 30, 56}},
                 c.edge);
    for (const double y : {37.0, 63.0})
        sketch.screw({x - 36, y}, 1.6);
    sketch.rounded(QRectF(20 - ajar, 66, 34, 7), 3, c.edge);
}

void drawSafetyEdge(Sketch& sketch, const Seen& seen) {
    const Colours& c = sketch.c();
    QPainter& painter = sketch.painter();
    painter.fillRect(QRectF(0, 0, 160, 60), c.hull);
    sketch.covering(QRectF(0, 60, 160, 40));
    sketch.line({{0, 60}, {160, 60}}, c.ink);
    constexpr double touched = 142; // where the block was met
    const double back = seen.reopened_m.value_or(0) / 0.05 * tape_units_per_5cm;
    const double edge = touched - back;
    sketch.box(QRectF(-2, -2, edge - 2, 62), c.leaf);
    sketch.box(QRectF(edge - 5, -2, 5, 62), c.bar_filled);
    sketch.line({{edge, -2}, {edge, 60}}, c.ink, 0.9);
    sketch.rounded(QRectF(touched, 34, 14, 25), 2, c.card);
    sketch.line({{touched + 2, 40}, {touched + 12, 40}}, c.edge, 0.4);
    sketch.line({{touched + 2, 46}, {touched + 12, 46}}, c.edge, 0.4);
    if (!seen.reopened_m)
        return;
    // A tape on the deck, from the block back to the edge.
    constexpr int steps = 32;
    painter.save();
    painter.translate(touched, 66);
    sketch.box(QRectF(-steps * tape_units_per_5cm - 4, 0, steps * tape_units_per_5cm + 9, 17),
               c.card, 0.5);
    for (int i = 0; i <= steps; ++i) {
        const double x = -i * tape_units_per_5cm;
        sketch.line({{x, 0}, {x, i % 2 == 0 ? 7.0 : 4.0}}, c.ink, i % 4 == 0 ? 0.5 : 0.3);
        if (i % 4 == 0)
            sketch.words(QRectF(x - 8, 8, 16, 7), QLocale().toString(i * 0.05, 'f', 1), 5, c.ink);
    }
    painter.restore();
    sketch.line({{edge, 58}, {edge, 73}}, c.alarm, 0.7);
    sketch.rounded(QRectF(2, 85, 10, 10), 2, c.card); // words need it at night
    sketch.words(QRectF(2, 85, 10, 10), QStringLiteral("m"), 5, c.ink);
}

} // namespace latchround::ui
