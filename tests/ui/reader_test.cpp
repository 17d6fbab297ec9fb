// Another program writes in the register: this one shows what it does, and offers nothing that it
// would have to write.
#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>

#include "tests/ui/small_ship_window.h"

using namespace latchround;
using namespace latchround::ui;

namespace {

struct Reader : testing::Test {
    SmallShip ship;
    Look look;

    /// The window over the small vessel, in which somebody else writes by now.
    struct Shown {
        Shown(SmallShip& ship, Look& look)
            : window(loaded(ship), look) {
            look.applyTo(window);
            window.resize(1280, 800);
            window.show();
            test::settle(window);
        }
        static VesselSession& loaded(SmallShip& ship) {
            ship.vessel_register.other_writer = "process 4711 on bridge";
            return ship.load();
        }
        QString words(const char* name) const {
            return window.findChild<QLabel*>(QLatin1String(name))->text();
        }
        QPushButton* key(const char* name) const {
            return window.findChild<QPushButton*>(QLatin1String(name));
        }
        Window window;
    };
};

} // namespace

TEST_F(Reader, SeesTheWalkdownThatIsUnderWayElsewhere) {
    ship.begun();
    Shown shown(ship, look);
    EXPECT_EQ(shown.words("walkdown-title"), "Walkdown under way");
    EXPECT_TRUE(shown.words("walkdown-aim").contains("Begun"))
        << shown.words("walkdown-aim").toStdString();
    EXPECT_FALSE(shown.key("home-end")->isVisible());
    QPushButton* main = shown.key("home-main");
    EXPECT_EQ(main->text(), "Look at the doors ›");
    QTest::mouseClick(main, Qt::LeftButton);
    test::settle(shown.window);
    EXPECT_NE(shown.window.findChild<QWidget*>("all-doors"), nullptr);
}

TEST_F(Reader, IsNotOfferedToBeginAWalkdown) {
    ship.ended(ship.begun());
    const Shown shown(ship, look);
    EXPECT_EQ(shown.words("walkdown-title"), "No walkdown under way");
    EXPECT_EQ(shown.key("home-main")->text(), "Look at the doors ›");
}

TEST_F(Reader, IsNotOfferedToBeginTheFirstEither) {
    ship.ports.settings["first-run"] = "shown";
    const Shown shown(ship, look);
    EXPECT_FALSE(shown.key("home-main")->isEnabled());
}
