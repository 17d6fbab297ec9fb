#include <QAccessible>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include <gmock/gmock.h>

#include "tests/ui/print_to.h"
#include "ui/frames/sheet.h"
#include "ui/ship/zone_profile.h"

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
        profile.resize(1240, 400);
        profile.setArrangement(smallShip());
        profile.show();
    }
    QRectF place(const char* door) { return profile.placeOf(door).value_or(QRectF()); }
    void wheel(const QPointF& at, int eighths) {
        QWheelEvent turn(at, profile.mapToGlobal(at), {}, {0, eighths}, Qt::NoButton,
                         Qt::NoModifier, Qt::NoScrollPhase, false);
        QCoreApplication::sendEvent(&profile, &turn);
    }
    QPushButton& key(const char* name) {
        auto* found = profile.findChild<QPushButton*>(name);
        EXPECT_TRUE(found != nullptr && found->isVisible()) << name;
        return *found;
    }
    /// The middle of the ship, for wheel and fingers.
    QPointF middle() { return {double(profile.width()) / 2, 150}; }

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
                          {"not yet proven: bulkhead 2/3"}});
    EXPECT_NE(profile.grab().toImage(), whole);
    EXPECT_TRUE(profile.asList().first().contains("act as one"));
    EXPECT_TRUE(profile.asList().join("\n").contains("bulkhead 1/2 is open"));
    EXPECT_TRUE(profile.accessibleDescription().contains("act as one"));
}

TEST_F(ZoneProfileTest, BulkheadIsBrokenAtTheDeckOfTheFailingDoorOnly) {
    profile.setVerdicts({{"4-1", Verdict::Unsatisfactory}});
    profile.setBulkheads({{"1/2"}, {}, {}, {}});
    const QImage image = profile.grab().toImage();
    const QColor bad = lookOf(&profile).colours.bad;
    const int x = int(place("3-1").center().x());
    const auto line_at = [&](const char* deck_door, double up) {
        // Beside the glyph's own column nothing but the bulkhead is of this colour.
        const int y = int(place(deck_door).top() - up);
        return image.pixelColor(x, y) == bad;
    };
    EXPECT_TRUE(line_at("5-1", 8));
    EXPECT_TRUE(line_at("3-1", 8));
    EXPECT_FALSE(line_at("4-1", 6));
}

TEST_F(ZoneProfileTest, ListNamesEveryZoneDoorWithItsGrade) {
    profile.setVerdicts({{"4-3", Verdict::Unsatisfactory}});
    const QString all = profile.asList().join("\n");
    EXPECT_TRUE(all.contains("door 4-3 deck 4 unsatisfactory"));
    EXPECT_TRUE(all.contains("door 5-1 deck 5 untested"));
}

TEST_F(ZoneProfileTest, WheelLooksCloserAndWhatIsUnderItStays) {
    const QPointF at = place("4-3").center();
    wheel(at, 3 * 120);
    EXPECT_NEAR(profile.zoom(), 1.25 * 1.25 * 1.25, 1e-9);
    EXPECT_NEAR(place("4-3").center().x(), at.x(), 2);
    wheel(at, -30 * 120);
    EXPECT_EQ(profile.zoom(), 1);
    EXPECT_NEAR(place("4-3").center().x(), at.x(), 1);
}

TEST_F(ZoneProfileTest, TwoFingersPullItCloserAndChooseNothing) {
    QSignalSpy chosen(&profile, &ZoneProfile::doorChosen);
    QPointingDevice* fingers = QTest::createTouchDevice();
    const QPoint one = place("4-3").center().toPoint();
    QTest::touchEvent(&profile, fingers).press(0, one, &profile);
    QTest::touchEvent(&profile, fingers)
        .move(0, one, &profile)
        .press(1, one + QPoint(60, 0), &profile);
    QTest::touchEvent(&profile, fingers)
        .move(0, one - QPoint(60, 0), &profile)
        .move(1, one + QPoint(120, 0), &profile);
    EXPECT_NEAR(profile.zoom(), 3, 1e-6);
    QTest::touchEvent(&profile, fingers)
        .move(0, one - QPoint(60, 0), &profile)
        .release(1, one + QPoint(120, 0), &profile);
    QTest::touchEvent(&profile, fingers).release(0, one - QPoint(60, 0), &profile);
    EXPECT_EQ(chosen.count(), 0);
    EXPECT_EQ(profile.findChild<Sheet*>(), nullptr);
    // The fingers are gone: one of them alone is a touch again.
    const QPoint door = place("4-3").center().toPoint();
    QTest::touchEvent(&profile, fingers).press(2, door, &profile);
    QTest::touchEvent(&profile, fingers).release(2, door, &profile);
    EXPECT_EQ(chosen.count(), 1);
}

TEST_F(ZoneProfileTest, KeysOnItLookCloserAndShowTheWholeAgain) {
    EXPECT_FALSE(key("profile-out").isEnabled());
    for (const double expected : {2.0, 4.0, 8.0}) {
        QTest::mouseClick(&key("profile-in"), Qt::LeftButton);
        EXPECT_EQ(profile.zoom(), expected);
    }
    EXPECT_FALSE(key("profile-in").isEnabled());
    QTest::mouseClick(&key("profile-out"), Qt::LeftButton);
    EXPECT_EQ(profile.zoom(), 4);
    QTest::mouseClick(&key("profile-whole"), Qt::LeftButton);
    EXPECT_EQ(profile.zoom(), 1);
    for (const char* name : {"profile-in", "profile-out", "profile-whole"}) {
        EXPECT_GE(key(name).width(), lookOf(&profile).sizes.target) << name;
        EXPECT_GE(key(name).height(), lookOf(&profile).sizes.target) << name;
    }
}

TEST_F(ZoneProfileTest, PlusMinusAndNoughtDoAsTheKeysDo) {
    QTest::keyClick(&profile, Qt::Key_Plus);
    QTest::keyClick(&profile, Qt::Key_Plus);
    EXPECT_EQ(profile.zoom(), 4);
    QTest::keyClick(&profile, Qt::Key_Minus);
    EXPECT_EQ(profile.zoom(), 2);
    QTest::keyClick(&profile, Qt::Key_0);
    EXPECT_EQ(profile.zoom(), 1);
}

TEST_F(ZoneProfileTest, ArrowsBringTheDoorIntoView) {
    profile.setCurrentDoor("3-1");
    profile.setZoom(8, place("3-1").center());
    EXPECT_FALSE(profile.rect().contains(place("3-2").center().toPoint()));
    QTest::keyClick(&profile, Qt::Key_Right);
    ASSERT_EQ(profile.currentDoor(), QString("3-2"));
    EXPECT_TRUE(profile.rect().contains(place("3-2").center().toPoint()));
}

TEST_F(ZoneProfileTest, CloserViewGoesWithTheFingerAndATouchBesideDoorsMovesItToo) {
    QSignalSpy chosen(&profile, &ZoneProfile::doorChosen);
    profile.setZoom(4, middle());
    const double before = place("4-3").center().x();
    const QPoint from = middle().toPoint();
    QTest::mousePress(&profile, Qt::LeftButton, {}, from);
    QTest::mouseMove(&profile, from - QPoint(100, 0));
    QTest::mouseRelease(&profile, Qt::LeftButton, {}, from - QPoint(100, 0));
    EXPECT_NEAR(place("4-3").center().x(), before - 100, 2);
    EXPECT_EQ(chosen.count(), 0);
    // Without dragging: the place touched comes to the middle.
    const double was = place("4-3").center().x();
    QTest::mouseClick(&profile, Qt::LeftButton, {}, middle().toPoint() + QPoint(150, 0));
    EXPECT_EQ(chosen.count(), 0);
    EXPECT_LT(place("4-3").center().x(), was - 100);
}

TEST_F(ZoneProfileTest, WholeShipDoesNotMoveUnderTheFinger) {
    const QRectF before = place("4-3");
    QTest::mousePress(&profile, Qt::LeftButton, {}, middle().toPoint());
    QTest::mouseMove(&profile, middle().toPoint() - QPoint(100, 0));
    QTest::mouseRelease(&profile, Qt::LeftButton, {}, middle().toPoint() - QPoint(100, 0));
    EXPECT_EQ(place("4-3"), before);
}

TEST_F(ZoneProfileTest, SeveralDoorsUnderOneFingertipAreOfferedAsKeys) {
    profile.resize(420, 130);
    QSignalSpy chosen(&profile, &ZoneProfile::doorChosen);
    QTest::mouseClick(&profile, Qt::LeftButton, {}, place("4-1").center().toPoint());
    EXPECT_EQ(chosen.count(), 0);
    auto* sheet = profile.findChild<Sheet*>();
    ASSERT_NE(sheet, nullptr);
    auto* pick = sheet->findChild<QPushButton*>("pick-4-2");
    ASSERT_NE(pick, nullptr);
    EXPECT_EQ(pick->accessibleName(), QString("door 4-2, deck 4, untested"));
    EXPECT_GE(pick->height(), lookOf(&profile).sizes.target);
    QTest::mouseClick(pick, Qt::LeftButton);
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_EQ(chosen[0][0].toString(), QString("4-2"));
}

TEST_F(ZoneProfileTest, WithoutFocusItIsAPictureWithoutKeys) {
    profile.setFocusPolicy(Qt::NoFocus);
    profile.resize(1200, 330);
    for (const auto* each : profile.findChildren<QPushButton*>())
        EXPECT_FALSE(each->isVisible()) << each->objectName().toStdString();
}

TEST_F(ZoneProfileTest, ScreenReaderHearsAListWhoseDoorsArePressed) {
    profile.setVerdicts({{"4-3", Verdict::Unsatisfactory}});
    profile.setBulkheads({{"2/3"}, {}, {"zones 2 and 3 act as one"}, {}});
    QAccessibleInterface* list = QAccessible::queryAccessibleInterface(&profile);
    ASSERT_NE(list, nullptr);
    EXPECT_EQ(list->role(), QAccessible::List);
    const QStringList words = profile.asList();
    ASSERT_GE(list->childCount(), int(words.size()));
    for (int i = 0; i < words.size(); ++i) {
        QAccessibleInterface* item = list->child(i);
        ASSERT_NE(item, nullptr);
        EXPECT_EQ(item->role(), QAccessible::ListItem);
        EXPECT_EQ(item->text(QAccessible::Name), words[i]);
        EXPECT_EQ(item->parent(), list);
        EXPECT_EQ(list->indexOfChild(item), i);
    }
    QAccessibleInterface* bulkhead = list->child(2);
    ASSERT_TRUE(bulkhead->text(QAccessible::Name).startsWith("bulkhead 2/3 is open"));
    ASSERT_EQ(bulkhead->childCount(), 2);
    QAccessibleInterface* door = bulkhead->child(1);
    EXPECT_EQ(door->role(), QAccessible::Button);
    EXPECT_EQ(door->text(QAccessible::Name), QString("door 4-3, deck 4, unsatisfactory"));
    EXPECT_EQ(bulkhead->indexOfChild(door), 1);
    QSignalSpy chosen(&profile, &ZoneProfile::doorChosen);
    QAccessibleActionInterface* action = door->actionInterface();
    ASSERT_NE(action, nullptr);
    action->doAction(QAccessibleActionInterface::pressAction());
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_EQ(chosen[0][0].toString(), QString("4-3"));
    EXPECT_EQ(bulkhead->actionInterface(), nullptr);
}

TEST_F(ZoneProfileTest, ScreenReaderIsNotToldOfWhatIsGone) {
    QAccessibleInterface* list = QAccessible::queryAccessibleInterface(&profile);
    QAccessibleInterface* last = list->child(int(profile.lines().size()) - 1);
    ASSERT_TRUE(last->isValid());
    profile.setArrangement({});
    EXPECT_FALSE(last->isValid());
    EXPECT_TRUE(last->text(QAccessible::Name).isEmpty());
}

TEST_F(ZoneProfileTest, LongSentencesWrapAndWhatHasNoRoomIsCounted) {
    QStringList many;
    for (int i = 0; i < 12; ++i)
        many << QString("sentence %1 ").arg(i).repeated(20);
    const double before = place("4-3").top();
    profile.setBulkheads({{}, {}, many, {}});
    EXPECT_LT(place("4-3").top(), before); // the words took room from below
    EXPECT_GT(place("3-1").top() - place("5-1").top(), 60);
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
            EXPECT_EQ(door.together(), 12);
            EXPECT_TRUE(door.standsFor("5-x3"));
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

TEST(ProfilePlan, ViewEndsWhereTheShipDoes) {
    for (const QPointF middle : {QPointF(0, 0), QPointF(1, 1), QPointF(-4, 7)}) {
        ProfileMeasures measures;
        measures.view = {4, middle};
        const ProfilePlan plan = planOf(smallShip(), {}, {1240, 330}, measures);
        EXPECT_NEAR(plan.hull.width(), 4 * plan.viewport.width(), 1e-6);
        EXPECT_TRUE(plan.hull.adjusted(-1e-6, -1e-6, 1e-6, 1e-6).contains(plan.viewport));
    }
}

TEST(ProfilePlan, EmptyArrangementIsDrawnWithoutDoors) {
    const ProfilePlan plan = planOf(Arrangement{}, {}, {600, 300}, {});
    EXPECT_TRUE(plan.doors.empty());
    EXPECT_TRUE(plan.within({100, 100}, 50).empty());
}

} // namespace
} // namespace latchround::ui
