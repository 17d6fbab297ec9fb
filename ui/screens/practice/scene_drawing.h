// The scene in layers, from the far room to what stands before the bulkhead. All of it as seen from
// one side; only what is there is drawn, nothing is said about it.
#pragma once

#include <QPainter>

#include "core/practice/door_truth.h"
#include "core/practice/stage.h"
#include "ui/look/look.h"
#include "ui/screens/practice/scene_eye.h"

namespace latchround::ui {

inline constexpr double leaf_height_m = 2.0;
inline constexpr double frame_m = 0.07;

struct Scene {
    const Door& door;
    const practice::DoorTruth& truth;
    const practice::DoorView& view;
    bool side_two = false;
    SceneEye eye;
    const Appearance& look;

    const Colours& c() const { return look.colours; }
    double mm(double millimetres) const { return millimetres * look.sizes.px_per_mm; }
    double half() const { return width() / 2; }
    double width() const { return door.opening_m > 0.3 ? door.opening_m : 0.9; }
    /// Hinges (of the first leaf) or pocket are at -1 or at +1 of the opening as seen from here.
    double toward() const { return side_two ? 1 : -1; }
    /// +1: hinged leaves swing away from the eye, -1: towards it.
    double swing() const { return side_two ? -1 : 1; }
    QRectF opening() const { return eye.box(-half(), 0, half(), leaf_height_m); }
    /// From the middle of the opening to number and local release, clear of an open leaf.
    double beside_m() const { return half() + (door.kind == DoorKind::DoubleLeaf ? 0.55 : 0.3); }
    /// How high a shut leaf ends above the deck. Drawn twice what it is, as the eye makes it.
    double footOfLeaf_m() const;
};

/// One leaf of the door as an area on screen: foot and head of the hinge side, then of the edge.
struct LeafOnScreen {
    QPointF hinge_foot;
    QPointF hinge_head;
    QPointF edge_foot;
    QPointF edge_head;
    /// A place on it: `u` 0 at the hinges to 1 at the edge, `y` metres above the deck.
    QPointF at(double u, double y) const;
    QPolygonF area() const { return QPolygonF({hinge_foot, hinge_head, edge_head, edge_foot}); }
};
/// The leaf that closes first, or the other one of a double door.
LeafOnScreen leafOnScreen(const Scene& scene, bool second = false);

void drawFarRoom(QPainter& painter, const Scene& scene);
void drawBulkhead(QPainter& painter, const Scene& scene, const QRectF& within);
void drawFrame(QPainter& painter, const Scene& scene);
void drawFittings(QPainter& painter, const Scene& scene);
/// What holds the leaf open, where it is held.
void drawHoldBack(QPainter& painter, const Scene& scene);
void drawLeaves(QPainter& painter, const Scene& scene);
/// Wedge and litter.
void drawLyingAbout(QPainter& painter, const Scene& scene);
void drawAlarm(QPainter& painter, const Scene& scene);
/// Somebody in the opening, where there is one: before the plane of the door, or behind it.
void drawPerson(QPainter& painter, const Scene& scene, bool behind);

} // namespace latchround::ui
