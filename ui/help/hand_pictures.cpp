// Pictures of what is tried by hand at the door: opening it, a soft block in its way, a spring
// gauge; and of the heel of the ship.
#include <QCoreApplication>

#include "ui/help/panels.h"
#include "ui/help/scenery.h"

namespace latchround::ui {
namespace {

void drawOnePerson(Sketch& sketch, bool alone) {
    const Colours& c = sketch.c();
    paintRoom(sketch, 90);
    const QRectF leaf = doorFront(sketch, QRectF(30, 10, 62, 80), 0.4);
    const QPointF handle(leaf.right() - 3, leaf.center().y() + 2);
    personFront(sketch, {112, 96}, 62, handle, {118, 66});
    if (!alone)
        personFront(sketch, {138, 96}, 62, {122, 62}, {127, 68});
    arrow(sketch, handle + QPointF(-2, -16), handle + QPointF(-24, -16), c.ink, 2);
}

/// Opened against the release that still stands, or let go again.
void drawReopen(Sketch& sketch, bool let_go) {
    const Colours& c = sketch.c();
    const DoorwayAbove way{34, 100, 80, 12};
    paintDoorway(sketch, way);
    leafAbove(sketch, way.hinge(), way.wide(), let_go ? 0 : 46);
    if (let_go) {
        leafAbove(sketch, way.hinge(), way.wide(), 46, false, true);
        arcArrow(sketch, way.hinge(), way.wide() + 6, 46, 5, c.ink);
        personAbove(sketch, {138, 30});
        return;
    }
    arcArrow(sketch, way.hinge(), way.wide() - 20, 4, 38, c.ink);
    personAbove(sketch, {100, 34});
    sketch.line({{92, 36}, edgeOf(way.hinge(), way.wide() - 6, 46)}, c.ink, 2.4);
}

/// The leading edge of a sliding leaf at a soft block that stands in its way.
void drawContact(Sketch& sketch, bool stops) {
    const Colours& c = sketch.c();
    paintRoom(sketch, 76);
    const double edge = stops ? 72 : 104;
    sketch.box(QRectF(-4, 8, edge, 68), c.leaf, 0.9);
    sketch.box(QRectF(edge - 9, 8, 5, 68), c.bar_filled, 0.7);
    sketch.box(QRectF(146, 4, 18, 72), c.card, 0.9);
    if (stops) {
        softBlock(sketch, QRectF(108, 48, 30, 28));
        arrow(sketch, {102, 30}, {74, 30}, c.ink, 2);
        return;
    }
    softBlock(sketch, QRectF(101, 48, 45, 28));
    sketch.line({{108, 50}, {116, 62}, {110, 74}}, c.ink, 1);
    arrow(sketch, {106, 30}, {138, 30}, c.bad, 2);
    ringRound(sketch, {112, 62}, 18);
}

/// Pulled at the free edge, square to the leaf.
void drawGaugeAtEdge(Sketch& sketch) {
    const DoorwayAbove way{30, 100, 82, 12};
    paintDoorway(sketch, way);
    leafAbove(sketch, way.hinge(), way.wide(), 6);
    const QPointF edge = edgeOf(way.hinge(), way.wide() - 3, 6);
    springGauge(sketch, edge, edge + QPointF(-6, -58));
    personAbove(sketch, {100, 10});
    sketch.line({{92, 13}, edge + QPointF(-6, -58)}, sketch.c().ink, 2.4);
    ringRound(sketch, edge, 10);
}

/// A door in a deck, pulled by its latch, by its edge, or on to the stair's width.
void drawDeckGauge(Sketch& sketch, double open, double at) {
    const Colours& c = sketch.c();
    paintWall(sketch);
    const QPointF hinge(34, open > 20 ? 84 : 71);
    sketch.box(QRectF(-4, hinge.y() - 1, 38, 9), c.card, 0.9);
    sketch.box(QRectF(112, hinge.y() - 1, 52, 9), c.card, 0.9);
    if (open > 0)
        leafAbove(sketch, hinge, 78, 0, false, true);
    leafAbove(sketch, hinge, 78, open);
    const QPointF hook = edgeOf(hinge, at, open);
    sketch.box(QRectF(hook.x() - 3, hook.y() - 5, 6, 5), c.edge, 0.7);
    const QPointF way = open > 20 ? QPointF(-20, -42) : QPointF(0, -56);
    springGauge(sketch, hook + QPointF(0, -5), hook + way);
    ringRound(sketch, hook, 11);
}

/// The ship across, leaning; the plumb line shows by how much.
void drawHeel(Sketch& sketch) {
    const Colours& c = sketch.c();
    QPainter& painter = sketch.painter();
    paintWall(sketch);
    painter.fillRect(QRectF(0, 74, 160, 26), c.hairline);
    sketch.line({{0, 74}, {160, 74}}, c.ink, 0.9);
    painter.save();
    painter.translate(80, 74);
    painter.rotate(7);
    sketch.shape({{-46, -34}, {46, -34}, {42, 14}, {26, 22}, {-26, 22}, {-42, 14}}, c.card, 1);
    sketch.box(QRectF(-32, -54, 64, 20), c.card, 0.9);
    sketch.line({{-43, -10}, {43, -10}}, c.ink, 0.7);
    sketch.line({{0, -54}, {0, 22}}, c.edge, 0.9);
    painter.restore();
    const QPointF top(87, 20);
    sketch.line({top, top + QPointF(0, 50)}, c.ink, 1.4);
    sketch.disc(top + QPointF(0, 52), 3.4, c.bar_filled, 0.9);
    ringRound(sketch, {84, 66}, 14);
}

} // namespace

HelpPicture handPicture(HelpTopic topic) {
    switch (topic) {
    case HelpTopic::OnePerson:
        return {goodPanel(QCoreApplication::translate("Help", "one person, from either side"),
                          [](Sketch& sketch) { drawOnePerson(sketch, true); }),
                badPanel(QCoreApplication::translate("Help", "it takes two"),
                         [](Sketch& sketch) { drawOnePerson(sketch, false); })};
    case HelpTopic::ReopenLocal:
        return {
            showsPanel(QCoreApplication::translate("Help", "open it while it is still released"),
                       [](Sketch& sketch) { drawReopen(sketch, false); }),
            showsPanel(QCoreApplication::translate("Help", "let go, stand clear: it shuts again"),
                       [](Sketch& sketch) { drawReopen(sketch, true); })};
    case HelpTopic::EdgeStops:
        return {
            goodPanel(QCoreApplication::translate("Help", "stops at the soft block and re-opens"),
                      [](Sketch& sketch) { drawContact(sketch, true); }),
            badPanel(QCoreApplication::translate("Help", "keeps pushing: a hand would be crushed"),
                     [](Sketch& sketch) { drawContact(sketch, false); })};
    case HelpTopic::ReopenDistance: {
        ShownDoor near = shutDoor(DoorKind::Sliding);
        near.reopened_m = 0.4;
        ShownDoor far = near;
        far.reopened_m = 1.3;
        return {goodPanel(QCoreApplication::translate("Help", "re-opens a little from the block"),
                          closeUp(drawSafetyEdge, near)),
                badPanel(QCoreApplication::translate("Help", "re-opens too far"),
                         closeUp(drawSafetyEdge, far))};
    }
    case HelpTopic::DeckUnlatch:
        return {showsPanel(
            QCoreApplication::translate("Help", "hooked on the latch, pulled until it lets go"),
            [](Sketch& sketch) { drawDeckGauge(sketch, 0, 62); })};
    case HelpTopic::DeckStart:
        return {showsPanel(
            QCoreApplication::translate("Help", "hooked at the free edge, until it first moves"),
            [](Sketch& sketch) { drawDeckGauge(sketch, 4, 76); })};
    case HelpTopic::DeckOpen:
        return {showsPanel(QCoreApplication::translate("Help", "opened to the stair's width"),
                           [](Sketch& sketch) { drawDeckGauge(sketch, 26, 76); })};
    case HelpTopic::SpringGauge:
        return {showsPanel(QCoreApplication::translate(
                               "Help", "at the free edge, square to the leaf, nearly shut"),
                           drawGaugeAtEdge)};
    case HelpTopic::Heel:
        return {
            showsPanel(QCoreApplication::translate("Help", "the angle between plumb line and ship"),
                       drawHeel)};
    default:
        return {};
    }
}

} // namespace latchround::ui
