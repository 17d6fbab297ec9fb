// Every tap can be taken back, one after the other, and put back again; what counts is each time
// what it was then.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "tests/ui/memory_register.h"

using namespace latchround;
using namespace latchround::ui;

namespace {

/// What counts of a door, for comparing: the ids differ where something was recorded again.
std::vector<std::string> counting(const VesselSession& session) {
    std::vector<std::string> said;
    for (const GradedDoor& door : session.doors()) {
        for (const auto& [key, seen] : door.evidence.observations)
            said.push_back(door.door->number + key.first + std::to_string(int(key.second)) +
                           std::to_string(int(seen.body.answer)));
        for (const auto& [row, value] : door.evidence.measured)
            said.push_back(door.door->number + row + std::to_string(value.body.value));
        for (const auto& note : door.evidence.notes)
            said.push_back(door.door->number + note.body.text.text);
        said.push_back(door.door->number + std::to_string(int(door.grade.verdict)));
    }
    said.push_back(session.isUnderWay() ? "under way" : "ended");
    return said;
}

/// One of the taps a door's page knows, on one of two doors and rows, so that they meet.
void tap(VesselSession& session, const FactId& walkdown) {
    const std::string door = *rc::gen::element<std::string>("5-31", "5-32");
    const std::string row = *rc::gen::element<std::string>("path-clear", "sill");
    const auto& seen = session.door(QString::fromStdString(door))->evidence.observations;
    const auto found = seen.find({row, Side::None});
    const std::optional<FactId> earlier =
        found == seen.end() ? std::nullopt : std::optional(found->second.stamp.id);
    switch (*rc::gen::inRange(0, 5)) {
    case 0:
        (void)session.record(Note{walkdown, door, std::to_string(*rc::gen::inRange(0, 9))});
        break;
    case 1:
        if (earlier)
            (void)session.record(TakenBack{"answer taken back"}, earlier);
        break;
    case 2:
        (void)session.record(
            MeasuredValue{walkdown, door, "gap", 1.0 * *rc::gen::inRange(1, 9), "mm"});
        break;
    default:
        (void)session.record(Observation{walkdown, door, row, Side::None,
                                         *rc::gen::element(Answer::Yes, Answer::No)},
                             earlier);
    }
}

Result<> takeBack(VesselSession& session, const QString& door = {}) {
    const std::optional<Tap> tap = session.tapToTakeBack(door);
    return tap ? session.undo(*tap)
               : tl::unexpected(Error{"undo", "there is nothing to take back"});
}

Result<> putBack(VesselSession& session, const QString& door = {}) {
    const std::optional<Tap> tap = session.tapToPutBack(door);
    return tap ? session.undo(*tap) : tl::unexpected(Error{"undo", "there is nothing to put back"});
}

} // namespace

RC_GTEST_PROP(Undo, TapsAreTakenBackAndPutBackInARow, ()) {
    SmallShip ship;
    const FactId walkdown = ship.begun();
    ship.load();
    std::vector<std::vector<std::string>> stages{counting(*ship.session)};
    std::size_t at = 0; // the stage that counts; those after it can be put back
    const int steps = *rc::gen::inRange(1, 24);
    for (int i = 0; i < steps; ++i) {
        VesselSession& session = *ship.session;
        switch (*rc::gen::inRange(0, 6)) {
        case 0:
            if (at > 0) { // else the beginning of the walkdown
                RC_ASSERT(takeBack(session));
                --at;
            }
            break;
        case 1:
            RC_ASSERT(putBack(session).has_value() == (at + 1 < stages.size()));
            at += at + 1 < stages.size() ? 1 : 0;
            break;
        case 2: // the program ends and begins again
            ship.load();
            break;
        default: {
            const std::size_t before = ship.vessel_register.transactions.size();
            tap(session, walkdown);
            if (ship.vessel_register.transactions.size() > before) {
                stages.resize(++at);
                stages.push_back(counting(session));
            }
        }
        }
        RC_ASSERT(counting(*ship.session) == stages[at]);
    }
    for (; at > 0; --at) {
        RC_ASSERT(takeBack(*ship.session));
        RC_ASSERT(counting(*ship.session) == stages[at - 1]);
    }
}

TEST(UndoRound, StaysWithTheDoorThatIsAskedFor) {
    SmallShip ship;
    const FactId walkdown = ship.begun();
    VesselSession& session = ship.load();
    ASSERT_TRUE(session.record(Note{walkdown, "5-31", "here"}));
    ASSERT_TRUE(session.record(Note{walkdown, "5-32", "there"}));
    ASSERT_TRUE(takeBack(session, "5-31"));
    EXPECT_TRUE(session.door("5-31")->evidence.notes.empty());
    EXPECT_EQ(session.door("5-32")->evidence.notes.size(), 1U);
    EXPECT_FALSE(takeBack(session, "5-31"));
    ASSERT_TRUE(putBack(session, "5-31"));
    EXPECT_EQ(session.door("5-31")->evidence.notes.size(), 1U);
}

TEST(UndoRound, TheEndOfTheWalkdown) {
    SmallShip ship;
    const FactId walkdown = ship.begun();
    VesselSession& session = ship.load();
    ASSERT_TRUE(session.record(WalkdownEnded{walkdown, {}}));
    EXPECT_FALSE(session.isUnderWay());
    ASSERT_TRUE(takeBack(session));
    EXPECT_TRUE(session.isUnderWay());
}

TEST(UndoRound, NothingAfterASignature) {
    SmallShip ship;
    const FactId walkdown = ship.begun();
    VesselSession& session = ship.load();
    ASSERT_TRUE(session.record(Note{walkdown, "5-31", "seal torn"}));
    ASSERT_TRUE(session.record(WalkdownEnded{walkdown, {}}));
    ASSERT_TRUE(session.sign(walkdown, Capacity::Inspector));
    EXPECT_FALSE(session.tapToTakeBack());
    EXPECT_FALSE(session.isUnderWay());
    ship.load();
    EXPECT_FALSE(ship.session->tapToTakeBack());
}

TEST(UndoRound, NotWhileSomethingWaitsAndNotLostWhereItCannotBeSaved) {
    SmallShip ship;
    const FactId walkdown = ship.begun();
    VesselSession& session = ship.load();
    ASSERT_TRUE(session.record(Note{walkdown, "5-31", "first"}));
    ship.vessel_register.failure = disk_full;
    EXPECT_FALSE(takeBack(session));
    EXPECT_TRUE(session.tapToTakeBack());
    EXPECT_EQ(session.door("5-31")->evidence.notes.size(), 1U);
    (void)session.record(Note{walkdown, "5-31", "second"});
    EXPECT_FALSE(session.tapToTakeBack());
    ship.vessel_register.failure.reset();
    ASSERT_TRUE(session.saveWaiting());
    ASSERT_TRUE(takeBack(session));
    ASSERT_TRUE(takeBack(session));
    EXPECT_TRUE(session.door("5-31")->evidence.notes.empty());
}

TEST(UndoRound, SaysWhenSomethingWasLastOnDisk) {
    SmallShip ship;
    const FactId walkdown = ship.begun();
    VesselSession& session = ship.load();
    EXPECT_FALSE(session.savedAt());
    ship.vessel_register.failure = disk_full;
    (void)session.record(Note{walkdown, "5-31", "x"});
    EXPECT_FALSE(session.savedAt());
    ship.vessel_register.failure.reset();
    ASSERT_TRUE(session.saveWaiting());
    EXPECT_EQ(session.savedAt()->utc_ms, ship.ports.clock.utc_ms);
}
