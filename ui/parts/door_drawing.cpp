#include "ui/parts/door_drawing.h"

#include <algorithm>
#include <cmath>

#include <QLocale>
#include <QPainter>
#include <QPainterPath>

namespace latchround::ui {
namespace {

constexpr double pi = 3.14159265358979323846;

} // namespace

DoorDrawing::DoorDrawing(QWidget* parent)
    : Part(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    speak();
}

void DoorDrawing::setDoor(DoorKind kind, double opening_m) {
    m_kind = kind;
    m_opening_m = opening_m;
    speak();
}

void DoorDrawing::setProgress(double progress) {
    m_progress = std::clamp(progress, 0.0, 1.0);
    update();
}

void DoorDrawing::setSecondProgress(double progress) {
    m_second = std::clamp(progress, 0.0, 1.0);
    update();
}

void DoorDrawing::setAlarm(bool sounding) {
    m_alarm = sounding;
    speak();
}

void DoorDrawing::speak() {
    QString name;
    switch (m_kind) {
    case DoorKind::Sliding:
        name = tr("Drawing of a sliding door");
        break;
    case DoorKind::SingleLeaf:
        name = tr("Drawing of a single leaf door");
        break;
    case DoorKind::DoubleLeaf:
        name = tr("Drawing of a double leaf door");
        break;
    case DoorKind::DoubleSwing:
        name = tr("Drawing of a double swing door");
        break;
    }
    if (m_alarm)
        name += tr(", alarm on");
    setAccessibleName(name);
    update();
}

QSize DoorDrawing::sizeHint() const {
    return {int(mm(248)), int(mm(42))};
}

QSize DoorDrawing::minimumSizeHint() const {
    return {int(mm(70)), int(mm(34))};
}

double DoorDrawing::shown(double progress) const {
    return look().calm_motion ? std::round(progress * 4) / 4 : progress;
}

void DoorDrawing::paintEvent(QPaintEvent*) {
    paintPanel();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF area = QRectF(rect()).adjusted(mm(5), mm(3), -mm(5), -mm(3));
    if (m_kind == DoorKind::Sliding)
        paintSliding(painter, area);
    else
        paintHinged(painter, area);
    paintAlarm(painter, area);
}

void DoorDrawing::paintSliding(QPainter& painter, const QRectF& area) const {
    const double label = mm(7.6);
    const double foot = mm(8);
    const double height = std::max(20.0, area.height() - label - foot);
    // Pocket left, opening right, one leaf wide each, a little overlap behind the jamb.
    const double side = std::min(area.width() * 0.46, height * 5.2);
    const QRectF pocket(area.center().x() - side, area.top() + label, side, height);
    const QRectF opening(area.center().x(), area.top() + label, side, height);
    const double travel = shown(m_progress) * side;
    QRectF leaf = pocket.adjusted(mm(0.6), mm(0.9), 0, -mm(0.9)).translated(travel, 0);
    leaf.setRight(std::min(leaf.right(), opening.right() - mm(0.3)));
    painter.fillRect(leaf, colours().leaf);
    // The leading edge carries a stripe: where the leaf ends is what is being timed.
    painter.fillRect(QRectF(leaf.right() - mm(1), leaf.top(), mm(1), leaf.height()), colours().ink);
    painter.setBrush(Qt::NoBrush);
    QPen hidden(colours().edge, mm(0.35));
    hidden.setDashPattern({4, 3});
    painter.setPen(hidden);
    painter.drawRect(pocket);
    QPen frame(colours().ink, mm(0.6));
    frame.setJoinStyle(Qt::MiterJoin);
    painter.setPen(frame);
    painter.drawRect(opening);
    painter.setFont(font(TextSize::Small));
    painter.setPen(colours().muted);
    painter.drawText(QRectF(pocket.left(), area.top(), side, label - mm(0.6)),
                     Qt::AlignLeft | Qt::AlignBottom, tr("pocket"));
    const double left = opening.right() - leaf.right();
    if (left > mm(22)) {
        const double y = opening.center().y();
        const double x = leaf.right() + mm(3);
        QPen arrow(colours().ink, mm(0.6));
        arrow.setCapStyle(Qt::RoundCap);
        painter.setPen(arrow);
        painter.drawLine(QPointF(x, y), QPointF(x + mm(16), y));
        painter.drawPolyline(QPolygonF({QPointF(x + mm(12.4), y - mm(2.4)), QPointF(x + mm(16), y),
                                        QPointF(x + mm(12.4), y + mm(2.4))}));
    }
    paintDimension(painter, opening.left(), opening.right(), opening.bottom() + mm(2.4),
                   tr("travel"));
}

void DoorDrawing::paintDimension(QPainter& painter, double left, double right, double y,
                                 const QString& what) const {
    painter.setPen(QPen(colours().muted, 1));
    painter.drawLine(QPointF(left, y), QPointF(right, y));
    for (const double x : {left, right})
        painter.drawLine(QPointF(x, y - mm(1)), QPointF(x, y + mm(1)));
    painter.setFont(font(TextSize::Small));
    const QString words = m_opening_m > 0
                              ? tr("%1 %2 m").arg(what, QLocale().toString(m_opening_m, 'f', 2))
                              : tr("%1 not known").arg(what);
    painter.setPen(colours().muted);
    painter.drawText(QRectF(left - mm(20), y + mm(0.6), right - left + mm(40), mm(5)),
                     Qt::AlignHCenter | Qt::AlignTop | Qt::TextDontClip, words);
}

void DoorDrawing::paintLeaf(QPainter& painter, const QPointF& hinge, double length, double sign,
                            double progress, double thickness) const {
    // Plan: shut lies along the wall, open stands square to it, towards the top of the picture.
    const double angle = (1 - progress) * pi / 2;
    const QPointF tip = hinge + QPointF(sign * std::cos(angle), -std::sin(angle)) * length;
    QPainterPath swing;
    const QRectF circle(hinge.x() - length, hinge.y() - length, 2 * length, 2 * length);
    const double shut_degrees = sign > 0 ? 0 : 180;
    swing.arcMoveTo(circle, shut_degrees);
    swing.arcTo(circle, shut_degrees, sign > 0 ? 90 : -90);
    QPen trace(colours().edge, mm(0.3));
    trace.setDashPattern({4, 3});
    painter.setPen(trace);
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(swing);
    QPen leaf(colours().leaf, thickness);
    leaf.setCapStyle(Qt::FlatCap);
    painter.setPen(leaf);
    painter.drawLine(hinge, tip);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colours().ink);
    painter.drawEllipse(hinge, thickness * 0.62, thickness * 0.62);
}

void DoorDrawing::paintHinged(QPainter& painter, const QRectF& area) const {
    const bool two = m_kind == DoorKind::DoubleLeaf;
    const double foot = mm(9);
    const double reach = std::max(20.0, area.height() - foot - mm(1));
    const double opening = std::min(two ? 2 * reach : reach, area.width() * 0.6);
    const double length = two ? opening / 2 : opening;
    const double wall_y = area.bottom() - foot;
    const double left = area.center().x() - opening / 2;
    const double right = area.center().x() + opening / 2;
    const double thickness = mm(2.2);
    // The bulkhead either side, cut through.
    const double stub = std::min(mm(34), (area.width() - opening) / 2);
    for (const double x : {left - stub, right}) {
        const QRectF wall(x, wall_y - thickness / 2, stub, thickness);
        painter.fillRect(wall, colours().ink);
    }
    if (m_kind != DoorKind::DoubleSwing) {
        painter.setPen(QPen(colours().edge, mm(0.3)));
        painter.drawLine(QPointF(left, wall_y + thickness / 2 + mm(0.4)),
                         QPointF(right, wall_y + thickness / 2 + mm(0.4)));
    }
    paintLeaf(painter, {left, wall_y}, length, 1, shown(m_progress), thickness);
    if (two)
        paintLeaf(painter, {right, wall_y}, length, -1, shown(m_second.value_or(m_progress)),
                  thickness);
    if (m_kind == DoorKind::DoubleSwing) {
        painter.setPen(colours().muted);
        painter.setFont(font(TextSize::Small));
        painter.drawText(QRectF(left + length + mm(4), area.top(), mm(50), mm(6)),
                         Qt::AlignLeft | Qt::AlignVCenter | Qt::TextDontClip,
                         tr("swings both ways"));
    }
    paintDimension(painter, left, right, wall_y + thickness / 2 + mm(1.9), tr("opening"));
}

void DoorDrawing::paintAlarm(QPainter& painter, const QRectF& area) const {
    if (!m_alarm)
        return;
    // A lamp with its rays and the word: it stands, it does not flash.
    const QPointF lamp(area.right() - mm(3.4), area.top() + mm(3.4));
    painter.setPen(Qt::NoPen);
    painter.setBrush(colours().alarm);
    painter.drawEllipse(lamp, mm(1.8), mm(1.8));
    QPen ray(colours().alarm, mm(0.5));
    ray.setCapStyle(Qt::RoundCap);
    painter.setPen(ray);
    for (int i = 0; i < 8; ++i) {
        const double angle = i * pi / 4;
        const QPointF way(std::cos(angle), std::sin(angle));
        painter.drawLine(lamp + way * mm(2.5), lamp + way * mm(3.5));
    }
    painter.setFont(font(TextSize::Body, true));
    painter.drawText(QRectF(lamp.x() - mm(46), lamp.y() - mm(3), mm(41), mm(6)),
                     Qt::AlignRight | Qt::AlignVCenter, tr("alarm on"));
}

} // namespace latchround::ui
