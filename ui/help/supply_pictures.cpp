// Pictures of what works a door behind its covers: power, accumulator, control, and their papers.
#include <QCoreApplication>
#include <QLocale>

#include "ui/drawings/places.h"
#include "ui/help/panels.h"
#include "ui/help/scenery.h"

namespace latchround::ui {
namespace {

/// The supply of the door's control, a bolt of lightning on its box.
void supplyBox(Sketch& sketch, const QRectF& area) {
    const Colours& c = sketch.c();
    sketch.rounded(area, 3, c.card, 0.9);
    const QPointF m = area.center();
    sketch.shape({m + QPointF(2, -10), m + QPointF(-6, 2), m + QPointF(-1, 2), m + QPointF(-2, 10),
                  m + QPointF(6, -2), m + QPointF(1, -2)},
                 c.bar_filled, 0.8);
}

void drawSupplyCut(Sketch& sketch, bool shuts) {
    const Colours& c = sketch.c();
    paintRoom(sketch, 90);
    supplyBox(sketch, QRectF(8, 20, 32, 32));
    cable(sketch, {40, 36}, {86, 36}, true);
    const QRectF leaf = doorFront(sketch, QRectF(92, 14, 54, 76), shuts ? 0.4 : 1);
    if (shuts)
        arrow(sketch, leaf.center() + QPointF(4, 14), leaf.center() + QPointF(28, 14), c.ink, 2);
}

/// From above: the leaf, its ram or strong closer, the hold-back magnet with its cable.
void drawMachineryDoor(Sketch& sketch, bool shuts) {
    const Colours& c = sketch.c();
    const DoorwayAbove way{40, 108, 84, 12};
    paintDoorway(sketch, way);
    const double open = shuts ? 24 : 84;
    leafAbove(sketch, way.hinge(), way.wide(), 84, false, true);
    leafAbove(sketch, way.hinge(), way.wide(), open);
    // The ram, from the wall to the middle of the leaf.
    const QPointF pushed = edgeOf(way.hinge(), 30, open);
    sketch.line({{14, 80}, pushed}, c.ink, 3);
    sketch.line({{14, 80}, (QPointF(14, 80) + pushed) / 2}, c.ink, 7);
    sketch.line({{14, 80}, (QPointF(14, 80) + pushed) / 2}, c.card, 5);
    // The magnet that let go, or did not.
    const QPointF magnet = edgeOf(way.hinge(), way.wide(), 84) + QPointF(-12, 4);
    sketch.box(QRectF(magnet.x() - 8, magnet.y() - 5, 10, 10), c.edge, 0.9);
    cable(sketch, magnet + QPointF(-8, 0), magnet + QPointF(-34, 0), true);
    if (shuts)
        arcArrow(sketch, way.hinge(), way.wide() + 6, 78, 28, c.ink);
    else
        ringRound(sketch, magnet + QPointF(4, 0), 12);
}

void drawAccumulator(Sketch& sketch) {
    const Colours& c = sketch.c();
    paintRoom(sketch, 90);
    sketch.rounded(QRectF(14, 28, 26, 56), 12, c.card, 1);
    sketch.line({{14, 56}, {40, 56}}, c.ink, 0.8);
    sketch.disc({27, 18}, 9, c.card, 1);
    sketch.line({{27, 18}, {32, 13}}, c.bad, 1.4);
    sketch.line({{40, 70}, {84, 70}}, c.ink, 2.4);
    const QRectF opening(90, 22, 54, 68);
    slidingFront(sketch, opening, 0.5);
    arrow(sketch, {118, 62}, {140, 62}, c.ink, 2);
    arrow(sketch, {116, 74}, {94, 74}, c.ink, 2.2);
    sketch.rounded(QRectF(46, 34, 36, 18), 3, c.card, 0.8);
    sketch.words(QRectF(46, 34, 36, 18), QStringLiteral("%1 ×").arg(QLocale().toString(10)), 12,
                 c.ink, true);
}

/// Three doors on one control; the middle one has failed.
void drawThreeDoors(Sketch& sketch, bool others_work) {
    const Colours& c = sketch.c();
    paintRoom(sketch, 92);
    supplyBox(sketch, QRectF(64, 4, 32, 24));
    sketch.line({{80, 28}, {80, 38}}, c.ink, 2);
    sketch.line({{28, 44}, {28, 38}, {132, 38}, {132, 44}}, c.ink, 2);
    for (const double x : {28.0, 80.0, 132.0}) {
        const bool failed = x > 60 && x < 100;
        const bool works = others_work && !failed;
        const QRectF leaf = doorFront(sketch, QRectF(x - 15, 50, 30, 42), works ? 0.45 : 1);
        if (works)
            arrow(sketch, leaf.center() + QPointF(2, 6), leaf.center() + QPointF(15, 6), c.ink, 2);
        if (!failed)
            continue;
        sketch.line({{x - 12, 56}, {x + 12, 84}}, c.bad, 3);
        sketch.line({{x + 12, 56}, {x - 12, 84}}, c.bad, 3);
    }
}

/// The control box beside the door: open to a tool, or behind pipes.
void drawBox(Sketch& sketch, bool reached) {
    const Colours& c = sketch.c();
    paintWall(sketch);
    sketch.box(QRectF(-4, 10, 40, 94), c.leaf, 0.9);
    const QRectF box(62, 26, 52, 48);
    sketch.box(box, reached ? sketch.hollow() : c.card, 1);
    if (reached) {
        sketch.shape({{114, 26}, {140, 18}, {140, 82}, {114, 74}}, c.card, 1);
        sketch.disc({78, 42}, 7, c.edge, 0.9);
        sketch.disc({98, 58}, 7, c.edge, 0.9);
        // A spanner on the nut.
        for (const auto& [colour, width] : {std::pair{c.ink, 6.0}, std::pair{c.card, 4.0}})
            sketch.line({{101, 60}, {124, 92}}, colour, width);
        ringRound(sketch, {98, 58}, 13);
        return;
    }
    sketch.line({{70, 50}, {76, 50}}, c.ink, 2);
    for (const double x : {74.0, 92.0}) {
        sketch.line({{x, -4}, {x, 104}}, c.ink, 13);
        sketch.line({{x, -4}, {x, 104}}, c.selected, 11);
    }
    sketch.box(QRectF(108, 40, 56, 64), c.card, 1);
    ringRound(sketch, {86, 50}, 26);
}

void drawPaper(Sketch& sketch) {
    const Colours& c = sketch.c();
    paintWall(sketch);
    sketch.shape({{42, 4}, {104, 4}, {118, 18}, {118, 96}, {42, 96}}, c.card, 1);
    sketch.shape({{104, 4}, {104, 18}, {118, 18}}, c.selected, 0.8);
    sketch.line({{52, 18}, {94, 18}}, c.ink, 2.6);
    for (const double y : places(30, 68, 8))
        sketch.line({{52, y}, {108, y}}, c.edge, 1.2);
    sketch.disc({96, 80}, 12, c.selected, 1.2);
    sketch.disc({96, 80}, 8, c.card, 0.8);
    sketch.line({{91, 80}, {95, 84}, {102, 76}}, c.ink, 1.4);
    sketch.line({{52, 86}, {58, 80}, {64, 87}, {72, 80}, {78, 86}}, c.ink, 1);
    ringRound(sketch, {70, 18}, 14);
    ringRound(sketch, {96, 80}, 16);
}

} // namespace

HelpPicture supplyPicture(HelpTopic topic) {
    switch (topic) {
    case HelpTopic::FailSafe:
        return {goodPanel(QCoreApplication::translate("Help", "supply cut, door shuts"),
                          [](Sketch& sketch) { drawSupplyCut(sketch, true); }),
                badPanel(QCoreApplication::translate("Help", "supply cut, door stays open"),
                         [](Sketch& sketch) { drawSupplyCut(sketch, false); })};
    case HelpTopic::Machinery:
        return {
            goodPanel(QCoreApplication::translate("Help", "hold-back fails, door is driven shut"),
                      [](Sketch& sketch) { drawMachineryDoor(sketch, true); }),
            badPanel(QCoreApplication::translate("Help", "hold-back fails, door stays open"),
                     [](Sketch& sketch) { drawMachineryDoor(sketch, false); })};
    case HelpTopic::Accumulator:
        return {showsPanel(
            QCoreApplication::translate("Help", "opened and shut ten times from its accumulator"),
            drawAccumulator)};
    case HelpTopic::Independence:
        return {goodPanel(QCoreApplication::translate("Help", "one fails, the others work"),
                          [](Sketch& sketch) { drawThreeDoors(sketch, true); }),
                badPanel(QCoreApplication::translate("Help", "one fails, and none works"),
                         [](Sketch& sketch) { drawThreeDoors(sketch, false); })};
    case HelpTopic::Access:
        return {goodPanel(QCoreApplication::translate("Help", "the cover opens, a tool gets in"),
                          [](Sketch& sketch) { drawBox(sketch, true); }),
                badPanel(QCoreApplication::translate("Help", "built in behind pipes and lockers"),
                         [](Sketch& sketch) { drawBox(sketch, false); })};
    case HelpTopic::Papers:
        return {showsPanel(
            QCoreApplication::translate("Help", "what it is for, and who approved it"), drawPaper)};
    default:
        return {};
    }
}

} // namespace latchround::ui
