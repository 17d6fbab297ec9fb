// Pictures of the foot of a door and of the way its leaf takes.
#include <QCoreApplication>

#include "ui/help/panels.h"
#include "ui/help/scenery.h"

namespace latchround::ui {
namespace {

/// From the front: a metal strip across the opening, flat, or with its end bent up.
void drawSillStrip(Sketch& sketch, bool firm) {
    const Colours& c = sketch.c();
    paintWall(sketch);
    sketch.box(QRectF(18, -2, 124, 58), c.leaf);
    sketch.box(QRectF(-2, -2, 20, 62), c.card);
    sketch.box(QRectF(142, -2, 20, 62), c.card);
    sketch.covering(QRectF(0, 66, 160, 34));
    if (firm) {
        sketch.shape({{14, 58}, {146, 58}, {152, 70}, {8, 70}}, c.selected, 0.9);
        for (const double x : {26.0, 62.0, 98.0, 134.0})
            sketch.screw({x, 64});
        return;
    }
    sketch.painter().fillRect(QRectF(14, 58, 132, 10), sketch.hollow());
    sketch.shape({{14, 58}, {84, 58}, {122, 40}, {130, 50}, {88, 70}, {8, 70}}, c.selected, 0.9);
    for (const double x : {26.0, 62.0})
        sketch.screw({x, 64});
    sketch.disc({134, 64}, 1.4, c.paper, 0.4);
    ringRound(sketch, {124, 46}, 14);
}

/// Over the bare way: a carton, a cart's wheels, litter.
void drawCrowdedPath(Sketch& sketch) {
    const Colours& c = sketch.c();
    closeUp(drawPath, shutDoor())(sketch);
    sketch.box(QRectF(82, 38, 30, 24), c.card, 0.9);
    sketch.shape({{82, 38}, {90, 31}, {120, 31}, {112, 38}}, c.card, 0.9);
    sketch.shape({{112, 38}, {120, 31}, {120, 54}, {112, 62}}, c.selected, 0.9);
    sketch.line({{97, 38}, {97, 62}}, c.ink, 0.6);
    sketch.rounded(QRectF(124, 62, 28, 9), 4, c.edge, 0.9);
    sketch.disc({129, 76}, 4, c.card, 1.2);
    sketch.disc({147, 76}, 4, c.card, 1.2);
    ringRound(sketch, {101, 47}, 23);
}

/// Behind the fault that practice draws, a ring round it.
std::function<void(Sketch&)> ringed(std::function<void(Sketch&)> draw, QPointF middle,
                                    double radius) {
    return [draw = std::move(draw), middle, radius](Sketch& sketch) {
        draw(sketch);
        ringRound(sketch, middle, radius);
    };
}

/// Over the sound rail: a dent, dirt on it, a roller that has come off.
void drawFoulRails(Sketch& sketch) {
    const Colours& c = sketch.c();
    closeUp(drawRails, shutDoor(DoorKind::Sliding))(sketch);
    sketch.shape({{70, 22}, {76, 15}, {82, 18}, {88, 14}, {94, 22}}, c.ink, 0.5);
    sketch.painter().fillRect(QRectF(116, 11, 15, 10.5),
                              c.hull); // the roller is gone from its place
    sketch.disc({140, 36}, 5, c.selected);
    sketch.disc({140, 36}, 1.4, c.ink);
    ringRound(sketch, {82, 18}, 13);
    ringRound(sketch, {134, 28}, 15);
}

} // namespace

HelpPicture footPicture(HelpTopic topic) {
    switch (topic) {
    case HelpTopic::SillSound:
        return {
            goodPanel(QCoreApplication::translate("Help", "whole, flat and firm"),
                      [](Sketch& sketch) { drawSillStrip(sketch, true); }),
            badPanel(QCoreApplication::translate("Help", "a loose end that a foot can catch on"),
                     [](Sketch& sketch) { drawSillStrip(sketch, false); })};
    case HelpTopic::SillCovering: {
        ShownDoor bare = shutDoor();
        bare.truth.sill = false;
        return {goodPanel(QCoreApplication::translate("Help", "the covering stops at the sill"),
                          closeUp(drawSill, shutDoor())),
                badPanel(QCoreApplication::translate("Help", "the covering runs on under the leaf"),
                         ringed(closeUp(drawSill, bare), {80, 50}, 16))};
    }
    case HelpTopic::Gap: {
        ShownDoor wide = shutDoor();
        wide.truth.gap_mm = 32;
        return {goodPanel(QCoreApplication::translate("Help", "narrow at its widest point"),
                          closeUp(drawGap, shutDoor())),
                badPanel(QCoreApplication::translate(
                             "Help", "a wide gap: read the rule at the leaf's foot"),
                         closeUp(drawGap, wide))};
    }
    case HelpTopic::PathClear:
        return {goodPanel(QCoreApplication::translate("Help", "clear deck along the whole path"),
                          closeUp(drawPath, shutDoor())),
                badPanel(QCoreApplication::translate("Help", "stores in the path of the leaf"),
                         drawCrowdedPath)};
    case HelpTopic::Pocket: {
        ShownDoor littered = shutDoor(DoorKind::Sliding);
        littered.truth.pocket_litter = true;
        return {goodPanel(QCoreApplication::translate("Help", "clear to the end"),
                          closeUp(drawPocket, shutDoor(DoorKind::Sliding))),
                badPanel(QCoreApplication::translate("Help", "litter on the rail"),
                         ringed(closeUp(drawPocket, littered), {80, 89}, 26))};
    }
    case HelpTopic::NotHeld: {
        ShownDoor wedged = shutDoor();
        wedged.view.wedge = true;
        return {goodPanel(QCoreApplication::translate("Help", "only its own hold-back holds it"),
                          closeUp(drawHoldBackClose, shutDoor())),
                badPanel(QCoreApplication::translate("Help", "a wedge under the leaf"),
                         ringed(closeUp(drawPath, wedged), {82, 65}, 24))};
    }
    case HelpTopic::Hook: {
        ShownDoor hooked = shutDoor();
        hooked.truth.hook = true;
        return {
            goodPanel(QCoreApplication::translate("Help",
                                                  "a hold-back that the control station releases"),
                      closeUp(drawHoldBackClose, shutDoor())),
            badPanel(QCoreApplication::translate("Help", "a hook beside it, an eye in the leaf"),
                     ringed(closeUp(drawHoldBackClose, hooked), {25, 44}, 30))};
    }
    case HelpTopic::Rails:
        return {goodPanel(QCoreApplication::translate("Help", "clean, every roller on the rail"),
                          closeUp(drawRails, shutDoor(DoorKind::Sliding))),
                badPanel(QCoreApplication::translate("Help", "dirt on the rail, a roller off"),
                         drawFoulRails)};
    default:
        return {};
    }
}

} // namespace latchround::ui
