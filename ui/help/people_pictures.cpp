// Pictures of who stands where, and what is said, before the control station releases a door.
#include <QCoreApplication>

#include "ui/help/panels.h"
#include "ui/help/scenery.h"

namespace latchround::ui {
namespace {

/// What somebody says, in a bubble whose tip is at `mouth`.
void says(Sketch& sketch, const QRectF& bubble, QPointF mouth, const QString& words) {
    const Colours& c = sketch.c();
    const double middle = bubble.center().x();
    sketch.rounded(bubble, 5, c.card, 0.9);
    sketch.shape({{middle - 5, bubble.bottom() - 0.5}, mouth, {middle + 5, bubble.bottom() - 0.5}},
                 c.card, 0.9);
    sketch.painter().fillRect(QRectF(middle - 4.4, bubble.bottom() - 1.6, 8.8, 1.8), c.card);
    sketch.words(bubble, words, 8, c.ink, true);
}

void drawAnnounced(Sketch& sketch) {
    paintRoom(sketch, 90);
    alarmHorn(sketch, {24, 22}, 1);
    for (const double x : {74.0, 104.0, 134.0})
        personFront(sketch, {x, 96}, 48);
}

/// A sliding door from above, with people on both sides; the leaf comes out of its pocket.
void drawWay(Sketch& sketch) {
    const Colours& c = sketch.c();
    const DoorwayAbove way{52, 116, 46, 14};
    paintDoorway(sketch, way);
    sketch.box(QRectF(-4, 50, 62, 6), c.leaf, 0.9);
    arrow(sketch, {64, 53}, {86, 53}, c.ink, 1.8);
}

void drawWatch(Sketch& sketch, bool both) {
    drawWay(sketch);
    personAbove(sketch, {132, 26});
    ringRound(sketch, {132, 26}, 14);
    if (!both)
        return;
    personAbove(sketch, {132, 82});
    ringRound(sketch, {132, 82}, 14);
}

void drawPeople(Sketch& sketch, bool clear) {
    drawWay(sketch);
    if (clear) {
        for (const QPointF& place : {QPointF(24, 20), QPointF(48, 12), QPointF(30, 88)})
            personAbove(sketch, place);
        return;
    }
    personAbove(sketch, {98, 53});
    personAbove(sketch, {84, 30});
    ringRound(sketch, {98, 53}, 15);
}

void drawStationReady(Sketch& sketch) {
    const Colours& c = sketch.c();
    paintRoom(sketch, 90);
    sketch.rounded(QRectF(96, 30, 56, 60), 3, c.card, 0.9);
    for (const double x : {108.0, 124.0, 140.0})
        lampDisc(sketch, {x, 42}, 3.4, true);
    sketch.disc({124, 64}, 9, c.selected, 0.9);
    sketch.line({{124, 64}, {124, 55}}, c.ink, 3);
    personFront(sketch, {72, 97}, 62, {79, 46}, {90, 70});
    sketch.box(QRectF(77, 34, 6, 13), c.ink, 0.4); // the hand set
    sketch.line({{81, 34}, {81, 26}}, c.ink, 1.2);
    says(sketch, QRectF(26, 6, 56, 18), {64, 33}, QCoreApplication::translate("Help", "ready"));
}

void drawSpeech(Sketch& sketch) {
    paintRoom(sketch, 90);
    personFront(sketch, {34, 97}, 52);
    personFront(sketch, {126, 97}, 52);
    says(sketch, QRectF(6, 6, 56, 22), {36, 42}, QCoreApplication::translate("Help", "start: …"));
    says(sketch, QRectF(98, 6, 56, 22), {124, 42}, QCoreApplication::translate("Help", "stop: …"));
}

void drawHandAtEdge(Sketch& sketch) {
    const Colours& c = sketch.c();
    drawWay(sketch);
    personAbove(sketch, {76, 26});
    sketch.line({{70, 30}, {62, 44}}, c.ink, 2.6);
    sketch.box(QRectF(92, 40, 18, 16), c.card, 0.9);
    sketch.line({{92, 40}, {110, 56}}, c.ink, 0.6);
    ringRound(sketch, {61, 46}, 11);
    ringRound(sketch, {101, 48}, 15);
}

} // namespace

HelpPicture peoplePicture(HelpTopic topic) {
    switch (topic) {
    case HelpTopic::Announced:
        return {showsPanel(QCoreApplication::translate("Help", "everyone nearby has heard it"),
                           drawAnnounced)};
    case HelpTopic::PeopleClear:
        return {goodPanel(QCoreApplication::translate("Help", "no one in the path or near it"),
                          [](Sketch& sketch) { drawPeople(sketch, true); }),
                badPanel(QCoreApplication::translate("Help", "someone in the opening"),
                         [](Sketch& sketch) { drawPeople(sketch, false); })};
    case HelpTopic::WatchPosted:
        return {
            goodPanel(QCoreApplication::translate("Help", "a lookout on each side of every door"),
                      [](Sketch& sketch) { drawWatch(sketch, true); }),
            badPanel(QCoreApplication::translate("Help", "no one sees the far side"),
                     [](Sketch& sketch) { drawWatch(sketch, false); })};
    case HelpTopic::StationReady:
        return {showsPanel(QCoreApplication::translate("Help", "answers on the agreed channel"),
                           drawStationReady)};
    case HelpTopic::WordsAgreed:
        return {showsPanel(QCoreApplication::translate("Help", "each word given, then read back"),
                           drawSpeech)};
    case HelpTopic::PathFree:
        return {
            goodPanel(QCoreApplication::translate("Help", "path and pocket are clear"), drawWay),
            badPanel(QCoreApplication::translate("Help", "a hand at the edge, a box in the path"),
                     drawHandAtEdge)};
    default:
        return {};
    }
}

} // namespace latchround::ui
