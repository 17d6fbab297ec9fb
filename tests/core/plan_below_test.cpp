// An approved plan that shows a boundary without an A class, where a rule or the tables ask for
// one: SOLAS II-2/9.2.2.1.1, 9.6.1; 46 CFR 72.05-10(d), 116.415(d).
#include "core/grading/reason_phrases.h"
#include "tests/core/us_asked.h"

using namespace latchround;
using namespace latchround::given;

namespace {

using Spaces = std::optional<std::pair<int, int>>;

Site inAPlan(Regime regime, FireClass plan, Place place, Spaces spaces = {}) {
    Site made = site(regime, DoorKind::SingleLeaf);
    made.boundary.place = place;
    made.boundary.spaces = spaces;
    made.boundary.required = made.door.fire_class = plan;
    return made;
}

RowGrade rating(const Particulars& vessel, const Site& made, const char* id = "rating") {
    DoorEvidence evidence;
    evidence.door = made.door.number;
    return rowOf(vessel, made, id, evidence);
}

Particulars of36() {
    Particulars vessel = solasVessel();
    vessel.passengers = 36;
    return vessel;
}

bool isDoubted(const RowGrade& row) {
    return row.verdict == Verdict::Judge && row.reason.kind == ReasonKind::PlanBelowRule;
}

} // namespace

// 46 CFR 116.415(d)(1)(ii): a zone bulkhead of subchapter K is at least A-0.
TEST(UsZoneBulkhead, WithALowerPlanIsAskedAsOfAnAClassAndItsPlanIsTheInspectors) {
    const std::array<const char*, 5> rows[] = {
        {"h-rating", "h-self-closing", "h-no-hook", "h-release", "h-number"},
        {"k-rating", "k-self-closing", "k-no-hook", "k-release", "k-no-louver"}};
    for (const auto& [regime, ids] : {std::pair{H, rows[0]}, {K, rows[1]}})
        for (const FireClass plan : {FireClass::B15, FireClass::C})
            for (const Spaces& spaces : {Spaces(), Spaces({2, 2})}) {
                const Site made = inAPlan(regime, plan, zone, spaces);
                EXPECT_TRUE(isDoubted(rating(vesselOf(made), made, ids[0]))) << ids[0];
                for (const char* id : {ids[1], ids[2], ids[3], ids[4]})
                    EXPECT_EQ(whenNo(made, id), Verdict::Unsatisfactory) << id;
            }
    Site leaves = inAPlan(H, FireClass::B15, zone);
    leaves.door.kind = two_leaves;
    EXPECT_EQ(whenNo(leaves, "h-leaves"), Verdict::Unsatisfactory);
    EXPECT_EQ(rating(vesselOf(leaves), leaves, "h-rating").reason.text.parts.back(),
              reason::boundary_below_a("B-15", "46 CFR 72.05-10(d)"));
}

// Table 72.05-10(d) prints C between spaces of types 4 and 13, and an A class in every other cell.
TEST(UsZoneBulkhead, OfSubchapterHMayBeOfClassCWhereItsTableSaysSo) {
    for (const auto& spaces : {std::pair(4, 4), {4, 13}, {13, 4}, {13, 13}}) {
        const Site made = inAPlan(H, FireClass::C, zone, spaces);
        EXPECT_FALSE(isAskedOf(made, "h-rating"));
        EXPECT_FALSE(isAskedOf(made, "h-self-closing"));
        EXPECT_TRUE(isAskedOf(made, "h-c-material"));
        EXPECT_TRUE(isAskedOf(inAPlan(K, FireClass::C, zone, spaces), "k-self-closing"));
    }
    EXPECT_TRUE(isAskedOf(inAPlan(H, FireClass::C, zone, std::pair(4, 5)), "h-self-closing"));
}

// 46 CFR 116.415(d)(1): A-0 beside spaces of types 8, 12 and 13, whatever table (b) prints there.
TEST(UsZoneBulkhead, BesideASpaceWithACPrimeCellIsOfAnAClass) {
    Site made = inAPlan(K, FireClass::A0, zone, std::pair(4, 12));
    made.boundary.required.reset();
    EXPECT_EQ(whenNo(made, "k-self-closing"), Verdict::Unsatisfactory);
    made.boundary.place = Place::Other;
    EXPECT_FALSE(isAskedOf(made, "k-construction")) << "C' by table (b)";
}

// 46 CFR 116.415(d)(2): decks that bound vehicle decks, the greater of A-30 and table (c).
TEST(UsVehicleDeck, WithALowerPlanIsTheInspectors) {
    Site made = inAPlan(K, FireClass::B15, Place::SpecialCategory);
    made.boundary.division = Division::Deck;
    EXPECT_TRUE(isDoubted(rating(vesselOf(made), made, "k-rating")));
}

// 46 CFR tables 116.415(b) and 72.05-10(e): stairs and galleys. The plan comes first; it says so.
TEST(UsBoundary, WithAPlanBelowItsTableSaysSo) {
    for (const auto& [regime, id, spaces, cited] :
         {std::tuple{K, "k-rating", std::pair(2, 3), "46 CFR table 116.415(b), 2-3"},
          {H, "h-rating", std::pair(2, 3), "46 CFR table 72.05-10(e), 2-3"}}) {
        Site made = inAPlan(regime, FireClass::B15, stair, spaces);
        const RowGrade row = rating(vesselOf(made), made, id);
        EXPECT_EQ(row.verdict, Verdict::Satisfactory) << id;
        EXPECT_EQ(row.reason.text.parts.back(), reason::boundary_by_plan("B-15", "A-0", cited));
        made.door.fire_class = FireClass::C;
        EXPECT_TRUE(isDoubted(rating(vesselOf(made), made, id)))
            << "no class is printed for the door of a lower boundary";
        made.boundary.spaces.reset();
        EXPECT_TRUE(isDoubted(rating(vesselOf(made), made, id)))
            << "an A class beside a stairway, whatever lies there";
        made.boundary.place = Place::Galley;
        EXPECT_TRUE(isAskedOf(made, id)) << "and beside a galley";
        made.boundary.place = Place::Cabin;
        EXPECT_FALSE(isAskedOf(made, id)) << "nothing says that a table asks for more";
    }
}

// SOLAS II-2/9.2.2.1.1.2: A class, whatever the spaces; no more is known without them.
TEST(ZoneBulkhead, Of36PassengersOrFewerIsOfAnAClassWithoutItsSpacesToo) {
    for (const FireClass plan : {FireClass::B15, FireClass::C})
        for (const Spaces& spaces : {Spaces(), Spaces({3, 3})}) {
            Site made = inAPlan(Regime::SolasPassenger, plan, zone, spaces);
            EXPECT_TRUE(isDoubted(rating(of36(), made)));
            EXPECT_EQ(whenNo(of36(), made, "one-person"), Verdict::Unsatisfactory);
            Particulars more = of36();
            more.passengers = 37;
            EXPECT_TRUE(isDoubted(rating(more, made)));
        }
    Site a_class = inAPlan(Regime::SolasPassenger, FireClass::A0, zone);
    EXPECT_EQ(rating(of36(), a_class).verdict, Verdict::Satisfactory);
}

// Note * of table 9.4: not A class above or below categories 8 and 10.
TEST(ZoneStep, Of36PassengersOrFewerMayBeOfSteelBesideOpenDecks) {
    Site made = inAPlan(Regime::SolasPassenger, FireClass::B15, zone, std::pair(8, 8));
    made.boundary.division = Division::Deck;
    EXPECT_EQ(rating(of36(), made).verdict, Verdict::Satisfactory);
    made.boundary.spaces = std::pair(3, 3);
    EXPECT_TRUE(isDoubted(rating(of36(), made)));
    made.boundary.spaces.reset();
    EXPECT_TRUE(isDoubted(rating(of36(), made)));
}

// SOLAS II-2/9.6.1, never less, aboard ships of more than 36 passengers.
TEST(SpecialCategoryBoundary, WithALowerPlanIsTheInspectors) {
    Site made = inAPlan(Regime::SolasPassenger, FireClass::B15, Place::SpecialCategory);
    EXPECT_TRUE(isDoubted(rating(solasVessel(), made)));
    made.boundary.required = made.door.fire_class = FireClass::A0;
    EXPECT_EQ(rating(solasVessel(), made).verdict, Verdict::Satisfactory);
}

// SOLAS II-2/9.4.1.2.1: a door too low even for the plan fails by either.
TEST(ZoneBulkhead, WithADoorBelowItsLowerPlanFails) {
    Site made = inAPlan(Regime::SolasPassenger, FireClass::B15, zone);
    made.door.fire_class = FireClass::C;
    EXPECT_EQ(rating(solasVessel(), made).verdict, Verdict::Unsatisfactory);
    EXPECT_EQ(rating(of36(), made).verdict, Verdict::Unsatisfactory);
}

// The rules of the day of a ship before 1 July 2002 were not read.
TEST(ZoneBulkhead, OfAnOlderShipIsOfThePlansClassAndTheInspectors) {
    Site made = inAPlan(Regime::SolasPassenger, FireClass::B15, zone);
    Particulars older = solasVessel();
    older.keel_laid = calendarDateFrom("2002-06-30");
    EXPECT_TRUE(isDoubted(rating(older, made)));
    EXPECT_EQ(whenNo(older, made, "one-person"), Verdict::NotApplicable);
}
