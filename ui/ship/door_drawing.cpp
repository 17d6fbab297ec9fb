#include "ui/ship/door_drawing.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include <QPainter>
#include <QPainterPath>

#include "ui/words/units.h"

namespace latchround::ui {
namespace {

constexpr double pi = 3.14159265358979323846;

} // namespace

DoorDrawing::DoorDrawing(QWidget* parent)
    : Part(parent) {
    setLayoutDirection(Qt::LeftToRight); // the door is as it is, whichever side words begin on
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    updateSpokenText();
}

void DoorDrawing::setDoor(DoorKind kind, double opening_m) {
    m_kind = kind;
    m_opening_m = opening_m;
    updateSpokenText();
}

void DoorDrawing::setSide(Side side) {
    m_side = side;
    update();
}

void DoorDrawing::setBlock(bool there) {
    m_block = there;
    updateSpokenText();
}

void DoorDrawing::setProgress(double progress) {
    const double before = std::exchange(m_progress, std::clamp(progress, 0.0, 1.0));
    if (shown(before) != shown(m_progress))
        update();
}

void DoorDrawing::setSecondProgress(std::optional<double> progress) {
    if (progress)
        progress = std::clamp(*progress, 0.0, 1.0);
    const auto before = std::exchange(m_second, progress);
    if (before.has_value() != progress.has_value() ||
        (before && shown(*before) != shown(*progress)))
        update();
}

void DoorDrawing::setAlarm(bool sounding) {
    if (m_alarm == sounding)
        return;
    m_alarm = sounding;
    updateSpokenText();
}

void DoorDrawing::updateSpokenText() {
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
    if (m_block)
        name += tr(", a soft block in its path");
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
    painter.setLayoutDirection(layoutDirection()); // else the whole program's
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
    const double hand = this->hand();
    // Pocket and opening, one leaf wide each, a little overlap behind the jamb.
    const double side = std::min(area.width() * 0.46, height * 5.2);
    const double jamb = area.center().x();
    const auto box = [&](double from, double to, double inset) {
        return QRectF(QPointF(jamb + hand * from, area.top() + label + inset),
                      QPointF(jamb + hand * to, area.top() + label + height - inset))
            .normalized();
    };
    const double edge = std::min(shown(m_progress) * side, side - mm(0.3));
    painter.fillRect(box(std::min(edge - side + mm(0.6), edge), edge, mm(0.9)), colours().leaf);
    // The leading edge carries a stripe: where the leaf ends is what is being timed.
    painter.fillRect(box(edge - mm(1), edge, mm(0.9)), colours().ink);
    painter.setBrush(Qt::NoBrush);
    QPen hidden(colours().edge, mm(0.35));
    hidden.setDashPattern({4, 3});
    painter.setPen(hidden);
    const QRectF pocket = box(-side, 0, 0);
    painter.drawRect(pocket);
    QPen frame(colours().ink, mm(0.6));
    frame.setJoinStyle(Qt::MiterJoin);
    painter.setPen(frame);
    const QRectF opening = box(0, side, 0);
    painter.drawRect(opening);
    painter.setFont(font(TextSize::Small));
    painter.setPen(colours().muted);
    painter.drawText(QRectF(pocket.left(), area.top(), side, label - mm(0.6)),
                     int((hand > 0 ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignBottom),
                     tr("pocket"));
    if (m_block)
        paintBlock(painter, {jamb + hand * (side * block_at + mm(2.4)), opening.center().y()});
    else if (side - edge > mm(22))
        paintArrow(painter, {jamb + hand * (edge + mm(3)), opening.center().y()});
    paintDimension(painter, opening.left(), opening.right(), opening.bottom() + mm(2.4),
                   tr("travel"));
}

/// Which way it closes.
void DoorDrawing::paintArrow(QPainter& painter, const QPointF& from) const {
    QPen arrow(colours().ink, mm(0.6));
    arrow.setCapStyle(Qt::RoundCap);
    painter.setPen(arrow);
    const QPointF tip = from + QPointF(hand() * mm(16), 0);
    const double back = hand() * mm(3.6);
    painter.drawLine(from, tip);
    painter.drawPolyline(
        QPolygonF({tip - QPointF(back, mm(2.4)), tip, tip + QPointF(-back, mm(2.4))}));
}

/// Soft, round, and held by nobody.
void DoorDrawing::paintBlock(QPainter& painter, const QPointF& middle) const {
    painter.setPen(QPen(colours().ink, mm(0.4)));
    painter.setBrush(colours().again);
    painter.drawEllipse(middle, mm(2.2), mm(2.2));
    painter.setBrush(Qt::NoBrush);
}

void DoorDrawing::paintDimension(QPainter& painter, double left, double right, double y,
                                 const QString& what) const {
    painter.setPen(QPen(colours().muted, 1));
    painter.drawLine(QPointF(left, y), QPointF(right, y));
    for (const double x : {left, right})
        painter.drawLine(QPointF(x, y - mm(1)), QPointF(x, y + mm(1)));
    painter.setFont(font(TextSize::Small));
    const QString words = m_opening_m > 0 ? tr("%1 %2").arg(what, lengthWords(m_opening_m, 2))
                                          : tr("%1 not known").arg(what);
    painter.setPen(colours().muted);
    // Below the line, or above it where the door lies below.
    const bool below = isHinged(m_kind) ? hand() > 0 : true;
    const double top = below ? y + mm(0.6) : y - mm(5.6);
    painter.drawText(QRectF(left - mm(20), top, right - left + mm(40), mm(5)),
                     int(Qt::AlignHCenter | (below ? Qt::AlignTop : Qt::AlignBottom)) |
                         int(Qt::TextDontClip),
                     words);
}

void DoorDrawing::paintLeaf(QPainter& painter, const QPointF& hinge, double length, double sign,
                            double progress, double thickness) const {
    // Plan: shut lies along the wall, open stands square to it.
    const double away = hand();
    const auto tipAt = [&](double at) {
        const double angle = (1 - at) * pi / 2;
        return hinge + QPointF(sign * std::cos(angle), -away * std::sin(angle)) * length;
    };
    QPainterPath swing;
    const QRectF circle(hinge.x() - length, hinge.y() - length, 2 * length, 2 * length);
    const double shut_degrees = sign > 0 ? 0 : 180;
    swing.arcMoveTo(circle, shut_degrees);
    swing.arcTo(circle, shut_degrees, sign * away * 90);
    QPen trace(colours().edge, mm(0.3));
    trace.setDashPattern({4, 3});
    painter.setPen(trace);
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(swing);
    QPen leaf(colours().leaf, thickness);
    leaf.setCapStyle(Qt::FlatCap);
    painter.setPen(leaf);
    painter.drawLine(hinge, tipAt(progress));
    if (m_block && sign * away > 0) // one block, at the first leaf
        paintBlock(painter, tipAt(std::min(1.0, block_at + 0.08)));
    painter.setPen(Qt::NoPen);
    painter.setBrush(colours().ink);
    painter.drawEllipse(hinge, thickness * 0.62, thickness * 0.62);
}

void DoorDrawing::paintHinged(QPainter& painter, const QRectF& area) const {
    const bool two = m_kind == DoorKind::DoubleLeaf;
    const double foot = mm(9);
    const double away = hand();
    const double reach = std::max(20.0, area.height() - foot - mm(1));
    const double opening = std::min(two ? 2 * reach : reach, area.width() * 0.6);
    const double length = two ? opening / 2 : opening;
    const double wall_y = away > 0 ? area.bottom() - foot : area.top() + foot;
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
        // The stop that it shuts against.
        const double stop_y = wall_y + away * (thickness / 2 + mm(0.4));
        painter.setPen(QPen(colours().edge, mm(0.3)));
        painter.drawLine(QPointF(left, stop_y), QPointF(right, stop_y));
    }
    // The first leaf is hung at the left as seen from side one.
    const QPointF first(away > 0 ? left : right, wall_y);
    const QPointF second(away > 0 ? right : left, wall_y);
    paintLeaf(painter, first, length, away, shown(m_progress), thickness);
    if (two)
        paintLeaf(painter, second, length, -away, shown(m_second.value_or(m_progress)), thickness);
    if (m_kind == DoorKind::DoubleSwing) {
        painter.setPen(colours().muted);
        painter.setFont(font(TextSize::Small));
        // On the left, over two lines where it must: the alarm has the right.
        const QRectF place(area.left(), away > 0 ? area.top() : area.bottom() - mm(10),
                           std::max(mm(10), left - mm(2) - area.left()), mm(10));
        painter.drawText(place,
                         Qt::AlignLeft | Qt::TextWordWrap | Qt::TextDontClip |
                             (away > 0 ? Qt::AlignTop : Qt::AlignBottom),
                         tr("swings both ways"));
    }
    paintDimension(painter, left, right, wall_y + away * (thickness / 2 + mm(1.9)), tr("opening"));
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
    painter.setPen(colours().bad); // the lamp's own red is for shapes
    painter.setFont(font(TextSize::Body, true));
    painter.drawText(QRectF(lamp.x() - mm(46), lamp.y() - mm(3), mm(41), mm(6)),
                     Qt::AlignRight | Qt::AlignVCenter, tr("alarm on"));
}

} // namespace latchround::ui

#include "moc_door_drawing.cpp"
