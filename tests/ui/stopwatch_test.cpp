#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QMouseEvent>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QTimer>

#include "core/safety/cautions.h"
#include "tests/passing_time.h"
#include "tests/ui/memory_register.h"
#include "ui/figures/figure_label.h"
#include "ui/frames/top_bar.h"
#include "ui/keys/mark_key.h"
#include "ui/screens/caution/caution_screen.h"
#include "ui/screens/stopwatch/run_result.h"
#include "ui/screens/stopwatch/stopwatch_screen.h"
#include "ui/words/offered.h"

using namespace latchround;
using namespace latchround::ui;

namespace {

struct Timing : testing::Test {
    SmallShip ship;
    FactId walkdown = ship.begun();
    VesselSession& session = ship.load();
    StopwatchScreen screen{session};

    void SetUp() override {
        screen.resize(1280, 800);
        screen.show();
    }
    MarkKey* key(const char* name = "mark") { return screen.findChild<MarkKey*>(name); }
    void press(MarkKey* mark, int after_ms) {
        QTest::mousePress(mark, Qt::LeftButton, {}, {}, after_ms);
        QTest::mouseRelease(mark, Qt::LeftButton);
    }
    /// At this time of the window system's clock.
    void pressAt(quint64 event_ms) {
        const QPointF middle = QRectF(key()->rect()).center();
        for (const auto type : {QEvent::MouseButtonPress, QEvent::MouseButtonRelease}) {
            const bool down = type == QEvent::MouseButtonPress;
            QMouseEvent event(type, middle, key()->mapToGlobal(middle), Qt::LeftButton,
                              down ? Qt::LeftButton : Qt::NoButton, {});
            event.setTimestamp(event_ms);
            QApplication::sendEvent(key(), &event);
        }
    }
    void confirmAll() {
        for (const Caution& caution : cautionsBeforeRelease())
            (void)session.record(CautionAnswered{walkdown, "5-32", std::string(caution.id), true});
    }
    const RunRecord& run(const char* door) { return session.door(door)->evidence.runs.back(); }
};

} // namespace

TEST_F(Timing, RemoteRunCannotBeArmedBeforeEveryCautionIsConfirmed) {
    EXPECT_FALSE(screen.begin("5-32", Release::Remote, RunKind::Closing));
    confirmAll();
    EXPECT_TRUE(screen.begin("5-32", Release::Remote, RunKind::Closing, "MVZ2"));
}

TEST_F(Timing, CautionsAreUsedUpByTheRunTheyWereGivenFor) {
    confirmAll();
    ASSERT_TRUE(screen.begin("5-32", Release::Remote, RunKind::Closing));
    press(key(), 10);
    QTest::keyClick(key(), Qt::Key_Escape);
    EXPECT_FALSE(screen.begin("5-32", Release::Remote, RunKind::Closing));
}

TEST_F(Timing, KeyIsNamedForTheNextEventAndOnlyAfterTheMarkIsSaved) {
    ASSERT_TRUE(screen.begin("5-31", Release::LetGo, RunKind::Closing));
    EXPECT_EQ(key()->nameLine(), "Leaf moves");
    press(key(), 10);
    EXPECT_EQ(key()->nameLine(), "Shut");
    EXPECT_EQ(ship.vessel_register.transactions.back().size(), 2u); // run started, first mark
}

TEST_F(Timing, AMarkThatIsNotSavedKeepsTheKeyAndIsSavedLater) {
    ASSERT_TRUE(screen.begin("5-31", Release::LetGo, RunKind::Closing));
    press(key(), 10);
    ship.vessel_register.failure = disk_full;
    press(key(), 12000);
    EXPECT_EQ(key()->nameLine(), "Not saved");
    EXPECT_FALSE(key()->isEnabled());
    EXPECT_FALSE(screen.findChild<QPushButton*>("stop")->isEnabled())
        << "it would overrule the end that waits with the last mark";
    ship.vessel_register.failure.reset();
    ASSERT_TRUE(session.saveWaiting());
    ASSERT_EQ(run("5-31").marks.size(), 2u);
    EXPECT_TRUE(run("5-31").end);
}

TEST_F(Timing, StopBeforeTheFirstMarkIsOnRecordToo) {
    confirmAll();
    ASSERT_TRUE(screen.begin("5-32", Release::Remote, RunKind::Closing, "MVZ2"));
    QTest::mousePress(screen.findChild<QPushButton*>("stop"), Qt::LeftButton);
    ASSERT_TRUE(run("5-32").end);
    EXPECT_EQ(run("5-32").end->outcome, RunOutcome::Stopped);
    EXPECT_TRUE(run("5-32").marks.empty());
}

/// The first mark of a run that cannot be saved, and then Stop.
TEST_F(Timing, StopWithTheFirstMarkNotYetSavedBeginsTheRunOnce) {
    ASSERT_TRUE(screen.begin("5-31", Release::LetGo, RunKind::Closing));
    ship.vessel_register.failure = disk_full;
    press(key(), 10);
    QTest::mousePress(screen.findChild<QPushButton*>("stop"), Qt::LeftButton);
    EXPECT_EQ(session.waiting(), 2u);
    ship.vessel_register.failure.reset();
    ASSERT_TRUE(session.saveWaiting());
    EXPECT_EQ(session.waiting(), 0u);
    ASSERT_EQ(run("5-31").marks.size(), 1u);
    ASSERT_TRUE(run("5-31").end);
    EXPECT_EQ(run("5-31").end->outcome, RunOutcome::Stopped);
}

TEST_F(Timing, StopStaysStoppedOnTheScreenThoughItCannotBeSaved) {
    ASSERT_TRUE(screen.begin("5-31", Release::LetGo, RunKind::Closing));
    press(key(), 10);
    ship.vessel_register.failure = disk_full;
    QTest::mousePress(screen.findChild<QPushButton*>("stop"), Qt::LeftButton);
    EXPECT_FALSE(key()->isVisible());
    EXPECT_FALSE(screen.findChild<QPushButton*>("stop")->isEnabled());
    for (const QTimer* timer : screen.findChildren<QTimer*>(Qt::FindDirectChildrenOnly))
        EXPECT_FALSE(timer->isActive()) << "the clock runs on";
    QSignalSpy done(&screen, &StopwatchScreen::done);
    emit screen.bar().back();
    EXPECT_EQ(done.size(), 1) << "the way back is shut";
    ship.vessel_register.failure.reset();
    ASSERT_TRUE(session.saveWaiting());
    EXPECT_FALSE(key()->isVisible());
    ASSERT_TRUE(run("5-31").end);
    EXPECT_EQ(run("5-31").end->outcome, RunOutcome::Stopped);
}

TEST_F(Timing, AReasonForStoppingIsKeptWhileNothingCanBeSaved) {
    ASSERT_TRUE(screen.begin("5-31", Release::LetGo, RunKind::Closing));
    press(key(), 10);
    ship.vessel_register.failure = disk_full;
    QTest::mousePress(screen.findChild<QPushButton*>("stop"), Qt::LeftButton);
    emit screen.findChild<RunResult*>()->reasonPicked(offered("someone-in-the-way"));
    ship.vessel_register.failure.reset();
    ASSERT_TRUE(session.saveWaiting());
    EXPECT_EQ(run("5-31").end->reason, offered("someone-in-the-way"));
}

/// Two hits 165 ms apart: both are kept, and the person is asked.
TEST_F(Timing, ASuspectedDoubleMarkIsAskedAboutAndCanBeTakenBack) {
    ASSERT_TRUE(screen.begin("5-31", Release::LetGo, RunKind::Closing));
    pressAt(1000);
    pressAt(1165);
    ASSERT_EQ(run("5-31").marks.size(), 2u) << "kept";
    auto* wrong = screen.findChild<QPushButton*>("double-wrong");
    ASSERT_TRUE(wrong->isVisible());
    EXPECT_FALSE(screen.findChild<QPushButton*>("run-done")->isVisible());
    test::letTimePass(screen);
    QTest::mouseClick(wrong, Qt::LeftButton);
    EXPECT_EQ(run("5-31").marks.size(), 1u);
    EXPECT_FALSE(run("5-31").end);
    EXPECT_EQ(key()->nameLine(), "Shut");
    EXPECT_TRUE(key()->isVisible());
    pressAt(13000);
    EXPECT_FALSE(wrong->isVisible());
    EXPECT_TRUE(run("5-31").end);
}

TEST_F(Timing, BothMarksOfASuspectedDoubleMayBeRight) {
    confirmAll();
    ASSERT_TRUE(screen.begin("5-32", Release::Remote, RunKind::Closing, "MVZ2"));
    for (const quint64 ms : {1000, 7000, 18000, 18200}) // the alarm stops as the leaf is home
        pressAt(ms);
    auto* right = screen.findChild<QPushButton*>("double-right");
    ASSERT_TRUE(right->isVisible());
    test::letTimePass(screen);
    QTest::mouseClick(right, Qt::LeftButton);
    EXPECT_TRUE(screen.findChild<QPushButton*>("run-done")->isVisible());
    EXPECT_EQ(run("5-32").marks.size(), 4u);
}

/// The run in the green must not read as the door's worse average.
TEST_F(Timing, TheResultIsThisRunsOwnThenTheDoors) {
    const auto words = [this] {
        QStringList lines;
        for (const QLabel* label : screen.findChild<RunResult*>()->findChildren<QLabel*>())
            if (label->isVisible())
                lines << label->text();
        return lines.join('\n');
    };
    ASSERT_TRUE(screen.begin("5-31", Release::LetGo, RunKind::Closing));
    pressAt(1000);
    pressAt(4500);
    EXPECT_TRUE(words().contains("3.5")) << words().toStdString();
    EXPECT_FALSE(words().contains("All runs of this door"));
    ASSERT_TRUE(screen.begin("5-31", Release::LetGo, RunKind::Closing));
    pressAt(30000);
    pressAt(50000);
    EXPECT_TRUE(words().contains("20.0")) << words().toStdString();
    EXPECT_TRUE(words().contains("All runs of this door")) << words().toStdString();
}

/// Seen on board: 12.03 s, in the green, read "closing time 7.80 unsatisfactory".
TEST_F(Timing, ARunInTheGreenReadsSoWhateverTheRunBeforeItSays) {
    ASSERT_TRUE(screen.begin("5-31", Release::LetGo, RunKind::Closing));
    pressAt(1000);
    pressAt(8800);
    ASSERT_TRUE(screen.begin("5-31", Release::LetGo, RunKind::Closing));
    pressAt(30000);
    pressAt(42030);
    QStringList lines;
    for (const QLabel* label : screen.findChild<RunResult*>()->findChildren<QLabel*>())
        if (label->isVisible() && label->text().contains("closing time"))
            lines << label->text();
    ASSERT_EQ(lines.size(), 2) << lines.join('\n').toStdString();
    EXPECT_TRUE(lines[0].contains("12.0")) << lines[0].toStdString();
    EXPECT_TRUE(lines[0].endsWith(": satisfactory")) << lines[0].toStdString();
    EXPECT_TRUE(lines[1].startsWith("All runs of this door")) << lines[1].toStdString();
    EXPECT_FALSE(lines[1].endsWith(": satisfactory")) << lines[1].toStdString();
}

/// And a run from the door itself, in which nobody heard an alarm, "alarm 6.19 satisfactory".
TEST_F(Timing, ALocalRunSaysNothingOfTheAlarmOfAnother) {
    const auto alarms = [this] {
        int said = 0;
        for (const QLabel* label : screen.findChild<RunResult*>()->findChildren<QLabel*>())
            said += label->text().contains("alarm");
        return said;
    };
    confirmAll();
    ASSERT_TRUE(screen.begin("5-32", Release::Remote, RunKind::Closing, "MVZ2"));
    for (const quint64 ms : {1000, 7190, 18000, 19000})
        pressAt(ms);
    ASSERT_TRUE(run("5-32").end);
    EXPECT_GT(alarms(), 0);
    ASSERT_TRUE(screen.begin("5-32", Release::LocalSideOne, RunKind::Closing));
    pressAt(60000);
    for (const quint64 ms : {71000, 80000})
        if (!run("5-32").end)
            pressAt(ms);
    ASSERT_TRUE(run("5-32").end);
    EXPECT_EQ(run("5-32").release, Release::LocalSideOne);
    EXPECT_EQ(alarms(), 0);
}

TEST_F(Timing, AContactRunShowsItsTime) {
    ASSERT_TRUE(screen.begin("5-32", Release::LocalSideOne, RunKind::Contact));
    pressAt(1000);
    pressAt(1600);
    bool said = false;
    for (const QLabel* label : screen.findChild<RunResult*>()->findChildren<QLabel*>())
        said = said || (label->isVisible() && label->text().contains("stopped after 0.60"));
    EXPECT_TRUE(said);
    EXPECT_TRUE(screen.findChild<FigureLabel*>()->figure().contains("0.60"))
        << screen.findChild<FigureLabel*>()->figure().toStdString();
}

TEST_F(Timing, AlarmThatStopsEarlyIsMarkedOutOfTurn) {
    confirmAll();
    ASSERT_TRUE(screen.begin("5-32", Release::Remote, RunKind::Closing));
    press(key(), 10);
    EXPECT_EQ(key("mark-alarm")->nameLine(), "Alarm off");
    press(key(), 6000);
    EXPECT_TRUE(key("mark-alarm")->isEnabled());
    press(key("mark-alarm"), 2000);
    EXPECT_EQ(key()->nameLine(), "Shut");
    press(key(), 7000);
    ASSERT_TRUE(run("5-32").end);
    EXPECT_EQ(run("5-32").end->outcome, RunOutcome::Complete);
}

TEST_F(Timing, LeafThatMovesInSilenceIsMarkedSo) {
    confirmAll();
    ASSERT_TRUE(screen.begin("5-32", Release::Remote, RunKind::Closing));
    EXPECT_EQ(key("mark-alarm")->nameLine(), "Moves,\nno alarm");
    press(key("mark-alarm"), 10);
    EXPECT_EQ(key()->nameLine(), "Shut");
    press(key(), 8000);
    ASSERT_TRUE(run("5-32").end);
    EXPECT_EQ(run("5-32").end->outcome, RunOutcome::Complete);
    EXPECT_EQ(run("5-32").marks.size(), 2u);
    bool said = false;
    for (const QLabel* label : screen.findChild<RunResult*>()->findChildren<QLabel*>())
        said = said || (label->isVisible() && label->text().contains("no alarm marked"));
    EXPECT_TRUE(said);
}

TEST_F(Timing, AlarmThatComesAfterTheLeafMovesIsMarkedLate) {
    confirmAll();
    ASSERT_TRUE(screen.begin("5-32", Release::Remote, RunKind::Closing));
    press(key("mark-alarm"), 10);
    EXPECT_EQ(key("mark-alarm")->nameLine(), "Late\nalarm");
    press(key("mark-alarm"), 1000);
    EXPECT_EQ(key("mark-alarm")->nameLine(), "Alarm off");
    press(key(), 8000);
    press(key(), 1000);
    ASSERT_TRUE(run("5-32").end);
    const DoorGrade& grade = session.door("5-32")->grade;
    EXPECT_EQ(findRow(grade, "alarm-lead")->verdict, Verdict::Unsatisfactory);
}

TEST_F(Timing, HalfWayMarkIsOptional) {
    ASSERT_TRUE(screen.begin("5-32", Release::LocalSideOne, RunKind::Closing));
    press(key(), 10);
    press(key("mark-half-way"), 5000);
    EXPECT_EQ(key()->nameLine(), "Shut");
    press(key(), 5000);
    ASSERT_EQ(run("5-32").marks.size(), 3u);
    EXPECT_EQ(run("5-32").marks[1].mark.kind, MarkKind::HalfWay);
}

TEST_F(Timing, SpaceMarksAndEscapeStopsByKeyboardAlone) {
    ASSERT_TRUE(screen.begin("5-31", Release::LetGo, RunKind::Closing));
    QTest::keyClick(&screen, Qt::Key_Space);
    EXPECT_EQ(run("5-31").marks.size(), 1u);
    EXPECT_EQ(run("5-31").marks[0].mark.device, InputDevice::Key);
    QTest::keyClick(&screen, Qt::Key_Escape);
    EXPECT_EQ(run("5-31").end->outcome, RunOutcome::Stopped);
}

TEST_F(Timing, EachMarkIsAnsweredByACueOnceItIsSaved) {
    ASSERT_TRUE(screen.begin("5-31", Release::LetGo, RunKind::Closing));
    EXPECT_EQ(ship.ports.cues, 0);
    press(key(), 10);
    EXPECT_EQ(ship.ports.cues, 1);
    ship.vessel_register.failure = disk_full;
    press(key(), 12000);
    EXPECT_EQ(ship.ports.cues, 1) << "a mark that is not on disk must not sound like one that is";
}

TEST_F(Timing, StopAndTakeBackAreNoMarksAndGiveNoCue) {
    ASSERT_TRUE(screen.begin("5-31", Release::LetGo, RunKind::Closing));
    press(key(), 10);
    QTest::mouseClick(screen.findChild<QPushButton*>("take-back"), Qt::LeftButton);
    QTest::mousePress(screen.findChild<QPushButton*>("stop"), Qt::LeftButton);
    EXPECT_EQ(ship.ports.cues, 1);
}

TEST(CautionScreen, ArmsOnlyWhenAllAreConfirmedAndShowsTheWholeGroup) {
    SmallShip ship;
    ship.begun();
    VesselSession& session = ship.load();
    CautionScreen screen(session);
    screen.resize(1280, 800);
    screen.show();
    screen.setDoor("5-32");
    auto* arm = screen.findChild<QPushButton*>("arm");
    for (const Caution& caution : cautionsBeforeRelease()) {
        EXPECT_FALSE(arm->isEnabled());
        auto* row = screen.findChild<QWidget*>(
            QStringLiteral("caution-%1").arg(QString::fromUtf8(caution.id.data())));
        ASSERT_NE(row, nullptr);
        QTest::mouseClick(row->findChild<QPushButton*>(), Qt::LeftButton);
    }
    EXPECT_TRUE(arm->isEnabled());
    EXPECT_EQ(session.door("5-32")->evidence.cautions.size(), cautionsBeforeRelease().size());
    EXPECT_EQ(session.door("5-32")->evidence.cautions[0].stamp.person, ship.person);
}
