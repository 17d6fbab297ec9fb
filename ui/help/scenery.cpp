#include "ui/help/scenery.h"

#include <array>
#include <cmath>
#include <numbers>
#include <utility>

#include "ui/drawings/places.h"

namespace latchround::ui {
namespace {

double radians(double degrees) {
    return degrees * std::numbers::pi / 180;
}

/// The two strokes of an arrow's head, `along` being the way it points.
void arrowHead(Sketch& sketch, QPointF tip, double along, const QColor& colour, double width) {
    constexpr double length = 5;
    constexpr double spread = 0.55;
    const auto back = [&](double turn) {
        return tip - length * QPointF(std::cos(along + turn), std::sin(along + turn));
    };
    sketch.line({back(spread), tip, back(-spread)}, colour, width);
}

QPointF onCircle(QPointF middle, double radius, double degrees) {
    return middle + radius * QPointF(std::cos(radians(degrees)), -std::sin(radians(degrees)));
}

} // namespace

void paintWall(Sketch& sketch) {
    sketch.painter().fillRect(QRectF(0, 0, Sketch::wide, Sketch::high), sketch.c().hull);
}

void paintRoom(Sketch& sketch, double y) {
    paintWall(sketch);
    sketch.painter().fillRect(QRectF(0, y, Sketch::wide, Sketch::high - y), sketch.c().hairline);
    sketch.line({{0, y}, {Sketch::wide, y}}, sketch.c().ink, 0.8);
}

void ringRound(Sketch& sketch, QPointF middle, double radius) {
    QPainter& painter = sketch.painter();
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(sketch.c().card, 4));
    painter.drawEllipse(middle, radius, radius);
    painter.setPen(QPen(sketch.c().accent, 2));
    painter.drawEllipse(middle, radius, radius);
}

void arrow(Sketch& sketch, QPointF from, QPointF to, const QColor& colour, double width) {
    const QPointF way = to - from;
    // A rim keeps it apart from whatever it lies on.
    for (const auto& [ink, wide] :
         {std::pair{sketch.c().card, width + 2}, std::pair{colour, width}}) {
        sketch.line({from, to}, ink, wide);
        arrowHead(sketch, to, std::atan2(way.y(), way.x()), ink, wide);
    }
}

void arcArrow(Sketch& sketch, QPointF middle, double radius, double from_deg, double to_deg,
              const QColor& colour) {
    constexpr int pieces = 16;
    QPolygonF way;
    for (int i = 0; i <= pieces; ++i)
        way << onCircle(middle, radius, from_deg + (to_deg - from_deg) * i / pieces);
    sketch.line(way, colour, 1.6);
    const QPointF last = way.last() - way[pieces - 2];
    arrowHead(sketch, way.last(), std::atan2(last.y(), last.x()), colour, 1.6);
}

void dimension(Sketch& sketch, QPointF from, QPointF to, const QString& words) {
    const Colours& c = sketch.c();
    const QPointF way = to - from;
    const double along = std::atan2(way.y(), way.x());
    const QPointF across = 4 * QPointF(-std::sin(along), std::cos(along));
    sketch.line({from - across, from + across}, c.ink, 0.7);
    sketch.line({to - across, to + across}, c.ink, 0.7);
    sketch.line({from, to}, c.ink, 0.9);
    arrowHead(sketch, to, along, c.ink, 0.9);
    arrowHead(sketch, from, along + std::numbers::pi, c.ink, 0.9);
    if (words.isEmpty())
        return;
    const QPointF middle = (from + to) / 2;
    const double wide = 5.0 * double(words.size()) + 5;
    const QRectF area(middle.x() - wide / 2, middle.y() - 5, wide, 10);
    sketch.rounded(area, 2, c.card, 0.5);
    sketch.words(area, words, 7, c.ink, true);
}

void clockFace(Sketch& sketch, QPointF middle, double radius, double passed) {
    const Colours& c = sketch.c();
    sketch.box(QRectF(middle.x() - 2, middle.y() - radius - 5, 4, 5), c.edge);
    sketch.disc(middle, radius, c.card, 1.2);
    QPainter& painter = sketch.painter();
    painter.setPen(Qt::NoPen);
    painter.setBrush(c.bar_filled);
    const QRectF face(middle.x() - radius + 2, middle.y() - radius + 2, 2 * radius - 4,
                      2 * radius - 4);
    painter.drawPie(face, 90 * 16, -int(passed * 360 * 16));
    sketch.line({middle, onCircle(middle, radius - 3, 90 - passed * 360)}, c.ink, 1.4);
}

void personFront(Sketch& sketch, QPointF foot, double height, QPointF left_hand,
                 QPointF right_hand) {
    const Colours& c = sketch.c();
    const double unit = height / 10;
    const QPointF neck = foot - QPointF(0, unit * 8);
    const QPointF hip = foot - QPointF(0, unit * 4.4);
    const double limb = unit * 0.9;
    for (const QPolygonF& part :
         {QPolygonF({hip, foot - QPointF(unit * 1.2, 0)}),
          QPolygonF({hip, foot + QPointF(unit * 1.2, 0)}),
          QPolygonF({left_hand, neck + QPointF(0, unit * 0.6), right_hand})})
        sketch.line(part, c.ink, limb);
    sketch.line({neck + QPointF(0, unit * 0.4), hip}, c.ink, unit * 1.9);
    sketch.disc(neck - QPointF(0, unit * 0.9), unit * 1.1, c.ink, 0.4);
}

void personFront(Sketch& sketch, QPointF foot, double height) {
    const double unit = height / 10;
    personFront(sketch, foot, height, foot - QPointF(unit * 1.6, unit * 4.6),
                foot + QPointF(unit * 1.6, -unit * 4.6));
}

void personAbove(Sketch& sketch, QPointF middle) {
    const Colours& c = sketch.c();
    for (const double side : {-1.0, 1.0}) {
        sketch.line({middle + QPointF(4 * side, 1), middle + QPointF(4 * side, 7)}, c.ink, 3.4);
        sketch.disc(middle + QPointF(9 * side, 3), 2.2, c.ink, 0.4);
    }
    sketch.rounded(QRectF(middle.x() - 11, middle.y() - 4, 22, 8), 4, c.edge, 0.9);
    sketch.disc(middle + QPointF(0, 0.5), 4.4, c.ink, 0.4);
}

void softBlock(Sketch& sketch, const QRectF& area) {
    const Colours& c = sketch.c();
    sketch.rounded(area, 2.5, c.card, 0.9);
    for (const double y : places(area.top() + 4, area.bottom() - 2, 5))
        for (const double x : places(area.left() + 3, area.right() - 2, 5))
            sketch.disc({x, y}, 0.7, c.ink, 0.2);
}

void springGauge(Sketch& sketch, QPointF hook, QPointF ring) {
    const Colours& c = sketch.c();
    QPainter& painter = sketch.painter();
    const QPointF way = ring - hook;
    const double length = std::hypot(way.x(), way.y());
    painter.save();
    painter.translate(hook);
    painter.rotate(std::atan2(way.y(), way.x()) * 180 / std::numbers::pi);
    sketch.line({{2, 3}, {-1.5, 2}, {-1.5, -1.5}, {2, -2}, {5, 0}}, c.ink, 1.3);
    sketch.line({{5, 0}, {9, 0}}, c.ink, 1.3);
    sketch.rounded(QRectF(8, -5, length - 16, 10), 2, c.card, 0.9);
    for (const double x : places(12, length - 12, 3))
        sketch.line({{x, -3}, {x, 0}}, c.ink, 0.5);
    sketch.line({{8 + (length - 16) * 0.45, -4}, {8 + (length - 16) * 0.45, 4}}, c.bad, 1.3);
    sketch.disc({length - 4, 0}, 3.5, c.card, 1.3);
    painter.restore();
}

void alarmHorn(Sketch& sketch, QPointF from, double direction) {
    const Colours& c = sketch.c();
    QPainter& painter = sketch.painter();
    sketch.shape({from + QPointF(-3 * direction, -3), from + QPointF(2 * direction, -3),
                  from + QPointF(7 * direction, -7), from + QPointF(7 * direction, 7),
                  from + QPointF(2 * direction, 3), from + QPointF(-3 * direction, 3)},
                 c.alarm, 0.8);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(c.ink, 1.2));
    for (const double radius : {11.0, 15.0, 19.0})
        painter.drawArc(QRectF(from.x() - radius, from.y() - radius, 2 * radius, 2 * radius),
                        (direction > 0 ? -35 : 145) * 16, 70 * 16);
}

void cable(Sketch& sketch, QPointF from, QPointF to, bool cut) {
    const Colours& c = sketch.c();
    if (!cut) {
        sketch.line({from, to}, c.ink, 2);
        return;
    }
    const QPointF way = to - from;
    const QPointF middle = (from + to) / 2;
    const QPointF gap = way / std::max(1.0, std::hypot(way.x(), way.y())) * 5;
    sketch.line({from, middle - gap}, c.ink, 2);
    sketch.line({middle + gap, to}, c.ink, 2);
    sketch.line({middle + QPointF(-5, -5), middle + QPointF(5, 5)}, c.bad, 2.2);
    sketch.line({middle + QPointF(5, -5), middle + QPointF(-5, 5)}, c.bad, 2.2);
}

void lampDisc(Sketch& sketch, QPointF middle, double radius, bool lit) {
    const Colours& c = sketch.c();
    sketch.disc(middle, radius, lit ? c.bar_filled : sketch.hollow(), 1);
    if (!lit)
        return;
    for (int i = 0; i < 8; ++i)
        sketch.line(
            {onCircle(middle, radius + 1.8, i * 45), onCircle(middle, radius + 4.5, i * 45)}, c.ink,
            1);
}

void paintDoorway(Sketch& sketch, const DoorwayAbove& doorway) {
    const Colours& c = sketch.c();
    sketch.painter().fillRect(QRectF(0, 0, Sketch::wide, Sketch::high), c.hairline);
    sketch.box(QRectF(-4, doorway.wall, doorway.left + 4, doorway.thick), c.card, 0.9);
    sketch.box(QRectF(doorway.right, doorway.wall, Sketch::wide - doorway.right + 4, doorway.thick),
               c.card, 0.9);
}

QPointF edgeOf(QPointF hinge, double length, double open_deg, bool hung_right) {
    return onCircle(hinge, length, hung_right ? 180 - open_deg : open_deg);
}

void leafAbove(Sketch& sketch, QPointF hinge, double length, double open_deg, bool hung_right,
               bool ghost) {
    const Colours& c = sketch.c();
    const QPointF edge = edgeOf(hinge, length, open_deg, hung_right);
    const QPointF along = (edge - hinge) / length;
    // The thickness lies on the side of the wall when the leaf is shut.
    const double side = hung_right ? -6 : 6;
    const QPointF across = QPointF(-along.y(), along.x()) * side;
    const QPolygonF outline({hinge, edge, edge + across, hinge + across});
    if (ghost) {
        QPen pen(c.ink, 0.7);
        pen.setDashPattern({3, 2.5});
        sketch.painter().setPen(pen);
        sketch.painter().setBrush(Qt::NoBrush);
        sketch.painter().drawPolygon(outline);
        return;
    }
    sketch.shape(outline, c.leaf, 0.9);
    sketch.disc(hinge + across / 2, 2, c.card, 0.8);
}

QRectF doorFront(Sketch& sketch, const QRectF& opening, double open) {
    const Colours& c = sketch.c();
    sketch.box(opening.adjusted(-5, -5, 5, 0), c.card, 0.8);
    sketch.box(opening, open > 0 ? sketch.hollow() : c.leaf, 0.8);
    const double wide = opening.width() * (1 - 0.65 * open);
    const double near = 7 * open;
    const QRectF leaf(opening.left(), opening.top(), wide, opening.height());
    sketch.shape({leaf.topLeft(), leaf.topRight() - QPointF(0, near),
                  leaf.bottomRight() + QPointF(0, near), leaf.bottomLeft()},
                 c.leaf, 0.9);
    sketch.rounded(QRectF(leaf.right() - 7, leaf.center().y(), 5, 2.4), 1, c.edge, 0.5);
    for (const double y : {leaf.top() + leaf.height() * 0.15, leaf.bottom() - leaf.height() * 0.25})
        sketch.box(QRectF(leaf.left() - 1.5, y, 3, 8), c.edge, 0.5);
    return leaf;
}

QRectF slidingFront(Sketch& sketch, const QRectF& opening, double open) {
    const Colours& c = sketch.c();
    sketch.box(opening.adjusted(-5, -5, 5, 0), c.card, 0.8);
    sketch.box(opening, open > 0 ? sketch.hollow() : c.leaf, 0.8);
    const QRectF leaf(opening.left(), opening.top(), opening.width() * (1 - open),
                      opening.height());
    if (open < 1)
        sketch.box(leaf, c.leaf, 0.9);
    sketch.box(QRectF(opening.left() - opening.width() * 0.6, opening.top() - 5,
                      opening.width() * 1.6 + 5, 4),
               c.edge, 0.6);
    return leaf;
}

} // namespace latchround::ui
