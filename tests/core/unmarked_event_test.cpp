// Complete runs in a register that lack the event without which a run shows nothing.
#include <gtest/gtest.h>

#include "core/evidence/mark_interval.h"
#include "core/grading/graded_walkdown.h"
#include "tests/core/recorded_ship.h"

using namespace latchround;

namespace {

struct MarkedRun {
    given::RecordedShip ship;
    FactId walk = ship.begin();

    MarkedRun(const std::string& door, std::vector<MarkKind> marks) {
        ship.door = door;
        const FactId run =
            ship.add(ship.mate, RunStarted{walk, ship.door, RunKind::Closing, Release::Remote, 0});
        std::uint32_t ms = 1000;
        for (const MarkKind kind : marks)
            last = ship.add(ship.mate, Mark{run, kind, ms += 9000, {}, InputDevice::Key, {}});
        ship.add(ship.mate, RunEnded{run, RunOutcome::Complete, ""});
    }
    GradedDoor graded() const {
        return gradeDoor(ship.arrangement, ship.ledger, *ship.ledger.walkdown(walk),
                         *findDoor(ship.arrangement, ship.door), given::catalogue());
    }
    FactId last;
};

void expectNothingShown(const GradedDoor& door, MarkKind unmarked) {
    ASSERT_EQ(door.evidence.runs.size(), 1u);
    EXPECT_EQ(door.evidence.runs[0].end->outcome, RunOutcome::Void);
    EXPECT_EQ(door.evidence.runs[0].unmarked, std::optional(unmarked));
    for (const char* id : {"hinged-time", "self-closing", "remote-release"})
        EXPECT_EQ(findRow(door.grade, id)->verdict, Verdict::Untested) << id;
    EXPECT_EQ(findRow(door.grade, "self-closing")->reason.kind, ReasonKind::NoRunComplete);
}

} // namespace

TEST(UnmarkedEvent, IsTheFirstMovementOrTheLeafHome) {
    const auto of = [](DoorKind kind, std::vector<std::pair<MarkKind, double>> marks) {
        return unmarkedEvent(given::run(Release::Remote, marks), kind);
    };
    const auto moves = std::pair(MarkKind::LeafMoves, 0.0);
    const auto shut = std::pair(MarkKind::Shut, 20.0);
    const auto first = std::pair(MarkKind::FirstLeafHome, 20.0);
    const auto second = std::pair(MarkKind::SecondLeafHome, 20.0);
    EXPECT_FALSE(of(DoorKind::SingleLeaf, {moves, shut}));
    EXPECT_FALSE(of(DoorKind::DoubleLeaf, {moves, second}));
    EXPECT_EQ(of(DoorKind::SingleLeaf, {moves}), MarkKind::Shut);
    EXPECT_EQ(of(DoorKind::SingleLeaf, {moves, second}), MarkKind::Shut);
    EXPECT_EQ(of(DoorKind::Sliding, {shut}), MarkKind::LeafMoves);
    EXPECT_EQ(of(DoorKind::DoubleLeaf, {moves, shut}), MarkKind::SecondLeafHome);
    EXPECT_EQ(of(DoorKind::DoubleLeaf, {moves, first}), MarkKind::SecondLeafHome);
    RunRecord contact = given::run(Release::LetGo, {{MarkKind::Touched, 1}});
    contact.kind = RunKind::Contact;
    EXPECT_EQ(unmarkedEvent(contact, DoorKind::Sliding), MarkKind::Stopped);
}

TEST(UnmarkedEvent, InARegisterVoidsItsRunAndSaysWhich) {
    expectNothingShown(MarkedRun("5-31", {MarkKind::LeafMoves}).graded(), MarkKind::Shut);
    expectNothingShown(MarkedRun("5-31", {MarkKind::Shut}).graded(), MarkKind::LeafMoves);
    MarkedRun of_two("5-31", {MarkKind::LeafMoves, MarkKind::Shut});
    EXPECT_EQ(findRow(of_two.graded().grade, "self-closing")->verdict, Verdict::Satisfactory);
    of_two.ship.arrangement.doors[1].kind = DoorKind::DoubleLeaf;
    expectNothingShown(of_two.graded(), MarkKind::SecondLeafHome);
}

TEST(UnmarkedEvent, IsOneThatWasTakenBackAfterTheRun) {
    MarkedRun run("5-31", {MarkKind::LeafMoves, MarkKind::Shut});
    ASSERT_EQ(findRow(run.graded().grade, "remote-release")->verdict, Verdict::Satisfactory);
    run.ship.add(run.ship.mate, TakenBack{"it had not shut"}, "tablet-1", run.last);
    expectNothingShown(run.graded(), MarkKind::Shut);
}

TEST(UnmarkedEvent, OfARunLeavesNoDoorLocked) {
    MarkedRun run("5-31", {MarkKind::LeafMoves});
    Door& door = run.ship.arrangement.doors[1];
    door.normally = NormalPosition::Locked;
    run.ship.add(run.ship.mate,
                 Observation{run.walk, run.ship.door, "found-locked", Side::None, Answer::Yes});
    EXPECT_TRUE(isAsked(*findRow(run.graded().grade, "self-closing")));
}
