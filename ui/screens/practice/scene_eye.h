// Where one stands before a door and how large it looks from there. Metres: x to the right and y up
// from the middle of the opening at the deck, z away into the picture. The plane of the door is
// z = 0.
#pragma once

#include <QPointF>
#include <QPolygonF>
#include <QRectF>

namespace latchround::ui {

struct SceneEye {
    double px_per_m = 200; ///< in the plane of the door
    QPointF ground;        ///< on screen: middle of the opening, at the deck
    double height_m = 1.5; ///< of the eye
    double away_m = 4.2;   ///< of the eye from the door

    QPointF at(double x, double y, double z = 0) const {
        const double s = away_m / (away_m + z) * px_per_m;
        return {ground.x() + x * s, ground.y() - height_m * px_per_m - (y - height_m) * s};
    }
    double px(double metres, double z = 0) const {
        return metres * away_m / (away_m + z) * px_per_m;
    }
    /// Upright in the plane of the door, between two corners.
    QRectF box(double x, double y, double to_x, double to_y) const {
        return QRectF(at(x, y), at(to_x, to_y)).normalized();
    }
    /// Lying on the deck.
    QPolygonF mat(double x, double z, double to_x, double to_z) const {
        return QPolygonF({at(x, 0, z), at(to_x, 0, z), at(to_x, 0, to_z), at(x, 0, to_z)});
    }
};

} // namespace latchround::ui
