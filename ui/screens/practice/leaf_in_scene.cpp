// The leaves in the scene: hinged ones in perspective as they swing, a sliding one out of its
// pocket; and what is fitted to them.
#include <algorithm>
#include <cmath>

#include "ui/screens/practice/scene_drawing.h"

namespace latchround::ui {
namespace {

constexpr double nose_m = 0.025; ///< of a sliding leaf, seen in its pocket

double angleOf(const Scene& scene, bool second) {
    double wide = 1.5707963;
    if (const auto* one = std::get_if<practice::HingedLeaf>(&scene.truth.mechanism))
        wide = one->open_rad;
    if (const auto* two = std::get_if<practice::DoubleLeaf>(&scene.truth.mechanism))
        wide = second ? two->second.open_rad : two->first.open_rad;
    return wide * std::clamp(second ? scene.view.second_open : scene.view.open, 0.0, 1.0);
}

QPen leafOutline(const Scene& scene) {
    QPen pen(scene.c().ink, scene.mm(0.35));
    pen.setJoinStyle(Qt::RoundJoin);
    return pen;
}

/// The edge that is watched: a dark stripe of one width, whichever way the leaf stands.
void drawEdge(QPainter& painter, const Scene& scene, const LeafOnScreen& leaf) {
    QPen stripe(scene.c().ink, std::max(2.0, scene.mm(0.9)));
    stripe.setCapStyle(Qt::FlatCap);
    painter.setPen(stripe);
    painter.drawLine(leaf.edge_foot, leaf.edge_head);
}

void drawHosePort(QPainter& painter, const Scene& scene, const LeafOnScreen& leaf, double wide) {
    if (!scene.door.hose_port)
        return;
    const double from = 1 - 0.2 / wide;
    const double to = 1 - 0.05 / wide;
    const double foot = scene.footOfLeaf_m() + 0.05;
    painter.setPen(leafOutline(scene));
    painter.setBrush(scene.c().hull);
    painter.drawPolygon(QPolygonF({leaf.at(from, foot), leaf.at(from, foot + 0.15),
                                   leaf.at(to, foot + 0.15), leaf.at(to, foot)}));
    painter.drawLine(leaf.at(from, foot + 0.12), leaf.at(to, foot + 0.12));
}

void drawLatchHandle(QPainter& painter, const Scene& scene, const LeafOnScreen& leaf, double wide) {
    if (!scene.door.latch)
        return;
    const double u = 1 - 0.1 / wide;
    QPen bar(scene.c().ink, std::max(2.0, scene.mm(0.8)));
    bar.setCapStyle(Qt::RoundCap);
    painter.setPen(bar);
    painter.drawLine(leaf.at(u, 1.03), leaf.at(u - 0.13 / wide, 1.03));
    painter.setPen(leafOutline(scene));
    painter.setBrush(scene.c().card);
    painter.drawEllipse(leaf.at(u, 1.03), scene.eye.px(0.022), scene.eye.px(0.022));
}

void drawCloser(QPainter& painter, const Scene& scene, const LeafOnScreen& leaf) {
    painter.setPen(leafOutline(scene));
    painter.setBrush(scene.c().card);
    painter.drawPolygon(QPolygonF(
        {leaf.at(0.12, 1.88), leaf.at(0.12, 1.95), leaf.at(0.42, 1.95), leaf.at(0.42, 1.88)}));
    // The arm, to the head of the frame.
    QPen arm(scene.c().ink, std::max(1.5, scene.mm(0.6)));
    arm.setCapStyle(Qt::RoundCap);
    painter.setPen(arm);
    const double x = scene.eye.at(0, 0).x();
    const double hinge_x = leaf.hinge_head.x();
    const QPointF on_frame(hinge_x + (x - hinge_x) * 0.55,
                           scene.eye.at(0, leaf_height_m + frame_m / 2).y());
    painter.drawPolyline(QPolygonF({leaf.at(0.36, 1.95), on_frame}));
}

void drawHinged(QPainter& painter, const Scene& scene, bool second) {
    const LeafOnScreen leaf = leafOnScreen(scene, second);
    const double wide = scene.door.kind == DoorKind::DoubleLeaf ? scene.width() / 2 : scene.width();
    painter.setPen(leafOutline(scene));
    painter.setBrush(scene.c().leaf);
    painter.drawPolygon(leaf.area());
    // A raised panel, so that the swing reads as one.
    QColor line = scene.c().ink;
    line.setAlpha(110);
    painter.setPen(QPen(line, scene.mm(0.25)));
    painter.setBrush(Qt::NoBrush);
    painter.drawPolygon(QPolygonF(
        {leaf.at(0.14, 0.4), leaf.at(0.14, 1.72), leaf.at(0.82, 1.72), leaf.at(0.82, 0.4)}));
    drawCloser(painter, scene, leaf);
    const bool carries = scene.door.kind != DoorKind::DoubleLeaf || !second;
    if (carries) {
        drawHosePort(painter, scene, leaf, wide);
        drawLatchHandle(painter, scene, leaf, wide);
    }
    painter.setPen(leafOutline(scene));
    painter.setBrush(scene.c().card);
    for (const double y : {0.3, 1.0, 1.7})
        painter.drawRect(QRectF(leaf.hinge_foot.x() - scene.eye.px(0.012), leaf.at(0, y + 0.05).y(),
                                scene.eye.px(0.024), scene.eye.px(0.1)));
    if (scene.door.kind == DoorKind::DoubleLeaf && second) {
        // It must wait: its lip laps over the other leaf.
        painter.setPen(leafOutline(scene));
        painter.setBrush(scene.c().card);
        const double lip = 0.05 / wide;
        painter.drawPolygon(QPolygonF({leaf.at(1 - lip, 0.05), leaf.at(1 - lip, 1.97),
                                       leaf.at(1 + lip / 2, 1.97), leaf.at(1 + lip / 2, 0.05)}));
    }
    drawEdge(painter, scene, leaf);
}

void drawSliding(QPainter& painter, const Scene& scene) {
    const LeafOnScreen leaf = leafOnScreen(scene);
    painter.save();
    painter.setClipRect(scene.opening());
    painter.setPen(leafOutline(scene));
    painter.setBrush(scene.c().leaf);
    painter.drawPolygon(leaf.area());
    QColor line = scene.c().ink;
    line.setAlpha(110);
    painter.setPen(QPen(line, scene.mm(0.25)));
    for (const double y : {0.5, 1.0, 1.5})
        painter.drawLine(leaf.at(0, y), leaf.at(1, y));
    drawHosePort(painter, scene, leaf, scene.width());
    drawLatchHandle(painter, scene, leaf, scene.width());
    if (scene.door.designed_to_reopen) {
        const double lip = 0.035 / scene.width();
        painter.setPen(leafOutline(scene));
        painter.setBrush(scene.c().bar_filled);
        painter.drawPolygon(QPolygonF(
            {leaf.at(1 - lip, 0.06), leaf.at(1 - lip, 1.97), leaf.at(1, 1.97), leaf.at(1, 0.06)}));
    }
    drawEdge(painter, scene, leaf);
    painter.restore();
    // Where it goes when it is open, behind the lining.
    const double side = scene.toward();
    QPen hidden(scene.c().edge, scene.mm(0.3));
    hidden.setDashPattern({4, 3});
    painter.setPen(hidden);
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(scene.eye.box(side * (scene.half() + frame_m), 0.02,
                                   side * (scene.half() + scene.width()), leaf_height_m));
}

} // namespace

QPointF LeafOnScreen::at(double u, double y) const {
    // Along the leaf things shrink with distance: the middle of it is not half way on screen.
    const double hinge_high = hinge_foot.y() - hinge_head.y();
    const double edge_high = edge_foot.y() - edge_head.y();
    const double t = u * hinge_high / (u * hinge_high + (1 - u) * edge_high);
    const double v = y / leaf_height_m;
    const QPointF foot = hinge_foot + (edge_foot - hinge_foot) * t;
    const QPointF head = hinge_head + (edge_head - hinge_head) * t;
    return foot + (head - foot) * v;
}

LeafOnScreen leafOnScreen(const Scene& scene, bool second) {
    const SceneEye& eye = scene.eye;
    const double foot = scene.footOfLeaf_m();
    const double head = leaf_height_m - 0.005;
    if (scene.door.kind == DoorKind::Sliding) {
        const double open = std::clamp(scene.view.open, 0.0, 1.0);
        const double edge =
            scene.toward() * (scene.half() - nose_m - (1 - open) * (scene.width() - nose_m));
        const double back = edge + scene.toward() * scene.width();
        return {eye.at(back, foot), eye.at(back, head), eye.at(edge, foot), eye.at(edge, head)};
    }
    const bool two = scene.door.kind == DoorKind::DoubleLeaf;
    const double side = second ? -scene.toward() : scene.toward();
    const double wide = (two ? scene.half() : scene.width()) - 0.006;
    const double angle = angleOf(scene, second);
    const double x = side * (scene.half() - 0.004 - wide * std::cos(angle));
    const double hinge = side * (scene.half() - 0.004);
    const double z = scene.swing() * wide * std::sin(angle);
    return {eye.at(hinge, foot), eye.at(hinge, head), eye.at(x, foot, z), eye.at(x, head, z)};
}

void drawLeaves(QPainter& painter, const Scene& scene) {
    if (scene.door.kind == DoorKind::Sliding) {
        drawSliding(painter, scene);
        return;
    }
    painter.save();
    if (scene.swing() > 0)
        painter.setClipRect(scene.opening());
    // The one with the lip lies over the other when both are home.
    drawHinged(painter, scene, false);
    if (scene.door.kind == DoorKind::DoubleLeaf)
        drawHinged(painter, scene, true);
    painter.restore();
}

} // namespace latchround::ui
