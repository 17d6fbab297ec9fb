// What the pictures of help are put together from: people, arrows, clocks, a door from above and
// from the front. Places are those of the sheet (Sketch): 160 wide, 100 high.
#pragma once

#include "ui/drawings/sketch.h"

namespace latchround::ui {

/// Fills the sheet with the wall behind everything.
void paintWall(Sketch& sketch);
/// Fills the sheet with the wall, and the deck from `y` down.
void paintRoom(Sketch& sketch, double y);

/// A ring round the thing to look at.
void ringRound(Sketch& sketch, QPointF middle, double radius);

void arrow(Sketch& sketch, QPointF from, QPointF to, const QColor& colour, double width = 1.6);
/// Along a circle, degrees counter-clockwise from the right, its point at `to_deg`.
void arcArrow(Sketch& sketch, QPointF middle, double radius, double from_deg, double to_deg,
              const QColor& colour);
/// A length with its two ends, and words on it.
void dimension(Sketch& sketch, QPointF from, QPointF to, const QString& words);
/// A round face with the part that has passed, 0 to 1.
void clockFace(Sketch& sketch, QPointF middle, double radius, double passed);

/// Standing, seen from the front; the hands reach where they are told.
void personFront(Sketch& sketch, QPointF foot, double height, QPointF left_hand,
                 QPointF right_hand);
/// Standing with arms down.
void personFront(Sketch& sketch, QPointF foot, double height);
/// Seen from above.
void personAbove(Sketch& sketch, QPointF middle);
/// A block of soft foam.
void softBlock(Sketch& sketch, const QRectF& area);
/// A spring gauge that is pulled from its hook to its ring.
void springGauge(Sketch& sketch, QPointF hook, QPointF ring);
/// Sound that goes out to one side.
void alarmHorn(Sketch& sketch, QPointF from, double direction);
/// A cable, cut through at its middle where `cut`.
void cable(Sketch& sketch, QPointF from, QPointF to, bool cut);
/// A lamp that is lit, or dark.
void lampDisc(Sketch& sketch, QPointF middle, double radius, bool lit);

/// A doorway seen from above: wall to the left and to the right of the opening.
struct DoorwayAbove {
    double left = 46;
    double right = 114;
    double wall = 70; ///< the near face of the wall
    double thick = 12;

    QPointF hinge() const { return {left, wall}; }
    double wide() const { return right - left; }
};
void paintDoorway(Sketch& sketch, const DoorwayAbove& doorway);
/// A leaf from its hinge, opened by so many degrees towards the top of the sheet; `hung_right`: its
/// hinge is the right one. A ghost is where the leaf was, or will be.
void leafAbove(Sketch& sketch, QPointF hinge, double length, double open_deg,
               bool hung_right = false, bool ghost = false);
/// Where the free edge of such a leaf is.
QPointF edgeOf(QPointF hinge, double length, double open_deg, bool hung_right = false);

/// A doorway from the front with a hinged leaf, hung at the left, open by 0 to 1. Returns the leaf.
QRectF doorFront(Sketch& sketch, const QRectF& opening, double open);
/// The same with a sliding leaf that comes out of the wall at the left.
QRectF slidingFront(Sketch& sketch, const QRectF& opening, double open);

} // namespace latchround::ui
