// Fingers, mouse and wheel on the zone profile: what is touched, and what of the ship is looked at.
#include <algorithm>
#include <cmath>

#include <QMouseEvent>
#include <QNativeGestureEvent>
#include <QTouchEvent>

#include "ui/frames/sheet.h"
#include "ui/ship/door_picker.h"
#include "ui/ship/zone_profile.h"

namespace latchround::ui {
namespace {

constexpr double drag_mm = 3;       ///< a finger that moved less was not meant to move
constexpr double wheel_notch = 120; ///< of a wheel, in eighths of a degree
constexpr double zoom_per_notch = 1.25;
constexpr double wide_reach = 1.4; ///< times a fingertip, where nothing lies under it
constexpr double picker_mm = 250;  ///< wide at most

} // namespace

bool ZoneProfile::event(QEvent* event) {
    switch (event->type()) {
    case QEvent::TouchBegin:
    case QEvent::TouchUpdate:
    case QEvent::TouchEnd:
        touched(*static_cast<QTouchEvent*>(event));
        event->accept();
        return true;
    case QEvent::TouchCancel:
        m_press.reset();
        m_pinch.reset();
        event->accept();
        return true;
    case QEvent::NativeGesture: { // two fingers on a touch pad
        const auto* gesture = static_cast<QNativeGestureEvent*>(event);
        if (gesture->gestureType() != Qt::ZoomNativeGesture)
            break;
        setZoom(m_view.zoom * (1 + gesture->value()), gesture->position());
        return true;
    }
    default:
        break;
    }
    return Part::event(event);
}

void ZoneProfile::touched(const QTouchEvent& event) {
    const auto& points = event.points();
    if (points.size() >= 2) {
        m_press.reset(); // two fingers never choose a door
        const QPointF one = points[0].position();
        const QPointF other = points[1].position();
        const double apart = std::max(1.0, std::hypot(one.x() - other.x(), one.y() - other.y()));
        const QPointF between = (one + other) / 2;
        if (!m_pinch)
            m_pinch = Pinch{apart, m_view.zoom, shareAt(between)};
        lookAt(m_pinch->zoom * apart / m_pinch->apart, m_pinch->share, between);
    } else if (!points.isEmpty() && !m_pinch) {
        const QPointF point = points[0].position();
        if (event.type() == QEvent::TouchBegin) {
            setFocus(Qt::MouseFocusReason);
            press(point);
        } else if (event.type() == QEvent::TouchEnd) {
            letGo(point);
        } else {
            move(point);
        }
    }
    if (event.type() == QEvent::TouchEnd)
        m_pinch.reset();
}

void ZoneProfile::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton)
        press(event->position());
    event->accept(); // else the release goes elsewhere
}

void ZoneProfile::mouseMoveEvent(QMouseEvent* event) {
    if (event->buttons() & Qt::LeftButton)
        move(event->position());
}

void ZoneProfile::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton)
        letGo(event->position());
}

void ZoneProfile::wheelEvent(QWheelEvent* event) {
    const double notches = event->angleDelta().y() / wheel_notch;
    setZoom(m_view.zoom * std::pow(zoom_per_notch, notches), event->position());
    event->accept();
}

void ZoneProfile::press(const QPointF& point) {
    m_press = Press{point, m_view.middle, false};
}

/// A closer view goes with the finger.
void ZoneProfile::move(const QPointF& point) {
    if (!m_press)
        return;
    const QPointF way = point - m_press->from;
    m_press->moved = m_press->moved || std::hypot(way.x(), way.y()) > mm(drag_mm);
    if (!m_press->moved || !(m_view.zoom > 1))
        return;
    m_view.middle =
        m_press->middle - QPointF(way.x() / m_plan.hull.width(), way.y() / m_plan.hull.height());
    plan();
}

void ZoneProfile::letGo(const QPointF& point) {
    if (!m_press)
        return;
    const bool dragged = m_press->moved && m_view.zoom > 1;
    m_press.reset();
    if (!dragged && rect().contains(point.toPoint()))
        touchAt(point);
}

/// One door alone under the fingertip is meant; of several, the person says which.
void ZoneProfile::touchAt(const QPointF& point) {
    const double fingertip = sizes().target / 2.0;
    auto near = m_plan.within(point, fingertip);
    if (near.empty())
        near = m_plan.within(point, fingertip * wide_reach);
    if (near.size() == 1 && near.front()->together() == 1) {
        choose(QString(near.front()->number));
    } else if (!near.empty()) {
        offer(near);
    } else if (m_view.zoom > 1 && m_plan.viewport.contains(point)) {
        m_view.middle = shareAt(point);
        plan();
    }
}

void ZoneProfile::offer(const std::vector<const ProfileDoor*>& near) {
    std::vector<DoorOffered> doors;
    for (const ProfileDoor* drawn : near)
        for (const QString& number : QStringList{drawn->number} + drawn->behind)
            doors.push_back({number, drawn->deck, ui::verdictOf(m_verdicts, number.toStdString()),
                             drawn->deck_row, drawn->place.center().x()});
    auto* sheet = new Sheet(this, tr("Which door?"));
    const Sizes& s = sizes();
    const int width = std::min(window()->width() - 2 * s.main_gap, int(mm(picker_mm)));
    const QSize room(width - 2 * s.pad,
                     window()->height() - 2 * s.main_gap - 2 * s.pad - s.target - 2 * s.gap);
    auto* picker = new DoorPicker(std::move(doors), room, look());
    connect(picker, &DoorPicker::doorChosen, sheet, [this, sheet](const QString& number) {
        sheet->close();
        choose(number);
    });
    sheet->setContent(picker);
    sheet->setWidthMm(std::max(120.0, (picker->sizeHint().width() + 2 * s.pad) / s.px_per_mm));
    sheet->open();
}

QPointF ZoneProfile::shareAt(const QPointF& point) const {
    const QPointF from = point - m_plan.hull.topLeft();
    return {from.x() / m_plan.hull.width(), from.y() / m_plan.hull.height()};
}

/// So close that `share` of the ship's length and height lies at `at`.
void ZoneProfile::lookAt(double zoom, const QPointF& share, const QPointF& at) {
    m_view.zoom = std::clamp(zoom, 1.0, most_zoom);
    const QSizeF whole = m_plan.viewport.size() * m_view.zoom;
    const QPointF away = m_plan.viewport.center() - at;
    m_view.middle = share + QPointF(away.x() / whole.width(), away.y() / whole.height());
    plan();
}

void ZoneProfile::setZoom(double zoom, const QPointF& about) {
    lookAt(zoom, shareAt(about), about);
}

/// About the marked door where there is one in sight; 0 shows the whole ship. At once, without
/// gliding: nothing moves that was not asked to.
void ZoneProfile::zoomByKey(double factor) {
    const ProfileDoor* door = m_current.isEmpty() ? nullptr : m_plan.drawn(m_current);
    const QPointF about = door && m_plan.viewport.contains(door->place.center())
                              ? door->place.center()
                              : m_plan.viewport.center();
    setZoom(factor > 0 ? m_view.zoom * factor : 1, about);
}

void ZoneProfile::bringInView() {
    const ProfileDoor* door = m_current.isEmpty() ? nullptr : m_plan.drawn(m_current);
    if (!door || !(m_view.zoom > 1) ||
        m_plan.viewport.adjusted(mm(4), mm(2), -mm(4), -mm(2)).contains(door->place.center()))
        return;
    m_view.middle = shareAt(door->place.center());
    plan();
}

} // namespace latchround::ui
