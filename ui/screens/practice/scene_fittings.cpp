// What is fitted beside a door: its number, plate and local release, the hold-back, a hook; and
// somebody who walks through.
#include <algorithm>
#include <cmath>

#include <QPainterPath>

#include "ui/screens/practice/scene_drawing.h"
#include "ui/words/plain_text.h"

namespace latchround::ui {
namespace {

QPen fittingOutline(const Scene& scene, double width_mm = 0.3) {
    QPen pen(scene.c().ink, scene.mm(width_mm));
    pen.setJoinStyle(Qt::RoundJoin);
    pen.setCapStyle(Qt::RoundCap);
    return pen;
}

void drawWords(QPainter& painter, const Scene& scene, const QRectF& area, const QString& words,
               double height_px, bool bold) {
    constexpr double readable_mm = 1.2;
    if (height_px < scene.mm(readable_mm))
        return; // its outline would fill the plate
    QFont font = textFont(TextSize::Small, scene.look.sizes, bold);
    font.setPixelSize(int(height_px));
    painter.setFont(font);
    painter.setPen(scene.c().ink);
    painter.drawText(area, Qt::AlignCenter | Qt::TextDontClip, words);
}

void drawPlates(QPainter& painter, const Scene& scene) {
    const double edge = -scene.toward();
    const double x = edge * scene.beside_m();
    painter.setPen(fittingOutline(scene));
    painter.setBrush(scene.c().card);
    const QRectF number = scene.eye.box(x - 0.17, 1.7, x + 0.17, 1.86);
    painter.drawRect(number);
    drawWords(painter, scene, number, plainText(scene.door.number), number.height() * 0.72, true);
    if (scene.truth.plate_state != PlateState::None) {
        painter.setPen(fittingOutline(scene));
        painter.setBrush(scene.c().selected);
        const QRectF plate = scene.eye.box(x - 0.1, 1.5, x + 0.1, 1.6);
        painter.drawRect(plate);
        if (scene.truth.plate_state == PlateState::Read)
            drawWords(painter, scene, plate, plainText(word(scene.truth.plate)),
                      plate.height() * 0.62, false);
    }
    // The local release: a box with its lever.
    painter.setPen(fittingOutline(scene));
    painter.setBrush(scene.c().card);
    painter.drawRect(scene.eye.box(x - 0.07, 1.05, x + 0.07, 1.3));
    painter.setPen(fittingOutline(scene, 0.8));
    painter.drawLine(scene.eye.at(x, 1.17), scene.eye.at(x + 0.03, 1.25));
}

void drawHook(QPainter& painter, const Scene& scene) {
    if (!scene.truth.hook)
        return;
    // An eye plate on the bulkhead, the hook hanging from it.
    const SceneEye& eye = scene.eye;
    const double x = scene.toward() * (scene.half() + 0.17);
    painter.setPen(fittingOutline(scene));
    painter.setBrush(scene.c().card);
    painter.drawRect(eye.box(x - 0.035, 1.2, x + 0.035, 1.3));
    QPen bar(scene.c().ink, std::max(2.0, eye.px(0.018)));
    bar.setCapStyle(Qt::RoundCap);
    bar.setJoinStyle(Qt::RoundJoin);
    painter.setPen(bar);
    painter.setBrush(Qt::NoBrush);
    painter.drawPolyline(QPolygonF({eye.at(x, 1.25), eye.at(x, 0.98), eye.at(x - 0.02, 0.95),
                                    eye.at(x - 0.055, 0.96), eye.at(x - 0.06, 1.0)}));
}

} // namespace

void drawHoldBack(QPainter& painter, const Scene& scene) {
    if (!scene.door.hold_back)
        return;
    const SceneEye& eye = scene.eye;
    painter.setPen(fittingOutline(scene));
    painter.setBrush(scene.c().edge);
    if (!isHinged(scene.door.kind)) {
        const double jamb = scene.toward() * (scene.half() + 0.035);
        painter.drawRect(eye.box(jamb - 0.03, 1.45, jamb + 0.03, 1.55));
        return;
    }
    // A post on the deck where the edge of the open leaf stands.
    const bool two = scene.door.kind == DoorKind::DoubleLeaf;
    for (const double side : {scene.toward(), -scene.toward()}) {
        if (!two && side != scene.toward())
            continue;
        const double wide = two ? scene.half() : scene.width();
        const double z = scene.swing() * (wide + 0.02);
        const double x = side * (scene.half() + 0.015);
        const double r = eye.px(0.035, z);
        const QPointF foot = eye.at(x, 0, z);
        const QPointF top = eye.at(x, 0.32, z);
        painter.drawRect(
            QRectF(QPointF(top.x() - r * 0.5, top.y()), QPointF(foot.x() + r * 0.5, foot.y())));
        painter.drawEllipse(top, r, r);
    }
}

void drawFittings(QPainter& painter, const Scene& scene) {
    drawPlates(painter, scene);
    drawHook(painter, scene);
}

void drawPerson(QPainter& painter, const Scene& scene, bool behind) {
    if (!scene.view.person && !scene.view.somebody_waits)
        return;
    const double way = scene.view.person.value_or(0.5);
    const double z = (way - 0.5) * 1.9 * scene.swing();
    if ((z > 0.05) != behind)
        return;
    const SceneEye& eye = scene.eye;
    const auto at = [&](double x, double y) { return eye.at(x, y, z); };
    const auto px = [&](double metres) { return eye.px(metres, z); };
    painter.save();
    if (behind)
        painter.setClipRect(scene.opening());
    // One outline of head, body, arms and legs; one foot lifts as the other stands.
    const double step = scene.view.person ? std::sin(way * 25) * 0.09 : 0;
    QPainterPath figure;
    figure.setFillRule(Qt::WindingFill);
    const auto limb = [&](double x, double top, double foot, double wide) {
        figure.addRoundedRect(QRectF(at(x - wide / 2, top), at(x + wide / 2, foot)), px(wide / 2),
                              px(wide / 2));
    };
    for (const double side : {-1.0, 1.0}) {
        limb(side * 0.085, 0.95, std::max(0.0, side * step), 0.13);
        limb(side * 0.215, 1.4, 0.82 + side * step * 0.5, 0.085);
    }
    figure.addRoundedRect(QRectF(at(-0.16, 1.4), at(0.16, 0.78)), px(0.06), px(0.06));
    figure.addRoundedRect(QRectF(at(-0.257, 1.42), at(0.257, 1.22)), px(0.09), px(0.09));
    limb(0, 1.55, 1.3, 0.1);
    figure.addEllipse(at(0, 1.57), px(0.095), px(0.12));
    painter.setPen(fittingOutline(scene));
    painter.setBrush(scene.c().edge);
    painter.drawPath(figure.simplified());
    painter.restore();
}

} // namespace latchround::ui
