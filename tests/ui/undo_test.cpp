// Every tap can be taken back, one after the other, and what counts is then what it was before.
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

} // namespace

RC_GTEST_PROP(Undo, TapsAreTakenBackInARow, ()) {
    SmallShip ship;
    const FactId walkdown = ship.begun();
    Round& round = ship.load();
    std::vector<std::vector<std::string>> stages{counting(round)};
    const int taps = *rc::gen::inRange(1, 12);
    for (int i = 0; i < taps; ++i) {
        const std::size_t before = ship.vessel_register.transactions.size();
        tap(round, walkdown);
        if (ship.vessel_register.transactions.size() > before)
            stages.push_back(counting(round));
        // A tap may come after an undo, as people do.
        if (stages.size() > 1 && *rc::gen::inRange(0, 4) == 0) {
            RC_ASSERT(round.undo());
            stages.pop_back();
            RC_ASSERT(counting(round) == stages.back());
        }
    }
    while (round.newestTap()) {
        RC_ASSERT(round.undo());
        stages.pop_back();
        RC_ASSERT(counting(round) == stages.back());
    }
    RC_ASSERT(stages.size() == 1U);
}

TEST(UndoRound, TheEndOfTheWalkdown) {
    SmallShip ship;
    const FactId walkdown = ship.begun();
    Round& round = ship.load();
    ASSERT_TRUE(round.record(WalkdownEnded{walkdown, {}}));
    EXPECT_FALSE(round.isUnderWay());
    ASSERT_TRUE(round.undo());
    EXPECT_TRUE(round.isUnderWay());
}

TEST(UndoRound, NothingBeforeThisSittingAndNothingAfterASignature) {
    SmallShip ship;
    const FactId walkdown = ship.begun();
    Round& round = ship.load();
    EXPECT_EQ(round.newestTap(), nullptr);
    ASSERT_TRUE(round.record(WalkdownEnded{walkdown, {}}));
    ASSERT_TRUE(round.sign(walkdown, Capacity::Inspector));
    EXPECT_EQ(round.newestTap(), nullptr);
    EXPECT_FALSE(round.isUnderWay());
}

TEST(UndoRound, NotWhileSomethingWaitsAndNotLostWhereItCannotBeSaved) {
    SmallShip ship;
    const FactId walkdown = ship.begun();
    Round& round = ship.load();
    ASSERT_TRUE(round.record(Note{walkdown, "5-31", "first"}));
    ship.vessel_register.failure = Complaint{"register", "the disk is full", ""};
    EXPECT_FALSE(round.undo());
    EXPECT_NE(round.newestTap(), nullptr);
    EXPECT_EQ(round.door("5-31")->evidence.notes.size(), 1U);
    (void)round.record(Note{walkdown, "5-31", "second"});
    EXPECT_EQ(round.newestTap(), nullptr);
    ship.vessel_register.failure.reset();
    ASSERT_TRUE(round.saveWaiting());
    ASSERT_TRUE(round.undo());
    ASSERT_TRUE(round.undo());
    EXPECT_TRUE(round.door("5-31")->evidence.notes.empty());
}

TEST(UndoRound, SaysWhenSomethingWasLastOnDisk) {
    SmallShip ship;
    const FactId walkdown = ship.begun();
    Round& round = ship.load();
    EXPECT_FALSE(round.savedAt());
    ship.vessel_register.failure = Complaint{"register", "the disk is full", ""};
    (void)round.record(Note{walkdown, "5-31", "x"});
    EXPECT_FALSE(round.savedAt());
    ship.vessel_register.failure.reset();
    ASSERT_TRUE(round.saveWaiting());
    EXPECT_EQ(round.savedAt()->utc_ms, ship.outside.clock.utc_ms);
}
