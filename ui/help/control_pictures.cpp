// Pictures of how a door is let go: switches at the door, the control station, its panel and the
// alarm.
#include <QCoreApplication>

#include "ui/help/panels.h"
#include "ui/help/scenery.h"

namespace latchround::ui {
namespace {

/// From above: a switch on each side of the wall; the one worked lets the leaf go, or does nothing.
void drawSwitches(Sketch& sketch, bool works) {
    const Colours& c = sketch.c();
    const DoorwayAbove way{26, 84, 62, 10};
    paintDoorway(sketch, way);
    leafAbove(sketch, way.hinge(), way.wide(), 80, false, works);
    if (works) {
        leafAbove(sketch, way.hinge(), way.wide(), 26);
        arcArrow(sketch, way.hinge(), way.wide() - 6, 72, 34, c.ink);
    }
    const QPointF far(116, 58.5);
    const QPointF near(116, 75.5);
    for (const QPointF& middle : {far, near})
        sketch.box(QRectF(middle.x() - 6, middle.y() - 3.5, 12, 7), c.bar_filled, 0.9);
    personAbove(sketch, {116, 91});
    sketch.line({{107, 91}, {112, 81}}, c.ink, 2.4);
    if (works) {
        ringRound(sketch, far, 9);
        ringRound(sketch, near, 9);
        return;
    }
    sketch.line({near + QPointF(14, -5), near + QPointF(24, 5)}, c.bad, 2.4);
    sketch.line({near + QPointF(24, -5), near + QPointF(14, 5)}, c.bad, 2.4);
}

/// The station's panel beside the door that it lets go.
void drawStation(Sketch& sketch, double open, bool works) {
    const Colours& c = sketch.c();
    paintRoom(sketch, 90);
    sketch.rounded(QRectF(8, 18, 48, 40), 3, c.card, 0.9);
    for (const double x : {18.0, 32.0, 46.0})
        lampDisc(sketch, {x, 28}, 3, false);
    sketch.disc({32, 45}, 8, c.selected, 0.9);
    sketch.line({{32, 45}, {37, 39}}, c.ink, 2.6);
    personFront(sketch, {22, 98}, 40, {31, 47}, {14, 80});
    cable(sketch, {56, 38}, {84, 38}, false);
    const QRectF leaf = doorFront(sketch, QRectF(90, 14, 56, 76), open);
    if (works)
        arrow(sketch, leaf.center() + QPointF(6, 14), leaf.center() + QPointF(30, 14), c.ink, 2);
}

/// The lever after the hand was taken off.
void drawLever(Sketch& sketch, bool stays) {
    const Colours& c = sketch.c();
    paintWall(sketch);
    sketch.rounded(QRectF(40, 8, 80, 84), 4, c.card, 0.9);
    sketch.disc({80, 62}, 18, c.selected, 0.9);
    const QPointF put(102, 26);
    const QPointF back(58, 26);
    for (const auto& [colour, width] : {std::pair{c.ink, 8.0}, std::pair{c.edge, 6.0}})
        sketch.line({{80, 62}, stays ? put : back}, colour, width);
    if (stays) {
        ringRound(sketch, put, 11);
        return;
    }
    QPen ghost(c.ink, 0.9);
    ghost.setDashPattern({3, 2.5});
    sketch.painter().setPen(ghost);
    sketch.painter().drawLine(QPointF(80, 62), put);
    arcArrow(sketch, {80, 62}, 42, 54, 118, c.bad);
}

/// The door beside what the panel says of it.
void drawPanelBesideDoor(Sketch& sketch, bool says_shut) {
    const Colours& c = sketch.c();
    paintRoom(sketch, 90);
    doorFront(sketch, QRectF(14, 14, 54, 76), 0.35);
    sketch.rounded(QRectF(84, 22, 68, 50), 4, c.card, 0.9);
    const auto shown = [&](double x, bool lit, const QString& words) {
        lampDisc(sketch, {x, 41}, 8, lit);
        sketch.words(QRectF(x - 17, 57, 34, 9), words, 7, c.ink, lit);
    };
    shown(101, !says_shut, QCoreApplication::translate("StationDrawing", "open"));
    shown(135, says_shut, QCoreApplication::translate("StationDrawing", "shut"));
}

/// Two bands along the time: when the alarm sounds, and when the leaf moves.
struct Times {
    double alarm_on = 0;
    double alarm_off = 0;
    double moves = 0;
    double shut = 0;
};
void drawTimes(Sketch& sketch, const Times& times) {
    const Colours& c = sketch.c();
    paintWall(sketch);
    alarmHorn(sketch, {10, 28}, 1);
    const auto at = [](double second) { return 36 + second * 5.6; };
    sketch.box(QRectF(36, 16, 118, 24), c.card, 0.6);
    sketch.box(QRectF(at(times.alarm_on), 16, at(times.alarm_off) - at(times.alarm_on), 24),
               c.bar_filled, 0.9);
    sketch.box(QRectF(6, 56, 22, 30), c.card, 0.8);
    sketch.box(QRectF(6, 56, 12, 30), c.leaf, 0.8);
    arrow(sketch, {19, 71}, {27, 71}, c.ink, 1.4);
    sketch.box(QRectF(36, 58, 118, 24), c.card, 0.6);
    sketch.box(QRectF(at(times.moves), 58, at(times.shut) - at(times.moves), 24), c.leaf, 0.9);
    arrow(sketch, {36, 92}, {154, 92}, c.ink, 1);
}

/// The end of the one band held against the end of the other.
void drawBothEnds(Sketch& sketch, double alarm_off) {
    const Colours& c = sketch.c();
    const Times times{0, alarm_off, 6, 17};
    drawTimes(sketch, times);
    const double shut = 36 + times.shut * 5.6;
    sketch.line({{shut, 10}, {shut, 88}}, c.ink, 1.2);
    ringRound(sketch, {36 + alarm_off * 5.6, 28}, 11);
}

void drawLead(Sketch& sketch, double moves) {
    const Colours& c = sketch.c();
    drawTimes(sketch, {1, 20, moves, 19});
    const double left = 36 + 5.6;
    const double right = 36 + moves * 5.6;
    for (const double x : {left, right})
        sketch.line({{x, 10}, {x, 88}}, c.ink, 1);
    if (right - left > 20)
        dimension(sketch, {left, 49}, {right, 49}, {});
    else
        ringRound(sketch, {right, 49}, 11);
}

} // namespace

HelpPicture controlPicture(HelpTopic topic) {
    switch (topic) {
    case HelpTopic::LocalRelease:
        return {
            goodPanel(QCoreApplication::translate("Help", "the switch on each side releases it"),
                      [](Sketch& sketch) { drawSwitches(sketch, true); }),
            badPanel(QCoreApplication::translate("Help", "one side does nothing"),
                     [](Sketch& sketch) { drawSwitches(sketch, false); })};
    case HelpTopic::RemoteRelease:
        return {goodPanel(QCoreApplication::translate(
                              "Help", "released from the control station, it closes"),
                          [](Sketch& sketch) { drawStation(sketch, 0.5, true); }),
                badPanel(QCoreApplication::translate("Help", "it stays open"),
                         [](Sketch& sketch) { drawStation(sketch, 1, false); })};
    case HelpTopic::SwitchStays:
        return {goodPanel(QCoreApplication::translate("Help", "stays where it was put"),
                          [](Sketch& sketch) { drawLever(sketch, true); }),
                badPanel(QCoreApplication::translate("Help", "goes back: the door is held again"),
                         [](Sketch& sketch) { drawLever(sketch, false); })};
    case HelpTopic::Indicator:
        return {goodPanel(QCoreApplication::translate("Help", "ajar, and the panel says open"),
                          [](Sketch& sketch) { drawPanelBesideDoor(sketch, false); }),
                badPanel(QCoreApplication::translate("Help", "ajar, but the panel says shut"),
                         [](Sketch& sketch) { drawPanelBesideDoor(sketch, true); })};
    case HelpTopic::AlarmLead:
        return {
            goodPanel(QCoreApplication::translate("Help", "first the alarm, then the leaf moves"),
                      [](Sketch& sketch) { drawLead(sketch, 8); }),
            badPanel(QCoreApplication::translate("Help", "the leaf moves as the alarm begins"),
                     [](Sketch& sketch) { drawLead(sketch, 2); })};
    case HelpTopic::AlarmHolds:
        return {
            goodPanel(QCoreApplication::translate("Help", "the alarm lasts until the leaf is home"),
                      [](Sketch& sketch) { drawBothEnds(sketch, 19); }),
            badPanel(QCoreApplication::translate("Help", "the alarm stops while the leaf moves"),
                     [](Sketch& sketch) { drawBothEnds(sketch, 13); })};
    default:
        return {};
    }
}

} // namespace latchround::ui
