// What closes an item: evidence of its own row after the rectification, never what the register
// says, and of a whole door all that is asked of it.
#include <array>

#include <gtest/gtest.h>

#include "core/deficiency/item.h"
#include "core/grading/graded_walkdown.h"
#include "tests/core/recorded_ship.h"

using namespace latchround;

namespace {

struct Rectified : given::RecordedShip {
    std::string person = surveyor;
    FactId found;
    FactId walk;

    explicit Rectified(const std::string& requirement, Regime regime = Regime::SolasPassenger,
                       Purpose purpose = Purpose::Annual) {
        arrangement.particulars.regime = regime;
        walk = begin();
        found = add(surveyor, Deficiency{walk, door, requirement, "not in order"});
        mend(found);
        walk = begin(purpose);
        person = add("", PersonJoined{"Ines Falk", "second surveyor"});
    }
    void read(PlateState state, std::optional<FireClass> plate = {}) {
        add(person, PlateRead{walk, door, state, plate});
    }
    void say(const std::string& id, Answer answer, Side side = Side::None) {
        add(person, Observation{walk, door, id, side, answer});
    }
    /// Whatever may be recorded at a door by who looks at nothing but its hold-back.
    void passBy() {
        add(person, Note{walk, door, "passed by"});
        add(person, CouldNotTest{walk, door, "", "no time"});
        say("path-clear", Answer::Yes);
    }
    Item item() const { return itemsOf(arrangement, ledger, given::catalogue()).back(); }
    ItemState state() const { return item().state; }
    GradedDoor graded() const {
        return gradeDoor(arrangement, ledger, *ledger.walkdown(walk), *findDoor(arrangement, door),
                         given::catalogue());
    }
    void close(Release release) {
        const FactId run = add(person, RunStarted{walk, door, RunKind::Closing, release, 0});
        add(person, Mark{run, MarkKind::LeafMoves, 1000, {}, InputDevice::Key, {}});
        add(person, Mark{run, MarkKind::Shut, 21'000, {}, InputDevice::Key, {}});
        add(person, RunEnded{run, RunOutcome::Complete, ""});
    }
    /// Everything that is asked of the door, and in order.
    void testEverything() {
        const DoorEvidence good = given::allAnswersGood(*findDoor(arrangement, door));
        for (const auto& [row, answer] : good.observations)
            say(row.first, answer.body.answer, row.second);
        read(PlateState::Read, FireClass::A60);
        for (const Release release :
             {Release::Remote, Release::LocalSideOne, Release::LocalSideTwo, Release::LetGo})
            close(release);
        for (const RowGrade& row : graded().grade.rows)
            if (row.verdict == Verdict::Untested && row.requirement->source == Source::Gauge) {
                const auto& [low, high] = std::pair(row.requirement->low, row.requirement->high);
                const double value = low && high ? (*low + *high) / 2
                                     : low       ? *low * 1.5
                                                 : *high / 2;
                add(person,
                    MeasuredValue{walk, door, row.requirement->id, value, row.requirement->unit});
            }
    }
};

constexpr std::array<std::pair<const char*, Regime>, 4> class_rows{
    {{"rating", Regime::SolasPassenger},
     {"exterior", Regime::SolasPassenger},
     {"h-rating", Regime::UsH},
     {"k-rating", Regime::UsK}}};

} // namespace

TEST(Retest, OfAClassNeedsAPlateReadAfterTheRectification) {
    for (const auto& [row, regime] : class_rows) {
        SCOPED_TRACE(row);
        Rectified ship(row, regime);
        if (row == std::string("exterior")) {
            ship.arrangement.boundaries[0].place = Place::Exterior;
            ship.arrangement.doors[1].faces_embarkation = true;
        }
        ship.passBy();
        EXPECT_EQ(ship.state(), ItemState::Rectified);
        ship.read(PlateState::None);
        EXPECT_EQ(ship.state(), ItemState::Rectified) << "it went by the register";
        ship.add(ship.person, Judgement{ship.walk, ship.door, row, true, "looks right"});
        EXPECT_EQ(ship.state(), ItemState::Rectified);
        ship.read(PlateState::Read, FireClass::A60);
        EXPECT_EQ(ship.state(), ItemState::Closed);
    }
}

TEST(Retest, OfAClassFailsByALowPlateOnly) {
    Rectified ship("rating");
    ship.arrangement.doors[1].fire_class = FireClass::A0;
    ship.passBy();
    EXPECT_FALSE(ship.item().retest) << "the register's class is no retest either";
    ship.read(PlateState::Read, FireClass::A0);
    ASSERT_TRUE(ship.item().retest);
    EXPECT_FALSE(ship.item().retest->passed);
}

TEST(Retest, OfNoRowPassesByWhatItDoesNotRead) {
    for (const Regime regime : {Regime::SolasPassenger, Regime::UsH, Regime::UsK})
        for (const Requirement& row : given::catalogue().rows) {
            if (row.id == "path-clear")
                continue; // who passed by has answered that one
            Rectified ship(row.id, regime);
            ship.passBy();
            EXPECT_FALSE(ship.item().retest) << row.id;
            EXPECT_EQ(ship.state(), ItemState::Rectified) << row.id;
        }
}

TEST(Retest, IsDatedAndSignedByWhatItsRowReads) {
    Rectified ship("rating");
    ship.read(PlateState::Read, FireClass::A60);
    ship.add(ship.mate, Note{ship.walk, ship.door, "looked in"});
    ASSERT_EQ(ship.state(), ItemState::Closed);
    EXPECT_EQ(ship.item().retest->newest.person, ship.person);
}

TEST(Retest, WithoutARectificationPassedOnlyWhereTheRowWasTested) {
    Rectified ship("rating");
    const FactId again = ship.add(
        ship.surveyor, Deficiency{ship.walk, ship.door, "rating", "still A-0", ship.found});
    ship.walk = ship.begin();
    ship.passBy();
    EXPECT_FALSE(ship.item().passed_since);
    ship.read(PlateState::Read, FireClass::A60);
    EXPECT_EQ(ship.item().passed_since, ship.walk);
}

TEST(Retest, OfAWholeDoorIsNotDoneByAQuarterlyWalk) {
    for (const char* requirement : {"", "a-row-of-another-catalogue"}) {
        Rectified ship(requirement, Regime::SolasPassenger, Purpose::Quarterly);
        for (const Release release :
             {Release::Remote, Release::LocalSideOne, Release::LocalSideTwo})
            ship.close(release);
        for (const RowGrade& row : ship.graded().grade.rows)
            if (row.verdict == Verdict::Untested)
                for (const Side side : {Side::None, Side::One, Side::Two})
                    ship.say(row.requirement->id, Answer::Yes, side);
        ASSERT_EQ(ship.graded().grade.verdict, Verdict::Satisfactory) << "by what it asks";
        EXPECT_EQ(ship.state(), ItemState::Rectified);
        EXPECT_FALSE(ship.item().retest);
    }
}

TEST(Retest, OfAWholeDoorIsDoneByTestingAllThatIsAsked) {
    Rectified ship("");
    ship.testEverything();
    ASSERT_EQ(ship.graded().grade.verdict, Verdict::Satisfactory);
    EXPECT_EQ(ship.state(), ItemState::Closed);
}

TEST(Retest, OfAWholeDoorFailsOnAnyWalk) {
    Rectified ship("", Regime::SolasPassenger, Purpose::Quarterly);
    ship.say("no-hook", Answer::No);
    ASSERT_TRUE(ship.item().retest);
    EXPECT_FALSE(ship.item().retest->passed);
}
