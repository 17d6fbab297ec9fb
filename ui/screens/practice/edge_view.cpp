#include "ui/screens/practice/edge_view.h"

#include <algorithm>
#include <cmath>

#include <QPainter>
#include <QPainterPath>

#include "core/practice/true_run.h"
#include "ui/screens/practice/picture_frame.h"
#include "ui/screens/practice/scene_drawing.h"

namespace latchround::ui {
namespace {

constexpr double quarter = 1.5707963267948966;

} // namespace

EdgeView::EdgeView(QWidget* parent)
    : Part(parent) {
    setLayoutDirection(Qt::LeftToRight); // the door is as it is, whichever side words begin on
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAccessibleName(tr("Close-up drawing of the leaf"));
}

void EdgeView::setDoor(const Door& door, const practice::DoorTruth& truth) {
    m_door = door;
    m_truth = truth;
    update();
}

void EdgeView::setSide(Side side) {
    m_side = side;
    update();
}

void EdgeView::setView(const practice::DoorView& view) {
    m_view = view;
    update();
}

void EdgeView::setBlock(bool held) {
    m_block = held;
    update();
}

QSize EdgeView::sizeHint() const {
    return {int(mm(110)), int(mm(42))};
}

QSize EdgeView::minimumSizeHint() const {
    return {int(mm(40)), int(mm(30))};
}

void EdgeView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setLayoutDirection(layoutDirection()); // else the whole program's
    const PictureFrame frame(painter, rect(), look());
    const QRectF& inside = frame.inside();
    if (m_door && isHinged(m_door->kind))
        paintFromAbove(painter, inside.adjusted(mm(3), mm(3), -mm(3), -mm(3)));
    else if (m_door)
        paintFromFront(painter, inside);
}

void EdgeView::paintLeafFromAbove(QPainter& painter, const QPointF& hinge, double length,
                                  double way, double up, double angle, bool lip) const {
    const double thick = mm(2);
    const auto tipAt = [&](double a) {
        return hinge + QPointF(way * std::cos(a), up * std::sin(a)) * length;
    };
    QPolygonF swing;
    for (int i = 0; i <= 30; ++i)
        swing << tipAt(quarter * i / 30);
    QPen trace(colours().edge, mm(0.3));
    trace.setDashPattern({4, 3});
    painter.setPen(trace);
    painter.setBrush(Qt::NoBrush);
    painter.drawPolyline(swing);
    const QPointF tip = tipAt(angle);
    QPen leaf(colours().leaf, thick);
    leaf.setCapStyle(Qt::FlatCap);
    painter.setPen(leaf);
    painter.drawLine(hinge, tip);
    // Its edge, which is watched.
    QPen edge(colours().ink, thick);
    edge.setCapStyle(Qt::FlatCap);
    painter.setPen(edge);
    painter.drawLine(tip + (hinge - tip) * (mm(1) / length), tip);
    if (lip) {
        // It must wait: its lip laps over the other leaf, on the side that both come from.
        const QPointF along = (tip - hinge) / length;
        const QPointF face = QPointF(-along.y(), along.x()) * (way * up) * thick * 0.6;
        QPen bar(colours().ink, mm(0.8));
        bar.setCapStyle(Qt::FlatCap);
        painter.setPen(bar);
        painter.drawLine(tip + face - along * mm(3), tip + face + along * mm(2));
    }
    painter.setPen(Qt::NoPen);
    painter.setBrush(colours().ink);
    painter.drawEllipse(hinge, thick * 0.6, thick * 0.6);
    if (m_view.wedge) {
        const QPointF foot = hinge + (tip - hinge) * 0.86;
        painter.setPen(QPen(colours().ink, mm(0.3)));
        painter.setBrush(colours().bar_filled);
        painter.drawRect(QRectF(foot.x() + (way > 0 ? thick * 0.5 : -thick * 0.5 - mm(4)),
                                foot.y() - mm(1.2), mm(4), mm(2.4)));
    }
}

void EdgeView::paintFromAbove(QPainter& painter, const QRectF& area) const {
    const bool two = m_door->kind == DoorKind::DoubleLeaf;
    const double thick = mm(2);
    const double foot = mm(5);
    const double reach = std::max(20.0, area.height() - foot - mm(1));
    const double opening = std::min(two ? 2 * reach : reach, area.width() * 0.7);
    const double length = two ? opening / 2 : opening;
    // From side two the leaves swing towards the eye: down the picture.
    const double up = m_side == Side::Two ? 1 : -1;
    const double wall = up < 0 ? area.bottom() - foot : area.top() + foot;
    const double left = area.center().x() - opening / 2;
    const double right = area.center().x() + opening / 2;
    const double stub = std::min(mm(30), (area.width() - opening) / 2);
    for (const double x : {left - stub, right})
        painter.fillRect(QRectF(x, wall - thick / 2, stub, thick), colours().ink);
    // The stop of the frame, on the side away from the swing: where the leaf comes home.
    if (m_door->kind != DoorKind::DoubleSwing) {
        const double behind = wall - up * thick * 1.1;
        for (const auto& [from, to] : {std::pair{left - mm(1.5), left + mm(2.2)},
                                       std::pair{right - mm(2.2), right + mm(1.5)}})
            painter.fillRect(QRectF(QPointF(from, std::min(behind, behind - up * mm(1.4))),
                                    QPointF(to, std::max(behind, behind - up * mm(1.4)))),
                             colours().ink);
    }
    const bool first_left = m_side != Side::Two;
    const double hinge_gap = thick * 0.2;
    const auto angleOf = [](double open) { return quarter * std::clamp(open, 0.0, 1.0); };
    const double clear = mm(0.4);
    const QPointF left_hinge(left + hinge_gap, wall);
    const QPointF right_hinge(right - hinge_gap, wall);
    paintLeafFromAbove(painter, first_left ? left_hinge : right_hinge, length - clear,
                       first_left ? 1 : -1, up, angleOf(m_view.open), false);
    if (two)
        paintLeafFromAbove(painter, first_left ? right_hinge : left_hinge, length - clear,
                           first_left ? -1 : 1, up, angleOf(m_view.second_open), true);
    if (m_view.person || m_view.somebody_waits) {
        const double way = m_view.person.value_or(0.5);
        const double seen = m_side == Side::Two ? 1 - way : way;
        const QPointF at(area.center().x(), wall + (0.5 - seen) * 2 * length * 0.8);
        painter.setPen(QPen(colours().ink, mm(0.35)));
        painter.setBrush(colours().edge);
        painter.drawRoundedRect(QRectF(at.x() - mm(4), at.y() - mm(1.7), mm(8), mm(3.4)), mm(1.7),
                                mm(1.7));
        painter.drawEllipse(at, mm(1.6), mm(1.6));
    }
}

void EdgeView::paintFromFront(QPainter& painter, const QRectF& area) const {
    const double opening = m_door->opening_m > 0.3 ? m_door->opening_m : 0.9;
    const bool side_two = m_side == Side::Two;
    SceneEye eye;
    eye.px_per_m = area.width() / (2 * opening + 0.35);
    eye.ground = {area.center().x() + (side_two ? -1 : 1) * opening / 2 * eye.px_per_m,
                  area.bottom() - mm(4)};
    eye.height_m = 0.6;
    const Scene scene{*m_door, m_truth, m_view, side_two, eye, look()};
    drawBulkhead(painter, scene, area);
    drawFarRoom(painter, scene);
    painter.save();
    painter.setClipRect(area, Qt::IntersectClip);
    drawPerson(painter, scene, true);
    drawLeaves(painter, scene);
    drawFrame(painter, scene);
    if (m_block) {
        const double frame = -scene.toward() * scene.half();
        const double touched = frame + scene.toward() * practice::block_at_open * scene.width();
        painter.setPen(QPen(colours().ink, mm(0.35)));
        painter.setBrush(colours().card);
        painter.drawRect(eye.box(touched, 0.3, frame, 0.42));
    }
    drawLyingAbout(painter, scene);
    drawPerson(painter, scene, false);
    painter.restore();
}

} // namespace latchround::ui

#include "moc_edge_view.cpp"
