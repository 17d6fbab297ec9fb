// The stopwatch's key. A mark is taken at the press, never at the release, with the time the window
// system gave the event and a steady clock read first thing: the first survives a busy program, the
// second a window system that gives none. Space and Return press it too, from anywhere the screen
// forwards them. Keep it out of anything that scrolls: a scroller delays presses and drops their
// time.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>

#include <QMetaType>

#include "core/evidence/fact_words.h"
#include "ui/look/part.h"

class QKeyEvent;
class QPainter;
class QTimer;
class QTouchEvent;

namespace latchround::ui {

struct MarkPress {
    std::optional<std::uint32_t> event_ms; ///< window system's event time; wraps at 2^32
    std::int64_t steady_ns = 0;            ///< std::chrono::steady_clock, nanoseconds
    InputDevice device = InputDevice::Mouse;
};

/// std::chrono::steady_clock now, nanoseconds: the clock of MarkPress::steady_ns.
std::int64_t steadyNow_ns();

/// Two presses closer than this are one press of a bouncing switch or finger: milliseconds.
inline constexpr std::uint32_t bounce_ms = 50;

class MarkKey : public Part {
    Q_OBJECT
public:
    explicit MarkKey(QWidget* parent = nullptr);

    /// The large line: the name of the next event ("Shut").
    void setNameLine(const QString& name);
    /// The small line: when to press ("touch the moment the leaf is home").
    void setHintLine(const QString& hint);
    /// The clock of MarkPress::steady_ns; steadyNow_ns() unless another is set.
    void setClock(std::function<std::int64_t()> clock) { m_clock = std::move(clock); }
    QString nameLine() const { return m_name; }
    bool isDown() const { return m_down; }

    /// For a key press that arrived elsewhere on the screen. True where it was space or return and
    /// is used up, a repeat included.
    bool press(QKeyEvent* event);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

signals:
    void marked(latchround::ui::MarkPress press);

protected:
    bool event(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void take(quint64 timestamp, std::int64_t steady_ns, InputDevice device);
    bool touched(QTouchEvent& event, std::int64_t steady_ns);
    void setDown(bool down);
    void paintShort(QPainter& painter, const QRectF& area) const;
    void paintWhole(QPainter& painter, const QRectF& area) const;

    std::function<std::int64_t()> m_clock = steadyNow_ns;
    QString m_name;
    QString m_hint;
    std::optional<MarkPress> m_last;
    bool m_down = false;
    QTimer* m_comes_up; ///< after a key of the keyboard, whose release may go elsewhere
    bool m_touch_active = false;
};

} // namespace latchround::ui

Q_DECLARE_METATYPE(latchround::ui::MarkPress)
