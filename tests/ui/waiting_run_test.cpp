// A run of which something waits to be saved: it goes on, it ends but once, and nobody takes it for
// one that was cut short.
#include <gtest/gtest.h>

#include <QPushButton>

#include "tests/ui/busy.h"
#include "ui/frames/sheet.h"
#include "ui/frames/top_bar.h"
#include "ui/keys/keypad.h"
#include "ui/screens/stopwatch/stopwatch_screen.h"

using namespace latchround;
using namespace latchround::ui;

namespace {

struct WaitingRun : Busy {
    void goHome() {
        emit window.doorScreen().bar().back();
        test::settle(window);
    }
    /// Its first mark is on record; the last waits, and the end with it.
    void finishWhileBusy() {
        arm();
        mark();
        hold();
        mark();
        ASSERT_EQ(session.waiting(), 1u);
    }
    /// As at the next start of the program.
    std::unique_ptr<VesselSession> startedAgain() {
        auto next = std::make_unique<VesselSession>(ship.vessel_register, ship.ports.all(),
                                                    session.catalogue());
        EXPECT_TRUE(next->load());
        next->takeUp(ship.ports.kept);
        return next;
    }
    void expectComplete(const VesselSession& of) {
        const std::vector<RunRecord>& runs = of.door("5-31")->evidence.runs;
        ASSERT_EQ(runs.size(), 1u);
        EXPECT_EQ(runs[0].marks.size(), 2u);
        ASSERT_TRUE(runs[0].end);
        EXPECT_EQ(runs[0].end->outcome, RunOutcome::Complete);
    }
};

} // namespace

/// The answer would overrule the end that waits.
TEST_F(WaitingRun, WhoseEndWaitsIsNotCutShort) {
    finishWhileBusy();
    goHome();
    EXPECT_FALSE(isShown("cut-short"));
    letGo();
    ring();
    EXPECT_FALSE(isShown("cut-short"));
    expectComplete(session);
}

TEST_F(WaitingRun, WhoseEndWaitsIsNotCutShortAtTheNextStart) {
    finishWhileBusy();
    letGo();
    const auto next = startedAgain();
    Window again(*next, look);
    again.show();
    test::settle(again);
    EXPECT_EQ(again.findChild<Sheet*>("cut-short"), nullptr);
    EXPECT_TRUE(again.findChild<QWidget*>("not-saved")->isVisible());
    ASSERT_TRUE(next->saveWaiting());
    test::settle(again);
    EXPECT_EQ(again.findChild<Sheet*>("cut-short"), nullptr);
    expectComplete(*next);
}

/// The leaf was not home after all.
TEST_F(WaitingRun, GoesOnOnceItsLastMarkIsTakenBackThoughThatWaits) {
    arm();
    mark();
    QTest::mousePress(find<MarkKey>("mark"), Qt::LeftButton, {}, {}, 12000);
    ASSERT_TRUE(runs()[0].end);
    hold();
    QTest::mouseClick(find<QPushButton>("take-back"), Qt::LeftButton);
    test::settle(window);
    ASSERT_EQ(session.waiting(), 1u);
    auto* key = find<MarkKey>("mark");
    EXPECT_TRUE(key->isVisible() && key->isEnabled());
    EXPECT_EQ(key->nameLine(), "Shut");
    QTest::keyClick(key, Qt::Key_Escape);
    letGo();
    ring();
    ASSERT_EQ(runs().size(), 1u);
    EXPECT_EQ(runs()[0].marks.size(), 1u);
    ASSERT_TRUE(runs()[0].end);
    EXPECT_EQ(runs()[0].end->outcome, RunOutcome::Stopped);
}

/// No mark is asked for twice, and none is left out.
TEST_F(WaitingRun, CompletedByHandIsAskedAboutAgainOnceItsMarksAreSaved) {
    const FactId run = ship.put(RunStarted{walkdown, "5-32", RunKind::Closing, Release::Remote, 0});
    ship.put(Mark{run, MarkKind::AlarmOn, 1000, {}, InputDevice::Touch, {}});
    VesselSession next(ship.vessel_register, ship.ports.all(), session.catalogue());
    ASSERT_TRUE(next.load());
    Window again(next, look);
    again.show();
    test::settle(again);
    auto* by_hand = again.findChild<QPushButton*>("cut-short-by-hand");
    ASSERT_NE(by_hand, nullptr);
    QTest::mouseClick(by_hand, Qt::LeftButton);
    test::settle(again);
    hold();
    emit again.findChild<Keypad*>()->entered(6.5);
    test::settle(again);
    ASSERT_EQ(next.waiting(), 1u);
    EXPECT_TRUE(again.findChildren<Sheet*>().isEmpty());
    letGo();
    ASSERT_TRUE(QMetaObject::invokeMethod(next.findChild<QTimer*>({}, Qt::FindDirectChildrenOnly),
                                          "timeout"));
    test::settle(again);
    EXPECT_EQ(next.door("5-32")->evidence.runs.at(0).marks.size(), 2u);
    EXPECT_NE(again.findChild<Sheet*>("cut-short"), nullptr);
}

/// Marks that are safely kept count, however long the other one writes.
TEST_F(WaitingRun, GoesOnThoughTheOtherWritesForLong) {
    arm();
    hold();
    mark();
    for (int i = 0; i < 60; ++i)
        ring();
    EXPECT_TRUE(isShown("not-saved"));
    EXPECT_TRUE(find<StopwatchScreen>("stopwatch-screen")->isRunning());
    EXPECT_EQ(find<MarkKey>("mark")->nameLine(), "Shut");
    EXPECT_FALSE(window.close()) << "a leaf may be moving";
    for (Sheet* sheet : window.findChildren<Sheet*>())
        sheet->close();
    test::settle(window);
    mark();
    EXPECT_EQ(ship.ports.cues, 2);
    letGo();
    ring();
    expectComplete(session);
}

TEST_F(WaitingRun, GoesOnWithMarksThatAreKeptWhileTheDiskIsFull) {
    arm();
    ship.vessel_register.failure = disk_full;
    mark();
    EXPECT_TRUE(isShown("not-saved"));
    EXPECT_TRUE(find<StopwatchScreen>("stopwatch-screen")->isRunning());
    mark();
    letGo();
    ASSERT_TRUE(session.saveWaiting());
    expectComplete(session);
}

TEST_F(WaitingRun, CountsNoMarkThatIsKeptNowhere) {
    arm();
    hold();
    ship.ports.keep_failure = disk_full;
    mark();
    EXPECT_EQ(find<MarkKey>("mark")->nameLine(), "Not saved");
    EXPECT_FALSE(find<MarkKey>("mark")->isEnabled());
    EXPECT_FALSE(find<StopwatchScreen>("stopwatch-screen")->isRunning());
    EXPECT_EQ(ship.ports.cues, 0);
}

/// Several marks are saved one after another: meanwhile the key takes marks as before.
TEST_F(WaitingRun, LeavesTheKeyboardToTheMarkKey) {
    emit window.doorScreen().timeAsked("5-32", Release::LocalSideOne, RunKind::Closing);
    test::settle(window);
    hold();
    mark();
    auto* half_way = find<MarkKey>("mark-half-way");
    QTest::mousePress(half_way, Qt::LeftButton);
    QTest::mouseRelease(half_way, Qt::LeftButton);
    ASSERT_EQ(session.waiting(), 2u);
    auto* key = find<MarkKey>("mark");
    key->setFocus();
    class Changes : public QObject {
    public:
        int seen = 0;

    protected:
        bool eventFilter(QObject*, QEvent* event) override {
            seen += event->type() == QEvent::EnabledChange ? 1 : 0;
            return false;
        }
    } changes;
    key->installEventFilter(&changes);
    bool alarmed = false;
    QObject::connect(&session, &VesselSession::recorded, &window, [&] {
        alarmed = alarmed || (session.waiting() > 0 && !session.isSavingShortly());
    });
    letGo();
    ring();
    EXPECT_FALSE(alarmed) << "the bar would say NOT SAVED for a moment";
    EXPECT_EQ(session.waiting(), 0u);
    EXPECT_EQ(changes.seen, 0);
    EXPECT_EQ(window.focusWidget(), key);
    ship.ports.steady_ns = [later = steadyNow_ns() + 1'000'000'000] { return later; };
    QTest::keyClick(window.focusWidget(), Qt::Key_Space);
    EXPECT_EQ(session.door("5-32")->evidence.runs.at(0).marks.size(), 3u);
}

TEST_F(WaitingRun, GivesTheKeyboardBackWithTheMarkKey) {
    arm();
    hold();
    ship.ports.keep_failure = disk_full;
    auto* key = find<MarkKey>("mark");
    key->setFocus();
    mark();
    ASSERT_FALSE(key->isEnabled());
    EXPECT_NE(window.focusWidget(), key);
    ship.ports.keep_failure.reset();
    letGo();
    ring();
    EXPECT_TRUE(key->isEnabled());
    EXPECT_EQ(window.focusWidget(), key);
}

/// What stops it now would turn a complete run into a stopped one.
TEST_F(WaitingRun, WhoseEndWaitsIsOver) {
    finishWhileBusy();
    auto* screen = find<StopwatchScreen>("stopwatch-screen");
    EXPECT_FALSE(screen->isRunning());
    EXPECT_EQ(find<MarkKey>("mark")->nameLine(), "saving…");
    EXPECT_FALSE(find<MarkKey>("mark")->isEnabled());
    EXPECT_FALSE(find<QPushButton>("stop")->isEnabled());
    QTest::keyClick(screen, Qt::Key_Escape);
    EXPECT_FALSE(screen->isVisible()) << "as after any run";
    letGo();
    ring();
    expectComplete(session);
}

/// Once what waited is saved, a run that has no end all the same is offered.
TEST_F(WaitingRun, WithoutAnEndIsOfferedOnceItsMarksAreSaved) {
    const FactId run = ship.put(RunStarted{walkdown, "5-31", RunKind::Closing, Release::LetGo, 0});
    const auto press = [&](MarkKind kind, std::uint32_t ms) {
        return Mark{run, kind, ms, {}, InputDevice::Touch, {}};
    };
    ship.put(press(MarkKind::LeafMoves, 1000));
    VesselSession next(ship.vessel_register, ship.ports.all(), session.catalogue());
    ASSERT_TRUE(next.load());
    next.takeUp({{{next.stamped(press(MarkKind::HalfWay, 4000))}, {}}});
    Window again(next, look);
    again.show();
    test::settle(again);
    EXPECT_EQ(again.findChild<Sheet*>("cut-short"), nullptr);
    ASSERT_TRUE(next.saveWaiting());
    test::settle(again);
    EXPECT_NE(again.findChild<Sheet*>("cut-short"), nullptr);
}
