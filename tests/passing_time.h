// Time passes in a window though nobody waits for it: what a screen holds back for a moment comes
// at once.
#pragma once

#include <algorithm>
#include <cstddef>
#include <functional>
#include <vector>

#include <QCoreApplication>
#include <QEvent>
#include <QPointer>
#include <QTimer>
#include <QWidget>

#include <gtest/gtest.h>

namespace latchround::test {

/// The same number for the same places of everything visible.
inline std::size_t placesOf(const QWidget& window) {
    std::size_t sum = 0;
    for (const QWidget* widget : window.findChildren<QWidget*>())
        if (widget->isVisible()) {
            const QRect place = widget->geometry();
            for (const int number : {place.x(), place.y(), place.width(), place.height()})
                sum = sum * 31 + std::size_t(number);
        }
    return sum;
}

/// Turns the event loop until everything visible has its place; what is shown is laid out in
/// several turns. `window` is asked each time: null once it is gone.
inline void settle(const std::function<const QWidget*()>& window) {
    constexpr int most_turns = 60;
    std::size_t before = 0;
    for (int turn = 0; turn < most_turns; ++turn) {
        QCoreApplication::sendPostedEvents();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        QCoreApplication::processEvents();
        const QWidget* shown = window();
        const std::size_t now = shown ? placesOf(*shown) : 0;
        if (turn > 1 && now == before)
            return;
        before = now;
    }
    ADD_FAILURE() << "the screen does not come to rest";
}

inline void settle(const QWidget& window) {
    settle([shown = QPointer<const QWidget>(&window)] { return shown.data(); });
}

/// Each timer that runs below `window` rings once, the soonest first: a key that is held back
/// comes, a frame is drawn. A timer that rings once only is over then.
inline void letTimePass(const QWidget& window) {
    std::vector<QPointer<QTimer>> running;
    for (QTimer* timer : window.findChildren<QTimer*>())
        if (timer->isActive())
            running.emplace_back(timer);
    std::sort(running.begin(), running.end(), [](const auto& one, const auto& other) {
        return one->remainingTime() < other->remainingTime();
    });
    for (const QPointer<QTimer>& timer : running) {
        if (!timer || !timer->isActive())
            continue;
        if (timer->isSingleShot())
            timer->stop();
        EXPECT_TRUE(QMetaObject::invokeMethod(timer, "timeout"));
    }
    QCoreApplication::processEvents();
}

} // namespace latchround::test
