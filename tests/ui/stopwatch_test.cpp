#include <gtest/gtest.h>

#include <QPushButton>
#include <QTest>

#include "core/safety/cautions.h"
#include "tests/ui/memory_register.h"
#include "ui/parts/mark_key.h"
#include "ui/screens/caution/caution_screen.h"
#include "ui/screens/stopwatch/stopwatch_screen.h"

using namespace latchround;
using namespace latchround::ui;

namespace {

struct Timing : testing::Test {
    SmallShip ship;
    FactId walkdown = ship.begun();
    Round& round = ship.load();
    StopwatchScreen screen{round};

    void SetUp() override {
        screen.resize(1280, 800);
        screen.show();
    }
    MarkKey* key(const char* name = "mark") { return screen.findChild<MarkKey*>(name); }
    void press(MarkKey* mark, int after_ms) {
        QTest::mousePress(mark, Qt::LeftButton, {}, {}, after_ms);
        QTest::mouseRelease(mark, Qt::LeftButton);
    }
    void confirmAll() {
        for (const Caution& caution : cautionsBeforeRelease())
            (void)round.record(CautionAnswered{walkdown, "5-32", std::string(caution.id), true});
    }
    const RunRecord& run(const char* door) { return round.door(door)->evidence.runs.back(); }
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
    ship.vessel_register.failure = Complaint{"register", "the disk is full", "Free some space."};
    press(key(), 12000);
    EXPECT_EQ(key()->nameLine(), "Not saved");
    EXPECT_FALSE(key()->isEnabled());
    EXPECT_TRUE(screen.findChild<QPushButton*>("stop")->isEnabled());
    ship.vessel_register.failure.reset();
    ASSERT_TRUE(round.saveWaiting());
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

TEST_F(Timing, AlarmThatStopsEarlyIsMarkedOutOfTurn) {
    confirmAll();
    ASSERT_TRUE(screen.begin("5-32", Release::Remote, RunKind::Closing));
    EXPECT_FALSE(key("mark-alarm-stopped")->isEnabled());
    press(key(), 10);
    press(key(), 6000);
    EXPECT_TRUE(key("mark-alarm-stopped")->isEnabled());
    press(key("mark-alarm-stopped"), 2000);
    EXPECT_EQ(key()->nameLine(), "Shut");
    press(key(), 7000);
    ASSERT_TRUE(run("5-32").end);
    EXPECT_EQ(run("5-32").end->outcome, RunOutcome::Complete);
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
    EXPECT_EQ(ship.outside.cues, 0);
    press(key(), 10);
    EXPECT_EQ(ship.outside.cues, 1);
    ship.vessel_register.failure = Complaint{"register", "the disk is full", "Free some space."};
    press(key(), 12000);
    EXPECT_EQ(ship.outside.cues, 1) << "a mark that is not on disk must not sound like one that is";
}

TEST_F(Timing, StopAndTakeBackAreNoMarksAndGiveNoCue) {
    ASSERT_TRUE(screen.begin("5-31", Release::LetGo, RunKind::Closing));
    press(key(), 10);
    QTest::mouseClick(screen.findChild<QPushButton*>("take-back"), Qt::LeftButton);
    QTest::mousePress(screen.findChild<QPushButton*>("stop"), Qt::LeftButton);
    EXPECT_EQ(ship.outside.cues, 1);
}

TEST(CautionScreen, ArmsOnlyWhenAllAreConfirmedAndShowsTheWholeGroup) {
    SmallShip ship;
    ship.begun();
    Round& round = ship.load();
    CautionScreen screen(round);
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
    EXPECT_EQ(round.door("5-32")->evidence.cautions.size(), cautionsBeforeRelease().size());
    EXPECT_EQ(round.door("5-32")->evidence.cautions[0].stamp.person, ship.person);
}
