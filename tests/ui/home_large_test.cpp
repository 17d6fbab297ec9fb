// The home screen at 200 %, with and without gloves: it comes in parts, all within reach.
#include <gtest/gtest.h>

#include <set>
#include <stdexcept>

#include <QLabel>
#include <QPushButton>
#include <QTest>

#include "memory_register.h"
#include "tests/passing_time.h"
#include "ui/look/look.h"
#include "ui/screens/home/home_screen.h"

using namespace latchround;
using namespace latchround::ui;

namespace {

/// The home screen in a window with a look of its own.
struct Large {
    QWidget window;
    Look look;
    HomeScreen* home;
    Large(VesselSession& session, QSize size, bool gloves) {
        look.setScale(2);
        look.setGloves(gloves);
        home = new HomeScreen(session, &window);
        look.applyTo(window);
        window.resize(size);
        home->setGeometry(window.rect());
        window.show();
        home->enter();
        test::settle(window);
    }
    void turnTo(int page) {
        auto* tab = home->findChild<QPushButton*>(QString("home-part-%1").arg(page));
        if (!tab || !tab->isVisible() || !tab->isEnabled())
            throw std::runtime_error("out of reach: part " + std::to_string(page));
        QTest::mouseClick(tab, Qt::LeftButton);
    }
    std::vector<QPushButton*> keys() {
        std::vector<QPushButton*> shown;
        for (QPushButton* each : home->findChildren<QPushButton*>())
            if (each->isVisible())
                shown.push_back(each);
        return shown;
    }
};

} // namespace

TEST(HomeScreen, TwiceAsLargeItComesInPartsWithEveryKeyInReach) {
    SmallShip ship;
    ship.put(Observation{ship.begun(), "7-02", "self-closing", Side::None, Answer::No});
    VesselSession& session = ship.load();
    for (const QSize size : {QSize(1280, 800), QSize(800, 1280)})
        for (const bool gloves : {false, true}) {
            Large large(session, size, gloves);
            std::set<QString> reached;
            for (int page = 0; page < 5; ++page) {
                large.turnTo(page);
                test::settle(large.window);
                for (const QPushButton* each : large.keys()) {
                    const std::string where = each->objectName().toStdString() + " at " +
                                              std::to_string(size.width()) +
                                              (gloves ? " with gloves" : "");
                    reached.insert(each->objectName());
                    const QRect place(each->mapTo(large.home, QPoint()), each->size());
                    EXPECT_TRUE(large.home->rect().contains(place)) << where;
                    EXPECT_GE(each->height(), large.look.appearance().sizes.target) << where;
                }
                for (const QLabel* label : large.home->findChildren<QLabel*>()) {
                    if (!label->isVisible() || !label->wordWrap() || label->text().isEmpty())
                        continue;
                    EXPECT_GE(label->height() + 1, label->heightForWidth(label->width()))
                        << label->text().toStdString() << " at " << size.width() << gloves;
                }
            }
            for (const char* name :
                 {"home-main", "home-all-doors", "home-end", "open-items-all", "home-due",
                  "home-vessels", "home-settings", "home-practice", "profile-in", "profile-out"})
                EXPECT_TRUE(reached.contains(name)) << name << " at " << size.width() << gloves;
        }
}
