// On the largest sample vessel every door of the zone profile is two touches away, at every size:
// the first opens it, or offers it as a key beside what lies under the same fingertip.
#include <algorithm>

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTemporaryDir>

#include "app/catalogue/catalogue_place.h"
#include "app/desktop/clock_and_chance.h"
#include "app/desktop/desktop_app.h"
#include "app/vessels/sample_vessel.h"
#include "tests/passing_time.h"
#include "tests/whole/hands.h"
#include "ui/look/look.h"
#include "ui/ship/zone_profile.h"

using namespace latchround;

namespace {

class TwoTouches : public testing::TestWithParam<QSize> {
protected:
    QTemporaryDir data;
    ui::Look look;
    DesktopApp app{builtInCatalogue().value(), {}, look};
    QWidget* window = nullptr;
    ui::ZoneProfile* profile = nullptr;

    void SetUp() override {
        qputenv("LATCHROUND_DATA", data.path().toUtf8());
        const auto placed = placeSampleVessel(QStringLiteral("oriveth-meridian"), momentNow());
        ASSERT_TRUE(placed);
        ASSERT_TRUE(app.open(*placed));
        window = app.window();
        look.applyTo(*window);
        window->resize(GetParam());
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window));
        test::settle(*window);
        profile = window->findChild<ui::ZoneProfile*>("home-profile");
        ASSERT_NE(profile, nullptr);
        window->setUpdatesEnabled(false); // hundreds of sheets, and nobody looks
        // Only what is chosen matters here, not where the window goes then.
        QObject::disconnect(profile, &ui::ZoneProfile::doorChosen, nullptr, nullptr);
    }
};

} // namespace

TEST_P(TwoTouches, ReachEveryDoor) {
    QStringList doors;
    for (const ui::ProfileLine& line : profile->lines())
        doors += line.doors;
    ASSERT_EQ(doors.size(), 400);
    QSignalSpy chosen(profile, &ui::ZoneProfile::doorChosen);
    for (const QString& door : doors) {
        const auto place = profile->placeOf(door);
        ASSERT_TRUE(place) << door.toStdString();
        chosen.clear();
        QTest::mouseClick(profile, Qt::LeftButton, {}, place->center().toPoint());
        if (chosen.isEmpty()) {
            QWidget* sheet = hands::sheet(window);
            ASSERT_NE(sheet, nullptr) << door.toStdString();
            auto* key = sheet->findChild<QPushButton*>("pick-" + door);
            ASSERT_NE(key, nullptr) << door.toStdString();
            ASSERT_TRUE(window->rect().contains(QRect(key->mapTo(window, QPoint()), key->size())))
                << door.toStdString();
            QTest::mouseClick(key, Qt::LeftButton);
            QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        }
        ASSERT_EQ(chosen.count(), 1) << door.toStdString();
        ASSERT_EQ(chosen[0][0].toString(), door);
    }
}

INSTANTIATE_TEST_SUITE_P(Sizes, TwoTouches,
                         testing::Values(QSize(1280, 800), QSize(800, 1280), QSize(1920, 1080)));
