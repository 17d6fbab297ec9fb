// What 46 CFR leaves open, and where its paragraphs end. Section and paragraph stand at each test.
#include "tests/core/us_asked.h"

using namespace latchround;
using namespace latchround::given;

// 116.435(e) names C alone, (b) C and C' (114.400(b), fire control boundary).
TEST(SubchapterK, AsksNothingOfMaterialOfADoorInACPrimeBoundary) {
    Site made = of(usC<K>);
    EXPECT_TRUE(isAskedOf(made, "k-c-material"));
    made.boundary.required.reset();
    made.boundary.spaces = std::pair(4, 12);
    const Particulars vessel = vesselOf(made);
    const DoorClass asked_class = doorClassAsked(vessel, &made.boundary, catalogue().divisions);
    ASSERT_TRUE(asked_class.by_rule.cell);
    ASSERT_EQ(asked_class.by_rule.cell->kind, PrintedCell::Kind::Noncombustible)
        << asked_class.by_rule.cell->text;
    EXPECT_FALSE(isAskedOf(made, "k-c-material"));
    EXPECT_TRUE(isAskedOf(made, "k-one-person"));
    EXPECT_FALSE(isAskedOf(made, "k-construction"));
}

// 72.05-25(b)(8) against (b)(9), 116.435(c)(9) against (c)(6): us-second-reading, h-weather.
TEST(UsDoor, ToTheOpenDeckFromAStairIsTheInspectors) {
    for (const auto& [made, prefix] : {std::pair{of(usA<H, outdoors>), std::string("h-")},
                                       {of(usA<K, outdoors>), std::string("k-")}})
        for (const std::string row : {"self-closing", "no-hook"}) {
            const std::string id = prefix + row;
            EXPECT_EQ(whenNo(made, id.c_str()), Verdict::Judge) << id;
            DoorEvidence evidence = said(made, id.c_str(), Answer::No);
            answer(evidence, prefix + "exterior-stair", Answer::No);
            EXPECT_EQ(rowOf(vesselOf(made), made, id.c_str(), evidence).verdict,
                      Verdict::NotApplicable)
                << "no stair, no duty";
        }
}

// 72.05-25(a)(2): public spaces, stairway enclosures, corridors and the like; 116.435(b)(3).
TEST(UsDoor, OpensTheWayPeopleEscapeWhereTheTextSaysSo) {
    EXPECT_EQ(whenNo(of(usA<H, stair>), "h-escape-way"), Verdict::Unsatisfactory);
    EXPECT_EQ(whenNo(of(usA<K, stair>), "k-escape-way"), Verdict::Unsatisfactory);
    for (const Place place : {Place::Galley, Place::SpecialCategory, Place::Machinery}) {
        Site made = of(usA<H>);
        made.boundary.place = place;
        EXPECT_FALSE(isAskedOf(made, "h-escape-way"));
    }
    EXPECT_EQ(whenNo(of(usA<H, Place::Cabin>), "h-escape-way"), Verdict::Judge)
        << "no stateroom exemption is printed, nor is it said that they are meant";
    EXPECT_FALSE(isAskedOf(of(usA<K, Place::Cabin>), "k-escape-way")) << "staterooms are exempt";
    EXPECT_EQ(whenNo(of(usA<H, outdoors>), "h-escape-way"), Verdict::Judge);
}

// A latch must be there: 72.05-25(b)(3), (c)(4); 116.435(c)(3), (d)(2).
TEST(UsDoor, ThatDoesNotLatchFails) {
    for (const Site& made : {of(usA<H>), of(usB<H>), of(usA<K>), of(usB<K>)})
        EXPECT_EQ(whenNo(made, "latches"), Verdict::Unsatisfactory);
    EXPECT_EQ(whenNo(of(usA<H, zone, both_ways>), "latches"), Verdict::Judge)
        << "double swing may have its latch idle";
    Particulars undated = vesselOf(of(usA<H>));
    undated.keel_laid.reset();
    EXPECT_EQ(whenNo(undated, of(usA<H>), "latches"), Verdict::Judge);
}

// 5 to 10 s of 116.435(c)(7)(i), not the 10 to 40 s of SOLAS II-2/9.4.1.1.5.2.
TEST(SubchapterK, ADoorInADeckHasOneBandAlone) {
    const Site made = of(deckDoor);
    EXPECT_EQ(rowOf(vesselOf(made), made, "hinged-time", {}).reason.kind, ReasonKind::NotAsked);
    EXPECT_EQ(rowOf(vesselOf(made), made, "k-horizontal", {}).verdict, Verdict::Untested);
    Site upright = of(usA<K, stair>);
    EXPECT_EQ(rowOf(vesselOf(upright), upright, "hinged-time", {}).verdict, Verdict::Advice);
}

// 116.435(c)(3)-(5): what (c)(9) leaves open it leaves open of hardwood alone.
TEST(SubchapterK, AWeatherDoorThatIsNotOfHardwoodFails) {
    const Site made = of(usA<K, outdoors>);
    DoorEvidence evidence = said(made, "k-has-latch", Answer::No);
    const auto verdict = [&] {
        return rowOf(vesselOf(made), made, "k-has-latch", evidence).verdict;
    };
    EXPECT_EQ(verdict(), Verdict::Judge);
    answer(evidence, "k-hardwood", Answer::Yes);
    EXPECT_EQ(verdict(), Verdict::Judge);
    answer(evidence, "k-hardwood", Answer::No);
    EXPECT_EQ(verdict(), Verdict::Unsatisfactory);
}

// 72.05-25(b)(9)(ii), (iii): release and leaves are sentences of the same paragraph.
TEST(SubchapterH, ADoorOffAStairwayIsAskedForReleaseAndLeavesToo) {
    Site made = of(usA<H, outdoors, two_leaves>);
    made.door.normally = NormalPosition::Open;
    for (const char* id : {"h-release", "h-leaves"}) {
        EXPECT_EQ(whenNo(made, id), Verdict::Judge) << id;
        DoorEvidence evidence = said(made, id, Answer::No);
        answer(evidence, "h-hardwood", Answer::No);
        answer(evidence, "h-exterior-stair", Answer::Yes);
        EXPECT_EQ(rowOf(vesselOf(made), made, id, evidence).verdict, Verdict::Unsatisfactory) << id;
    }
}

// 116.435(c)(6)(ii), (c)(7)(ii): "if fitted".
TEST(SubchapterK, AsksNoReleaseWhereNothingHoldsTheDoorOpen) {
    Site upright = of(usA<K, stair>);
    Site deck = of(deckDoor);
    for (Site* made : {&upright, &deck}) {
        made->door.hold_back = false;
        made->door.normally = NormalPosition::Open;
    }
    EXPECT_FALSE(isAskedOf(upright, "k-release"));
    EXPECT_FALSE(isAskedOf(deck, "k-horizontal-release"));
    upright.door.hold_back = Said();
    EXPECT_TRUE(isAskedOf(upright, "k-release"));
}

// 72.10-20(a): locks are allowed, save on doors to either of the two required escapes.
TEST(SubchapterH, AsksForLocksOnWaysOfEscapeAlone) {
    Site made = of(usB<H>);
    made.door.escape_route = true;
    EXPECT_TRUE(isAskedOf(made, "h-locks"));
    made.door.escape_route = false;
    EXPECT_FALSE(isAskedOf(made, "h-locks"));
}
