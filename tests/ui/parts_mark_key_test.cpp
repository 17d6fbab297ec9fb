#include <chrono>
#include <vector>

#include <QCoreApplication>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPointingDevice>
#include <QTest>

#include <gmock/gmock.h>

#include "ui/keys/mark_key.h"

namespace latchround::ui {
namespace {

class MarkKeyTest : public ::testing::Test {
protected:
    MarkKeyTest() {
        key.resize(400, 200);
        key.setNameLine("Shut");
        QObject::connect(&key, &MarkKey::marked, &key,
                         [this](const MarkPress& press) { presses.push_back(press); });
        key.show();
    }

    void mousePressAt(quint64 timestamp, Qt::MouseButton button = Qt::LeftButton) {
        QMouseEvent event(QEvent::MouseButtonPress, QPointF(50, 50),
                          key.mapToGlobal(QPointF(50, 50)), button, button, Qt::NoModifier);
        event.setTimestamp(timestamp);
        QCoreApplication::sendEvent(&key, &event);
    }

    bool keyPressAt(quint64 timestamp, int code = Qt::Key_Space, bool repeat = false) {
        QKeyEvent event(QEvent::KeyPress, code, Qt::NoModifier, QString(), repeat);
        event.setTimestamp(timestamp);
        return key.press(&event);
    }

    MarkKey key;
    std::vector<MarkPress> presses;
};

TEST_F(MarkKeyTest, MarksAtThePressAndNotAtTheRelease) {
    QTest::mousePress(&key, Qt::LeftButton, {}, QPoint(50, 50));
    EXPECT_EQ(presses.size(), 1u);
    EXPECT_TRUE(key.isDown());
    QTest::mouseRelease(&key, Qt::LeftButton, {}, QPoint(50, 50));
    EXPECT_EQ(presses.size(), 1u);
    EXPECT_FALSE(key.isDown());
}

TEST_F(MarkKeyTest, TimeBetweenPressesIsTheEventsOwn) {
    QTest::mousePress(&key, Qt::LeftButton, {}, QPoint(50, 50), 1000);
    QTest::mouseRelease(&key, Qt::LeftButton, {}, QPoint(50, 50), 200);
    QTest::mousePress(&key, Qt::LeftButton, {}, QPoint(50, 50), 4200);
    ASSERT_EQ(presses.size(), 2u);
    ASSERT_TRUE(presses[0].event_ms && presses[1].event_ms);
    // The release adds its own 200 ms and QTest's 500 ms against double clicks.
    EXPECT_EQ(*presses[1].event_ms - *presses[0].event_ms, 4200u + 200u + 500u);
    EXPECT_EQ(presses[0].device, InputDevice::Mouse);
}

TEST_F(MarkKeyTest, SteadyClockIsReadWhenThePressArrives) {
    const auto now = [] {
        return std::chrono::duration_cast<std::chrono::nanoseconds>(
                   std::chrono::steady_clock::now().time_since_epoch())
            .count();
    };
    const auto before = now();
    mousePressAt(77);
    ASSERT_EQ(presses.size(), 1u);
    EXPECT_GE(presses[0].steady_ns, before);
    EXPECT_LE(presses[0].steady_ns, now());
}

TEST_F(MarkKeyTest, EventWithoutATimeGivesNoEventTime) {
    mousePressAt(0);
    ASSERT_EQ(presses.size(), 1u);
    EXPECT_FALSE(presses[0].event_ms.has_value());
}

TEST_F(MarkKeyTest, BounceWithinFiftyMillisecondsIsOnePress) {
    mousePressAt(1000);
    mousePressAt(1049);
    EXPECT_EQ(presses.size(), 1u);
    mousePressAt(1050);
    EXPECT_EQ(presses.size(), 2u);
}

TEST_F(MarkKeyTest, ClockThatWrapsBetweenTwoPressesIsNoBounceAndNoGap) {
    mousePressAt(0xFFFFFFF0u);
    mousePressAt(0x100000005ull); // 21 ms later in 32 bits: a bounce
    EXPECT_EQ(presses.size(), 1u);
    mousePressAt(0x100000100ull); // 272 ms after the first
    ASSERT_EQ(presses.size(), 2u);
    EXPECT_EQ(*presses[1].event_ms - *presses[0].event_ms, 272u);
}

TEST_F(MarkKeyTest, SecondOfTwoQuickPressesIsAMarkThoughQtCallsItADoubleClick) {
    mousePressAt(1000);
    QMouseEvent event(QEvent::MouseButtonDblClick, QPointF(50, 50),
                      key.mapToGlobal(QPointF(50, 50)), Qt::LeftButton, Qt::LeftButton,
                      Qt::NoModifier);
    event.setTimestamp(1200);
    QCoreApplication::sendEvent(&key, &event);
    ASSERT_EQ(presses.size(), 2u);
    EXPECT_EQ(presses[1].event_ms, 1200u);
}

TEST_F(MarkKeyTest, OtherMouseButtonsMarkNothing) {
    mousePressAt(1000, Qt::RightButton);
    EXPECT_TRUE(presses.empty());
}

TEST_F(MarkKeyTest, SpaceAndReturnMarkAndOtherKeysAreLeftAlone) {
    EXPECT_TRUE(keyPressAt(1000, Qt::Key_Space));
    EXPECT_TRUE(keyPressAt(2000, Qt::Key_Return));
    EXPECT_FALSE(keyPressAt(3000, Qt::Key_A));
    EXPECT_FALSE(keyPressAt(4000, Qt::Key_Escape));
    ASSERT_EQ(presses.size(), 2u);
    EXPECT_EQ(presses[0].device, InputDevice::Key);
    EXPECT_EQ(presses[1].event_ms, 2000u);
}

TEST_F(MarkKeyTest, HeldKeyRepeatsWithoutMarking) {
    keyPressAt(1000);
    EXPECT_TRUE(keyPressAt(1500, Qt::Key_Space, true));
    EXPECT_TRUE(keyPressAt(1530, Qt::Key_Space, true));
    EXPECT_EQ(presses.size(), 1u);
}

TEST_F(MarkKeyTest, OneTouchIsOnePressAndSaysTouch) {
    const std::unique_ptr<QPointingDevice> finger(QTest::createTouchDevice());
    QTest::touchEvent(&key, finger.get()).press(0, QPoint(60, 60), &key);
    EXPECT_EQ(presses.size(), 1u);
    QTest::touchEvent(&key, finger.get()).move(0, QPoint(64, 61), &key);
    QTest::touchEvent(&key, finger.get()).stationary(0).press(1, QPoint(200, 60), &key);
    EXPECT_TRUE(key.isDown());
    QTest::touchEvent(&key, finger.get()).stationary(0).release(1, QPoint(200, 60), &key);
    QTest::touchEvent(&key, finger.get()).release(0, QPoint(64, 61), &key);
    QCoreApplication::processEvents();
    ASSERT_EQ(presses.size(), 1u);
    EXPECT_EQ(presses[0].device, InputDevice::Touch);
    EXPECT_TRUE(presses[0].event_ms.has_value());
    EXPECT_FALSE(key.isDown());
}

TEST_F(MarkKeyTest, MousePressMadeFromATouchIsNotASecondPress) {
    const std::unique_ptr<QPointingDevice> finger(QTest::createTouchDevice());
    QTest::touchEvent(&key, finger.get()).press(0, QPoint(60, 60), &key);
    mousePressAt(999999);
    EXPECT_EQ(presses.size(), 1u);
    QTest::touchEvent(&key, finger.get()).release(0, QPoint(60, 60), &key);
}

TEST_F(MarkKeyTest, DisabledKeyMarksNothing) {
    key.setEnabled(false);
    mousePressAt(1000);
    keyPressAt(2000);
    EXPECT_TRUE(presses.empty());
}

} // namespace
} // namespace latchround::ui
