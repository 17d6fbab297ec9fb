// Every tap can be taken back, one after the other, and put back again; what counts is each time
// what it was then.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "tests/ui/memory_register.h"

using namespace latchround;
using namespace latchround::ui;

namespace {

/// What counts of a door, for comparing: the ids differ where something was recorded again.
std::vector<std::string> counting(const Round& round) {
    std::vector<std::string> said;
    for (const GradedDoor& door : round.doors()) {
        for (const auto& [key, seen] : door.evidence.observations)
            said.push_back(door.door->number + key.first + std::to_string(int(key.second)) +
                           std::to_string(int(seen.body.answer)));
        for (const auto& [row, value] : door.evidence.measured)
            said.push_back(door.door->number + row + std::to_string(value.body.value));
        for (const auto& note : door.evidence.notes)
            said.push_back(door.door->number + note.body.text);
        said.push_back(door.door->number + std::to_string(int(door.grade.verdict)));
    }
    said.push_back(round.isUnderWay() ? "under way" : "ended");
    return said;
}

/// One of the taps a door's page knows, on one of two doors and rows, so that they meet.
void tap(Round& round, const FactId& walkdown) {
    const std::string door = *rc::gen::element<std::string>("5-31", "5-32");
    const std::string row = *rc::gen::element<std::string>("path-clear", "sill");
    const auto& seen = round.door(QString::fromStdString(door))->evidence.observations;
    const auto found = seen.find({row, Side::None});
    const std::optional<FactId> earlier =
        found == seen.end() ? std::nullopt : std::optional(found->second.stamp.id);
    switch (*rc::gen::inRange(0, 5)) {
    case 0:
        (void)round.record(Note{walkdown, door, std::to_string(*rc::gen::inRange(0, 9))});
        break;
    case 1:
        if (earlier)
            (void)round.record(TakenBack{"answer taken back"}, earlier);
        break;
    case 2:
        (void)round.record(
            MeasuredValue{walkdown, door, "gap", 1.0 * *rc::gen::inRange(1, 9), "mm"});
        break;
    default:
        (void)round.record(Observation{walkdown, door, row, Side::None,
                                       *rc::gen::element(Answer::Yes, Answer::No)},
                           earlier);
    }
}

Done takeBack(Round& round, const QString& door = {}) {
    const std::optional<Tap> tap = round.tapToTakeBack(door);
    return tap ? round.undo(*tap) : tl::unexpected(Error{"undo", "there is nothing to take back"});
}

Done putBack(Round& round, const QString& door = {}) {
    const std::optional<Tap> tap = round.tapToPutBack(door);
    return tap ? round.undo(*tap) : tl::unexpected(Error{"undo", "there is nothing to put back"});
}

} // namespace

RC_GTEST_PROP(Undo, TapsAreTakenBackAndPutBackInARow, ()) {
    SmallShip ship;
    const FactId walkdown = ship.begun();
    ship.load();
    std::vector<std::vector<std::string>> stages{counting(*ship.round)};
    std::size_t at = 0; // the stage that counts; those after it can be put back
    const int steps = *rc::gen::inRange(1, 24);
    for (int i = 0; i < steps; ++i) {
        Round& round = *ship.round;
        switch (*rc::gen::inRange(0, 6)) {
        case 0:
            if (at > 0) { // else the beginning of the walkdown
                RC_ASSERT(takeBack(round));
                --at;
            }
            break;
        case 1:
            RC_ASSERT(putBack(round).has_value() == (at + 1 < stages.size()));
            at += at + 1 < stages.size() ? 1 : 0;
            break;
        case 2: // the program ends and begins again
            ship.load();
            break;
        default: {
            const std::size_t before = ship.vessel_register.transactions.size();
            tap(round, walkdown);
            if (ship.vessel_register.transactions.size() > before) {
                stages.resize(++at);
                stages.push_back(counting(round));
            }
        }
        }
        RC_ASSERT(counting(*ship.round) == stages[at]);
    }
    for (; at > 0; --at) {
        RC_ASSERT(takeBack(*ship.round));
        RC_ASSERT(counting(*ship.round) == stages[at - 1]);
    }
}

TEST(UndoRound, StaysWithTheDoorThatIsAskedFor) {
    SmallShip ship;
    const FactId walkdown = ship.begun();
    Round& round = ship.load();
    ASSERT_TRUE(round.record(Note{walkdown, "5-31", "here"}));
    ASSERT_TRUE(round.record(Note{walkdown, "5-32", "there"}));
    ASSERT_TRUE(takeBack(round, "5-31"));
    EXPECT_TRUE(round.door("5-31")->evidence.notes.empty());
    EXPECT_EQ(round.door("5-32")->evidence.notes.size(), 1U);
    EXPECT_FALSE(takeBack(round, "5-31"));
    ASSERT_TRUE(putBack(round, "5-31"));
    EXPECT_EQ(round.door("5-31")->evidence.notes.size(), 1U);
}

TEST(UndoRound, TheEndOfTheWalkdown) {
    SmallShip ship;
    const FactId walkdown = ship.begun();
    Round& round = ship.load();
    ASSERT_TRUE(round.record(WalkdownEnded{walkdown, {}}));
    EXPECT_FALSE(round.isUnderWay());
    ASSERT_TRUE(takeBack(round));
    EXPECT_TRUE(round.isUnderWay());
}

TEST(UndoRound, NothingAfterASignature) {
    SmallShip ship;
    const FactId walkdown = ship.begun();
    Round& round = ship.load();
    ASSERT_TRUE(round.record(Note{walkdown, "5-31", "seal torn"}));
    ASSERT_TRUE(round.record(WalkdownEnded{walkdown, {}}));
    ASSERT_TRUE(round.sign(walkdown, Capacity::Inspector));
    EXPECT_FALSE(round.tapToTakeBack());
    EXPECT_FALSE(round.isUnderWay());
    ship.load();
    EXPECT_FALSE(ship.round->tapToTakeBack());
}

TEST(UndoRound, NotWhileSomethingWaitsAndNotLostWhereItCannotBeSaved) {
    SmallShip ship;
    const FactId walkdown = ship.begun();
    Round& round = ship.load();
    ASSERT_TRUE(round.record(Note{walkdown, "5-31", "first"}));
    ship.vessel_register.failure = disk_full;
    EXPECT_FALSE(takeBack(round));
    EXPECT_TRUE(round.tapToTakeBack());
    EXPECT_EQ(round.door("5-31")->evidence.notes.size(), 1U);
    (void)round.record(Note{walkdown, "5-31", "second"});
    EXPECT_FALSE(round.tapToTakeBack());
    ship.vessel_register.failure.reset();
    ASSERT_TRUE(round.saveWaiting());
    ASSERT_TRUE(takeBack(round));
    ASSERT_TRUE(takeBack(round));
    EXPECT_TRUE(round.door("5-31")->evidence.notes.empty());
}

TEST(UndoRound, SaysWhenSomethingWasLastOnDisk) {
    SmallShip ship;
    const FactId walkdown = ship.begun();
    Round& round = ship.load();
    EXPECT_FALSE(round.savedAt());
    ship.vessel_register.failure = disk_full;
    (void)round.record(Note{walkdown, "5-31", "x"});
    EXPECT_FALSE(round.savedAt());
    ship.vessel_register.failure.reset();
    ASSERT_TRUE(round.saveWaiting());
    EXPECT_EQ(round.savedAt()->utc_ms, ship.ports.clock.utc_ms);
}
