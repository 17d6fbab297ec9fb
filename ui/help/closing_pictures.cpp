// Pictures of a leaf that closes, mostly from above: from where, in what order, and when to mark.
#include <array>

#include <QCoreApplication>

#include "ui/help/panels.h"
#include "ui/help/scenery.h"

namespace latchround::ui {
namespace {

/// Let go from three openings; all the way home, or left standing ajar.
void drawFromThree(Sketch& sketch, bool home) {
    const Colours& c = sketch.c();
    const DoorwayAbove way{38, 100, 84, 12};
    paintDoorway(sketch, way);
    for (const double open : {86.0, 48.0, 16.0})
        leafAbove(sketch, way.hinge(), way.wide(), open, false, true);
    leafAbove(sketch, way.hinge(), way.wide(), home ? 0 : 8);
    arcArrow(sketch, way.hinge(), way.wide() + 8, 80, home ? 3 : 16, c.ink);
    if (!home)
        ringRound(sketch, {101, 80}, 12);
}

/// The leaf at one mark of the stopwatch.
void drawSwing(Sketch& sketch, double open, double passed) {
    const Colours& c = sketch.c();
    const DoorwayAbove way{24, 86, 84, 12};
    paintDoorway(sketch, way);
    leafAbove(sketch, way.hinge(), way.wide(), 86, false, true);
    leafAbove(sketch, way.hinge(), way.wide(), open);
    if (passed > 0)
        ringRound(sketch, edgeOf(way.hinge(), way.wide(), open) + QPointF(0, 3), 11);
    else
        arcArrow(sketch, way.hinge(), way.wide() + 3, 78, 52, c.ink);
    clockFace(sketch, {126, 42}, 22, passed);
}

void drawSlide(Sketch& sketch, double open, double passed) {
    const Colours& c = sketch.c();
    paintRoom(sketch, 84);
    const QRectF opening(40, 20, 60, 64);
    const QRectF leaf = slidingFront(sketch, opening, open);
    if (passed > 0)
        ringRound(sketch, {opening.right(), 60}, 10);
    else
        arrow(sketch, {leaf.right() + 4, 52}, {leaf.right() + 28, 52}, c.ink, 2);
    dimension(sketch, {opening.left(), 92}, {opening.right(), 92}, {});
    clockFace(sketch, {138, 46}, 16, passed);
}

/// Where the leaf stood after equal times.
void drawPace(Sketch& sketch, bool even) {
    const Colours& c = sketch.c();
    const DoorwayAbove way{42, 106, 86, 10};
    paintDoorway(sketch, way);
    constexpr std::array smooth_deg{86.0, 69.0, 52.0, 35.0, 18.0};
    constexpr std::array rough_deg{86.0, 60.0, 57.0, 54.0, 51.0};
    for (const double open : even ? smooth_deg : rough_deg)
        leafAbove(sketch, way.hinge(), way.wide(), open, false, true);
    leafAbove(sketch, way.hinge(), way.wide(), 0);
    if (even) {
        arcArrow(sketch, way.hinge(), way.wide() + 8, 82, 4, c.ink);
        return;
    }
    ringRound(sketch, edgeOf(way.hinge(), way.wide() - 4, 56), 12);
    arcArrow(sketch, way.hinge(), way.wide() + 8, 46, 4, c.bad);
}

/// The two leaves of a double door; the right one carries the lip that must come home last.
void drawTwoLeaves(Sketch& sketch, double left_open, double right_open) {
    const DoorwayAbove way{20, 140, 80, 12};
    paintDoorway(sketch, way);
    const QPointF right(way.right, way.wall);
    leafAbove(sketch, way.hinge(), 60, left_open);
    leafAbove(sketch, right, 60, right_open, true);
    const QPointF edge = edgeOf(right, 60, right_open, true);
    const QPointF along = (edge - right) / 60;
    sketch.line({edge - along * 2, edge + along * 7}, sketch.c().ink, 2.6);
}

void drawInOrder(Sketch& sketch) {
    drawTwoLeaves(sketch, 0, 40);
    arcArrow(sketch, {140, 80}, 66, 142, 172, sketch.c().ink);
    sketch.words(QRectF(44, 87, 12, 10), QStringLiteral("1"), 8, sketch.c().ink, true);
    sketch.words(QRectF(106, 30, 12, 10), QStringLiteral("2"), 8, sketch.c().ink, true);
}

void drawLipCaught(Sketch& sketch) {
    drawTwoLeaves(sketch, 17, 0);
    ringRound(sketch, {78, 72}, 15);
}

void drawEitherLeaf(Sketch& sketch, bool left) {
    drawTwoLeaves(sketch, left ? 0 : 88, left ? 88 : 0);
    arcArrow(sketch, left ? QPointF(20, 80) : QPointF(140, 80), 64, left ? 62 : 118,
             left ? 14 : 166, sketch.c().ink);
    ringRound(sketch, {80, 83}, 11);
}

/// A cabin's door with its closer; a hook on the wall behind it, in the bad one.
void drawCabinDoor(Sketch& sketch, bool hooked) {
    const Colours& c = sketch.c();
    const DoorwayAbove way{54, 104, 84, 12};
    paintDoorway(sketch, way);
    sketch.box(QRectF(14, 20, 8, 64), c.card, 0.9); // the side of the cabin
    leafAbove(sketch, way.hinge(), way.wide(), hooked ? 118 : 0);
    if (!hooked) {
        leafAbove(sketch, way.hinge(), way.wide(), 100, false, true);
        arcArrow(sketch, way.hinge(), way.wide() + 6, 90, 5, c.ink);
        return;
    }
    sketch.line({{22, 30}, {32, 30}, {36, 34}, {34, 40}}, c.ink, 2);
    ringRound(sketch, {30, 36}, 13);
}

/// A door in a deck, from the side: stair below, the leaf from upright to flat.
void drawHatch(Sketch& sketch, double open, double passed) {
    const Colours& c = sketch.c();
    paintWall(sketch);
    sketch.box(QRectF(-4, 58, 38, 9), c.card, 0.9);
    sketch.box(QRectF(100, 58, 64, 9), c.card, 0.9);
    for (int i = 0; i < 5; ++i)
        sketch.line({{96.0 - i * 11, 68.0 + i * 7},
                     {85.0 - i * 11, 68.0 + i * 7},
                     {85.0 - i * 11, 75.0 + i * 7}},
                    c.ink, 1.4);
    leafAbove(sketch, {34, 59}, 66, 80, false, true);
    leafAbove(sketch, {34, 59}, 66, open);
    if (passed > 0)
        ringRound(sketch, {100, 60}, 11);
    else
        arcArrow(sketch, {34, 59}, 58, 74, 48, c.ink);
    clockFace(sketch, {134, 30}, 18, passed);
}

} // namespace

HelpPicture closingPicture(HelpTopic topic) {
    switch (topic) {
    case HelpTopic::SelfClosing:
        return {goodPanel(QCoreApplication::translate("Help", "shuts fully from any position"),
                          [](Sketch& sketch) { drawFromThree(sketch, true); }),
                badPanel(QCoreApplication::translate("Help", "left ajar"),
                         [](Sketch& sketch) { drawFromThree(sketch, false); })};
    case HelpTopic::ClosingTime:
        return {
            showsPanel(QCoreApplication::translate("Help", "first mark: the leaf begins to move"),
                       [](Sketch& sketch) { drawSwing(sketch, 80, 0); }),
            showsPanel(QCoreApplication::translate("Help", "last mark: fully shut"),
                       [](Sketch& sketch) { drawSwing(sketch, 0, 0.35); })};
    case HelpTopic::SlidingRate:
        return {
            showsPanel(QCoreApplication::translate("Help", "first mark: the leaf begins to move"),
                       [](Sketch& sketch) { drawSlide(sketch, 0.9, 0); }),
            showsPanel(QCoreApplication::translate("Help", "last mark: fully shut"),
                       [](Sketch& sketch) { drawSlide(sketch, 0, 0.3); })};
    case HelpTopic::Smooth:
        return {goodPanel(QCoreApplication::translate("Help", "even speed from start to end"),
                          [](Sketch& sketch) { drawPace(sketch, true); }),
                badPanel(QCoreApplication::translate("Help", "sticks, then slams"),
                         [](Sketch& sketch) { drawPace(sketch, false); })};
    case HelpTopic::LeafOrder:
        return {goodPanel(
                    QCoreApplication::translate("Help", "one leaf home, then the one with the lip"),
                    drawInOrder),
                badPanel(
                    QCoreApplication::translate("Help", "lip home first: the other leaf stays out"),
                    drawLipCaught)};
    case HelpTopic::EitherLeaf:
        return {showsPanel(QCoreApplication::translate("Help", "one leaf alone shuts and latches"),
                           [](Sketch& sketch) { drawEitherLeaf(sketch, true); }),
                showsPanel(QCoreApplication::translate("Help", "and so does the other"),
                           [](Sketch& sketch) { drawEitherLeaf(sketch, false); })};
    case HelpTopic::CabinDoor:
        return {goodPanel(QCoreApplication::translate("Help", "shuts when let go"),
                          [](Sketch& sketch) { drawCabinDoor(sketch, false); }),
                badPanel(QCoreApplication::translate("Help", "a hook holds it open"),
                         [](Sketch& sketch) { drawCabinDoor(sketch, true); })};
    case HelpTopic::DeckDoor:
        return {
            showsPanel(QCoreApplication::translate("Help", "first mark: the leaf begins to move"),
                       [](Sketch& sketch) { drawHatch(sketch, 76, 0); }),
            showsPanel(QCoreApplication::translate("Help", "last mark: fully shut"),
                       [](Sketch& sketch) { drawHatch(sketch, 0, 0.15); })};
    default:
        return {};
    }
}

} // namespace latchround::ui
