// Doors of 46 CFR that several paragraphs meet at: outside doors of stairways, leaves that close in
// order, doors in decks, hardwood. Section and paragraph stand at each test.
#include "tests/core/us_asked.h"

using namespace latchround;
using namespace latchround::given;

namespace {

Particulars shipOf(const Site& made, int passengers) {
    Particulars vessel = vesselOf(made);
    vessel.passengers = passengers;
    return vessel;
}

/// The row with all that can be found against it, beside these answers.
Verdict whenWanting(const Particulars& vessel, const Site& made, const char* id,
                    const std::vector<std::pair<std::string, Answer>>& answers) {
    DoorEvidence evidence;
    evidence.door = made.door.number;
    for (const auto& [row, given_answer] : answers)
        answer(evidence, row, given_answer);
    if (row(id).source == Source::Gauge)
        measured(evidence, id, row(id).check == CheckKind::AtLeast ? 1 : 1000);
    else
        answer(evidence, id, Answer::No);
    return rowOf(vessel, made, id, evidence).verdict;
}

Verdict meetingGap(const Site& made, double gap_mm, const char* by, Answer given_answer) {
    DoorEvidence evidence = said(made, by, given_answer);
    const char* id = made.regime == H ? "h-meeting-gap" : "k-meeting-gap";
    measured(evidence, id, gap_mm);
    return rowOf(vesselOf(made), made, id, evidence).verdict;
}

} // namespace

// 72.05-25(b)(9)(i)-(iv), 116.438(a): of a steel door as of any stairway door; (b)(8), (c)(9) leave
// it open of hardwood.
TEST(UsDoor, OfSteelFromAStairToTheOpenDeckIsAskedAllThatStairwayDoorsAre) {
    const struct {
        const char* id;
        DoorKind kind;
        Regime regime;
    } rows[] = {{"h-number", DoorKind::SingleLeaf, H},
                {"h-stair-width", two_leaves, H},
                {"h-stair-served", two_leaves, H},
                {"h-swing-auto-latch", both_ways, H},
                {"k-stair-number", DoorKind::SingleLeaf, K},
                {"k-stair-leaves", two_leaves, K},
                {"k-stair-width", two_leaves, K},
                {"k-stair-served", two_leaves, K}};
    for (const auto& each : rows) {
        Site made = each.regime == H ? of(usA<H, outdoors>) : of(usA<K, outdoors>);
        made.door.kind = each.kind;
        const std::string prefix = each.regime == H ? "h-" : "k-";
        const auto verdict = [&](Answer hardwood, Answer of_stair, int passengers = 601) {
            return whenWanting(
                shipOf(made, passengers), made, each.id,
                {{prefix + "hardwood", hardwood}, {prefix + "exterior-stair", of_stair}});
        };
        EXPECT_EQ(verdict(Answer::No, Answer::Yes), Verdict::Unsatisfactory) << each.id;
        EXPECT_EQ(verdict(Answer::Yes, Answer::Yes), Verdict::Judge) << each.id;
        EXPECT_EQ(verdict(Answer::No, Answer::No), Verdict::NotApplicable) << each.id;
        EXPECT_EQ(whenWanting(shipOf(made, 601), made, each.id, {}), Verdict::Judge)
            << each.id << ": nobody has said what it is";
        if (each.regime == K)
            EXPECT_EQ(verdict(Answer::No, Answer::Yes, 600), Verdict::Judge)
                << each.id << ": 116.438(a) counts berths, too";
    }
}

// 78.47-35(a) exempts doors of single rooms, (b)(9)(i) locked ones: not the same doors.
TEST(SubchapterH, TheNumberOfALockedDoorFromAStairToTheOpenDeckIsTheInspectors) {
    Site made = of(usA<H, outdoors>);
    made.door.normally = NormalPosition::Locked;
    EXPECT_EQ(whenWanting(vesselOf(made), made, "h-number",
                          {{"found-locked", Answer::Yes},
                           {"h-hardwood", Answer::No},
                           {"h-exterior-stair", Answer::Yes}}),
              Verdict::Judge);
}

// 72.05-25(b)(7), (c)(6); 116.435(b)(5): the clearance is of leaves that work independently.
TEST(UsDoor, OfTwoLeavesThatCloseInOrderHasNoLimitBetweenThem) {
    for (const Site& made : {of(usA<H, zone, two_leaves>), of(usB<H, two_leaves>)}) {
        EXPECT_EQ(meetingGap(made, 6, "h-any-order", Answer::No), Verdict::NotApplicable);
        EXPECT_EQ(meetingGap(made, 6, "h-any-order", Answer::Yes), Verdict::Unsatisfactory);
        EXPECT_EQ(meetingGap(made, 6, "no-glass", Answer::Yes), Verdict::Unsatisfactory)
            << "not told";
    }
    const Site made = of(usA<K, zone, two_leaves>);
    EXPECT_EQ(meetingGap(made, 6, "k-order", Answer::Yes), Verdict::NotApplicable);
    EXPECT_EQ(meetingGap(made, 6, "k-order", Answer::NotApplicable), Verdict::Unsatisfactory)
        << "they work independently";
    EXPECT_EQ(meetingGap(made, 6, "no-glass", Answer::Yes), Verdict::Unsatisfactory);
}

TEST(UsDoor, ThatSwingsBothWaysHasItsClearanceWhateverIsSaidOfLeaves) {
    EXPECT_EQ(meetingGap(of(usA<H, zone, both_ways>), 6, "h-any-order", Answer::No),
              Verdict::Unsatisfactory);
    EXPECT_EQ(meetingGap(of(usA<K, zone, both_ways>), 6, "k-order", Answer::Yes),
              Verdict::Unsatisfactory);
}

// An answer that is not asked of this door hides none that is.
TEST(UsDoor, IsExcusedByTheAnswerThatIsAskedOfIt) {
    const Site made = of(usA<H, zone, two_leaves>);
    DoorEvidence evidence = said(made, "h-any-order", Answer::No);
    answer(evidence, "h-hardwood", Answer::Yes); // not a door to the open deck
    measured(evidence, "h-meeting-gap", 6);
    EXPECT_EQ(rowOf(vesselOf(made), made, "h-meeting-gap", evidence).verdict,
              Verdict::NotApplicable);
}

// 72.05-25(b), (c) and (d) speak of doors in bulkheads, (a) of every door.
TEST(SubchapterH, ADoorInADeckIsFailedByTheParagraphsOnEveryDoorAlone) {
    const std::set<std::string> of_every_door{"h-one-person", "h-escape-way",  "h-locks",
                                              "h-hose-port",  "h-glass-thick", "h-glass-held",
                                              "h-veneer",     "h-decorative"};
    int of_bulkheads = 0;
    for (const RowCase& each : us_cases) {
        Site made = of(each.asked);
        if (made.regime != H || row(each.id).tells ||
            row(each.id).check == CheckKind::ClassAtLeast ||
            std::string_view(each.id) == "release-system")
            continue;
        const Verdict upright = whenWanting(vesselOf(made), made, each.id, {});
        made.boundary.division = Division::Deck;
        const bool binds = of_every_door.contains(each.id);
        EXPECT_EQ(whenWanting(vesselOf(made), made, each.id, {}), binds ? upright : Verdict::Judge)
            << each.id;
        of_bulkheads += binds ? 0 : 1;
    }
    EXPECT_GT(of_bulkheads, 20);
    Site low = of(usA<H>);
    low.door.fire_class = FireClass::B15;
    EXPECT_EQ(rowOf(vesselOf(low), low, "h-rating", {}).verdict, Verdict::Unsatisfactory);
    low.boundary.division = Division::Deck;
    EXPECT_EQ(rowOf(vesselOf(low), low, "h-rating", {}).verdict, Verdict::Judge);
    EXPECT_EQ(whenNo(low, "latches"), Verdict::Judge);
}

// 114.400(b): a fire control boundary of K is a bulkhead or a deck.
TEST(SubchapterK, ADoorInADeckIsAskedWhatItsBoundaryAsks) {
    Site made = of(deckDoor);
    EXPECT_EQ(whenNo(made, "k-has-latch"), Verdict::Unsatisfactory);
    EXPECT_EQ(whenNo(made, "k-frame-rigid"), Verdict::Unsatisfactory);
}

// 72.05-25(a)(8): not for outside doors of deckhouses, locked with a key that an officer holds.
TEST(SubchapterH, ALockOnAnOutsideDoorIsTheInspectors) {
    const Site outside_door = of(usA<H, outdoors>);
    EXPECT_EQ(whenNo(outside_door, "h-locks"), Verdict::Judge);
    EXPECT_EQ(rowOf(vesselOf(outside_door), outside_door, "h-locks",
                    said(outside_door, "h-locks", Answer::NotApplicable))
                  .verdict,
              Verdict::NotApplicable);
    const Site inside_door = of(usA<H>);
    EXPECT_EQ(whenNo(inside_door, "h-locks"), Verdict::Unsatisfactory);
    EXPECT_EQ(rowOf(vesselOf(inside_door), inside_door, "h-locks",
                    said(inside_door, "h-locks", Answer::NotApplicable))
                  .verdict,
              Verdict::Judge);
}

// 72.05-25(a)(4): hardwood doors of (b)(8) are exempt from the frame, not from the thickness.
TEST(SubchapterH, GlassInAHardwoodDoorToTheOpenDeckNeedsNoMetalFrame) {
    const Site made = of(usA<H, outdoors>);
    EXPECT_EQ(whenWanting(vesselOf(made), made, "h-glass-held", {{"h-hardwood", Answer::Yes}}),
              Verdict::NotApplicable);
    EXPECT_EQ(whenWanting(vesselOf(made), made, "h-glass-held", {{"no-glass", Answer::Yes}}),
              Verdict::NotApplicable);
    EXPECT_EQ(whenWanting(vesselOf(made), made, "h-glass-held", {{"h-hardwood", Answer::No}}),
              Verdict::Unsatisfactory);
    EXPECT_EQ(whenWanting(vesselOf(made), made, "h-glass-thick", {{"h-hardwood", Answer::Yes}}),
              Verdict::Unsatisfactory);
    const Site inside_door = of(usA<H>);
    EXPECT_EQ(whenWanting(vesselOf(inside_door), inside_door, "h-glass-held",
                          {{"h-hardwood", Answer::Yes}}),
              Verdict::Unsatisfactory)
        << "not asked there";
}

// 72.05-25(a)(5): where wired glass is asked for, and wired glass there is.
TEST(SubchapterH, StrandsAreMeasuredWhereWiredGlassIsRequiredAlone) {
    const auto strands = [](const Site& made, const char* by, Answer given_answer) {
        return rowOf(vesselOf(made), made, "h-wire", said(made, by, given_answer)).verdict;
    };
    const Site made = of(usA<H, outdoors>);
    EXPECT_EQ(strands(made, "h-weather-glass", Answer::NotApplicable), Verdict::NotApplicable);
    EXPECT_EQ(strands(made, "h-weather-glass", Answer::Yes), Verdict::Untested);
    const Site inside_door = of(usA<H>);
    EXPECT_EQ(strands(inside_door, "h-weather-glass", Answer::NotApplicable), Verdict::Untested)
        << "not asked there";
}

// 116.433: windows at embarkation, escape routes and survival craft.
TEST(SubchapterK, AWindowAtAnEmbarkationStationHasShuttersOrAClass) {
    const Site made = of(usB<K>);
    EXPECT_EQ(whenNo(made, "k-window-shutters"), Verdict::Judge);
    EXPECT_EQ(rowOf(vesselOf(made), made, "k-window-shutters",
                    said(made, "k-window-shutters", Answer::NotApplicable))
                  .verdict,
              Verdict::NotApplicable)
        << "not at such a place";
    EXPECT_EQ(whenWanting(vesselOf(made), made, "k-window-shutters", {{"no-glass", Answer::Yes}}),
              Verdict::NotApplicable);
}
