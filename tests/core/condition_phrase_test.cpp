// What the rule book says of conditions and dates: every field of every row has its words.
#include <set>
#include <string>

#include <gtest/gtest.h>

#include "core/requirement/applicability_phrases.h"
#include "core/requirement/condition_phrase.h"
#include "tests/core/given.h"

using namespace latchround;

namespace {

/// A condition for each field, each with that field alone.
std::vector<DoorCondition> conditionsOfOneField() {
    std::vector<DoorCondition> all;
    const auto with = [&](auto set) {
        DoorCondition one;
        set(one);
        all.push_back(one);
    };
    for (const auto& regime : regimeWords)
        with([&](DoorCondition& c) { c.regimes = {regime.value}; });
    for (const auto& kind : doorKindWords)
        with([&](DoorCondition& c) { c.kinds = {kind.value}; });
    for (const auto& place : placeWords)
        with([&](DoorCondition& c) { c.places = {place.value}; });
    for (const auto& kept : normalPositionWords)
        with([&](DoorCondition& c) { c.normally = {kept.value}; });
    with([](DoorCondition& c) { c.family = ClassFamily::A; });
    with([](DoorCondition& c) { c.family = ClassFamily::B; });
    for (const auto& family : boundaryFamilyWords)
        if (family.value != BoundaryFamily::Any)
            with([&](DoorCondition& c) { c.boundary_class = family.value; });
    for (auto field :
         {&DoorCondition::listed, &DoorCondition::plan_below_tables, &DoorCondition::power_operated,
          &DoorCondition::remote_release, &DoorCondition::hold_back,
          &DoorCondition::designed_to_reopen, &DoorCondition::hose_port,
          &DoorCondition::escape_route, &DoorCondition::sill_in_frame, &DoorCondition::latch,
          &DoorCondition::watertight, &DoorCondition::weathertight, &DoorCondition::escape_trunk,
          &DoorCondition::special_category, &DoorCondition::faces_embarkation,
          &DoorCondition::category_a, &DoorCondition::over_36, &DoorCondition::over_600})
        for (const bool wanted : {true, false})
            with([&](DoorCondition& c) { c.*field = wanted; });
    with([](DoorCondition& c) { c.locked = false; });
    with([](DoorCondition& c) { c.division = Division::Deck; });
    with([](DoorCondition& c) { c.division = Division::Bulkhead; });
    with([](DoorCondition& c) { c.installed_from = calendarDateFrom("2010-07-01"); });
    return all;
}

std::string textOf(const Phrase& phrase) {
    std::string text = phrase.text + std::string(phrase.code);
    for (const Phrase& part : phrase.parts)
        text += "|" + textOf(part);
    return text;
}

Requirement dated(const char* from, const char* before, OtherDates others) {
    Requirement row;
    row.keel_from = from ? calendarDateFrom(from) : std::nullopt;
    row.keel_before = before ? calendarDateFrom(before) : std::nullopt;
    row.other_dates = others;
    return row;
}

} // namespace

TEST(ConditionPhrase, SaysEachFieldAndEachOtherwise) {
    std::set<std::string> said;
    for (const DoorCondition& condition : conditionsOfOneField()) {
        const Phrase phrase = conditionPhrase(condition);
        EXPECT_FALSE(phrase.empty());
        EXPECT_NE(phrase, applies::every_door()) << "a field that is not said";
        EXPECT_TRUE(said.insert(textOf(phrase)).second) << textOf(phrase) << " twice";
    }
}

TEST(ConditionPhrase, OfNoFieldIsEveryDoor) {
    EXPECT_EQ(conditionPhrase({}), applies::every_door());
    EXPECT_TRUE(conditionsPhrase({}).empty());
}

TEST(ConditionPhrase, SaysThatOneOfSeveralPlacesIsEnoughAndThatAllFieldsMustHold) {
    DoorCondition condition;
    condition.places = {Place::ZoneBulkhead, Place::Stairway};
    condition.power_operated = true;
    EXPECT_EQ(conditionPhrase(condition),
              joined(phrase::with_commas,
                     {applies::either(applies::zone_bulkhead(), applies::stairway_enclosure()),
                      applies::power_operated()}));
}

TEST(ConditionPhrase, HasWordsForEveryConditionOfTheCatalogue) {
    int conditions = 0;
    const auto look = [&](const std::string& id, const std::vector<DoorCondition>& list) {
        for (const DoorCondition& each : list) {
            ++conditions;
            EXPECT_NE(conditionPhrase(each), applies::every_door()) << id;
        }
    };
    for (const Requirement& row : given::catalogue().rows) {
        look(row.id, row.any_of);
        look(row.id, row.none_of);
        for (const Requirement& variant : row.variants)
            look(row.id, variant.any_of);
    }
    for (const Upkeep& task : given::catalogue().upkeep)
        look(task.id, task.any_of);
    EXPECT_GT(conditions, 150);
}

TEST(DatesPhrase, SaysFromWhenUntilWhenOrNothing) {
    EXPECT_EQ(datesPhrase(dated("2002-07-01", nullptr, OtherDates::Advice)),
              applies::laid_from("2002-07-01"));
    EXPECT_EQ(datesPhrase(dated(nullptr, "2002-07-01", OtherDates::Advice)),
              applies::laid_before("2002-07-01"));
    EXPECT_EQ(datesPhrase(dated("2008-12-30", "2018-10-07", OtherDates::Advice)),
              applies::laid_between("2008-12-30", "2018-10-07"));
    EXPECT_TRUE(datesPhrase(dated(nullptr, nullptr, OtherDates::Binds)).empty());
    EXPECT_TRUE(otherDatesPhrase(dated(nullptr, nullptr, OtherDates::Binds)).empty());
}

/// The words say what howAsked does with a ship of another date, and with one of no date.
TEST(DatesPhrase, OfOtherDatesAgreesWithWhatIsAsked) {
    const Door door = given::hingedDoor();
    for (const auto& others : otherDatesWords)
        for (const bool younger : {true, false}) {
            const Requirement row = younger ? dated("2002-07-01", nullptr, others.value)
                                            : dated(nullptr, "2002-07-01", others.value);
            Particulars other = given::solasVessel();
            other.keel_laid = calendarDateFrom(younger ? "1985-01-01" : "2015-01-01");
            Particulars undated = other;
            undated.keel_laid.reset();
            const DoorLocation place(Place::ZoneBulkhead);
            EXPECT_EQ(otherDatesPhrase(row),
                      applies::for_other_dates(said(howAsked(row, other, door, place))(),
                                               said(howAsked(row, undated, door, place))()))
                << others.word << (younger ? ", of younger ships" : ", of older ships");
        }
}

TEST(VariantPhrase, SaysOnlyWhatIsItsOwn) {
    Requirement row = dated("2002-07-01", nullptr, OtherDates::Judge);
    row.regimes = {Regime::SolasPassenger};
    Requirement variant = row;
    EXPECT_TRUE(variantPhrase(variant, row).empty());
    variant.keel_from.reset();
    variant.keel_before = calendarDateFrom("2002-07-01");
    EXPECT_EQ(variantPhrase(variant, row), applies::or_no_date(applies::laid_before("2002-07-01")));
    variant.regimes = {Regime::EuInland};
    EXPECT_EQ(
        variantPhrase(variant, row),
        joined(phrase::with_semicolons,
               {applies::eu_inland(), applies::or_no_date(applies::laid_before("2002-07-01"))}));
    row.any_of.emplace_back().watertight = true;
    EXPECT_EQ(variantPhrase(variant, row).parts.back(), applies::every_door());
}

TEST(VariantPhrase, SaysOfEveryVariantOfTheCatalogueWhereItStands) {
    int variants = 0;
    for (const Requirement& row : given::catalogue().rows)
        for (const Requirement& variant : row.variants) {
            ++variants;
            EXPECT_FALSE(variantPhrase(variant, row).empty()) << row.id << ": " << variant.cite;
        }
    EXPECT_GT(variants, 20);
}
