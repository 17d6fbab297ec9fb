#include <QSignalSpy>
#include <QTest>

#include <gmock/gmock.h>

#include "tests/ui/print_to.h"
#include "ui/parts/zone_profile.h"

namespace latchround::ui {
namespace {

Door doorAt(const char* number, const char* deck, double x_m, double y_m, const char* boundary) {
    Door door;
    door.number = number;
    door.deck = deck;
    door.x_m = x_m;
    door.y_m = y_m;
    door.boundary = boundary;
    return door;
}

/// Three zones of 30 m, three decks, a stair inside zone 1.
Arrangement smallShip() {
    Arrangement ship;
    ship.particulars.length_m = 90;
    ship.decks = {{"3", "", 0}, {"5", "", 6}, {"4", "", 3}};
    ship.zones = {{"1", 0, 30}, {"2", 30, 60}, {"3", 60, 90}};
    ship.boundaries = {{"1/2", Place::ZoneBulkhead, "1", "2", 30, {}},
                       {"2/3", Place::ZoneBulkhead, "2", "3", 60, {}},
                       {"stair", Place::Stairway, "1", "1", 12, {}}};
    ship.doors = {doorAt("3-1", "3", 30, 0, "1/2"),  doorAt("4-1", "4", 30, -3, "1/2"),
                  doorAt("4-2", "4", 30, 3, "1/2"),  doorAt("5-1", "5", 30, 0, "1/2"),
                  doorAt("3-2", "3", 60, 0, "2/3"),  doorAt("4-3", "4", 60, 0, "2/3"),
                  doorAt("4-S", "4", 12, 2, "stair")};
    return ship;
}

class ZoneProfileTest : public ::testing::Test {
protected:
    ZoneProfileTest() {
        profile.resize(1240, 330);
        profile.setArrangement(smallShip());
        profile.show();
    }
    QRectF place(const char* door) { return profile.placeOf(door).value_or(QRectF()); }

    ZoneProfile profile;
};

TEST_F(ZoneProfileTest, DoorsLieInOrderAlongTheShipAndUpTheDecks) {
    EXPECT_LT(place("3-1").center().x(), place("3-2").center().x());
    EXPECT_GT(place("3-1").center().y(), place("4-1").center().y());
    EXPECT_GT(place("4-1").center().y(), place("5-1").center().y());
    EXPECT_LT(place("4-1").right(), place("4-2").left()); // port before starboard, not on top of it
}

TEST_F(ZoneProfileTest, TapOnADoorsPlaceChoosesIt) {
    QSignalSpy chosen(&profile, &ZoneProfile::doorChosen);
    for (const char* door : {"5-1", "4-2", "4-3", "4-S"})
        QTest::mouseClick(&profile, Qt::LeftButton, {}, place(door).center().toPoint());
    ASSERT_EQ(chosen.count(), 4);
    EXPECT_EQ(chosen[0][0].toString(), QString("5-1"));
    EXPECT_EQ(chosen[1][0].toString(), QString("4-2"));
    EXPECT_EQ(chosen[2][0].toString(), QString("4-3"));
    EXPECT_EQ(chosen[3][0].toString(), QString("4-S"));
}

TEST_F(ZoneProfileTest, FingerBesideAGlyphStillMeansIt) {
    QSignalSpy chosen(&profile, &ZoneProfile::doorChosen);
    QTest::mouseClick(&profile, Qt::LeftButton, {},
                      (place("4-3").center() + QPointF(28, 4)).toPoint());
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_EQ(chosen[0][0].toString(), QString("4-3"));
}

TEST_F(ZoneProfileTest, TapFarFromAnyDoorChoosesNothing) {
    QSignalSpy chosen(&profile, &ZoneProfile::doorChosen);
    QTest::mouseClick(&profile, Qt::LeftButton, {},
                      QPoint(int(place("3-2").center().x()) + 200, 150));
    EXPECT_EQ(chosen.count(), 0);
}

TEST_F(ZoneProfileTest, ArrowsWalkTheDoorsAndReturnChooses) {
    QSignalSpy chosen(&profile, &ZoneProfile::doorChosen);
    profile.setCurrentDoor("3-1");
    QTest::keyClick(&profile, Qt::Key_Right);
    EXPECT_EQ(profile.currentDoor(), QString("3-2"));
    QTest::keyClick(&profile, Qt::Key_Up);
    EXPECT_EQ(profile.currentDoor(), QString("4-3"));
    QTest::keyClick(&profile, Qt::Key_Left);
    EXPECT_EQ(profile.currentDoor(), QString("4-2"));
    QTest::keyClick(&profile, Qt::Key_Left);
    EXPECT_EQ(profile.currentDoor(), QString("4-1"));
    QTest::keyClick(&profile, Qt::Key_Down);
    EXPECT_EQ(profile.currentDoor(), QString("3-1"));
    QTest::keyClick(&profile, Qt::Key_Return);
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_EQ(chosen[0][0].toString(), QString("3-1"));
}

TEST_F(ZoneProfileTest, BrokenBulkheadIsDrawnOtherwiseAndRead) {
    const QImage whole = profile.grab().toImage();
    profile.setBulkheads({{"1/2"},
                          {"2/3"},
                          {"bulkhead 1/2 open at deck 4: zones 1 and 2 act as one, 60 m"},
                          {"not shown to hold yet: bulkhead 2/3"}});
    EXPECT_NE(profile.grab().toImage(), whole);
    EXPECT_TRUE(profile.asList().first().contains("act as one"));
    EXPECT_TRUE(profile.accessibleDescription().contains("bulkhead 1/2 does not hold"));
}

TEST_F(ZoneProfileTest, ListNamesEveryZoneDoorWithItsGrade) {
    profile.setVerdicts({{"4-3", Verdict::Unsatisfactory}});
    const QString all = profile.asList().join("\n");
    EXPECT_TRUE(all.contains("door 4-3 deck 4 unsatisfactory"));
    EXPECT_TRUE(all.contains("door 5-1 deck 5 untested"));
}

TEST(ProfilePlan, CrowdedBulkheadShowsTheWorstDoorAndCountsTheRest) {
    Arrangement ship = smallShip();
    for (int n = 0; n < 12; ++n)
        ship.doors.push_back(doorAt(("5-x" + std::to_string(n)).c_str(), "5", 60, n, "2/3"));
    const ProfilePlan plan = planOf(ship, {{"5-x7", Verdict::Unsatisfactory}}, {400, 200}, {});
    int glyphs = 0;
    for (const ProfileDoor& door : plan.doors)
        if (door.deck == "5" && door.number.startsWith("5-x")) {
            ++glyphs;
            EXPECT_EQ(door.number, QString("5-x7"));
            EXPECT_EQ(door.together, 12);
        }
    EXPECT_EQ(glyphs, 1);
}

TEST(ProfilePlan, EveryDoorLiesInsideTheHullOfAnySize) {
    for (const QSizeF size : {QSizeF(450, 180), QSizeF(1240, 330), QSizeF(1900, 700)}) {
        const ProfilePlan plan = planOf(smallShip(), {}, size, {});
        for (const ProfileDoor& door : plan.doors)
            EXPECT_TRUE(plan.hull.contains(door.place)) << door.number.toStdString();
    }
}

TEST(ProfilePlan, EmptyArrangementIsDrawnWithoutDoors) {
    const ProfilePlan plan = planOf(Arrangement{}, {}, {600, 300}, {});
    EXPECT_TRUE(plan.doors.empty());
    EXPECT_EQ(plan.nearest({100, 100}, 50), nullptr);
}

} // namespace
} // namespace latchround::ui
