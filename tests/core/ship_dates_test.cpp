// Which text binds a ship of which date: SOLAS II-2 of 1 July 2002, older texts as far as read, and
// no date at all.
#include <set>

#include <gtest/gtest.h>

#include "core/grading/grade.h"
#include "tests/core/given.h"

using namespace latchround;

namespace {

Particulars ship(const char* keel) {
    Particulars vessel = given::solasVessel();
    vessel.keel_laid = calendarDateFrom(keel);
    return vessel;
}

/// Everything answered no, every figure far out.
DoorEvidence allBad(const Door& door) {
    DoorEvidence evidence;
    evidence.door = door.number;
    for (const Requirement& row : given::catalogue().rows) {
        if (row.check == CheckKind::Seen || row.check == CheckKind::SeenBothSides)
            given::answer(evidence, row.id, Answer::No);
        if (row.source == Source::Gauge)
            given::measured(evidence, row.id, 5000);
    }
    evidence.runs = {given::run(Release::Remote, {{MarkKind::AlarmOn, 0},
                                                  {MarkKind::LeafMoves, 1},
                                                  {MarkKind::AlarmOff, 61},
                                                  {MarkKind::Shut, 121}})};
    return evidence;
}

RowGrade rowOf(const Particulars& vessel, const Door& door, const Boundary& boundary,
               const DoorEvidence& evidence, std::string_view id) {
    const DoorGrade graded = grade(vessel, door, &boundary, evidence, given::catalogue());
    return *findRow(graded, id);
}

Verdict badVerdict(const char* keel, std::string_view id, const Door& door = given::slidingDoor(),
                   const Boundary& boundary = given::zoneBulkhead()) {
    return rowOf(ship(keel), door, boundary, allBad(door), id).verdict;
}

/// A door for which every SOLAS row can be asked, in each place there is.
std::vector<Door> everyKindOfDoor() {
    std::vector<Door> doors;
    for (const auto& kind : doorKindWords)
        for (const FireClass fire_class : {FireClass::A60, FireClass::B15}) {
            Door door = given::slidingDoor();
            door.kind = kind.value;
            door.fire_class = fire_class;
            door.sill_in_frame = false;
            door.special_category = true;
            door.faces_embarkation = true;
            doors.push_back(door);
        }
    return doors;
}

} // namespace

// In every older text seen (1981/83 wording, art. 27 of a national transposition; 1981 reg. 37).
TEST(OlderText, BindsInWhatItHas) {
    Door door = given::slidingDoor();
    door.special_category = true;
    for (const char* keel : {"1985-03-01", "2002-06-30", "2002-07-01", "2015-01-01", ""})
        for (const char* id : {"self-closing", "no-hook", "fail-safe", "one-person",
                               "local-release", "hose-port", "bridge-indicator"})
            EXPECT_EQ(badVerdict(keel, id, door), Verdict::Unsatisfactory) << id << " " << keel;
    for (const char* keel : {"1985-03-01", "2002-06-30", "2002-07-01", "2015-01-01", ""})
        EXPECT_EQ(badVerdict(keel, "remote-release"), Verdict::Unsatisfactory) << keel;
}

TEST(OlderText, IsCitedAndSaysWhereItWasRead) {
    const auto cite = [](const char* keel) {
        return rowOf(ship(keel), given::hingedDoor(), given::zoneBulkhead(), {}, "self-closing")
            .requirement->cite;
    };
    EXPECT_NE(cite("2002-06-30").find("1981/83"), std::string::npos);
    EXPECT_NE(cite("").find("1981/83"), std::string::npos);
    EXPECT_EQ(cite("2002-07-01"), "SOLAS II-2/9.4.1.1.5.1");
}

// Numbers and parts that the older text has not: 10 to 40 s, 0.1 to 0.2 m/s, the alarm, the panel
// of the control station, re-opening, accumulators, independence, 1 m, heat, 150 mm.
TEST(YoungerText, IsAdviceForAnOlderOrUndatedShip) {
    for (const char* id :
         {"sliding-rate", "switch-on-off", "reopen-local", "indicator", "accumulator",
          "independence", "alarm-lead", "alarm-holds", "reopen-distance", "control-heat"}) {
        EXPECT_EQ(badVerdict("2002-06-30", id), Verdict::Advice) << id;
        EXPECT_EQ(badVerdict("1985-03-01", id), Verdict::Advice) << id;
        EXPECT_EQ(badVerdict("", id), Verdict::Advice) << id;
        EXPECT_EQ(badVerdict("2002-07-01", id), Verdict::Unsatisfactory) << id;
    }
    EXPECT_EQ(badVerdict("2002-06-30", "hinged-time", given::hingedDoor()), Verdict::Advice);
    EXPECT_EQ(badVerdict("2002-07-01", "hinged-time", given::hingedDoor()),
              Verdict::Unsatisfactory);
}

TEST(YoungerText, IsTheInspectorsWhereNoOlderOneWasRead) {
    for (const char* id : {"accessible", "material", "blackout", "escape-key"}) {
        EXPECT_EQ(badVerdict("2002-06-30", id), Verdict::Judge) << id;
        EXPECT_EQ(badVerdict("", id), Verdict::Judge) << id;
        EXPECT_EQ(badVerdict("2002-07-01", id), Verdict::Unsatisfactory) << id;
    }
    DoorEvidence evidence = allBad(given::slidingDoor());
    evidence.judgements["accessible"] = {Stamp{}, {"w", "5-32", "accessible", true, "by drawing"}};
    const RowGrade row = rowOf(ship("1985-03-01"), given::slidingDoor(), given::zoneBulkhead(),
                               evidence, "accessible");
    EXPECT_EQ(row.verdict, Verdict::Satisfactory);
    EXPECT_EQ(row.reason.kind, ReasonKind::InspectorDecided);
}

TEST(YoungerText, NeverFailsAnOlderShip) {
    const std::set<std::string> bind{"rating",           "one-person",    "self-closing",
                                     "remote-release",   "local-release", "no-hook",
                                     "fail-safe",        "hose-port",     "auto-latch",
                                     "bridge-indicator", "condition",     "plan-has-door"};
    for (const char* keel : {"1979-01-01", "1985-03-01", "1994-10-01", "2002-06-30", ""})
        for (const Door& door : everyKindOfDoor())
            for (const auto& place : placeWords) {
                Boundary boundary = given::zoneBulkhead();
                boundary.place = place.value;
                const DoorGrade graded =
                    grade(ship(keel), door, &boundary, allBad(door), given::catalogue());
                for (const RowGrade& row : graded.rows)
                    if (row.requirement->status == Status::Read &&
                        row.verdict == Verdict::Unsatisfactory) {
                        EXPECT_TRUE(bind.contains(row.requirement->id))
                            << row.requirement->id << " " << keel << " " << place.word;
                    }
            }
}

// TW art. 27(5): at the door; both sides came later.
TEST(OlderText, OneSwitchAtTheDoorIsEnough) {
    DoorEvidence evidence;
    evidence.door = "5-32";
    given::answer(evidence, "local-release", Answer::Yes, Side::One);
    given::answer(evidence, "local-release", Answer::No, Side::Two);
    const auto verdict = [&](const char* keel) {
        return rowOf(ship(keel), given::slidingDoor(), given::zoneBulkhead(), evidence,
                     "local-release")
            .verdict;
    };
    EXPECT_EQ(verdict("2002-06-30"), Verdict::Satisfactory);
    EXPECT_EQ(verdict("2002-07-01"), Verdict::Unsatisfactory);
    evidence.observations.clear();
    evidence.runs = {
        given::run(Release::LocalSideTwo, {{MarkKind::LeafMoves, 0}, {MarkKind::Shut, 9}})};
    EXPECT_EQ(verdict("2002-06-30"), Verdict::Satisfactory);
    EXPECT_EQ(verdict("2002-07-01"), Verdict::Untested);
}

// TW art. 27(5) excepts doors that are normally closed.
TEST(OlderText, AsksNoReleaseOfADoorThatIsNormallyClosed) {
    Door door = given::hingedDoor();
    door.normally = NormalPosition::Closed;
    EXPECT_EQ(badVerdict("2002-06-30", "remote-release", door), Verdict::Advice);
    EXPECT_EQ(badVerdict("2002-07-01", "remote-release", door), Verdict::Unsatisfactory);
}

TEST(OlderText, ConditionAndPlanBindEveryDate) {
    for (const char* keel : {"1960-01-01", "2002-06-30", "2002-07-01", ""})
        for (const char* id : {"condition", "plan-has-door"})
            EXPECT_EQ(badVerdict(keel, id), Verdict::Unsatisfactory) << id << " " << keel;
}

// TW art. 27(6): no A-class duty on exterior doors, without the exceptions of 9.4.1.1.7.
TEST(OlderText, FreesExteriorDoors) {
    Boundary outside = given::zoneBulkhead();
    outside.place = Place::Exterior;
    Door door = given::hingedDoor();
    door.fire_class = FireClass::A0;
    door.faces_embarkation = true;
    EXPECT_EQ(badVerdict("2002-06-30", "exterior", door, outside), Verdict::NotApplicable);
    EXPECT_EQ(badVerdict("", "exterior", door, outside), Verdict::Advice);
    EXPECT_EQ(badVerdict("2002-07-01", "exterior", door, outside), Verdict::Unsatisfactory);
}

// II-2/1.2.1: such a ship keeps the tables of its day; the approved plan is its own.
TEST(OlderShip, IsRatedByItsPlanAndNeverFailedByTablesThatAreNotItsOwn) {
    Boundary boundary = given::zoneBulkhead();
    boundary.place = Place::Stairway;
    boundary.spaces = std::pair(2, 12); // table 9.1: A-30
    Door door = given::hingedDoor();
    const auto verdict = [&](const char* keel, FireClass has) {
        door.fire_class = has;
        return rowOf(ship(keel), door, boundary, {}, "rating");
    };
    boundary.required.reset();
    for (const char* keel : {"2002-06-30", ""}) {
        EXPECT_EQ(verdict(keel, FireClass::A15).verdict, Verdict::Judge) << keel;
        EXPECT_EQ(verdict(keel, FireClass::A15).reason.kind, ReasonKind::ClassNotOfShip) << keel;
        EXPECT_EQ(verdict(keel, FireClass::A30).verdict, Verdict::Satisfactory) << keel;
    }
    EXPECT_EQ(verdict("2002-07-01", FireClass::A15).verdict, Verdict::Unsatisfactory);
    EXPECT_EQ(verdict("2002-07-01", FireClass::A30).verdict, Verdict::Satisfactory);
    boundary.required = FireClass::A30;
    for (const char* keel : {"2002-06-30", "", "2002-07-01"})
        EXPECT_EQ(verdict(keel, FireClass::A15).verdict, Verdict::Unsatisfactory) << keel;
}

// II-2/23.6.2: ships built on or after 1 July 2010.
TEST(SafetyCentre, IsAskedFromItsOwnDate) {
    EXPECT_EQ(badVerdict("2010-06-30", "safety-centre"), Verdict::NotApplicable);
    EXPECT_EQ(badVerdict("2010-07-01", "safety-centre"), Verdict::Unsatisfactory);
    EXPECT_EQ(badVerdict("", "safety-centre"), Verdict::Advice);
}
