// The class of a division from its two spaces. Published worked cases are named beside each check.
#include <gmock/gmock.h>

#include "core/division/division_phrases.h"
#include "core/division/required_class.h"
#include "tests/core/given.h"

using namespace latchround;
using testing::Contains;
using testing::Field;
using testing::HasSubstr;
using testing::IsSupersetOf;

namespace {

struct Ask {
    ShipKind ship;
    DivisionKind division = DivisionKind::Bulkhead;
    std::optional<SpacePair> spaces{};
    bool sprinklers = false;
    const char* built = "2015-03-01";
    bool special_category = false;
};

DivisionQuestion question(const Ask& ask) {
    return {ask.ship,
            ask.division,
            ask.spaces,
            ask.sprinklers,
            calendarDateFrom(ask.built),
            ask.special_category};
}

RequiredClass answer(const Ask& ask) {
    return requiredClass(given::catalogue().divisions, question(ask));
}

std::optional<FireClass> of(const Ask& ask) {
    return answer(ask).required;
}

constexpr auto over = ShipKind::PassengerOver36;
constexpr auto few = ShipKind::Passenger36OrFewer;
constexpr auto zone = DivisionKind::ZoneBulkhead;
constexpr auto step = DivisionKind::ZoneStep;
constexpr auto deck = DivisionKind::Deck;
constexpr auto bulkhead = DivisionKind::Bulkhead;

} // namespace

// SOLAS II-2 table 9.5, 2-6, 3-9 and 2-4; 9.2.3.4.1 (stair through two decks).
TEST(RequiredClassOf, CargoShipBulkheads) {
    EXPECT_EQ(of({ShipKind::Cargo, bulkhead, SpacePair{2, 6}}), FireClass::A60);
    EXPECT_EQ(of({ShipKind::Cargo, bulkhead, SpacePair{3, 9}}), FireClass::A0);
    const Ask stair{ShipKind::Cargo, bulkhead, SpacePair{2, 4}};
    EXPECT_EQ(of(stair), FireClass::A0) << "the stricter of two";
    EXPECT_THAT(notesOf(answer(stair), question(stair)),
                Contains(Field(&Phrase::text, HasSubstr("through only one deck needs B-0"))));
}

// SOLAS II-2 table 9.1, 3-7 and 2-12; table 9.2, 12-7 and 7-12.
TEST(RequiredClassOf, PassengerShipOver36) {
    EXPECT_EQ(of({over, bulkhead, SpacePair{3, 7}}), FireClass::B15);
    EXPECT_EQ(of({over, bulkhead, SpacePair{7, 3}}), FireClass::B15)
        << "a bulkhead has no direction";
    EXPECT_EQ(of({over, bulkhead, SpacePair{2, 12}}), FireClass::A30);
    EXPECT_EQ(of({over, deck, SpacePair{12, 7}}), FireClass::A60) << "engine room below a cabin";
    EXPECT_EQ(of({over, deck, SpacePair{7, 12}}), FireClass::A0) << "and turned round";
}

// SOLAS II-2 table 9.3, 2-9; 9.2.2.4.2.3, .4.
TEST(RequiredClassOf, SprinklersChooseTheLowerValue) {
    EXPECT_EQ(of({few, bulkhead, SpacePair{2, 9}, false}), FireClass::A15);
    EXPECT_EQ(of({few, bulkhead, SpacePair{2, 9}, true}), FireClass::A0);
    EXPECT_EQ(of({few, deck, SpacePair{9, 2}, false}), FireClass::A30);
    EXPECT_EQ(of({few, deck, SpacePair{9, 2}, true}), FireClass::A0);
    EXPECT_EQ(of({few, bulkhead, SpacePair{2, 4}, true}), FireClass::A0)
        << "the two values of this cell are not about sprinklers";
}

// SOLAS II-2/9.2.2.1.1.1.
TEST(RequiredClassOf, ZoneBulkheadOver36) {
    EXPECT_EQ(of({over, zone, SpacePair{3, 3}}), FireClass::A60);
    EXPECT_EQ(of({over, zone}), FireClass::A60) << "without spaces";
    for (const int eased : {5, 9, 10}) {
        EXPECT_EQ(of({over, zone, SpacePair{3, eased}}), FireClass::A0) << eased;
        EXPECT_EQ(of({over, zone, SpacePair{eased, 12}}), FireClass::A0) << eased;
    }
    EXPECT_EQ(of({over, step, SpacePair{12, 7}}), FireClass::A60);
    EXPECT_EQ(citeOf(answer({over, zone, SpacePair{3, 10}})), "SOLAS II-2/9.2.2.1.1.1");
}

// SOLAS II-2/9.2.2.1.1.2, notes e and * of tables 9.3 and 9.4.
TEST(RequiredClassOf, ZoneBulkhead36OrFewer) {
    EXPECT_EQ(of({few, zone, SpacePair{2, 3}}), FireClass::A0) << "B-0 read as A-0";
    EXPECT_EQ(of({few, zone, SpacePair{3, 3}}), FireClass::A0) << "C read as A-0";
    EXPECT_EQ(of({few, zone, SpacePair{1, 3}}), FireClass::A60) << "the table's own insulation";
    EXPECT_EQ(of({few, step, SpacePair{3, 3}}), FireClass::A0) << "* read as A-0";
    EXPECT_EQ(answer({few, step, SpacePair{8, 8}}).kind, RequiredClass::Kind::Steel)
        << "not for categories 8 and 10";
    EXPECT_THAT(citeOf(answer({few, zone, SpacePair{2, 3}})), HasSubstr("9.2.2.1.1.2"));
}

// SOLAS II-2/9.6.1; table 9.3 for the smaller ship.
TEST(RequiredClassOf, SpecialCategorySpaces) {
    const auto special = [](ShipKind ship, SpacePair spaces) {
        return Ask{ship, bulkhead, spaces, false, "2015-03-01", true};
    };
    EXPECT_EQ(of(special(over, {2, 11})), FireClass::A60);
    EXPECT_EQ(of(special(over, {5, 11})), FireClass::A0);
    EXPECT_EQ(citeOf(answer(special(over, {2, 11}))), "SOLAS II-2/9.6.1 (to 31 Dec 2025)");
    const Ask in_a_ship = special(over, {2, 11});
    EXPECT_THAT(notesOf(answer(in_a_ship), question(in_a_ship)),
                Contains(division::special_category_renumbered()));
    EXPECT_EQ(of(special(few, {2, 11})), FireClass::A30);
}

TEST(RequiredClassOf, RoRoCellsHangOnTheDayOfBuilding) {
    EXPECT_EQ(of({few, bulkhead, SpacePair{2, 11}, false, "2014-06-30"}), FireClass::A15);
    EXPECT_EQ(of({few, bulkhead, SpacePair{2, 11}, false, "2014-07-01"}), FireClass::A30);
    const Ask unknown{few, bulkhead, SpacePair{2, 11}, false, ""};
    EXPECT_EQ(of(unknown), FireClass::A30);
    EXPECT_THAT(notesOf(answer(unknown), question(unknown)),
                Contains(division::value_since_2014()));
    const Ask cargo{ShipKind::Cargo, bulkhead, SpacePair{11, 11}, false, "2010-01-01"};
    EXPECT_EQ(answer(cargo).kind, RequiredClass::Kind::Steel);
    EXPECT_THAT(notesOf(answer(cargo), question(cargo)),
                Contains(Field(&Phrase::text, HasSubstr("reasonably gastight"))));
}

TEST(RequiredClassOf, ShipBeforeJuly2002KeepsTheTablesOfItsDay) {
    const Ask older{over, bulkhead, SpacePair{3, 7}, false, "2002-06-30"};
    EXPECT_TRUE(answer(older).older_tables);
    EXPECT_THAT(notesOf(answer(older), question(older)), Contains(division::older_tables()));
    EXPECT_FALSE(answer({over, bulkhead, SpacePair{3, 7}, false, "2002-07-01"}).older_tables);
}

TEST(RequiredClassOf, BlankCellSaysWhomToAsk) {
    const Ask blank{over, bulkhead, SpacePair{4, 4}};
    EXPECT_EQ(answer(blank).kind, RequiredClass::Kind::NotPrinted);
    EXPECT_EQ(of(blank), std::nullopt);
    EXPECT_THAT(notesOf(answer(blank), question(blank)), Contains(division::no_value_printed()));
}

// 46 CFR 116.415(d)(1), tables (b) and (c); 116.435(c)(1)-(2).
TEST(RequiredClassOf, SubchapterK) {
    EXPECT_EQ(of({ShipKind::UsK, bulkhead, SpacePair{1, 10}}), FireClass::A60);
    EXPECT_EQ(of({ShipKind::UsK, zone, SpacePair{3, 3}}), FireClass::A30) << "the greater of A-30";
    EXPECT_EQ(of({ShipKind::UsK, zone, SpacePair{6, 9}}), FireClass::A60) << "and the table";
    for (const int eased : {8, 12, 13})
        EXPECT_EQ(of({ShipKind::UsK, zone, SpacePair{3, eased}}), FireClass::A0) << eased;
    EXPECT_EQ(of({ShipKind::UsK, step, SpacePair{3, 5}}), FireClass::A60);
    const Ask a_step{ShipKind::UsK, step, SpacePair{3, 5}};
    EXPECT_THAT(notesOf(answer(a_step), question(a_step)),
                IsSupersetOf(
                    {division::zone_step_size_subchapter_k(), division::zone_size_subchapter_k()}));
    EXPECT_EQ(of({ShipKind::UsK, zone}), std::nullopt) << "the table may ask for more than A-30";
    EXPECT_EQ(of({ShipKind::UsK, deck, SpacePair{10, 3}}), FireClass::A60);
    EXPECT_EQ(of({ShipKind::UsK, deck, SpacePair{3, 10}}), FireClass::A0);
}

// 46 CFR 116.415(d)(2): the greater of A-30 and table (c).
TEST(RequiredClassOf, VehicleDeckOfSubchapterK) {
    const auto vehicle_deck = [](std::optional<SpacePair> spaces) {
        return Ask{ShipKind::UsK, deck, spaces, false, "2015-03-01", true};
    };
    EXPECT_EQ(of(vehicle_deck(SpacePair{3, 10})), FireClass::A30) << "the table has A-0";
    EXPECT_EQ(of(vehicle_deck(SpacePair{10, 3})), FireClass::A60) << "the table has A-60";
    EXPECT_EQ(citeOf(answer(vehicle_deck(SpacePair{3, 10}))), "46 CFR 116.415(d)(2)");
    EXPECT_EQ(of(vehicle_deck(std::nullopt)), std::nullopt) << "the table may ask for more";
}

// 46 CFR 72.05-10(d) to (g).
TEST(RequiredClassOf, SubchapterH) {
    const Ask a_zone{ShipKind::UsH, zone, SpacePair{1, 5}};
    EXPECT_EQ(of(a_zone), FireClass::A30);
    EXPECT_THAT(notesOf(answer(a_zone), question(a_zone)),
                Contains(division::zone_size_subchapter_h()));
    EXPECT_EQ(of({ShipKind::UsH, bulkhead, SpacePair{1, 5}}), FireClass::A15);
    EXPECT_EQ(of({ShipKind::UsH, step, SpacePair{10, 5}}), FireClass::A30);
    EXPECT_EQ(of({ShipKind::UsH, deck, SpacePair{10, 5}}), FireClass::A15);
    EXPECT_EQ(of({ShipKind::UsH, deck, SpacePair{5, 10}}), FireClass::A0);
}

TEST(RequiredClassOf, CargoShipHasNoZones) {
    EXPECT_EQ(answer({ShipKind::Cargo, zone, SpacePair{2, 2}}).kind, RequiredClass::Kind::NotKnown);
}

// 46 CFR 72.05-25(b)(1)-(2), 116.435(c)(1)-(2); SOLAS II-2/9.4.1.1.2.
TEST(DoorClass, USDoorMayBeWeakerThanItsBulkhead) {
    for (const ShipKind ship : {ShipKind::UsH, ShipKind::UsK}) {
        for (const FireClass strong : {FireClass::A60, FireClass::A30, FireClass::A15})
            EXPECT_EQ(doorClassIn(ship, strong), FireClass::A15);
        EXPECT_EQ(doorClassIn(ship, FireClass::A0), FireClass::A0);
        EXPECT_EQ(doorClassIn(ship, FireClass::B15), FireClass::B15);
    }
    EXPECT_EQ(doorClassIn(over, FireClass::A60), FireClass::A60);
}
