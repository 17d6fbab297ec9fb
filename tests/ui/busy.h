// A window over a register in which somebody else writes for as long as a test wants, with hands
// for the stopwatch.
#pragma once

#include <gtest/gtest.h>

#include <QTest>
#include <QTimer>

#include "core/error/register_errors.h"
#include "core/phrase/places.h"
#include "tests/ui/small_ship_window.h"
#include "ui/keys/mark_key.h"
#include "ui/screens/door/door_screen.h"

namespace latchround::ui {

inline const Error busy{place::this_register(), errors::not_saved(errors::somebody_is_writing())};

struct Busy : SmallShipWindow {
    void hold() {
        ship.vessel_register.failure = busy;
        ship.vessel_register.failure_is = Register::Obstacle::Busy;
    }
    void letGo() { ship.vessel_register.failure.reset(); }
    Note note(const char* text) const { return {walkdown, "5-31", text}; }
    /// As if the time to try again had come.
    void ring() {
        auto* timer = session.findChild<QTimer*>();
        ASSERT_NE(timer, nullptr);
        ASSERT_TRUE(timer->isActive()) << "nobody tries again";
        ASSERT_TRUE(QMetaObject::invokeMethod(timer, "timeout"));
        test::settle(window);
    }
    bool isShown(const char* name) const {
        for (const QWidget* each : window.findChildren<QWidget*>(QString::fromLatin1(name)))
            if (each->isVisible())
                return true;
        return false;
    }
    template <class Widget>
    Widget* find(const char* name) const {
        return window.findChild<Widget*>(QString::fromLatin1(name));
    }
    void arm() {
        emit window.doorScreen().timeAsked("5-31", Release::LetGo, RunKind::Closing);
        test::settle(window);
    }
    void mark() {
        auto* key = find<MarkKey>("mark");
        ASSERT_TRUE(key->isEnabled());
        QTest::mousePress(key, Qt::LeftButton);
        QTest::mouseRelease(key, Qt::LeftButton);
    }
    const std::vector<RunRecord>& runs() { return session.door("5-31")->evidence.runs; }
};

} // namespace latchround::ui
