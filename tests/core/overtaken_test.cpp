// A decision, or an answer that stands over runs, speaks only of what was on record before it.
#include <gtest/gtest.h>

#include "core/grading/graded_walkdown.h"
#include "tests/core/recorded_ship.h"

using namespace latchround;

namespace {

struct Ship : given::RecordedShip {
    FactId walk = begin();

    Ship() {
        for (Door& each : arrangement.doors)
            each.sill_in_frame = false; // else it has no gap below
    }
    RowGrade row(const std::string& id) const {
        const Door& of = *findDoor(arrangement, door);
        return *findRow(
            gradeDoor(arrangement, ledger, *ledger.walkdown(walk), of, given::catalogue()).grade,
            id);
    }
    Verdict verdict(const std::string& id) const { return row(id).verdict; }

    FactId say(const std::string& id, Answer answer, Side side = Side::None) {
        return add(surveyor, Observation{walk, door, id, side, answer});
    }
    FactId measure(double mm, std::optional<FactId> instead_of = {}) {
        return add(surveyor, gap(mm), "tablet-1", std::move(instead_of));
    }
    FactBody gap(double mm) const { return MeasuredValue{walk, door, "a-gap", mm, "mm", 1}; }
    FactId decide(const std::string& id, bool satisfactory = true) {
        return add(surveyor, Judgement{walk, door, id, satisfactory, "as decided"});
    }
    FactId read(std::optional<FireClass> plate) {
        return add(surveyor,
                   PlateRead{walk, door, plate ? PlateState::Read : PlateState::None, plate});
    }
    FactId start(Release release = Release::LetGo) {
        return add(surveyor, RunStarted{walk, door, RunKind::Closing, release, 0});
    }
    FactId mark(const FactId& run, MarkKind kind, double seconds) {
        return add(surveyor,
                   Mark{run, kind, std::uint32_t(1000 + 1000 * seconds), {}, InputDevice::Key, {}});
    }
    void end(const FactId& run) { add(surveyor, RunEnded{run, RunOutcome::Complete, ""}); }
    /// A complete run; its last mark.
    FactId close(double seconds, Release release = Release::LetGo) {
        const FactId run = start(release);
        mark(run, MarkKind::LeafMoves, 0);
        FactId last = mark(run, MarkKind::Shut, seconds);
        end(run);
        return last;
    }
    void undo(const FactId& id) { add(surveyor, Undone{}, "tablet-1", id); }
};

void expectOvertaken(const RowGrade& row) {
    EXPECT_EQ(row.verdict, Verdict::Judge);
    EXPECT_EQ(row.reason.overtaken, Overtaken::Decision);
    EXPECT_EQ(row.reason.said.text, "as decided") << "it is shown";
    EXPECT_NE(row.reason.kind, ReasonKind::InspectorDecided) << "so is what is to be decided";
}

} // namespace

TEST(Decision, SpeaksOfNoRunAfterIt) {
    Ship ship;
    ship.close(0.2);
    ship.decide("hinged-time");
    ASSERT_EQ(ship.row("hinged-time").reason.kind, ReasonKind::InspectorDecided);
    for (int i = 0; i < 3; ++i)
        ship.close(9.6);
    expectOvertaken(ship.row("hinged-time"));
    ship.decide("hinged-time");
    EXPECT_EQ(ship.verdict("hinged-time"), Verdict::Satisfactory);
}

TEST(Decision, ThatASlipWasOneSpeaksOfNoSecondSlip) {
    Ship ship;
    ship.close(20);
    ship.close(0.2);
    ship.decide("hinged-time");
    ASSERT_EQ(ship.verdict("hinged-time"), Verdict::Satisfactory);
    ship.close(0.2);
    expectOvertaken(ship.row("hinged-time"));
}

// 10 s less the margin of 10 %: after three runs too close to that, the inspector decides.
TEST(Decision, OnThreeRunsTooCloseSpeaksOfNoFourth) {
    Ship ship;
    for (int i = 0; i < 3; ++i)
        ship.close(9.6);
    ASSERT_EQ(ship.verdict("hinged-time"), Verdict::Judge);
    ship.decide("hinged-time");
    ASSERT_EQ(ship.verdict("hinged-time"), Verdict::Satisfactory);
    ship.close(9.6);
    expectOvertaken(ship.row("hinged-time"));
}

TEST(Decision, MadeWhileARunWasUnderWaySaysNothingOfIt) {
    Ship ship;
    ship.close(0.2);
    const FactId run = ship.start();
    ship.mark(run, MarkKind::LeafMoves, 0);
    ship.decide("hinged-time");
    EXPECT_EQ(ship.verdict("hinged-time"), Verdict::Satisfactory) << "nothing has come of it yet";
    ship.mark(run, MarkKind::Shut, 20);
    ship.end(run);
    expectOvertaken(ship.row("hinged-time"));
}

TEST(Decision, SpeaksOfNoFigureAfterIt) {
    Ship ship;
    ship.measure(12.3);
    ship.decide("a-gap");
    ASSERT_EQ(ship.verdict("a-gap"), Verdict::Satisfactory);
    ship.measure(12.9);
    expectOvertaken(ship.row("a-gap"));
    EXPECT_EQ(ship.row("a-gap").reason.kind, ReasonKind::BeyondByLessThanAStep);
    ship.decide("a-gap");
    EXPECT_EQ(ship.verdict("a-gap"), Verdict::Satisfactory);
}

TEST(Decision, SpeaksOfNoAnswerAfterIt) {
    Ship ship;
    ship.say("path-clear", Answer::No);
    ship.decide("path-clear");
    ASSERT_EQ(ship.verdict("path-clear"), Verdict::Satisfactory);
    ship.say("path-clear", Answer::No);
    expectOvertaken(ship.row("path-clear"));
}

TEST(Decision, OnOneSideSpeaksNotOfBoth) {
    Ship ship;
    ship.say("local-release", Answer::Yes, Side::One);
    ship.say("local-release", Answer::NotApplicable, Side::Two);
    ship.decide("local-release");
    ASSERT_EQ(ship.verdict("local-release"), Verdict::Satisfactory);
    ship.say("local-release", Answer::NotApplicable, Side::One);
    expectOvertaken(ship.row("local-release"));
}

TEST(Decision, SpeaksOfNoPlateReadAfterIt) {
    for (const char* id : {"plate", "rating"}) {
        Ship ship;
        ship.arrangement.boundaries[0].required.reset();
        ship.arrangement.boundaries[0].place = Place::Other;
        ship.read(FireClass::A30);
        ASSERT_EQ(ship.verdict(id), Verdict::Judge) << id;
        ship.decide(id);
        ASSERT_EQ(ship.verdict(id), Verdict::Satisfactory) << id;
        ship.read(FireClass::B0);
        expectOvertaken(ship.row(id));
    }
}

TEST(Decision, OnADoorWithoutAPlateSpeaksOfNoneThatIsFound) {
    Ship ship;
    ship.read({});
    ship.decide("plate");
    ASSERT_EQ(ship.verdict("plate"), Verdict::Satisfactory);
    ship.read(FireClass::A0);
    expectOvertaken(ship.row("plate"));
}

// 46 CFR 72.05-25(b)(3) and (c)(4): 3/4 in of throw on a door of class A, 3/8 in on one of class B,
// asked of the door's own class where that of its boundary is not known. For ships before 1965 a
// failure is the inspector's to decide.
TEST(Decision, ByTheLimitOfOneClassSpeaksNotOfAHigherOne) {
    Ship ship;
    ship.arrangement.particulars.regime = Regime::UsH;
    ship.arrangement.particulars.keel_laid = calendarDateFrom("1960-01-01");
    ship.arrangement.boundaries[0].required.reset();
    ship.arrangement.boundaries[0].place = Place::Other;
    ship.arrangement.doors[1].fire_class = FireClass::B15;
    ship.add(ship.surveyor, MeasuredValue{ship.walk, ship.door, "h-latch-throw", 8, "mm", 0.5});
    ASSERT_EQ(ship.verdict("h-latch-throw"), Verdict::Judge);
    ship.decide("h-latch-throw");
    ASSERT_EQ(ship.verdict("h-latch-throw"), Verdict::Satisfactory);
    ship.read(FireClass::A60);
    expectOvertaken(ship.row("h-latch-throw"));
}

TEST(Decision, StandsOverWhatItsRowDoesNotRead) {
    Ship ship;
    ship.measure(12.3);
    ship.decide("a-gap");
    ship.say("path-clear", Answer::No);
    ship.close(20);
    ship.read(FireClass::A60);
    ship.add(ship.surveyor, Note{ship.walk, ship.door, "looked again"});
    ship.add(ship.surveyor, CouldNotTest{ship.walk, ship.door, "", "no time"});
    ship.decide("path-clear");
    EXPECT_EQ(ship.row("a-gap").reason.kind, ReasonKind::InspectorDecided);
}

TEST(Decision, OnACorrectionSpeaksNotOfWhatUndoBringsBack) {
    Ship ship;
    const FactId first = ship.measure(12.9);
    const FactId correction = ship.measure(12.3, first);
    ship.decide("a-gap");
    ASSERT_EQ(ship.verdict("a-gap"), Verdict::Satisfactory);
    ship.undo(correction);
    expectOvertaken(ship.row("a-gap"));
}

TEST(Decision, StandsWhereALaterSlipWasUndone) {
    Ship ship;
    const FactId first = ship.measure(12.3);
    ship.decide("a-gap");
    const FactId slip = ship.measure(12.9, first);
    expectOvertaken(ship.row("a-gap"));
    ship.undo(slip);
    EXPECT_EQ(ship.row("a-gap").reason.kind, ReasonKind::InspectorDecided);
}

TEST(Decision, SpeaksNotOfWhatIsLetStandAfterIt) {
    Ship ship;
    const FactId own = ship.measure(12.9);
    const FactId other = ship.add(ship.mate, ship.gap(12.3), "tablet-2");
    ship.decide("a-gap");
    ASSERT_EQ(ship.verdict("a-gap"), Verdict::Satisfactory);
    ship.add(ship.surveyor, DifferenceSettled{own, {other}, "measured twice"});
    expectOvertaken(ship.row("a-gap"));
}

// Two tablets: order is that of ids, which are their clocks'.
TEST(Decision, GoesByIdsWhenTabletsAreMerged) {
    const auto merged = [](const FactId& decision) {
        Ship ship;
        ship.measure(12.3);
        ship.ledger.add({{"500", {}, ship.mate, "tablet-2", {}}, ship.gap(12.9)});
        ship.ledger.add({{decision, {}, ship.surveyor, "tablet-1", {}},
                         Judgement{ship.walk, ship.door, "a-gap", true, "as decided"}});
        return ship.row("a-gap");
    };
    expectOvertaken(merged("499"));
    EXPECT_EQ(merged("501").reason.kind, ReasonKind::InspectorDecided);
}

TEST(Decision, ThatARowIsUnsatisfactoryStandsUntilItIsDecidedAnew) {
    Ship ship;
    ship.measure(12.9);
    ship.decide("a-gap", false);
    ship.measure(12.3);
    EXPECT_EQ(ship.verdict("a-gap"), Verdict::Unsatisfactory) << "still left to the inspector";
    EXPECT_EQ(ship.row("a-gap").reason.kind, ReasonKind::InspectorDecided);
    EXPECT_EQ(ship.row("a-gap").reason.overtaken, Overtaken::Decision) << "who may decide again";
    ship.decide("a-gap", true);
    EXPECT_EQ(ship.verdict("a-gap"), Verdict::Satisfactory);
    ship.decide("a-gap", false);
    ship.measure(11);
    EXPECT_EQ(ship.verdict("a-gap"), Verdict::Satisfactory) << "as after a figure that failed";
}

TEST(AlarmAnswer, SpeaksOfNoSilentRunAfterIt) {
    for (const Answer answer : {Answer::Yes, Answer::NotApplicable}) {
        Ship ship;
        ship.door = "5-32";
        ship.close(9, Release::Remote);
        ASSERT_EQ(ship.verdict("alarm-sounds"), Verdict::Judge);
        ship.say("alarm-sounds", answer);
        ASSERT_NE(ship.row("alarm-sounds").reason.kind, ReasonKind::AlarmNotMarked)
            << "of the run before it, it speaks";
        ship.close(9, Release::LocalSideOne);
        ASSERT_NE(ship.row("alarm-sounds").reason.kind, ReasonKind::AlarmNotMarked);
        ship.close(9, Release::Remote);
        EXPECT_EQ(ship.verdict("alarm-sounds"), Verdict::Judge);
        EXPECT_EQ(ship.row("alarm-sounds").reason.kind, ReasonKind::AlarmNotMarked);
        EXPECT_EQ(ship.row("alarm-sounds").reason.overtaken, Overtaken::Answer);
        ship.say("alarm-sounds", Answer::Yes);
        EXPECT_EQ(ship.verdict("alarm-sounds"), Verdict::Satisfactory);
    }
}

TEST(AlarmAnswer, StandsOverALaterRunInWhichItWasHeard) {
    Ship ship;
    ship.door = "5-32";
    ship.say("alarm-sounds", Answer::Yes);
    const FactId run = ship.start(Release::Remote);
    const FactId heard = ship.mark(run, MarkKind::AlarmOn, 0);
    ship.mark(run, MarkKind::LeafMoves, 7);
    ship.mark(run, MarkKind::Shut, 16);
    ship.end(run);
    EXPECT_EQ(ship.verdict("alarm-sounds"), Verdict::Satisfactory);
    ship.add(ship.surveyor, TakenBack{"a slip"}, "tablet-1", heard);
    EXPECT_EQ(ship.verdict("alarm-sounds"), Verdict::Judge) << "silent, as far as anybody says";
}

TEST(AlarmAnswer, ThatMarksOfAnEarlierRunAreTakenBackIsNewer) {
    Ship ship;
    ship.door = "5-32";
    const FactId run = ship.start(Release::Remote);
    const FactId heard = ship.mark(run, MarkKind::AlarmOn, 0);
    ship.mark(run, MarkKind::LeafMoves, 7);
    ship.mark(run, MarkKind::Shut, 16);
    ship.end(run);
    ship.say("alarm-sounds", Answer::Yes);
    const FactId taken = ship.add(ship.surveyor, TakenBack{"a slip"}, "tablet-1", heard);
    EXPECT_EQ(ship.verdict("alarm-sounds"), Verdict::Judge);
    ship.undo(taken);
    EXPECT_EQ(ship.verdict("alarm-sounds"), Verdict::Satisfactory);
}

TEST(AlarmAnswer, OfNoIsOvertakenByNothing) {
    Ship ship;
    ship.door = "5-32";
    ship.say("alarm-sounds", Answer::No);
    ship.close(9, Release::Remote);
    EXPECT_EQ(ship.verdict("alarm-sounds"), Verdict::Unsatisfactory);
}
