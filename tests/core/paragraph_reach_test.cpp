// Which doors a paragraph of SOLAS II-2/9.4.1 speaks of, where the class of the door, that of its
// boundary and the place tell different stories; and the same text aboard Canadian ships.
#include <gtest/gtest.h>

#include "core/requirement/applicability.h"
#include "tests/core/us_asked.h"

using namespace latchround;
using namespace latchround::given;

namespace {

Site solas(Place place, FireClass door, std::optional<FireClass> plan,
           DoorKind kind = DoorKind::SingleLeaf) {
    Site made = site(Regime::SolasPassenger, kind);
    made.boundary.place = place;
    made.boundary.required = plan;
    made.door.fire_class = door;
    made.door.latch = true;
    made.door.sill_in_frame = false;
    made.door.special_category = false;
    made.door.escape_trunk = false;
    made.door.faces_embarkation = false;
    return made;
}

Verdict gapOf(const Site& made, double gap_mm, DoorEvidence evidence = {}) {
    measured(evidence, "a-gap", gap_mm);
    return rowOf(vesselOf(made), made, "a-gap", evidence).verdict;
}

Particulars builtOn(const char* keel, Regime regime = Regime::SolasPassenger) {
    Particulars vessel = solasVessel();
    vessel.regime = regime;
    vessel.keel_laid = calendarDateFrom(keel);
    return vessel;
}

Particulars undated(Regime regime) {
    Particulars vessel = builtOn("2012-05-01", regime);
    vessel.keel_laid.reset();
    return vessel;
}

} // namespace

// SOLAS II-2/9.4.1.2.2 speaks of cabin doors in B-class divisions.
TEST(CabinDoor, InABClassDivisionClosesByItselfWhateverItsOwnClass) {
    EXPECT_EQ(whenNo(solas(Place::Cabin, FireClass::A0, FireClass::B15), "b-cabin"),
              Verdict::Unsatisfactory);
    Site by_tables = solas(Place::Cabin, FireClass::A0, {});
    by_tables.boundary.spaces = std::pair(3, 7); // table 9.1: B-15
    EXPECT_EQ(whenNo(by_tables, "b-cabin"), Verdict::Unsatisfactory);
    EXPECT_EQ(whenNo(solas(Place::Cabin, FireClass::B15, FireClass::A0), "b-cabin"),
              Verdict::Unsatisfactory)
        << "a B-class door";
    EXPECT_EQ(whenNo(solas(Place::Cabin, FireClass::A0, FireClass::A0), "b-cabin"),
              Verdict::NotApplicable);
    EXPECT_EQ(whenNo(solas(Place::Other, FireClass::A0, FireClass::B15), "b-cabin"),
              Verdict::NotApplicable)
        << "no cabin";
}

TEST(CabinDoor, IsFreedFromClosingByItselfByNoPlate) {
    const Site made = solas(Place::Cabin, FireClass::B15, FireClass::B15);
    DoorEvidence evidence = said(made, "b-cabin", Answer::No);
    plate(evidence, FireClass::A0);
    EXPECT_EQ(rowOf(vesselOf(made), made, "b-cabin", evidence).verdict, Verdict::Unsatisfactory);
}

TEST(CabinDoor, OfAClassInABoundaryThatNobodyClassedIsTheInspectors) {
    EXPECT_EQ(whenNo(solas(Place::Cabin, FireClass::A0, {}), "b-cabin"), Verdict::Judge);
    EXPECT_EQ(whenNo(solas(Place::Cabin, FireClass::B15, {}), "b-cabin"), Verdict::Unsatisfactory);
}

// SOLAS II-2/9.4.1.1.2 speaks of A-class divisions, 9.4.1.2.1 of B-class ones: 12 mm and 25 mm.
TEST(GapUnderADoor, OfAClassInABClassDivisionIsTheInspectorsBetweenTheTwoLimits) {
    const Site made = solas(Place::Other, FireClass::A0, FireClass::B15);
    EXPECT_EQ(gapOf(made, 12), Verdict::Satisfactory);
    EXPECT_EQ(gapOf(made, 20), Verdict::Judge);
    EXPECT_EQ(gapOf(made, 25), Verdict::Judge);
    EXPECT_EQ(gapOf(made, 26), Verdict::Unsatisfactory) << "too wide for either";
    EXPECT_EQ(whenNo(made, "a-sill"), Verdict::Judge) << "9.4.1.2.1 asks for no sill";
}

TEST(GapUnderADoor, OfAClassIsJudgedByItsOwnClassWhereTheDivisionIsOfItOrNotKnown) {
    for (const auto& plan : {std::optional(FireClass::A0), std::optional<FireClass>()}) {
        const Site made = solas(Place::Other, FireClass::A0, plan);
        EXPECT_EQ(gapOf(made, 12), Verdict::Satisfactory);
        EXPECT_EQ(gapOf(made, 20), Verdict::Unsatisfactory);
        EXPECT_EQ(whenNo(made, "a-sill"), Verdict::Unsatisfactory);
    }
    const Site in_c = solas(Place::Other, FireClass::A0, FireClass::C);
    EXPECT_EQ(gapOf(in_c, 40), Verdict::Judge) << "no paragraph speaks of it";
    EXPECT_EQ(whenNo(in_c, "a-sill"), Verdict::Judge);
}

// SOLAS II-2/9.4.1.1.2: securing means of doors in A-class divisions.
TEST(Latch, OfAnAClassDoorOutsideAnAClassDivisionIsTheInspectors) {
    for (const FireClass plan : {FireClass::B15, FireClass::C})
        EXPECT_EQ(whenNo(solas(Place::Other, FireClass::A0, plan), "latches"), Verdict::Judge);
    EXPECT_EQ(whenNo(solas(Place::Other, FireClass::A0, FireClass::A0), "latches"),
              Verdict::Unsatisfactory);
    EXPECT_EQ(whenNo(solas(Place::Other, FireClass::A0, {}), "latches"), Verdict::Unsatisfactory);
}

// SOLAS II-2/9.4.1.1.7: no A-class integrity of exterior doors, but of those that face life-saving
// appliances, embarkation and the like; of those, not of doors of stairway enclosures.
TEST(ExteriorDoor, IsFreeOfSillAndGapAsOfItsClass) {
    Site made = solas(Place::Exterior, FireClass::A0, FireClass::A0);
    EXPECT_EQ(gapOf(made, 20), Verdict::NotApplicable);
    EXPECT_EQ(whenNo(made, "a-sill"), Verdict::NotApplicable);
    made.door.faces_embarkation = Said();
    EXPECT_EQ(gapOf(made, 20), Verdict::Unsatisfactory) << "silence exempts from nothing";
    made.door.faces_embarkation = true;
    EXPECT_EQ(gapOf(made, 20), Verdict::Unsatisfactory);
    EXPECT_EQ(whenNo(made, "a-sill"), Verdict::Unsatisfactory);
    DoorEvidence of_stair = said(made, "exterior-stair", Answer::Yes);
    EXPECT_EQ(gapOf(made, 20, of_stair), Verdict::NotApplicable);
    answer(of_stair, "a-sill", Answer::No);
    EXPECT_EQ(rowOf(vesselOf(made), made, "a-sill", of_stair).verdict, Verdict::NotApplicable);
    made.boundary.place = Place::Stairway;
    EXPECT_EQ(gapOf(made, 20), Verdict::NotApplicable);
    made.door.faces_embarkation = false;
    EXPECT_EQ(gapOf(made, 20), Verdict::Unsatisfactory);
}

TEST(ExteriorDoor, ThatDoesNotLatchFailsOnlyWhereItsClassIsAsked) {
    Site made = solas(Place::Exterior, FireClass::A0, FireClass::A0);
    EXPECT_EQ(whenNo(made, "latches"), Verdict::Judge) << "common practice";
    made.door.faces_embarkation = true;
    EXPECT_EQ(whenNo(made, "latches"), Verdict::Judge) << "nobody has said what it leads to";
    DoorEvidence evidence = said(made, "latches", Answer::No);
    const auto with = [&](Answer of_stair) {
        answer(evidence, "exterior-stair", of_stair);
        return rowOf(vesselOf(made), made, "latches", evidence).verdict;
    };
    EXPECT_EQ(with(Answer::Yes), Verdict::Judge);
    EXPECT_EQ(with(Answer::No), Verdict::Unsatisfactory);
    made.boundary.place = Place::Stairway;
    EXPECT_EQ(whenNo(made, "latches"), Verdict::Judge);
    made.door.faces_embarkation = false;
    EXPECT_EQ(whenNo(made, "latches"), Verdict::Unsatisfactory);
}

// SOLAS II-2/9.4.1.1.5.5 speaks of doors closed remotely; .5.3 and .5.13 free these of that.
TEST(ReopeningAfterRemoteClosing, IsNotAskedOfDoorsThatNeedNoRemoteClosing) {
    Site trunk = solas(zone, FireClass::A60, FireClass::A60);
    EXPECT_EQ(whenNo(trunk, "reopen-local"), Verdict::Unsatisfactory);
    trunk.door.escape_trunk = true;
    EXPECT_EQ(whenNo(trunk, "reopen-local"), Verdict::NotApplicable);
    trunk.door.escape_trunk = Said();
    EXPECT_EQ(whenNo(trunk, "reopen-local"), Verdict::Unsatisfactory);

    Site cars = solas(Place::SpecialCategory, FireClass::A60, FireClass::A60, DoorKind::Sliding);
    EXPECT_EQ(whenNo(cars, "reopen-local"), Verdict::NotApplicable);
    cars.door.power_operated = false;
    EXPECT_EQ(whenNo(cars, "reopen-local"), Verdict::Unsatisfactory);
}

// SOLAS II-2/9.4.1.1.8, 30 of 1981/83: stairways, public spaces and zone bulkheads.
TEST(HosePort, IsTheInspectorsWhereAPublicSpaceIsNotTold) {
    for (const char* keel : {"2012-05-01", "1983-01-01"})
        for (const auto& [place, verdict] : {std::pair(Place::Stairway, Verdict::Unsatisfactory),
                                             {Place::ZoneBulkhead, Verdict::Unsatisfactory},
                                             {Place::Other, Verdict::Judge},
                                             {Place::Galley, Verdict::Judge},
                                             {Place::Cabin, Verdict::NotApplicable},
                                             {Place::Machinery, Verdict::NotApplicable}})
            EXPECT_EQ(
                whenNo(builtOn(keel), solas(place, FireClass::A60, FireClass::A60), "hose-port"),
                verdict)
                << keel << " " << word(place);
    EXPECT_EQ(whenNo(undated(Regime::SolasPassenger),
                     solas(Place::Other, FireClass::A60, FireClass::A60), "hose-port"),
              Verdict::Judge);
}

// SOR/2017-14, s. 120(2): any port that is fitted, wherever it is.
TEST(HosePort, FittedAboardACanadianShipMustDoWherever) {
    for (const Place place : {Place::Galley, Place::Other, Place::Cabin})
        for (const bool in_escape_route : {true, false})
            for (const Regime regime : {Regime::CanadaConvention, Regime::Canada}) {
                Site made = solas(place, FireClass::A60, FireClass::A60);
                made.door.escape_route = in_escape_route;
                made.door.hose_port = true;
                EXPECT_EQ(whenNo(builtOn("2018-04-01", regime), made, "hose-port"),
                          Verdict::Unsatisfactory)
                    << word(place) << " " << word(regime);
            }
    Site none = solas(Place::Other, FireClass::A60, FireClass::A60);
    none.door.hose_port = false;
    EXPECT_EQ(whenNo(builtOn("2018-04-01", Regime::Canada), none, "hose-port"), Verdict::Judge);
}

// Common practice is so aboard every ship: SOR/2017-14, s. 103 lets no older ship off.
TEST(Latch, AboardAnOlderCanadianShipIsCommonPracticeAsElsewhere) {
    const Site made = solas(zone, FireClass::A60, FireClass::A60);
    for (const Regime regime : {Regime::Canada, Regime::CanadaDay}) {
        EXPECT_EQ(whenNo(builtOn("2012-01-01", regime), made, "latches"), Verdict::Judge);
        EXPECT_EQ(whenNo(undated(regime), made, "latches"), Verdict::Judge);
    }
    EXPECT_EQ(whenNo(builtOn("2017-02-02", Regime::Canada), made, "latches"), Verdict::Judge);
    EXPECT_EQ(whenNo(builtOn("2017-02-03", Regime::Canada), made, "latches"),
              Verdict::Unsatisfactory);
    EXPECT_EQ(whenNo(builtOn("1983-01-01"), made, "latches"), Verdict::Judge);
    EXPECT_EQ(whenNo(builtOn("2012-01-01", Regime::Other), made, "latches"), Verdict::Judge);
}

// Hull Construction Regulations, s. 158: no hooks, whoever releases them.
TEST(Hook, AboardAnOlderCanadianShipIsNotExcusedByItsRelease) {
    const Site made = solas(zone, FireClass::A60, FireClass::A60);
    for (const Regime regime : {Regime::Canada, Regime::CanadaDay}) {
        const Requirement& row =
            *rowOf(builtOn("2012-01-01", regime), made, "no-hook", {}).requirement;
        for (const std::string& text : {row.words, row.question, row.look_for})
            EXPECT_EQ(text.find("control station cannot"), std::string::npos) << text;
        EXPECT_EQ(whenNo(builtOn("2012-01-01", regime), made, "no-hook"), Verdict::Judge);
    }
}

namespace {

Verdict reopening(const Said& designed_to_reopen, const DoorEvidence& evidence) {
    Site made = solas(zone, FireClass::A60, FireClass::A60);
    made.door.designed_to_reopen = designed_to_reopen;
    return rowOf(vesselOf(made), made, "reopen-distance", evidence).verdict;
}

} // namespace

// SOLAS II-2/9.4.1.1.5.11 is of doors designed to re-open: the register may be silent on that.
TEST(ReopeningOnContact, IsNotMeasuredWhereThereIsNoSafetyEdge) {
    DoorEvidence none;
    answer(none, "edge-stops", Answer::NotApplicable);
    EXPECT_EQ(reopening(Said(), {}), Verdict::Untested);
    EXPECT_EQ(reopening(Said(), none), Verdict::NotApplicable);
    DoorEvidence measured_all_the_same = none;
    measured(measured_all_the_same, "reopen-distance", 1.5);
    for (const Said& on_record : {Said(), Said(true)})
        EXPECT_EQ(reopening(on_record, measured_all_the_same), Verdict::Unsatisfactory);
    answer(none, "edge-stops", Answer::Yes);
    EXPECT_EQ(reopening(Said(), none), Verdict::Untested);
}
