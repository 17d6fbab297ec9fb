// What could not be saved waits, in order, and is tried again; nothing is shown as recorded before
// it is on disk.
#include <gtest/gtest.h>

#include <QLabel>
#include <QSignalSpy>

#include "tests/ui/memory_register.h"
#include "ui/window/not_saved_banner.h"

using namespace latchround;
using namespace latchround::ui;

namespace {

Observation path(const FactId& walkdown, Answer answer) {
    return {walkdown, "5-31", "path-clear", Side::None, answer};
}

} // namespace

TEST(VesselSession, ShowsNothingAsRecordedThatIsNotSaved) {
    SmallShip ship;
    const FactId walkdown = ship.begun();
    VesselSession& session = ship.load();
    ship.vessel_register.failure = disk_full;
    EXPECT_FALSE(session.record(path(walkdown, Answer::Yes)));
    EXPECT_EQ(session.waiting(), 1u);
    EXPECT_EQ(session.whyWaiting(), disk_full);
    EXPECT_TRUE(session.door("5-31")->evidence.observations.empty());
}

TEST(VesselSession, SavesWhatWaitedInItsOrderOnceItCan) {
    SmallShip ship;
    const FactId walkdown = ship.begun();
    VesselSession& session = ship.load();
    ship.vessel_register.failure = disk_full;
    (void)session.record(path(walkdown, Answer::Yes));
    (void)session.record(path(walkdown, Answer::No));
    EXPECT_FALSE(session.saveWaiting());
    EXPECT_EQ(session.waiting(), 2u);
    ship.vessel_register.failure.reset();
    const int before = ship.vessel_register.reopened;
    EXPECT_TRUE(session.saveWaiting());
    EXPECT_EQ(ship.vessel_register.reopened, before + 1);
    EXPECT_EQ(session.waiting(), 0u);
    ASSERT_EQ(ship.vessel_register.transactions.size(), 1u) << "however much has waited";
    const std::vector<Fact>& saved = ship.vessel_register.transactions.front();
    ASSERT_EQ(saved.size(), 2u);
    EXPECT_EQ(std::get<Observation>(saved[0].body).answer, Answer::Yes);
    EXPECT_EQ(
        session.door("5-31")->evidence.observations.at({"path-clear", Side::None}).body.answer,
        Answer::No);
}

TEST(VesselSession, GradesAnewWhenTheDrillThatTimesWereReadByIsUndone) {
    SmallShip ship;
    ship.begun();
    VesselSession& session = ship.load();
    ASSERT_TRUE(session.record(ThumbDrill{}));
    QSignalSpy graded(&session, &VesselSession::walkdownChanged);
    ASSERT_TRUE(session.undo(*session.tapToTakeBack()));
    EXPECT_EQ(graded.size(), 1);
}

TEST(VesselSession, NothingOvertakesWhatWaits) {
    SmallShip ship;
    const FactId walkdown = ship.begun();
    VesselSession& session = ship.load();
    ship.vessel_register.failure = disk_full;
    (void)session.record(path(walkdown, Answer::Yes));
    ship.vessel_register.failure.reset();
    EXPECT_FALSE(session.record(path(walkdown, Answer::No)));
    EXPECT_EQ(session.waiting(), 2u);
    EXPECT_TRUE(ship.vessel_register.transactions.empty());
}

TEST(VesselSession, NextOpenDoorGoesOnFromHereAndRound) {
    SmallShip ship;
    ship.begun({"5-11", "5-31", "7-02"});
    VesselSession& session = ship.load();
    EXPECT_EQ(session.nextOpenDoor(), "5-11");
    EXPECT_EQ(session.nextOpenDoor("5-31"), "7-02");
    EXPECT_EQ(session.nextOpenDoor("7-02"), "5-11");
}

/// A second program on one register: it shows, says who writes, and sees what the writer adds.
TEST(VesselSession, WhileAnotherProgramWritesItOnlyShows) {
    SmallShip ship;
    const FactId walkdown = ship.begun();
    VesselSession& session = ship.load();
    ship.vessel_register.other_writer = "process 4711 on bridge";
    EXPECT_FALSE(session.isUnderWay());
    EXPECT_EQ(session.otherWriter(), "process 4711 on bridge");
    QSignalSpy refused(&session, &VesselSession::refused);
    EXPECT_FALSE(session.record(path(walkdown, Answer::Yes)));
    EXPECT_EQ(refused.size(), 1);
    EXPECT_EQ(session.waiting(), 0u) << "it would write when the other has gone, unasked";
    NotSavedBanner banner(session);
    EXPECT_FALSE(banner.isHidden());
    EXPECT_TRUE(banner.findChild<QLabel*>()->text().contains("4711"));
    ship.put(path(walkdown, Answer::No));
    ASSERT_TRUE(session.readAgain());
    EXPECT_EQ(
        session.door("5-31")->evidence.observations.at({"path-clear", Side::None}).body.answer,
        Answer::No);
}
