#include "ui/keys/mark_key.h"

#include <algorithm>
#include <chrono>

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPointingDevice>
#include <QTimer>
#include <QTouchEvent>

#include "ui/look/button_drawing.h"
#include "ui/look/read_as.h"

namespace latchround::ui {

std::int64_t steadyNow_ns() {
    return std::chrono::duration_cast<std::chrono::nanoseconds>(
               std::chrono::steady_clock::now().time_since_epoch())
        .count();
}

namespace {

bool isMarkingKey(const QKeyEvent& event) {
    return event.key() == Qt::Key_Space || event.key() == Qt::Key_Return ||
           event.key() == Qt::Key_Enter;
}

bool isFromTouch(const QMouseEvent& event) {
    const QPointingDevice* device = event.pointingDevice();
    return device != nullptr && device->type() == QInputDevice::DeviceType::TouchScreen;
}

/// Unsigned, so that a clock that wraps between two presses still tells them apart.
bool isBounce(const MarkPress& last, const MarkPress& now) {
    if (last.event_ms && now.event_ms)
        return *now.event_ms - *last.event_ms < bounce_ms;
    return now.steady_ns - last.steady_ns < std::int64_t(bounce_ms) * 1'000'000;
}

} // namespace

MarkKey::MarkKey(QWidget* parent)
    : Part(parent)
    , m_comes_up(new QTimer(this)) {
    readAs<MarkKey, QAccessible::Button>();
    setAttribute(Qt::WA_AcceptTouchEvents);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAccessibleName(tr("Mark"));
    m_comes_up->setSingleShot(true);
    m_comes_up->setInterval(200);
    connect(m_comes_up, &QTimer::timeout, this, [this] { setDown(false); });
}

void MarkKey::setNameLine(const QString& name) {
    m_name = name;
    setAccessibleName(name);
    update();
}

void MarkKey::setHintLine(const QString& hint) {
    m_hint = hint;
    setAccessibleDescription(hint);
    update();
}

QSize MarkKey::sizeHint() const {
    return {int(mm(170)), int(mm(60))};
}

QSize MarkKey::minimumSizeHint() const {
    return {2 * sizes().main_target, sizes().main_target};
}

void MarkKey::take(quint64 timestamp, std::int64_t steady_ns, InputDevice device) {
    MarkPress now{std::nullopt, steady_ns, device};
    if (timestamp != 0)
        now.event_ms = std::uint32_t(timestamp);
    if (m_last && isBounce(*m_last, now))
        return;
    m_last = now;
    setDown(true);
    emit marked(now);
}

bool MarkKey::event(QEvent* event) {
    const std::int64_t steady_ns = m_clock();
    switch (event->type()) {
    case QEvent::TouchBegin:
    case QEvent::TouchUpdate:
    case QEvent::TouchEnd:
    case QEvent::TouchCancel:
        return touched(static_cast<QTouchEvent&>(*event), steady_ns);
    default:
        return Part::event(event);
    }
}

bool MarkKey::touched(QTouchEvent& event, std::int64_t steady_ns) {
    // Accepted always, so that no mouse press is made up from the same finger.
    event.accept();
    if (event.type() == QEvent::TouchBegin) {
        m_touch_active = true;
        if (isEnabled())
            take(event.timestamp(), steady_ns, InputDevice::Touch);
    } else if (event.type() != QEvent::TouchUpdate) {
        m_touch_active = false;
        setDown(false);
    }
    return true;
}

void MarkKey::mousePressEvent(QMouseEvent* event) {
    const std::int64_t steady_ns = m_clock();
    event->accept();
    if (event->button() != Qt::LeftButton || m_touch_active)
        return;
    take(event->timestamp(), steady_ns,
         isFromTouch(*event) ? InputDevice::Touch : InputDevice::Mouse);
}

void MarkKey::mouseDoubleClickEvent(QMouseEvent* event) {
    // Two quick presses are two marks; the window system's name for the second is of no interest.
    mousePressEvent(event);
}

void MarkKey::mouseReleaseEvent(QMouseEvent* event) {
    event->accept();
    setDown(false);
}

bool MarkKey::press(QKeyEvent* event) {
    const std::int64_t steady_ns = m_clock();
    if (!isMarkingKey(*event))
        return false;
    event->accept();
    if (event->isAutoRepeat() || !isEnabled())
        return true;
    take(event->timestamp(), steady_ns, InputDevice::Key);
    m_comes_up->start();
    return true;
}

void MarkKey::keyPressEvent(QKeyEvent* event) {
    if (!press(event))
        Part::keyPressEvent(event);
}

void MarkKey::keyReleaseEvent(QKeyEvent* event) {
    if (isMarkingKey(*event) && !event->isAutoRepeat())
        setDown(false);
    else
        Part::keyReleaseEvent(event);
}

void MarkKey::changeEvent(QEvent* event) {
    Part::changeEvent(event);
    if (event->type() == QEvent::EnabledChange)
        setDown(false);
}

void MarkKey::setDown(bool down) {
    if (m_down == down)
        return;
    m_down = down;
    update();
}

/// A name alone, on as many lines as it has words, as large as the key allows.
void MarkKey::paintShort(QPainter& painter, const QRectF& area) const {
    const double inset = mm(1.2);
    const QRectF room = area.adjusted(inset, inset, -inset, -inset);
    QFont name_font = font(TextSize::Lead, true);
    const int least = pixelsOf(TextSize::Small, sizes()) / 2;
    const auto fits = [&] {
        const QRectF words =
            QFontMetricsF(name_font).boundingRect(room, Qt::AlignCenter | Qt::TextWordWrap, m_name);
        return words.width() <= room.width() && words.height() <= room.height();
    };
    while (!fits() && name_font.pixelSize() > least)
        name_font.setPixelSize(name_font.pixelSize() - 1);
    painter.setFont(name_font);
    painter.drawText(room, Qt::AlignCenter | Qt::TextWordWrap, m_name);
}

/// The name as large as the key allows, whatever the event is called, and its hint below.
void MarkKey::paintWhole(QPainter& painter, const QRectF& area) const {
    const double room = area.width() - 2 * mm(4);
    QFont name_font = font(TextSize::Display, true);
    const double wanted = std::min(mm(15), area.height() * 0.3);
    name_font.setPixelSize(std::max(12, int(wanted)));
    const double name_width = QFontMetricsF(name_font).horizontalAdvance(m_name);
    if (name_width > room)
        name_font.setPixelSize(std::max(12, int(wanted * room / name_width)));
    const QFont hint_font = font(TextSize::Heading);
    const double name_height = QFontMetricsF(name_font).height();
    const double hint_height = QFontMetricsF(hint_font)
                                   .boundingRect(QRectF(0, 0, room, area.height()),
                                                 Qt::AlignHCenter | Qt::TextWordWrap, m_hint)
                                   .height();
    const double top = area.center().y() - (name_height + hint_height) / 2;
    painter.setFont(name_font);
    painter.drawText(QRectF(mm(4), top, room, name_height), Qt::AlignCenter, m_name);
    painter.setFont(hint_font);
    painter.drawText(QRectF(mm(4), top + name_height, room, hint_height + 2),
                     Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap, m_hint);
}

void MarkKey::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Fill fill = !isEnabled() ? Fill{colours().card, colours().muted, colours().edge}
                      : m_down     ? colours().key_down
                                   : colours().key;
    const QRectF area(rect());
    drawKeyArea(painter, area, fill, m_down ? sizes().ring * 2.0 : sizes().border, look());
    painter.setPen(fill.ink);
    if (m_hint.isEmpty())
        paintShort(painter, area);
    else
        paintWhole(painter, area);
    if (hasFocus())
        drawFocusRing(painter, area, look());
}

} // namespace latchround::ui

#include "moc_mark_key.cpp"
