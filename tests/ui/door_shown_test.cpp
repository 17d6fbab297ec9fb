// What a person does goes to the door that is on the screen, and to no other.
#include <gtest/gtest.h>

#include <QApplication>
#include <QMouseEvent>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "tests/passing_time.h"
#include "tests/ui/memory_register.h"
#include "ui/frames/sheet.h"
#include "ui/keys/choice_row.h"
#include "ui/lists/door_list.h"
#include "ui/lists/verdict_list.h"
#include "ui/screens/door/door_screen.h"

using namespace latchround;
using namespace latchround::ui;

namespace {

struct DoorShown : testing::Test {
    SmallShip ship;
    FactId walkdown = ship.begun();
    VesselSession& session = ship.load();
    DoorScreen screen{session};

    void SetUp() override {
        screen.resize(1280, 800);
        screen.show();
        screen.setDoor("5-32");
        screen.enter();
    }
    /// A walkdown of door 5-32 alone.
    void beginAnother() {
        WalkdownBegun plan;
        plan.doors = {"5-32"};
        ASSERT_TRUE(session.record(plan));
    }
    ChoiceRow* choice() {
        for (ChoiceRow* row : screen.findChildren<ChoiceRow*>())
            if (row->isVisible())
                return row;
        return nullptr;
    }
    QPushButton* yes(ChoiceRow* row) {
        for (const Side side : {Side::None, Side::One, Side::Two})
            if (QPushButton* key = row->key(Answer::Yes, side))
                return key;
        return nullptr;
    }
    std::vector<std::string> doorsAnswered() {
        std::vector<std::string> doors;
        for (const Fact& fact : ship.vessel_register.all())
            if (const auto* seen = std::get_if<Observation>(&fact.body))
                doors.push_back(seen->door);
        return doors;
    }
};

} // namespace

/// The list is filled anew while its own signal is on the way.
TEST_F(DoorShown, ATouchInTheListShowsThatDoorWhole) {
    auto* list = screen.findChild<DoorListView*>();
    ASSERT_NE(list, nullptr);
    int row_of_other = 0;
    while (list->model()->index(row_of_other, 0).data().toString() == "5-32")
        ++row_of_other;
    const QModelIndex other = list->model()->index(row_of_other, 0);
    const QString number = other.data().toString();
    ASSERT_FALSE(number.isEmpty());
    QTest::mouseClick(list->viewport(), Qt::LeftButton, {}, list->visualRect(other).center());
    EXPECT_EQ(screen.door(), number);
    EXPECT_TRUE(screen.findChild<VerdictList*>()->accessibleName().startsWith("Door " + number));
    ChoiceRow* row = choice();
    ASSERT_NE(row, nullptr);
    QTest::mouseClick(yes(row), Qt::LeftButton);
    EXPECT_EQ(doorsAnswered(), std::vector{number.toStdString()});
}

/// The walkdown ended under the finger: on another tablet, or by undo.
TEST_F(DoorShown, APressInAWalkdownThatIsOverIsRefusedAloud) {
    ChoiceRow* row = choice();
    ASSERT_NE(row, nullptr);
    QSignalSpy refused(&session, &VesselSession::refused);
    ASSERT_TRUE(session.record(WalkdownEnded{walkdown, ""}));
    beginAnother();
    QTest::mouseClick(yes(row), Qt::LeftButton);
    EXPECT_EQ(refused.size(), 1);
    EXPECT_EQ(session.waiting(), 0u);
    EXPECT_TRUE(doorsAnswered().empty());
}

TEST_F(DoorShown, NothingMoreIsOfferedOnceTheWalkdownIsOver) {
    const auto offered = [&] {
        emit screen.findChild<VerdictList*>()->whyAsked("self-closing");
        const bool is = screen.findChild<QPushButton*>("why-could-not") != nullptr;
        delete screen.findChild<Sheet*>();
        return is;
    };
    EXPECT_TRUE(offered());
    ASSERT_TRUE(session.record(WalkdownEnded{walkdown, ""}));
    EXPECT_FALSE(offered());
}

TEST_F(DoorShown, AnAnswerIsClearedOnlyAfterItWasAskedFor) {
    ChoiceRow* row = choice();
    ASSERT_NE(row, nullptr);
    QTest::mouseClick(yes(row), Qt::LeftButton);
    QTest::mouseClick(yes(row), Qt::LeftButton);
    EXPECT_EQ(doorsAnswered().size(), 1u);
    ASSERT_NE(screen.findChild<QPushButton*>("keep-answer"), nullptr);
    QTest::mouseClick(screen.findChild<QPushButton*>("keep-answer"), Qt::LeftButton);
    test::settle(screen);
    EXPECT_EQ(session.door("5-32")->evidence.observations.size(), 1u);
    QTest::mouseClick(yes(row), Qt::LeftButton);
    QTest::mouseClick(screen.findChild<QPushButton*>("clear-answer"), Qt::LeftButton);
    EXPECT_TRUE(session.door("5-32")->evidence.observations.empty());
    EXPECT_FALSE(yes(row)->isChecked());
}

/// Twice on the same place of the glass: the second must not skip a step.
TEST_F(DoorShown, ASecondTapOnTheWayForwardIsPassedOver) {
    auto* forward = screen.findChild<QPushButton*>("forward");
    QTest::mouseClick(forward, Qt::LeftButton);
    EXPECT_EQ(screen.step(), Step::Release);
    QMouseEvent again(QEvent::MouseButtonDblClick, QPointF(5, 5),
                      forward->mapToGlobal(QPointF(5, 5)), Qt::LeftButton, Qt::LeftButton, {});
    QApplication::sendEvent(forward, &again);
    QTest::mouseRelease(forward, Qt::LeftButton);
    EXPECT_EQ(screen.step(), Step::Release);
}

TEST_F(DoorShown, AFactOfADoorThatIsNotOnTheWalkIsRefused) {
    ASSERT_TRUE(session.record(WalkdownEnded{walkdown, ""}));
    beginAnother();
    const FactId now = session.walkdown()->id;
    EXPECT_FALSE(session.record(Note{now, "5-31", "not here"}));
    EXPECT_FALSE(session.record(Note{walkdown, "5-32", "too late"}));
    EXPECT_TRUE(session.record(Note{now, "5-32", "here"}));
    EXPECT_EQ(session.waiting(), 0u);
}
