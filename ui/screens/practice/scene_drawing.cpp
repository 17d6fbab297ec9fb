#include "ui/screens/practice/scene_drawing.h"
#include "ui/drawings/places.h"

#include <cmath>

#include "core/evidence/run_sequence.h"

namespace latchround::ui {
namespace {

constexpr double ceiling_m = 2.42;
constexpr double far_m = 3.2; ///< to the far wall of the room behind

QPen outlineOf(const Scene& scene, double width_mm = 0.3) {
    QPen pen(scene.c().ink, scene.mm(width_mm));
    pen.setJoinStyle(Qt::RoundJoin);
    return pen;
}

/// Floor covering: short strokes in rows, so that it is seen where it ends.
void drawCovering(QPainter& painter, const Scene& scene, double left, double right, double near_m,
                  double away_m) {
    QPen stroke(scene.c().edge, std::max(1.0, scene.mm(0.18)));
    painter.setPen(stroke);
    int row = 0;
    for (const double z : places(near_m, away_m, 0.11)) {
        for (const double x : places(left + (row % 2) * 0.1, right - 0.05, 0.2))
            painter.drawLine(scene.eye.at(x, 0, z), scene.eye.at(x + 0.06, 0, z));
        ++row;
    }
}

} // namespace

double Scene::footOfLeaf_m() const {
    // A raised sill covers the foot of the leaf; without one the gap is open to the eye.
    return door.sill_in_frame && truth.sill ? 0.02 : 2 * truth.gap_mm / 1000;
}

void drawFarRoom(QPainter& painter, const Scene& scene) {
    const QRectF opening = scene.opening();
    const SceneEye& eye = scene.eye;
    painter.save();
    painter.setClipRect(opening);
    painter.fillRect(opening, scene.c().paper);
    const double wide = scene.half() + 0.35;
    const QPolygonF floor = eye.mat(-wide, 0, wide, far_m);
    painter.setPen(Qt::NoPen);
    painter.setBrush(scene.c().hairline);
    painter.drawPolygon(floor);
    drawCovering(painter, scene, -wide, wide, scene.truth.sill ? 0.22 : 0.0, far_m - 0.1);
    painter.setPen(QPen(scene.c().edge, scene.mm(0.2)));
    for (const double x : {-wide, wide}) {
        painter.drawLine(eye.at(x, 0, 0), eye.at(x, 0, far_m));
        painter.drawLine(eye.at(x, ceiling_m, 0), eye.at(x, ceiling_m, far_m));
        painter.drawLine(eye.at(x, 0, far_m), eye.at(x, ceiling_m, far_m));
    }
    painter.drawLine(eye.at(-wide, 0, far_m), eye.at(wide, 0, far_m));
    // A handrail along the far wall.
    painter.drawLine(eye.at(-wide, 0.95, far_m), eye.at(wide, 0.95, far_m));
    painter.restore();
}

void drawBulkhead(QPainter& painter, const Scene& scene, const QRectF& within) {
    const SceneEye& eye = scene.eye;
    const double deck = eye.at(0, 0).y();
    const double head = eye.at(0, ceiling_m).y();
    const QRectF hole = scene.opening();
    painter.fillRect(QRectF(within.topLeft(), QPointF(within.right(), deck)), scene.c().hull);
    painter.fillRect(QRectF(within.left(), deck, within.width(), within.bottom() - deck),
                     scene.c().hairline);
    painter.fillRect(QRectF(within.left(), within.top(), within.width(), head - within.top()),
                     scene.c().card);
    const double wide = within.width() / eye.px_per_m;
    drawCovering(painter, scene, -wide / 2 - 1, wide / 2 + 1, -1.2, -0.04);
    painter.setPen(outlineOf(scene, 0.35));
    painter.drawLine(QPointF(within.left(), head), QPointF(within.right(), head));
    for (const auto& [from, to] :
         {std::pair{within.left(), hole.left()}, std::pair{hole.right(), within.right()}})
        painter.drawLine(QPointF(from, deck), QPointF(to, deck));
    // Panel joints of the lining and the skirting, quiet.
    painter.setPen(QPen(scene.c().edge, std::max(1.0, scene.mm(0.15))));
    const double skirting = eye.at(0, 0.1).y();
    painter.drawLine(QPointF(within.left(), skirting), QPointF(hole.left(), skirting));
    painter.drawLine(QPointF(hole.right(), skirting), QPointF(within.right(), skirting));
    for (double x = scene.half() + 0.95; eye.px(x) < within.width(); x += 0.9)
        for (const double to : {-x, x})
            painter.drawLine(eye.at(to, 0.1), eye.at(to, ceiling_m));
}

void drawFrame(QPainter& painter, const Scene& scene) {
    const SceneEye& eye = scene.eye;
    const double half = scene.half();
    const double out = half + frame_m;
    painter.setPen(outlineOf(scene));
    painter.setBrush(scene.c().card);
    QPolygonF frame({eye.at(-out, 0), eye.at(-out, leaf_height_m + frame_m),
                     eye.at(out, leaf_height_m + frame_m), eye.at(out, 0), eye.at(half, 0),
                     eye.at(half, leaf_height_m), eye.at(-half, leaf_height_m), eye.at(-half, 0)});
    painter.drawPolygon(frame);
    // The seal runs round the inside of the frame.
    const double in = half + 0.018;
    QPen seal(scene.c().ink, std::max(1.5, eye.px(0.02)));
    seal.setJoinStyle(Qt::MiterJoin);
    seal.setCapStyle(Qt::FlatCap);
    painter.setPen(seal);
    painter.setBrush(Qt::NoBrush);
    painter.drawPolyline(QPolygonF({eye.at(-in, 0.02), eye.at(-in, leaf_height_m + 0.018),
                                    eye.at(in, leaf_height_m + 0.018), eye.at(in, 0.02)}));
    if (scene.truth.painted_seal) {
        // Paint in the colour of the bulkhead, over the seal at the edge side, with runs.
        const double edge = -scene.toward();
        painter.setPen(QPen(scene.c().edge, std::max(1.0, scene.mm(0.15))));
        painter.setBrush(scene.c().hull);
        QPolygonF paint;
        const double from = edge * (half - 0.002);
        const double to = edge * (half + 0.05);
        paint << eye.at(from, 1.72) << eye.at(to, 1.78) << eye.at(to, 0.98)
              << eye.at(edge * (half + 0.03), 0.86) << eye.at(edge * (half + 0.024), 1.0)
              << eye.at(edge * (half + 0.014), 0.79) << eye.at(edge * (half + 0.008), 1.02)
              << eye.at(from, 0.93);
        painter.drawPolygon(paint);
    }
    if (!scene.truth.sill)
        return;
    const double rises = scene.door.sill_in_frame ? 0.055 : 0.012;
    painter.setPen(outlineOf(scene, 0.25));
    painter.setBrush(scene.c().edge);
    QPolygonF step = eye.mat(-half, 0, half, -0.09);
    painter.drawPolygon(step);
    painter.drawRect(eye.box(-half, 0, half, rises));
}

void drawLyingAbout(QPainter& painter, const Scene& scene) {
    const SceneEye& eye = scene.eye;
    if (scene.truth.pocket_litter) {
        // A cup, crumpled paper and an end of line stick out of the pocket at the deck.
        const double jamb = scene.toward() * scene.half();
        const double in = -scene.toward();
        painter.setPen(outlineOf(scene, 0.25));
        painter.setBrush(scene.c().card);
        painter.drawPolygon(
            QPolygonF({eye.at(jamb + in * 0.005, 0.01), eye.at(jamb + in * 0.02, 0.14),
                       eye.at(jamb + in * 0.1, 0.13), eye.at(jamb + in * 0.085, 0.01)}));
        painter.drawPolygon(
            QPolygonF({eye.at(jamb + in * 0.1, 0.0), eye.at(jamb + in * 0.11, 0.05),
                       eye.at(jamb + in * 0.15, 0.08), eye.at(jamb + in * 0.2, 0.05),
                       eye.at(jamb + in * 0.21, 0.01), eye.at(jamb + in * 0.16, 0)}));
        painter.drawLine(eye.at(jamb + in * 0.11, 0.05), eye.at(jamb + in * 0.17, 0.03));
        QPen line(scene.c().leaf, scene.mm(0.5));
        painter.setPen(line);
        painter.drawPolyline(
            QPolygonF({eye.at(jamb + in * 0.02, 0.2), eye.at(jamb + in * 0.06, 0.24),
                       eye.at(jamb + in * 0.09, 0.19), eye.at(jamb + in * 0.13, 0.21)}));
    }
    if (!scene.view.wedge)
        return;
    const LeafOnScreen leaf = leafOnScreen(scene);
    const QPointF foot = leaf.at(scene.door.kind == DoorKind::Sliding ? 1.0 : 0.93, 0);
    const double size = eye.px(0.2);
    // Its thick end stands into the way of the leaf.
    const double way = scene.door.kind == DoorKind::Sliding ? -scene.toward() : scene.toward() * -1;
    painter.setPen(outlineOf(scene, 0.3));
    painter.setBrush(scene.c().bar_filled);
    painter.drawPolygon(QPolygonF({foot + QPointF(-way * size * 0.15, size * 0.12),
                                   foot + QPointF(way * size * 0.95, size * 0.12),
                                   foot + QPointF(way * size * 0.95, -size * 0.32)}));
}

void drawAlarm(QPainter& painter, const Scene& scene) {
    const SceneEye& eye = scene.eye;
    const QPointF lamp = eye.at(0, leaf_height_m + 0.22);
    const double r = std::max(scene.mm(1.2), eye.px(0.045));
    if (!scene.view.alarm) {
        if (!soundsAlarm(scene.door))
            return;
        painter.setPen(outlineOf(scene, 0.25));
        painter.setBrush(scene.c().card);
        painter.drawEllipse(lamp, r, r);
        return;
    }
    painter.setPen(Qt::NoPen);
    painter.setBrush(scene.c().alarm);
    painter.drawEllipse(lamp, r, r);
    QPen ray(scene.c().alarm, scene.mm(0.5));
    ray.setCapStyle(Qt::RoundCap);
    painter.setPen(ray);
    for (int i = 0; i < 8; ++i) {
        const double angle = i * 0.7853981633974483;
        const QPointF way(std::cos(angle), std::sin(angle));
        painter.drawLine(lamp + way * r * 1.4, lamp + way * r * 1.95);
    }
}

} // namespace latchround::ui
