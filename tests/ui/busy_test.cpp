// A register in which somebody else writes for a moment: a tap is kept at once and saved by itself,
// nobody is alarmed, and what is refused for good can be put aside.
#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>

#include "tests/ui/busy.h"
#include "ui/frames/sheet.h"
#include "ui/screens/stopwatch/run_result.h"
#include "ui/screens/stopwatch/stopwatch_screen.h"

using namespace latchround;
using namespace latchround::ui;

TEST_F(Busy, WhatIsHeldUpForAMomentIsKeptAtOnceAndSavedWithoutAWord) {
    hold();
    EXPECT_FALSE(session.record(note("ajar")));
    EXPECT_FALSE(session.record(note("leaks")));
    ASSERT_EQ(ship.ports.kept.size(), 2u) << "a cut of power would lose it";
    EXPECT_TRUE(session.door("5-31")->evidence.notes.empty()) << "shown before it is saved";
    EXPECT_FALSE(isShown("not-saved")) << "an alarm over nothing";
    ring();
    EXPECT_EQ(session.waiting(), 2u);
    const int before = ship.vessel_register.reopened;
    letGo();
    ring();
    EXPECT_EQ(session.waiting(), 0u);
    EXPECT_EQ(ship.vessel_register.reopened, before) << "to open it anew takes long";
    ASSERT_EQ(session.door("5-31")->evidence.notes.size(), 2u);
    EXPECT_EQ(session.door("5-31")->evidence.notes[0].body.text, "ajar");
    EXPECT_TRUE(ship.ports.kept.empty());
    EXPECT_FALSE(isShown("not-saved"));
    EXPECT_FALSE(session.findChild<QTimer*>()->isActive());
}

/// One write for both: the tap after it need not wait for what is saved by itself.
TEST_F(Busy, WhatIsHeldUpGoesAlongWithTheNextTap) {
    hold();
    EXPECT_FALSE(session.record(note("ajar")));
    EXPECT_FALSE(session.record(note("leaks")));
    letGo();
    int writes = 0;
    ship.vessel_register.while_recording = [&] { ++writes; };
    EXPECT_TRUE(session.record(note("dry")));
    EXPECT_EQ(writes, 1);
    EXPECT_EQ(session.waiting(), 0u);
    ASSERT_EQ(session.door("5-31")->evidence.notes.size(), 3u);
    EXPECT_EQ(session.door("5-31")->evidence.notes[0].body.text, "ajar");
    EXPECT_EQ(session.door("5-31")->evidence.notes[2].body.text, "dry");
    EXPECT_TRUE(ship.ports.kept.empty());
    EXPECT_FALSE(session.isTryingAgain());
}

TEST_F(Busy, AfterSomeSecondsItIsSaidAndTriedAllTheSame) {
    hold();
    EXPECT_FALSE(session.record(note("ajar")));
    for (int i = 0; i < 60; ++i)
        ring();
    EXPECT_TRUE(isShown("not-saved"));
    letGo();
    ring();
    EXPECT_EQ(session.waiting(), 0u);
    EXPECT_FALSE(isShown("not-saved"));
}

/// What cannot be kept elsewhere is said at once.
TEST_F(Busy, WhatIsKeptNowhereIsSaidAtOnce) {
    hold();
    ship.ports.keep_failure = disk_full;
    EXPECT_FALSE(session.record(note("ajar")));
    EXPECT_TRUE(isShown("not-saved"));
}

TEST_F(Busy, AFullDiskIsSaidAtOnce) {
    ship.vessel_register.failure = disk_full;
    EXPECT_FALSE(session.record(note("ajar")));
    EXPECT_TRUE(isShown("not-saved"));
    EXPECT_FALSE(session.findChild<QTimer*>()->isActive());
}

TEST_F(Busy, MarksGoOnAndStandInTheirOrder) {
    arm();
    hold();
    mark();
    EXPECT_EQ(find<MarkKey>("mark")->nameLine(), "Shut") << "the next mark cannot be taken";
    EXPECT_EQ(ship.ports.cues, 1);
    EXPECT_FALSE(window.close()) << "a leaf may be moving";
    test::settle(window);
    for (Sheet* sheet : window.findChildren<Sheet*>())
        sheet->close();
    test::settle(window);
    mark();
    EXPECT_EQ(session.waiting(), 2u);
    EXPECT_TRUE(runs().empty());
    letGo();
    ring();
    ASSERT_EQ(runs().size(), 1u);
    ASSERT_EQ(runs()[0].marks.size(), 2u);
    EXPECT_EQ(runs()[0].marks[0].mark.kind, MarkKind::LeafMoves);
    EXPECT_EQ(runs()[0].marks[1].mark.kind, MarkKind::Shut);
    ASSERT_TRUE(runs()[0].end);
    EXPECT_EQ(runs()[0].end->outcome, RunOutcome::Complete);
    EXPECT_TRUE(window.findChild<RunResult*>()->isVisible());
}

/// Whatever the register does, the screen has been painted before it is asked.
TEST_F(Busy, StopIsPaintedBeforeTheRegisterIsAsked) {
    arm();
    mark();
    test::settle(window);
    class Painted : public QObject {
    public:
        bool seen = false;

    protected:
        bool eventFilter(QObject*, QEvent* event) override {
            seen = seen || event->type() == QEvent::Paint;
            return false;
        }
    } painted;
    auto* result = window.findChild<RunResult*>();
    result->installEventFilter(&painted);
    std::optional<bool> was_painted;
    ship.vessel_register.while_recording = [&] { was_painted = painted.seen; };
    QTest::mousePress(find<QPushButton>("stop"), Qt::LeftButton);
    ASSERT_TRUE(was_painted);
    EXPECT_TRUE(*was_painted);
    EXPECT_TRUE(result->isVisible());
    EXPECT_FALSE(find<MarkKey>("mark")->isVisible());
}

/// What the register refuses for its own sake would wait for ever.
TEST_F(Busy, WhatIsRefusedForGoodCanBePutAside) {
    hold();
    (void)session.record(note("ajar"));
    (void)session.record(note("leaks"));
    Fact other = ship.ports.kept.front().facts.front(); // something else has its id by now
    std::get<Note>(other.body).text = "of another program";
    ship.vessel_register.put(other);
    letGo();
    ring();
    EXPECT_EQ(session.waiting(), 1u);
    EXPECT_TRUE(isShown("not-saved"));
    ASSERT_TRUE(isShown("put-aside"));
    QTest::mouseClick(find<QPushButton>("put-aside"), Qt::LeftButton);
    test::settle(window);
    EXPECT_TRUE(find<QLabel>("refused-entry")->text().contains("5-31"));
    QTest::mouseClick(find<QPushButton>("put-aside-confirm"), Qt::LeftButton);
    test::settle(window);
    ASSERT_EQ(ship.ports.aside.size(), 1u);
    EXPECT_EQ(std::get<Note>(ship.ports.aside[0].facts[0].body).text, "ajar");
    ASSERT_TRUE(ship.ports.aside[0].refused);
    EXPECT_EQ(session.waiting(), 0u);
    EXPECT_TRUE(ship.ports.kept.empty());
    EXPECT_FALSE(isShown("not-saved"));
    EXPECT_TRUE(session.record(note("dry"))) << "and nothing is in the way any more";
    EXPECT_TRUE(session.tapToTakeBack());
}

/// As where the language is changed: nothing has happened to what waits.
TEST_F(Busy, ARoundInPlaceOfAnotherGoesOnSaving) {
    hold();
    (void)session.record(note("ajar"));
    VesselSession next(ship.vessel_register, ship.ports.all(), session.catalogue());
    ASSERT_TRUE(next.load());
    next.goOnFrom(session);
    EXPECT_EQ(next.waiting(), 1u);
    EXPECT_EQ(next.whyWaiting(), busy);
    EXPECT_TRUE(next.isSafeToLeave());
    EXPECT_TRUE(next.isSavingShortly()) << "nobody tries again";
    letGo();
    ASSERT_TRUE(QMetaObject::invokeMethod(next.findChild<QTimer*>(), "timeout"));
    EXPECT_EQ(next.waiting(), 0u);
    EXPECT_EQ(next.door("5-31")->evidence.notes.size(), 1u);
}

TEST_F(Busy, ARoundInPlaceOfAnotherKnowsWhoRecords) {
    const FactId second = session.join("Ines Quillaran", "chief officer");
    session.setPerson(second);
    VesselSession next(ship.vessel_register, ship.ports.all(), session.catalogue());
    ASSERT_TRUE(next.load());
    ASSERT_NE(next.person(), second);
    next.goOnFrom(session);
    EXPECT_EQ(next.person(), second);
}

TEST_F(Busy, WhatIsRefusedHoldsUpNoTapAfterIt) {
    const Fact known = ship.vessel_register.all().back();
    session.takeUp({{{Fact{known.stamp, note("other content")}}, {}}});
    EXPECT_FALSE(session.saveWaiting());
    ASSERT_EQ(session.refusedBatches().size(), 1u);
    EXPECT_TRUE(session.record(note("dry")));
    EXPECT_EQ(session.waiting(), 1u);
    EXPECT_EQ(session.door("5-31")->evidence.notes.size(), 1u);
    hold();
    EXPECT_FALSE(session.record(note("ajar")));
    EXPECT_FALSE(session.record(note("leaks")));
    EXPECT_EQ(session.waiting(), 3u);
    ring();
    EXPECT_EQ(session.refusedBatches().size(), 1u) << "though the register is busy";
    EXPECT_TRUE(isShown("not-saved")) << "of what is refused somebody must hear";
    letGo();
    ring();
    EXPECT_EQ(session.waiting(), 1u);
    ASSERT_EQ(session.door("5-31")->evidence.notes.size(), 3u);
    EXPECT_EQ(session.door("5-31")->evidence.notes[2].body.text, "leaks");
    EXPECT_FALSE(session.isTryingAgain());
}

/// While the sheet is read the register goes on: only what it showed goes, and only if it must.
TEST_F(Busy, WhatTheSheetDidNotShowIsNotPutAside) {
    const Fact known = ship.vessel_register.all().back();
    session.takeUp({{{Fact{known.stamp, note("other content")}}, {}}});
    EXPECT_FALSE(session.saveWaiting());
    QTest::mouseClick(find<QPushButton>("put-aside"), Qt::LeftButton);
    test::settle(window);
    ship.vessel_register.failure = Error{"register", "refused since"};
    ship.vessel_register.failure_is = Register::Obstacle::Refused;
    EXPECT_FALSE(session.record(note("not shown")));
    ASSERT_EQ(session.refusedBatches().size(), 2u);
    QTest::mouseClick(find<QPushButton>("put-aside-confirm"), Qt::LeftButton);
    test::settle(window);
    ASSERT_EQ(ship.ports.aside.size(), 1u);
    EXPECT_EQ(ship.ports.aside[0].facts[0].stamp.id, known.stamp.id);
    ASSERT_EQ(session.waiting(), 1u);
    EXPECT_EQ(std::get<Note>(session.refusedBatches()[0]->facts[0].body).text, "not shown");
}

TEST_F(Busy, WhatIsSavedMeanwhileIsNotPutAside) {
    ship.vessel_register.failure = Error{"register", "refused"};
    ship.vessel_register.failure_is = Register::Obstacle::Refused;
    EXPECT_FALSE(session.record(note("ajar")));
    QTest::mouseClick(find<QPushButton>("put-aside"), Qt::LeftButton);
    test::settle(window);
    letGo();
    ASSERT_TRUE(session.saveWaiting());
    QTest::mouseClick(find<QPushButton>("put-aside-confirm"), Qt::LeftButton);
    test::settle(window);
    EXPECT_TRUE(ship.ports.aside.empty());
    EXPECT_TRUE(find<QLabel>("told")->text().contains("refused any more"));
    EXPECT_EQ(session.door("5-31")->evidence.notes.size(), 1u);
}

TEST_F(Busy, WhatCannotBeKeptAsideStays) {
    Fact known = ship.vessel_register.all().back();
    const FactId id = known.stamp.id;
    session.takeUp({{{Fact{known.stamp, note("other content")}}, {}}});
    EXPECT_FALSE(isShown("put-aside")) << "nobody knows yet that it is refused";
    EXPECT_FALSE(session.saveWaiting());
    EXPECT_TRUE(isShown("put-aside"));
    ship.ports.keep_failure = disk_full;
    EXPECT_FALSE(session.putRefusedAside({id}));
    EXPECT_EQ(session.waiting(), 1u);
    EXPECT_EQ(session.refusedBatches()[0]->facts[0].stamp.id, id);
}
