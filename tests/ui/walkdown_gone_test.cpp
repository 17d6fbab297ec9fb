// The walkdown whose door is on the screen is gone: its screens are left, and nothing more is
// recorded under it.
#include <gtest/gtest.h>

#include <QPointer>
#include <QPushButton>
#include <QTest>

#include "tests/ui/small_ship_window.h"
#include "ui/frames/sheet.h"
#include "ui/screens/door/door_screen.h"
#include "ui/screens/home/home_screen.h"

using namespace latchround;
using namespace latchround::ui;

namespace {

struct WalkdownGone : SmallShipWindow {
    void SetUp() override {
        SmallShipWindow::SetUp();
        QTest::mouseClick(window.findChild<QPushButton*>("home-main"), Qt::LeftButton);
        test::settle(window);
        ASSERT_TRUE(window.doorScreen().isVisible());
    }
    void expectHome() {
        test::settle(window);
        EXPECT_FALSE(window.doorScreen().isVisible());
        EXPECT_TRUE(window.findChild<HomeScreen*>()->isVisible());
        EXPECT_FALSE(session.record(Note{walkdown, "5-31", "late"}));
        EXPECT_EQ(session.waiting(), 0u);
    }
};

} // namespace

TEST_F(WalkdownGone, ByUndoItsDoorLeavesTheScreen) {
    const std::optional<Tap> begun = session.tapToTakeBack({});
    ASSERT_TRUE(begun);
    ASSERT_TRUE(session.undo(*begun));
    EXPECT_FALSE(session.isUnderWay());
    expectHome();
}

TEST_F(WalkdownGone, EndedElsewhereItsDoorLeavesTheScreenWithWhatLiesOverIt) {
    const QPointer<Sheet> sheet = new Sheet(&window, "Note");
    sheet->open();
    test::settle(window);
    ship.ended(walkdown);
    ASSERT_TRUE(session.readAgain());
    expectHome();
    EXPECT_TRUE(!sheet || !sheet->isVisible());
}
