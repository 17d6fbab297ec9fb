// Closing the window loses nothing unsaid; neither does what waits when the program ends.
#include <gtest/gtest.h>

#include <QLineEdit>
#include <QPushButton>

#include "tests/ui/small_ship_window.h"
#include "ui/frames/sheet.h"
#include "ui/keys/mark_key.h"
#include "ui/screens/door/door_screen.h"

using namespace latchround;
using namespace latchround::ui;

namespace {

struct Closing : SmallShipWindow {
    QWidget* shown(const char* name) {
        for (QWidget* each : window.findChildren<QWidget*>(name))
            if (each->isVisible())
                return each;
        return nullptr;
    }
    void press(const char* name) {
        QWidget* key = shown(name);
        ASSERT_NE(key, nullptr) << name;
        QTest::mouseClick(key, Qt::LeftButton);
        test::settle(window);
    }
    void runAtDoor() {
        emit window.doorScreen().timeAsked("5-31", Release::LetGo, RunKind::Closing);
        test::settle(window);
        QTest::mousePress(shown("mark"), Qt::LeftButton);
        QTest::mouseRelease(shown("mark"), Qt::LeftButton);
        ASSERT_EQ(session.door("5-31")->evidence.runs.size(), 1u);
    }
};

} // namespace

TEST_F(Closing, EscapeStopsTheRunWhereverTheKeyboardHasGone) {
    runAtDoor();
    window.focusWidget()->clearFocus();
    ASSERT_EQ(window.focusWidget(), nullptr);
    QTest::keyClick(&window, Qt::Key_Space, {}, 100); // marks, later than a bounce
    ASSERT_TRUE(session.door("5-31")->evidence.runs[0].end);
    EXPECT_EQ(session.door("5-31")->evidence.runs[0].end->outcome, RunOutcome::Complete);

    emit window.doorScreen().timeAsked("5-31", Release::LetGo, RunKind::Closing);
    test::settle(window);
    ship.vessel_register.failure = disk_full;
    QTest::mousePress(shown("mark"), Qt::LeftButton);
    QWidget* again = shown("save-again"); // lies beside the screens
    ASSERT_NE(again, nullptr);
    QTest::mouseClick(again, Qt::LeftButton);
    ASSERT_EQ(window.focusWidget(), again);
    QTest::keyClick(again, Qt::Key_Escape);
    ship.vessel_register.failure.reset();
    ASSERT_TRUE(session.saveWaiting());
    ASSERT_EQ(session.door("5-31")->evidence.runs.size(), 2u);
    ASSERT_TRUE(session.door("5-31")->evidence.runs[1].end);
    EXPECT_EQ(session.door("5-31")->evidence.runs[1].end->outcome, RunOutcome::Stopped);
}

TEST_F(Closing, NothingToLoseNothingAsked) {
    EXPECT_TRUE(window.close());
}

TEST_F(Closing, InMidRunItAsksAndThenStopsTheRun) {
    runAtDoor();
    EXPECT_FALSE(window.close());
    EXPECT_TRUE(window.isVisible());
    press("close-not");
    EXPECT_FALSE(session.door("5-31")->evidence.runs[0].end) << "the run goes on";
    EXPECT_FALSE(window.close());
    press("close-yes");
    EXPECT_FALSE(window.isVisible());
    ASSERT_TRUE(session.door("5-31")->evidence.runs[0].end);
    EXPECT_EQ(session.door("5-31")->evidence.runs[0].end->outcome, RunOutcome::Stopped);
}

TEST_F(Closing, WhatWaitsIsKeptAndNeedsNoQuestion) {
    ship.vessel_register.failure = disk_full;
    (void)session.record(Note{walkdown, "5-31", "ajar"});
    ASSERT_EQ(ship.ports.kept.size(), 1u);
    EXPECT_TRUE(window.close());
}

TEST_F(Closing, WhatCanBeKeptNowhereIsAskedAbout) {
    ship.vessel_register.failure = disk_full;
    ship.ports.keep_failure = disk_full;
    (void)session.record(Note{walkdown, "5-31", "ajar"});
    EXPECT_FALSE(session.isSafeToLeave());
    EXPECT_FALSE(window.close());
    press("close-not");
    ship.vessel_register.failure.reset();
    ship.ports.keep_failure.reset();
    ASSERT_TRUE(session.saveWaiting());
    EXPECT_TRUE(window.close());
}

TEST_F(Closing, AHalfWrittenNoteIsAskedAbout) {
    window.doorScreen().setDoor("5-31");
    auto* sheet = new Sheet(&window, "Note");
    auto* line = new QLineEdit;
    sheet->setContent(line);
    sheet->open();
    test::settle(window);
    EXPECT_TRUE(window.close()) << "an empty line is nothing";
    window.show();
    QTest::keyClicks(line, "closer leaks");
    EXPECT_FALSE(window.close());
    press("close-yes");
    EXPECT_FALSE(window.isVisible());
}

/// As at the next start of the program.
TEST_F(Closing, WhatWasKeptIsTakenUpAndSaved) {
    ship.vessel_register.failure = disk_full;
    (void)session.record(Note{walkdown, "5-31", "ajar"});
    (void)session.record(Note{walkdown, "5-31", "leaks"});
    ship.vessel_register.failure.reset();
    VesselSession next(ship.vessel_register, ship.ports.all(), session.catalogue());
    ASSERT_TRUE(next.load());
    next.takeUp(ship.ports.kept);
    EXPECT_EQ(next.waiting(), 2u);
    EXPECT_EQ(next.door("5-31")->evidence.notes.size(), 0u);
    ASSERT_TRUE(next.saveWaiting());
    EXPECT_EQ(next.door("5-31")->evidence.notes.size(), 2u);
    EXPECT_TRUE(ship.ports.kept.empty());
}

/// The register said that it was not saved, and it was.
TEST_F(Closing, WhatIsOnRecordAfterAllWaitsNoLonger) {
    ship.vessel_register.failure = disk_full;
    (void)session.record(Note{walkdown, "5-31", "ajar"});
    (void)session.record(Note{walkdown, "5-31", "leaks"});
    ship.vessel_register.failure.reset();
    ASSERT_TRUE(ship.vessel_register.record(ship.ports.kept.at(0).facts));
    VesselSession next(ship.vessel_register, ship.ports.all(), session.catalogue());
    ASSERT_TRUE(next.load());
    next.goOnFrom(session);
    EXPECT_EQ(next.waiting(), 1u);
    VesselSession later(ship.vessel_register, ship.ports.all(), session.catalogue());
    ASSERT_TRUE(later.load());
    later.takeUp(ship.ports.kept);
    EXPECT_EQ(later.waiting(), 1u);
}

/// Its bytes are nowhere else.
TEST_F(Closing, APhotographIsOnRecordWithItsBytesAlone) {
    ship.vessel_register.failure = disk_full;
    const PickedPhotograph picture{{std::byte{1}}, std::string(64, 'a'), "image/png"};
    (void)session.recordPhotograph(
        Photograph{walkdown, "5-31", picture.sha256, picture.media_type, "sill", "", {}}, picture);
    ship.vessel_register.failure.reset();
    ASSERT_EQ(ship.ports.kept.size(), 1u);
    ASSERT_TRUE(ship.vessel_register.record(ship.ports.kept.at(0).facts));
    VesselSession next(ship.vessel_register, ship.ports.all(), session.catalogue());
    ASSERT_TRUE(next.load());
    next.takeUp(ship.ports.kept);
    EXPECT_EQ(next.waiting(), 1u);
}

/// In an exercise: nothing of one is worth a file of its own.
TEST_F(Closing, WhereNothingIsKeptWhatWaitsIsSavedOrDropped) {
    Ports ports = ship.ports.all();
    ports.waiting = nullptr;
    VesselSession exercise(ship.vessel_register, ports, session.catalogue());
    ASSERT_TRUE(exercise.load());
    exercise.setPerson(session.person());
    ship.vessel_register.failure = disk_full;
    EXPECT_FALSE(exercise.record(Note{walkdown, "5-31", "ajar"}));
    EXPECT_EQ(exercise.waiting(), 1u);
    EXPECT_TRUE(exercise.isSafeToLeave());
    ship.vessel_register.failure.reset();
    ASSERT_TRUE(exercise.saveWaiting());
    EXPECT_EQ(exercise.door("5-31")->evidence.notes.size(), 1u);
}

/// Where it was found it may not stay: it is safe only once it is kept anew.
TEST_F(Closing, WhatIsTakenUpAndCannotBeKeptIsAskedAbout) {
    std::vector<WaitingBatch> kept{{{session.stamped(Note{walkdown, "5-31", "ajar"})}, {}}};
    ship.ports.keep_failure = disk_full;
    session.takeUp(std::move(kept));
    EXPECT_FALSE(session.isSafeToLeave());
    EXPECT_FALSE(window.close());
}

/// Refused for its own sake, it must not stand in the way for ever.
TEST_F(Closing, ARefusedEntryHoldsUpNothingBehindIt) {
    ship.vessel_register.failure = disk_full;
    (void)session.record(Note{walkdown, "5-31", "ajar"});
    (void)session.record(Note{walkdown, "5-31", "leaks"});
    std::vector<WaitingBatch> kept = ship.ports.kept;
    ship.vessel_register.failure.reset();
    Fact other = kept.front().facts.front(); // something else has its id by now
    std::get<Note>(other.body).text = "of another program";
    ship.vessel_register.put(other);
    VesselSession next(ship.vessel_register, ship.ports.all(), session.catalogue());
    ASSERT_TRUE(next.load());
    next.takeUp(kept);
    EXPECT_FALSE(next.saveWaiting());
    EXPECT_EQ(next.waiting(), 1u);
    EXPECT_EQ(ship.ports.kept.size(), 1u);
    EXPECT_EQ(next.door("5-31")->evidence.notes.back().body.text, "leaks");
}
