// Doors of machinery spaces of category A wherever they are, and of escape trunks: SOLAS
// II-2/9.5.2.5, 13.4.1.1.1.
#include <gtest/gtest.h>

#include "core/grading/grade.h"
#include "core/requirement/category_a.h"
#include "tests/core/given.h"

using namespace latchround;

namespace {

using Spaces = std::optional<std::pair<int, int>>;

struct Ask {
    Place place = Place::Machinery;
    Spaces spaces{};
    int passengers = 36;
    Regime regime = Regime::SolasPassenger;
};

Particulars vesselOf(const Ask& ask) {
    Particulars vessel = given::solasVessel();
    vessel.regime = ask.regime;
    vessel.passengers = ask.passengers;
    vessel.keel_laid = calendarDateFrom("2019-01-01");
    return vessel;
}

CategoryA category(const Ask& ask) {
    const Particulars vessel = vesselOf(ask);
    return boundsCategoryA(ask.place, ask.spaces, &vessel);
}

Verdict whenNo(const char* id, const Ask& ask, const Door& door = given::hingedDoor()) {
    Boundary boundary = given::zoneBulkhead();
    boundary.place = ask.place;
    boundary.spaces = ask.spaces;
    DoorEvidence evidence;
    evidence.door = door.number;
    given::answer(evidence, "found-locked", Answer::Yes);
    given::answer(evidence, id, Answer::No);
    return findRow(grade(vesselOf(ask), door, &boundary, evidence, given::catalogue()), id)
        ->verdict;
}

Door trunkDoor() {
    Door door = given::hingedDoor();
    door.escape_trunk = true;
    return door;
}

constexpr std::array machinery_rows{"machinery-closes", "machinery-release", "machinery-controls"};

} // namespace

// Category 6 of tables 9.3 and 9.4: engine casings, shaft tunnels, zone bulkheads.
TEST(CategoryAOf, ElevenIsShownByTheSpacesWhereverTheyAre) {
    for (const auto& place : placeWords) {
        EXPECT_EQ(category({place.value, std::pair(6, 3)}), CategoryA::Yes) << place.word;
        EXPECT_EQ(category({place.value, std::pair(10, 6)}), CategoryA::Yes) << place.word;
        EXPECT_EQ(category({place.value, std::pair(7, 9)}), CategoryA::No) << place.word;
        for (const char* id : machinery_rows)
            EXPECT_EQ(whenNo(id, {place.value, std::pair(6, 10)}), Verdict::Unsatisfactory)
                << id << " " << place.word;
    }
}

// Category 12 of tables 9.1 and 9.2: machinery spaces and main galleys.
TEST(CategoryAOf, FourteenIsShownAtAMachinerySpaceAlone) {
    for (const Place place : {Place::Other, Place::Exterior, Place::Stairway, Place::ZoneBulkhead,
                              Place::Cabin, Place::SpecialCategory}) {
        EXPECT_EQ(category({place, std::pair(12, 3), 37}), CategoryA::MayBe);
        EXPECT_EQ(category({place, std::pair(3, 11), 37}), CategoryA::No);
        EXPECT_EQ(category({place, std::pair(6, 3), 37}), CategoryA::No) << "of fourteen a cabin";
        for (const char* id : machinery_rows) {
            EXPECT_EQ(whenNo(id, {place, std::pair(5, 12), 37}), Verdict::Judge) << id;
            EXPECT_EQ(whenNo(id, {place, std::pair(5, 11), 37}), Verdict::NotApplicable) << id;
        }
    }
    EXPECT_EQ(category({Place::Machinery, std::pair(12, 3), 37}), CategoryA::Yes);
    EXPECT_EQ(category({Place::Galley, std::pair(12, 3), 37}), CategoryA::No) << "the galley";
    EXPECT_EQ(category({Place::Galley, std::pair(12, 12), 37}), CategoryA::MayBe);
}

TEST(CategoryAOf, NothingIsSaidWithoutSpaces) {
    EXPECT_EQ(category({Place::Machinery}), CategoryA::NotSaid);
    EXPECT_EQ(category({Place::Other}), CategoryA::No);
    EXPECT_EQ(whenNo("machinery-closes", {Place::Machinery}), Verdict::Unsatisfactory);
}

// SOR/2017-14, s. 102(3): of 37 to 100 passengers and fewer than 13 berths it counts as one of 36
// or fewer, and tables 9.3 and 9.4 number its spaces. Of day boats no tables were read.
TEST(CategoryAOf, ACanadianShipMayBeNumberedByEither) {
    for (const Regime regime : {Regime::Canada, Regime::CanadaDay}) {
        EXPECT_EQ(category({Place::Machinery, std::pair(6, 2), 80, regime}), CategoryA::MayBe);
        EXPECT_EQ(category({Place::Machinery, std::pair(7, 2), 80, regime}), CategoryA::No);
        EXPECT_EQ(category({Place::Machinery, std::pair(12, 2), 80, regime}), CategoryA::Yes)
            << "there is no 12 of eleven";
        EXPECT_EQ(category({Place::Machinery, std::pair(6, 13), 80, regime}), CategoryA::No);
        EXPECT_EQ(category({Place::Machinery, std::pair(6, 2), 36, regime}), CategoryA::Yes);
        EXPECT_EQ(whenNo("machinery-closes", {Place::Machinery, std::pair(6, 2), 80, regime}),
                  Verdict::Judge);
    }
    EXPECT_EQ(category({Place::Machinery, std::pair(6, 2), 80, Regime::CanadaConvention}),
              CategoryA::No);
    EXPECT_EQ(
        whenNo("ca-machinery-gastight", {Place::Machinery, std::pair(6, 2), 80, Regime::CanadaDay}),
        Verdict::Judge);
    EXPECT_EQ(
        whenNo("ca-machinery-gastight", {Place::Other, std::pair(6, 2), 36, Regime::CanadaDay}),
        Verdict::Unsatisfactory);
}

// SOLAS II-2/9.5.2.5 excepts power-operated watertight doors alone.
TEST(MachineryDoor, ThatIsLockedMustStillClose) {
    Door locked = given::hingedDoor();
    locked.normally = NormalPosition::Locked;
    EXPECT_EQ(whenNo("machinery-closes", {Place::ZoneBulkhead, std::pair(6, 3)}, locked),
              Verdict::Unsatisfactory);
    EXPECT_EQ(whenNo("self-closing", {Place::ZoneBulkhead, std::pair(6, 3)}, locked),
              Verdict::NotApplicable);
}

// SOLAS II-2/13.4.1.1.1: the doors of the enclosure close by themselves.
TEST(EscapeTrunk, DoorMustCloseByItselfWhereverItIs) {
    for (const auto& place : placeWords) {
        EXPECT_EQ(whenNo("trunk-closes", {place.value, std::pair(6, 3)}, trunkDoor()),
                  Verdict::Unsatisfactory)
            << place.word;
        for (const Ask& ask : {Ask{place.value, {}}, Ask{place.value, std::pair(5, 3)},
                               Ask{place.value, {}, 100}, Ask{place.value, std::pair(7, 3), 100}})
            EXPECT_EQ(whenNo("trunk-closes", ask, trunkDoor()), Verdict::Judge)
                << "not shown to be of category A: " << place.word;
        EXPECT_EQ(whenNo("trunk-closes", {place.value, std::pair(6, 3)}), Verdict::NotApplicable)
            << "no trunk: " << place.word;
    }
    EXPECT_EQ(whenNo("trunk-closes", {Place::Machinery, std::pair(12, 3), 100}, trunkDoor()),
              Verdict::Unsatisfactory);
    EXPECT_EQ(whenNo("trunk-closes", {Place::Exterior, std::pair(12, 5), 100}, trunkDoor()),
              Verdict::Judge);
}

TEST(EscapeTrunk, DoorIsShownToCloseByAnyRun) {
    Boundary boundary = given::zoneBulkhead();
    boundary.place = Place::Other;
    const Door door = trunkDoor();
    DoorEvidence evidence;
    evidence.door = door.number;
    const auto verdict = [&] {
        return findRow(grade(given::solasVessel(), door, &boundary, evidence, given::catalogue()),
                       "trunk-closes")
            ->verdict;
    };
    EXPECT_EQ(verdict(), Verdict::Untested);
    evidence.runs = {given::run(Release::LetGo, {{MarkKind::LeafMoves, 0}, {MarkKind::Shut, 12}})};
    EXPECT_EQ(verdict(), Verdict::Satisfactory);
}
