// What a person does goes to the door that is on the screen, and to no other.
#include <set>

#include <gtest/gtest.h>

#include <QApplication>
#include <QMouseEvent>
#include <QPointer>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "tests/passing_time.h"
#include "tests/ui/memory_register.h"
#include "ui/frames/sheet.h"
#include "ui/keys/choice_row.h"
#include "ui/lists/door_list.h"
#include "ui/lists/verdict_list.h"
#include "ui/screens/door/door_head.h"
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

namespace {

/// What of a door screen is painted, each time that any part of it is.
class Painted : public QObject {
public:
    explicit Painted(DoorScreen& screen)
        : m_screen(screen) {
        for (ChoiceRow* row : screen.findChildren<ChoiceRow*>())
            m_rows_before.emplace_back(row);
        qApp->installEventFilter(this);
    }
    std::set<std::string> doors; ///< "head / verdict" as they stood together
    bool old_rows_beside_new_door = false;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        const auto* part = qobject_cast<QWidget*>(watched);
        if (event->type() != QEvent::Paint || !part || !m_screen.isAncestorOf(part))
            return false;
        const auto first = [](const QString& name) { return name.section(':', 0, 0); };
        const QString head = first(m_screen.findChild<DoorHead*>()->accessibleName());
        const QString verdict = first(m_screen.findChild<VerdictList*>()->accessibleName());
        doors.insert((head + " / " + verdict).toStdString());
        if (head != "Door 5-32")
            for (const QPointer<ChoiceRow>& row : m_rows_before)
                old_rows_beside_new_door |= row && row->isVisible();
        return false;
    }

private:
    DoorScreen& m_screen;
    std::vector<QPointer<ChoiceRow>> m_rows_before;
};

} // namespace

/// Never half of one door and half of another, not for one frame.
TEST_F(DoorShown, NumberVerdictAndRowsChangeInOnePaint) {
    test::settle(screen);
    Painted painted(screen);
    screen.setDoor("5-31");
    screen.repaint();
    test::settle(screen);
    screen.setDoor("7-02");
    test::settle(screen);
    EXPECT_FALSE(painted.old_rows_beside_new_door);
    ASSERT_FALSE(painted.doors.empty());
    for (const std::string& both : painted.doors) {
        const std::string head = both.substr(0, both.find(" / "));
        EXPECT_EQ(both, head + " / " + head);
    }
}

/// The finger is down while the door changes, by a second finger or a merge.
TEST_F(DoorShown, APressIsNeverForADoorThatCameUnderTheFinger) {
    const QPointer<QPushButton> key = yes(choice());
    ASSERT_NE(key, nullptr);
    const QPoint at = key->mapTo(&screen, key->rect().center());
    QTest::mousePress(key, Qt::LeftButton);
    screen.setDoor("5-31");
    test::settle(screen);
    QWidget* there = screen.childAt(at);
    ASSERT_NE(there, nullptr);
    EXPECT_NE(there, key);
    QTest::mouseRelease(there, Qt::LeftButton);
    if (key)
        QTest::mouseRelease(key, Qt::LeftButton);
    for (const std::string& door : doorsAnswered())
        EXPECT_EQ(door, "5-32");
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
