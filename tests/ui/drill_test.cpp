#include <chrono>

#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "core/measure/reaction_model.h"
#include "tests/passing_time.h"
#include "tests/ui/memory_register.h"
#include "ui/keys/mark_key.h"
#include "ui/screens/drill/drill_course.h"
#include "ui/screens/drill/drill_screen.h"

using namespace latchround;
using namespace latchround::ui;

namespace {

/// Lets every event of the trial happen when it is due and answers each this much later.
void answerAll(DrillCourse& course, double late_s) {
    for (const Cue cue : {Cue::AlarmHeard, Cue::LeafStarts, Cue::LeafStops})
        if (const auto due = course.due(cue)) {
            course.happened(cue, *due + 0.002);
            course.mark(*due + 0.002 + late_s);
        }
}

QPushButton* key(QWidget& screen, const char* name) {
    return screen.findChild<QPushButton*>(QLatin1String(name));
}

} // namespace

TEST(DrillCourse, TwentyTrialsOfThreeEvents) {
    DrillCourse course(true, 1);
    while (!course.isOver()) {
        EXPECT_LT(*course.due(Cue::AlarmHeard), *course.due(Cue::LeafStarts));
        EXPECT_LT(*course.due(Cue::LeafStarts), *course.due(Cue::LeafStops));
        answerAll(course, 0.2);
        EXPECT_FALSE(course.awaited());
        course.next();
    }
    ASSERT_EQ(course.drill().trials.size(), 60u);
    for (const ThumbTrial& trial : course.drill().trials)
        EXPECT_NEAR(trial.delay_s, 0.2, 1e-9); // from what was shown, not from what was due
}

TEST(DrillCourse, WithoutSoundThereIsNoAlarm) {
    DrillCourse course(false, 1);
    EXPECT_FALSE(course.due(Cue::AlarmHeard));
    EXPECT_EQ(course.awaited(), Cue::LeafStarts);
    answerAll(course, 0.2);
    course.next();
    EXPECT_EQ(course.drill().trials.size(), 2u);
}

TEST(DrillCourse, WaitsDifferSoThatNobodyCanCount) {
    DrillCourse course(false, 1);
    const double first = *course.due(Cue::LeafStarts);
    answerAll(course, 0.2);
    course.next();
    EXPECT_NE(*course.due(Cue::LeafStarts), first);
    EXPECT_EQ(DrillCourse(false, 1).due(Cue::LeafStarts), first);
}

TEST(DrillCourse, AMissedEventMakesTheTrialAgain) {
    DrillCourse course(false, 1);
    const double starts = *course.due(Cue::LeafStarts);
    course.happened(Cue::LeafStarts, starts);
    EXPECT_FALSE(course.isMissed(starts + 1.9));
    EXPECT_TRUE(course.isMissed(starts + 2.1));
    course.next();
    EXPECT_EQ(course.done(), 0);
    EXPECT_TRUE(course.drill().trials.empty());
}

TEST(DrillCourse, ATouchBeforeTheEventIsKeptAsEarlyAndAStrayOneIsNot) {
    DrillCourse course(false, 1);
    const double starts = *course.due(Cue::LeafStarts);
    const double stops = *course.due(Cue::LeafStops);
    course.mark(starts - 0.3); // guessed
    course.happened(Cue::LeafStarts, starts);
    course.mark(starts + 0.1); // a bounce far ahead of the stop
    EXPECT_EQ(course.awaited(), Cue::LeafStops);
    course.happened(Cue::LeafStops, stops);
    course.mark(stops - 0.01);
    course.next();
    ASSERT_EQ(course.drill().trials.size(), 2u);
    EXPECT_NEAR(course.drill().trials[0].delay_s, -0.3, 1e-9);
    EXPECT_NEAR(course.drill().trials[1].delay_s, -0.01, 1e-9);
}

// The whole drill in a real window, twenty times as fast as for a person: the key is pressed as
// soon as the screen shows that the leaf moved, and when it is home.
TEST(DrillScreen, RecordsTheTrialsOnlyWhenTheyAreKept) {
    SmallShip ship;
    ship.begun();
    VesselSession& session = ship.load();
    std::int64_t now_ns = 0;
    ship.ports.steady_ns = [&] { return now_ns; };
    DrillScreen screen(session, 0.05);
    screen.resize(1280, 800);
    screen.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&screen));
    screen.enter();
    EXPECT_FALSE(key(screen, "drill-begin")->isVisible()); // no loudspeaker here
    EXPECT_TRUE(
        screen.findChild<QLabel*>("drill-sound")->text().contains("No working loudspeaker"));
    QSignalSpy done(&screen, &DrillScreen::done);
    QTest::mouseClick(key(screen, "drill-begin-silent"), Qt::LeftButton);
    auto* mark = screen.findChild<MarkKey*>("drill-mark");
    quint64 event_ms = 1000;
    const auto keep = [&] { return key(screen, "drill-keep")->isVisible(); };
    constexpr std::int64_t step_ns = 10'000'000;
    while (!keep() && now_ns < 6000 * step_ns) {
        now_ns += step_ns;
        test::letTimePass(screen);
        if (mark->isVisible())
            QTest::mousePress(mark, Qt::LeftButton, {}, {}, int(event_ms += 100));
        if (mark->isVisible())
            QTest::mouseRelease(mark, Qt::LeftButton);
    }
    ASSERT_TRUE(keep());
    EXPECT_EQ(screen.findChild<QLabel*>("drill-count")->text(), "Trial 20 of 20");
    EXPECT_TRUE(ship.vessel_register.transactions.empty());
    EXPECT_FALSE(session.drillTime());
    QTest::mouseClick(key(screen, "drill-keep"), Qt::LeftButton);
    ASSERT_EQ(ship.vessel_register.transactions.size(), 1u);
    const Fact& fact = ship.vessel_register.transactions.front().front();
    EXPECT_EQ(std::get<ThumbDrill>(fact.body).trials.size(), 40u);
    EXPECT_EQ(ship.ports.cues, 0) << "who listens for an alarm must hear nothing else";
    EXPECT_EQ(fact.stamp.person, ship.person);
    EXPECT_TRUE(session.drillTime());
    EXPECT_EQ(done.size(), 1);
}

TEST(DrillScreen, LeavingKeepsNothingAndStopsTheSound) {
    SmallShip ship;
    ship.begun();
    ship.ports.loudspeaker = true;
    VesselSession& session = ship.load();
    DrillScreen screen(session, 0.05);
    screen.resize(1280, 800);
    screen.show();
    screen.enter();
    QTest::mouseClick(key(screen, "drill-begin"), Qt::LeftButton);
    EXPECT_TRUE(QTest::qWaitFor([&] { return ship.ports.sounding; }, 5000));
    QSignalSpy done(&screen, &DrillScreen::done);
    QTest::keyClick(&screen, Qt::Key_Escape);
    EXPECT_EQ(done.size(), 1);
    screen.hide();
    EXPECT_FALSE(ship.ports.sounding);
    EXPECT_TRUE(ship.vessel_register.transactions.empty());
}
