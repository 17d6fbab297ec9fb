// What 46 CFR asks of which door: reach by the class of the boundary, by the vessel's dates and
// passengers, and by what the door is. Section and paragraph stand at each test.
#include <set>

#include <gmock/gmock.h>

#include "core/grading/grade.h"
#include "core/requirement/applicability.h"
#include "core/requirement/applicability_phrases.h"
#include "tests/core/us_asked.h"

using namespace latchround;
using namespace latchround::given;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::IsSupersetOf;

namespace {

const std::set<std::string> upright_rows_of_a_h{
    "h-rating",   "h-construction", "h-has-latch",  "h-latch-both",  "h-latch-throw",
    "h-undercut", "h-no-carpet",    "h-frame-stop", "h-frame-rigid", "h-no-louver",
    "h-glass",    "h-wired-glass",  "h-wire",       "latches"};
const std::set<std::string> rows_of_b_h{
    "h-b-construction", "h-has-latch",  "h-latch-both",  "h-latch-throw", "h-undercut",
    "h-no-carpet",      "h-frame-stop", "h-frame-rigid", "h-b-louver",    "h-b-louver-low",
    "h-wired-glass",    "h-wire",       "latches"};
const std::set<std::string> rows_of_every_h{"h-one-person", "h-locks",  "h-glass-thick",
                                            "h-glass-held", "h-veneer", "h-decorative",
                                            "h-hose-port",  "no-glass", "h-escape-way"};
const std::set<std::string> rows_of_every_k{
    "k-one-person",        "k-escape-way", "k-frame-stop",   "k-frame-rigid",
    "leaf-width",          "k-hose-port",  "k-windows",      "k-veneer",
    "k-decorative",        "k-way-out",    "k-crew-only",    "k-way-out-width",
    "k-way-out-direction", "no-glass",     "k-way-out-crew", "k-window-shutters"};

std::set<std::string> together(std::set<std::string> one, const std::set<std::string>& other) {
    one.insert(other.begin(), other.end());
    one.insert("release-system");
    return one;
}

} // namespace

// 72.05-25(a), (b)(1)-(8), (c), (d).
TEST(SubchapterH, AsksByTheClassOfTheBulkhead) {
    EXPECT_EQ(asked(of(usA<H>)), together(upright_rows_of_a_h, rows_of_every_h));
    EXPECT_EQ(asked(of(usB<H>)), together(rows_of_b_h, rows_of_every_h));
    EXPECT_EQ(asked(of(usC<H>)), together({"h-c-material"}, rows_of_every_h));
}

// 116.435(b) with 114.400(b): A, B, C and C'; (c), (d), (e).
TEST(SubchapterK, AsksByTheClassOfTheBoundary) {
    EXPECT_EQ(asked(of(usA<K>)),
              together({"k-rating", "k-construction", "k-has-latch", "k-latch-throw", "k-undercut",
                        "k-no-carpet", "k-no-louver", "k-glass", "k-wired-glass", "latches"},
                       rows_of_every_k));
    EXPECT_EQ(asked(of(usB<K>)), together({"k-b-construction", "k-has-latch", "k-latch-throw",
                                           "k-undercut", "k-no-carpet", "latches"},
                                          rows_of_every_k))
        << "nothing on grilles, and no class of the door";
    EXPECT_EQ(asked(of(usC<K>)), together({"k-c-material"}, rows_of_every_k));
}

// 72.05-25(a), 116.435(a).
TEST(UsDoor, ThatIsWatertightIsOutside) {
    for (const Change change : {usA<H, zone>, usA<K, zone>, usB<H>, usC<K>}) {
        Site made = of(change);
        made.door.watertight = true;
        made.door.release_groups.clear(); // 111.99-5 is of the system
        EXPECT_THAT(asked(made), IsEmpty());
    }
}

// The plan's class of the boundary decides, not the plate on the door.
TEST(UsDoor, OfAnotherClassThanItsBoundaryIsAskedWhatTheBoundaryAsks) {
    Site made = of(usA<H>);
    made.door.fire_class = FireClass::B15;
    EXPECT_TRUE(isAskedOf(made, "h-no-louver"));
    EXPECT_EQ(rowOf(vesselOf(made), made, "h-rating", {}).verdict, Verdict::Unsatisfactory);
    DoorEvidence evidence;
    measured(evidence, "h-latch-throw", 12); // enough in a B-class bulkhead
    EXPECT_EQ(rowOf(vesselOf(made), made, "h-latch-throw", evidence).verdict,
              Verdict::Unsatisfactory);
}

TEST(UsDoor, InABoundaryThatNobodyClassedIsNotPassedOver) {
    Site made = of(usB<H>);
    made.boundary.required.reset();
    EXPECT_EQ(rowOf(vesselOf(made), made, "h-rating", {}).verdict, Verdict::Judge);
    EXPECT_TRUE(isAskedOf(made, "h-b-construction")) << "by the door's own class";
    made.boundary.place = zone;
    EXPECT_TRUE(isAskedOf(made, "h-self-closing"));
    made.boundary.spaces = std::pair(1, 5); // 72.05-10 table: A-30 in a zone bulkhead
    EXPECT_TRUE(isAskedOf(made, "h-no-louver")) << "by the table";
    EXPECT_FALSE(isAskedOf(made, "h-b-construction"));
}

TEST(UsDoor, IsAskedWhatItsRegisterDoesNotSay) {
    Site made = of(usA<K, zone>);
    made.door.normally = NormalPosition::Closed;
    for (Said* silent : {&made.door.hose_port, &made.door.watertight, &made.door.escape_route,
                         &made.door.hold_back})
        *silent = Said();
    for (const char* id : {"k-hose-port", "k-one-person", "k-way-out", "k-release"})
        EXPECT_TRUE(isAskedOf(made, id)) << id;
}

TEST(UsDoor, IsToldWhichClassOfBoundaryARowIsFor) {
    const Site a_class = of(usA<H>);
    const Site b_class = of(usB<H>);
    const auto why = [](const Site& made) {
        return askedBecause(
            row("h-construction"), vesselOf(made), made.door,
            locationOf(vesselOf(made), &made.boundary, given::catalogue().divisions));
    };
    EXPECT_EQ(why(b_class), applies::b_class_boundary());
    EXPECT_EQ(why(a_class).parts.at(0), joined(phrase::with_commas, {applies::a_class_boundary(),
                                                                     applies::not_watertight()}));
}

// 72.05-25(b)(9)(ii): the sentence on hooks has no exemption of its own.
TEST(SubchapterH, HooksAreAskedAboutApartFromRelease) {
    Site open = of(usA<H, zone>);
    EXPECT_EQ(whenNo(open, "h-no-hook"), Verdict::Unsatisfactory);
    EXPECT_TRUE(isAskedOf(open, "h-release"));
    Site closed = of(closedStair<H>);
    EXPECT_FALSE(isAskedOf(closed, "h-release"));
    EXPECT_EQ(whenNo(closed, "h-no-hook"), Verdict::Judge);
    EXPECT_EQ(rowOf(vesselOf(closed), closed, "h-no-hook", said(closed, "h-no-hook", Answer::No))
                  .reason.kind,
              ReasonKind::TextLeavesOpen);
}

// 116.435(c)(6)(ii).
TEST(SubchapterK, ExemptsNobodyFromHooksAndAsksForReleaseOfAHoldBack) {
    for (const NormalPosition kept :
         {NormalPosition::Open, NormalPosition::Closed, NormalPosition::Locked}) {
        Site made = of(usA<K, stair>);
        made.door.normally = kept;
        EXPECT_EQ(whenNo(made, "k-no-hook"), Verdict::Unsatisfactory) << int(kept);
        EXPECT_EQ(whenNo(made, "k-self-closing"), Verdict::Unsatisfactory) << int(kept);
        EXPECT_TRUE(isAskedOf(made, "k-release")) << "held back, " << int(kept);
    }
    EXPECT_FALSE(isAskedOf(of(closedStair<K>), "k-release")) << "no hold-back";
}

// 72.05-25(b)(9)(i), (iii); 78.47-35.
TEST(SubchapterH, ALockedDoorIsFreeOfClosingByItselfButNotOfItsLeaves) {
    Site made = of(usA<H, zone, two_leaves>);
    made.door.normally = NormalPosition::Locked;
    DoorEvidence found = said(made, "found-locked", Answer::Yes);
    answer(found, "h-leaves", Answer::No);
    answer(found, "h-number", Answer::No);
    const auto verdict = [&](const char* id) {
        return rowOf(vesselOf(made), made, id, found).verdict;
    };
    EXPECT_EQ(verdict("h-self-closing"), Verdict::NotApplicable);
    EXPECT_EQ(verdict("h-leaves"), Verdict::Unsatisfactory);
    EXPECT_EQ(verdict("h-number"), Verdict::Judge) << "two exemptions, not of the same doors";
    EXPECT_TRUE(isAskedOf(made, "h-self-closing")) << "not found locked";
}

// 72.05-25(b)(3), (c)(4); 116.435(c)(3), (d)(2).
TEST(UsDoor, WithoutALatchFailsWhateverTheRegisterSaysOfIt) {
    for (const Change change : {usA<H>, usB<H>, usA<K>, usB<K>}) {
        Site made = of(change);
        made.door.latch = false;
        EXPECT_EQ(whenNo(made, made.regime == H ? "h-has-latch" : "k-has-latch"),
                  Verdict::Unsatisfactory);
    }
}

// 72.05-25(b)(8).
TEST(SubchapterH, AHardwoodDoorToTheOpenDeckIsFreeOfTheRulesOfAClass) {
    Site made = of(usA<H, outdoors>);
    made.door.fire_class = FireClass::C;
    const auto rating = [&](Answer hardwood) {
        return rowOf(vesselOf(made), made, "h-rating", said(made, "h-hardwood", hardwood)).verdict;
    };
    EXPECT_EQ(rating(Answer::Yes), Verdict::NotApplicable);
    EXPECT_EQ(rating(Answer::No), Verdict::Unsatisfactory);
    EXPECT_EQ(rowOf(vesselOf(made), made, "h-rating", {}).verdict, Verdict::Unsatisfactory)
        << "not told";
    for (const char* id : {"h-latch-throw", "h-undercut", "h-no-louver", "h-frame-stop"})
        EXPECT_FALSE(
            isAsked(rowOf(vesselOf(made), made, id, said(made, "h-hardwood", Answer::Yes))))
            << id;
    EXPECT_TRUE(isAsked(
        rowOf(vesselOf(made), made, "h-glass-thick", said(made, "h-hardwood", Answer::Yes))))
        << "(a)(4) binds hardwood doors too";
    EXPECT_FALSE(isAskedOf(made, "h-glass")) << "no area limit";
}

// 72.05-25(b)(8), 116.435(c)(9): doors to the open deck alone have that choice.
TEST(UsDoor, IsExcusedByNoAnswerThatIsNotAskedOfIt) {
    Site h = of(usA<H>);
    h.door.fire_class = FireClass::C;
    EXPECT_EQ(rowOf(vesselOf(h), h, "h-rating", said(h, "h-hardwood", Answer::Yes)).verdict,
              Verdict::Unsatisfactory);
    Site k = of(usA<K>);
    k.door.fire_class = FireClass::C;
    EXPECT_EQ(rowOf(vesselOf(k), k, "k-rating", said(k, "k-hardwood", Answer::Yes)).verdict,
              Verdict::Unsatisfactory);
}

// 116.435(c)(9).
TEST(SubchapterK, AHardwoodDoorToTheWeatherDeckIsFreeOfConstructionAlone) {
    Site made = of(usA<K, outdoors>);
    made.door.fire_class = FireClass::C;
    DoorEvidence evidence = said(made, "k-hardwood", Answer::Yes);
    measured(evidence, "k-undercut", 30);
    EXPECT_FALSE(isAsked(rowOf(vesselOf(made), made, "k-rating", evidence)));
    EXPECT_FALSE(isAsked(rowOf(vesselOf(made), made, "k-construction", evidence)));
    EXPECT_EQ(rowOf(vesselOf(made), made, "k-undercut", evidence).verdict, Verdict::Judge);
    EXPECT_TRUE(isAskedOf(made, "k-wired-glass")) << "always, without H's test of a safety area";
    EXPECT_FALSE(isAskedOf(made, "k-glass")) << "no area limit";
}

// 116.435(c)(7): the nine facts, of A-class boundaries; (b)(1) beside it.
TEST(SubchapterK, AsksNineThingsOfADoorInADeck) {
    const Site made = of(deckDoor);
    const std::set<std::string> nine{
        "k-horizontal-where",   "k-horizontal",         "k-horizontal-list",
        "k-horizontal-no-hook", "k-horizontal-release", "k-horizontal-unlatch",
        "k-horizontal-start",   "k-horizontal-open",    "k-horizontal-pressure"};
    EXPECT_THAT(asked(made), IsSupersetOf(nine));
    Site b_class = made;
    b_class.boundary.required = b_class.door.fire_class = FireClass::B15;
    Site upright = made;
    upright.boundary.division = Division::Bulkhead;
    for (const std::string& id : nine) {
        EXPECT_FALSE(asked(b_class).contains(id)) << id;
        EXPECT_FALSE(asked(upright).contains(id)) << id;
    }
    EXPECT_EQ(whenNo(made, "k-upright"), Verdict::Judge) << "neither paragraph fails it by itself";
    EXPECT_EQ(row("k-horizontal-list").incline_deg, 3.5);
}

// 72.05-25(b)(4), (c)(2); 116.435(c)(10).
TEST(UsDoor, WithoutGlassIsAskedNothingOfGlass) {
    for (const Change change : {usA<H>, usB<H>, usA<K>}) {
        const Site made = of(change);
        const DoorEvidence evidence = said(made, "no-glass", Answer::Yes);
        for (const RowGrade& each :
             grade(vesselOf(made), made.door, &made.boundary, evidence, catalogue()).rows)
            if (each.requirement->id.find("glass") != std::string::npos &&
                each.requirement->id != "no-glass") {
                EXPECT_FALSE(isAsked(each)) << each.requirement->id;
            }
    }
}

// 72.05-1, 72.05-90: contracted for on or after 26 May 1965. 116.115(a), 114.400(b): 11 March 1996.
TEST(UsVessel, OlderThanTheTextOrUndatedIsLeftToTheInspector) {
    const struct {
        Change change;
        const char* id;
        const char* first;
        const char* last_before;
    } subchapters[] = {{usA<H, zone>, "h-no-hook", "1965-05-26", "1965-05-25"},
                       {usA<K, zone>, "k-no-hook", "1996-03-11", "1996-03-10"}};
    for (const auto& each : subchapters) {
        const Site made = of(each.change);
        Particulars vessel = vesselOf(made);
        vessel.keel_laid = calendarDateFrom(each.first);
        EXPECT_EQ(whenNo(vessel, made, each.id), Verdict::Unsatisfactory) << each.first;
        vessel.keel_laid = calendarDateFrom(each.last_before);
        EXPECT_EQ(whenNo(vessel, made, each.id), Verdict::Judge) << each.last_before;
        vessel.keel_laid.reset();
        EXPECT_EQ(whenNo(vessel, made, each.id), Verdict::Judge) << "no date";
    }
}

namespace {

/// All that can be found against the row.
DoorEvidence foundWanting(const RowCase& each, const Site& made) {
    DoorEvidence evidence;
    evidence.door = made.door.number;
    for (const Side side : {Side::None, Side::One, Side::Two})
        answer(evidence, each.id, Answer::No, side);
    if (row(each.id).source == Source::Gauge)
        measured(evidence, each.id, each.figures.bad.front());
    evidence.runs = {run(Release::LetGo, {{MarkKind::LeafMoves, 0}, {MarkKind::Shut, 60}})};
    return evidence;
}

} // namespace

TEST(UsVessel, OfBeforeEveryTextIsFailedByNone) {
    for (const RowCase& each : us_cases) {
        Site made;
        each.asked(made);
        made.door.fire_class = FireClass::C;
        Particulars vessel = vesselOf(made);
        const DoorEvidence evidence = foundWanting(each, made);
        const auto verdict = [&] { return rowOf(vessel, made, each.id, evidence).verdict; };
        const bool fails = verdict() == Verdict::Unsatisfactory;
        for (const auto& keel : {calendarDateFrom("1960-01-01"), std::optional<CalendarDate>()}) {
            vessel.keel_laid = keel;
            EXPECT_NE(verdict(), Verdict::Unsatisfactory) << each.id;
            if (fails) {
                EXPECT_EQ(verdict(), Verdict::Judge) << each.id << ": but it is not let pass";
            }
        }
    }
}

// 116.438(a): more than 600 passengers, or more than 49 berthed, which no register says.
TEST(SubchapterK, StairsOfABigVesselAreThoseOfSubchapterH) {
    const Site made = of(usA<K, stair, two_leaves>);
    Particulars vessel = vesselOf(made);
    for (const char* id : {"k-stair-number", "k-stair-leaves", "k-stair-served"}) {
        vessel.passengers = 601;
        EXPECT_EQ(whenNo(vessel, made, id), Verdict::Unsatisfactory) << id;
        vessel.passengers = 600;
        EXPECT_EQ(whenNo(vessel, made, id), Verdict::Judge) << id;
    }
    EXPECT_FALSE(isAskedOf(of(usA<K, zone, two_leaves>), "k-stair-leaves")) << "stairs alone";
}

// 116.500(f), (i).
TEST(SubchapterK, AWayOutIsAsWideAsWhoUsesIt) {
    const Site made = of(usA<K>);
    DoorEvidence evidence = said(made, "k-crew-only", Answer::Yes);
    measured(evidence, "k-way-out-width", 720);
    measured(evidence, "k-way-out-crew", 720);
    const auto verdict = [&](const char* id) {
        return rowOf(vesselOf(made), made, id, evidence).verdict;
    };
    EXPECT_EQ(verdict("k-way-out-width"), Verdict::NotApplicable);
    EXPECT_EQ(verdict("k-way-out-crew"), Verdict::Satisfactory);
    answer(evidence, "k-crew-only", Answer::No);
    EXPECT_EQ(verdict("k-way-out-width"), Verdict::Unsatisfactory);
    EXPECT_EQ(verdict("k-way-out-crew"), Verdict::NotApplicable) << "not for crew only";
}

// 72.05-25(b)(7), 116.435(b)(5): only double swing is free of stops at sides and top.
TEST(UsDoor, OfTwoLeavesHasStopsAtItsSidesAndTop) {
    EXPECT_TRUE(isAskedOf(of(usA<H, zone, two_leaves>), "h-frame-stop"));
    EXPECT_TRUE(isAskedOf(of(usA<K, zone, two_leaves>), "k-frame-stop"));
    EXPECT_FALSE(isAskedOf(of(usA<H, zone, both_ways>), "h-frame-stop"));
    EXPECT_FALSE(isAskedOf(of(usA<K, zone, both_ways>), "k-frame-stop"));
}

TEST(UsCatalogue, NamesTheLaterRulesThatWereNotRead) {
    for (const char* rule : {"81 FR 48219 (22 July 2016)", "89 FR 76676 (18 September 2024)",
                             "88 FR 16365 (16 March 2023)", "111.99-3"})
        EXPECT_THAT(catalogue().deference, HasSubstr(rule));
}
