// Pictures of what holds, carries and shuts a leaf, and of where it meets its frame.
#include <QCoreApplication>
#include <QLocale>

#include "ui/help/panels.h"
#include "ui/help/scenery.h"

namespace latchround::ui {
namespace {

/// The leaf hangs low at its free end: the gap over it is a wedge, and it rubs at the sill.
void drawDroppedLeaf(Sketch& sketch) {
    const Colours& c = sketch.c();
    paintRoom(sketch, 90);
    sketch.box(QRectF(39, 7, 82, 83), c.card, 0.8);
    sketch.box(QRectF(44, 12, 72, 78), sketch.hollow(), 0.8);
    sketch.shape({{44, 14}, {114, 24}, {114, 90}, {44, 86}}, c.leaf, 0.9);
    for (const double y : {22.0, 68.0})
        sketch.box(QRectF(42, y, 4, 10), c.edge, 0.5);
    for (const double x : {92.0, 98.0, 104.0})
        sketch.line({{x, 89}, {x + 5, 86}}, c.bar_filled, 1.2);
    ringRound(sketch, {106, 17}, 10);
    ringRound(sketch, {102, 88}, 10);
}

void drawEvenGap(Sketch& sketch) {
    const Colours& c = sketch.c();
    paintRoom(sketch, 90);
    sketch.box(QRectF(39, 7, 82, 83), c.card, 0.8);
    sketch.box(QRectF(44, 12, 72, 78), sketch.hollow(), 0.8);
    sketch.box(QRectF(46, 15, 68, 72), c.leaf, 0.9);
    for (const double y : {22.0, 68.0}) {
        sketch.box(QRectF(42, y, 6, 10), c.edge, 0.5);
        sketch.screw({49.5, y + 3}, 1.3);
        sketch.screw({49.5, y + 7}, 1.3);
    }
    ringRound(sketch, {80, 14}, 10);
}

/// The same closer with oil running from it, and its arm off the frame.
void drawLeakingCloser(Sketch& sketch) {
    const Colours& c = sketch.c();
    paintWall(sketch);
    sketch.box(QRectF(-2, 4, 164, 20), c.card);
    sketch.box(QRectF(10, 28, 152, 76), c.leaf);
    sketch.box(QRectF(108, 9, 26, 10), c.selected);
    sketch.screw({113, 14});
    sketch.screw({129, 14});
    for (const double width : {5.0, 3.4})
        sketch.line({{52, 46}, {86, 34}, {104, 36}}, width > 4 ? c.ink : c.edge, width);
    sketch.rounded(QRectF(26, 42, 86, 26), 3, c.card);
    sketch.disc({52, 50}, 5.5, c.edge);
    sketch.disc({52, 50}, 2, c.card);
    for (const double x : {44.0, 58.0, 92.0}) {
        sketch.line({{x, 68}, {x + 1, 84}}, c.ink, 1.2);
        sketch.shape({{x + 1, 80}, {x + 3.5, 87}, {x + 1, 90}, {x - 1.5, 87}}, c.ink, 0.4);
    }
    ringRound(sketch, {108, 28}, 14);
    ringRound(sketch, {54, 80}, 14);
}

/// The edge of an open leaf, its bolt against a rule.
void drawLatchThrow(Sketch& sketch) {
    const Colours& c = sketch.c();
    paintWall(sketch);
    sketch.box(QRectF(-2, 8, 78, 66), c.leaf, 0.9);
    sketch.box(QRectF(34, 22, 42, 36), c.selected);
    sketch.shape({{50, 32}, {106, 32}, {112, 40}, {112, 48}, {50, 48}}, c.edge, 0.9);
    sketch.line({{76, 8}, {76, 74}}, c.ink, 1.4);
    dimension(sketch, {76, 66}, {112, 66}, {});
    sketch.level(
        {76, 78}, 1.8, 36, [](int mm) { return QLocale().toString(mm); }, 10);
    sketch.words(QRectF(52, 84, 18, 8), QStringLiteral("mm"), 6, c.ink);
}

void drawMeeting(Sketch& sketch) {
    const Colours& c = sketch.c();
    paintWall(sketch);
    sketch.box(QRectF(-4, 34, 78, 32), c.leaf, 0.9);
    sketch.box(QRectF(86, 34, 78, 32), c.leaf, 0.9);
    sketch.box(QRectF(78, 8, 4, 76), c.selected, 0.8); // the feeler
    dimension(sketch, {74, 76}, {86, 76}, {});
    ringRound(sketch, {80, 50}, 20);
}

void drawHeadOfLeaf(Sketch& sketch) {
    const Colours& c = sketch.c();
    paintWall(sketch);
    sketch.box(QRectF(10, -4, 140, 24), c.card, 0.9);
    sketch.box(QRectF(10, 16, 18, 88), c.card, 0.9);
    sketch.box(QRectF(132, 16, 18, 88), c.card, 0.9);
    sketch.painter().fillRect(QRectF(28, 20, 104, 80), sketch.hollow());
    sketch.box(QRectF(36, 28, 88, 80), c.leaf, 0.9);
    for (const QPointF& spot : {QPointF(80, 24), QPointF(32, 64), QPointF(128, 64)})
        ringRound(sketch, spot, 9);
}

/// Cut through from above: how far the shut leaf laps over the stop of its frame.
void drawStop(Sketch& sketch, double lap) {
    const Colours& c = sketch.c();
    paintWall(sketch);
    sketch.shape({{162, 10}, {104, 10}, {104, 34}, {86, 34}, {86, 66}, {162, 66}}, c.card, 0.9);
    sketch.box(QRectF(-4, 66, 90 + lap, 26), c.leaf, 0.9);
    dimension(sketch, {86, 46}, {86 + lap, 46}, {});
    sketch.line({{86 + lap, 40}, {86 + lap, 92}}, c.ink, 0.6);
    sketch.line({{86, 66}, {86, 92}}, c.ink, 0.6);
}

} // namespace

HelpPicture fittingPicture(HelpTopic topic) {
    switch (topic) {
    case HelpTopic::Seals: {
        ShownDoor painted = shutDoor();
        painted.truth.painted_seal = true;
        return {goodPanel(QCoreApplication::translate("Help", "the strip is flush and unbroken"),
                          closeUp(drawSeals, shutDoor())),
                badPanel(QCoreApplication::translate("Help", "painted over"),
                         closeUp(drawSeals, painted))};
    }
    case HelpTopic::Hinges:
        return {goodPanel(QCoreApplication::translate("Help", "the gap over the leaf is even"),
                          drawEvenGap),
                badPanel(QCoreApplication::translate("Help", "hangs low and rubs on the sill"),
                         drawDroppedLeaf)};
    case HelpTopic::Closer:
        return {goodPanel(QCoreApplication::translate("Help", "dry, arm secure at both ends"),
                          closeUp(drawCloserClose, shutDoor())),
                badPanel(QCoreApplication::translate("Help", "leaks oil, arm is off"),
                         drawLeakingCloser)};
    case HelpTopic::Latch: {
        ShownDoor short_bolt = shutDoor();
        short_bolt.truth.latches = false;
        return {
            goodPanel(QCoreApplication::translate("Help", "the bolt is home in its strike"),
                      closeUp(drawLatch, shutDoor())),
            badPanel(QCoreApplication::translate("Help", "the bolt falls short: a push opens it"),
                     closeUp(drawLatch, short_bolt))};
    }
    case HelpTopic::LatchThrow:
        return {showsPanel(
            QCoreApplication::translate("Help", "from the edge of the leaf to the tip of the bolt"),
            drawLatchThrow)};
    case HelpTopic::MeetingGap:
        return {showsPanel(QCoreApplication::translate("Help", "a feeler between the two leaves"),
                           drawMeeting),
                showsPanel(QCoreApplication::translate("Help", "double-swing door: top and sides"),
                           drawHeadOfLeaf)};
    case HelpTopic::FrameStop:
        return {goodPanel(QCoreApplication::translate("Help", "overlaps the stop well"),
                          [](Sketch& sketch) { drawStop(sketch, 34); }),
                badPanel(QCoreApplication::translate("Help", "hardly touches the stop"),
                         [](Sketch& sketch) { drawStop(sketch, 10); })};
    default:
        return {};
    }
}

} // namespace latchround::ui
