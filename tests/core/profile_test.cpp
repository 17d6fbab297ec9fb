// The texts as profiles: whose each is, of which dates, what of it was read, and that a ship is
// held to its own text alone.
#include <set>

#include <gmock/gmock.h>

#include "core/grading/grade.h"
#include "core/requirement/applicability.h"
#include "core/requirement/applicability_phrases.h"
#include "core/requirement/catalogue.h"
#include "core/requirement/flag_rules.h"
#include "tests/core/profile_row_cases.h"

using namespace latchround;
using namespace latchround::given;
using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

namespace {

Particulars vesselOf(Regime regime, const char* keel) {
    Particulars vessel = solasVessel();
    vessel.regime = regime;
    vessel.keel_laid = calendarDateFrom(keel);
    return vessel;
}

/// Every question answered no, every figure far out.
DoorEvidence allBad(const Door& door) {
    DoorEvidence evidence;
    evidence.door = door.number;
    for (const Requirement& each : catalogue().rows) {
        answer(evidence, each.id, Answer::No);
        for (const Side side : {Side::One, Side::Two})
            answer(evidence, each.id, Answer::No, side);
        if (each.source == Source::Gauge)
            measured(evidence, each.id, 5000);
    }
    evidence.runs = {run(Release::Remote, {{MarkKind::AlarmOn, 0},
                                           {MarkKind::LeafMoves, 1},
                                           {MarkKind::AlarmOff, 61},
                                           {MarkKind::Shut, 121}})};
    return evidence;
}

std::vector<RowGrade> badRows(const Particulars& vessel, const Site& site) {
    Boundary boundary = site.boundary;
    return grade(vessel, site.door, &boundary, allBad(site.door), catalogue()).rows;
}

RowGrade badRow(const Particulars& vessel, const Site& site, const char* id) {
    for (const RowGrade& each : badRows(vessel, site))
        if (each.requirement->id == id)
            return each;
    ADD_FAILURE() << "no row " << id;
    return {};
}

Verdict bad(Regime regime, const char* keel, const Site& site, const char* id) {
    return badRow(vesselOf(regime, keel), site, id).verdict;
}

Site of(Change change) {
    Site made;
    change(made);
    return made;
}

/// Doors of every kind and class in every place, so that each row is met.
std::vector<Site> everySite() {
    std::vector<Site> all;
    for (const auto& place : placeWords)
        for (const auto& kind : doorKindWords)
            for (const FireClass fire_class : {FireClass::A0, FireClass::B15, FireClass::C}) {
                Site made = site(Regime::SolasPassenger, DoorKind::Sliding);
                made.boundary.place = place.value;
                made.door.kind = kind.value;
                made.door.fire_class = fire_class;
                made.door.sill_in_frame = false;
                made.door.special_category = Said();
                all.push_back(made);
            }
    return all;
}

/// Ids of rows that come out so at any door of a ship.
std::set<std::string> comingOut(Verdict verdict, Regime regime, const char* keel) {
    std::set<std::string> ids;
    for (const Site& made : everySite())
        for (const RowGrade& each : badRows(vesselOf(regime, keel), made))
            if (each.verdict == verdict)
                ids.insert(each.requirement->id);
    return ids;
}

const Profile* profileFor(Regime regime, const char* issuer) {
    for (const Profile& profile : catalogue().profiles)
        if (profile.issuer == issuer && !profile.regimes.empty() &&
            profile.regimes.front() == regime)
            return &profile;
    return nullptr;
}

} // namespace

TEST(Profile, EveryRowAndVariantBelongsToOneOfItsShips) {
    const auto check = [](const Requirement& row) {
        const Profile* profile = profileOf(catalogue(), row);
        ASSERT_TRUE(profile) << row.id << ", " << row.edition;
        EXPECT_EQ(profile->edition, row.edition);
        for (const Regime regime : row.regimes)
            EXPECT_TRUE(speaksTo(*profile, regime) ||
                        !profilesFor(catalogue(), vesselOf(regime, "")).empty())
                << row.id;
    };
    for (const Requirement& row : catalogue().rows) {
        check(row);
        for (const Requirement& variant : row.variants)
            check(variant);
    }
}

TEST(Profile, SaysItsShipsWhereItWasReadAndWhatWasNot) {
    EXPECT_GE(catalogue().profiles.size(), 12u);
    for (const Profile& profile : catalogue().profiles) {
        EXPECT_FALSE(profile.ships.empty()) << profile.edition;
        EXPECT_FALSE(profile.edition.empty() || profile.issuer.empty() ||
                     profile.deference.empty());
        const bool has_no_text = profile.issuer == "no text" || profile.issuer == "common practice";
        EXPECT_EQ(profile.read_in.empty(), has_no_text) << profile.edition;
        if (profile.issuer != "IMO circular")
            EXPECT_FALSE(profile.not_read.empty()) << profile.edition;
    }
}

TEST(Profile, EveryRegimeHasOne) {
    for (const auto& regime : regimeWords)
        EXPECT_TRUE(std::ranges::any_of(catalogue().profiles, [&](const Profile& profile) {
            return std::ranges::find(profile.regimes, regime.value) != profile.regimes.end();
        })) << regime.word;
}

// One day inside and one outside of each day that a profile names.
TEST(Profile, DatesIncludeTheirFirstDayAndNotTheDayThatEndsThem) {
    int days = 0;
    for (const Profile& profile : catalogue().profiles) {
        const auto holds = [&](std::chrono::sys_days day) {
            return isOfDates(profile, CalendarDate(day));
        };
        if (profile.built_from) {
            const std::chrono::sys_days first = *profile.built_from;
            EXPECT_EQ(holds(first), Said(true)) << profile.edition;
            EXPECT_EQ(holds(first - std::chrono::days(1)), Said(false)) << profile.edition;
            ++days;
        }
        if (profile.built_before) {
            const std::chrono::sys_days end = *profile.built_before;
            EXPECT_EQ(holds(end), Said(false)) << profile.edition;
            EXPECT_EQ(holds(end - std::chrono::days(1)), Said(true)) << profile.edition;
            ++days;
        }
        EXPECT_EQ(isOfDates(profile, std::nullopt).isKnown(),
                  !profile.built_from && !profile.built_before);
    }
    EXPECT_GE(days, 9);
}

// SOLAS II-2/1.2.1; 46 CFR 72.05-1, 116.115; SOR/2017-14, ss. 103, 104, 106, 203; order of 30
// December 2008.
TEST(Profile, DatesAreThoseOfTheText) {
    const auto from = [](Regime regime, const char* issuer) {
        return profileFor(regime, issuer)->built_from;
    };
    EXPECT_EQ(from(Regime::SolasPassenger, "SOLAS"), calendarDateFrom("2002-07-01"));
    EXPECT_EQ(from(Regime::UsH, "46 CFR"), calendarDateFrom("1965-05-26"));
    EXPECT_EQ(from(Regime::UsK, "46 CFR"), calendarDateFrom("1996-03-11"));
    EXPECT_EQ(from(convention, "SOR/2017-14"), calendarDateFrom("2002-07-01"));
    EXPECT_EQ(from(canada, "SOR/2017-14"), calendarDateFrom("2017-02-03"));
    EXPECT_EQ(from(day_boat, "SOR/2017-14"), calendarDateFrom("2017-02-03"));
    EXPECT_EQ(from(inland, "2006/87/EC"), calendarDateFrom("2008-12-30"));
}

TEST(Profile, EditionOfAVesselNamesOnlyTextsThatSpeakToIt) {
    const auto edition = [](Regime regime, const char* keel) {
        return editionFor(catalogue(), vesselOf(regime, keel));
    };
    EXPECT_THAT(edition(Regime::SolasPassenger, "2012-05-01"),
                AllOf(HasSubstr("April 2015"), HasSubstr("Common practice"), Not(HasSubstr("CFR")),
                      Not(HasSubstr("1981")), Not(HasSubstr("SOR"))));
    for (const char* older : {"1985-03-01", ""})
        EXPECT_THAT(edition(Regime::SolasPassenger, older),
                    AllOf(HasSubstr("April 2015"), HasSubstr("1981/83 wording")));
    EXPECT_THAT(edition(Regime::UsH, "2012-05-01"),
                AllOf(HasSubstr("46 CFR"), HasSubstr("April 2015")));
    EXPECT_THAT(edition(canada, "2018-01-01"),
                AllOf(HasSubstr("SOR/2017-14"), HasSubstr("April 2015"), Not(HasSubstr("1981"))));
    EXPECT_THAT(edition(convention, "1990-01-01"), HasSubstr("1981/83 wording"));
    EXPECT_THAT(edition(inland, "2020-01-01"), HasSubstr("2006/87/EC")) << "no later one is here";
    EXPECT_THAT(edition(Regime::Other, "2012-05-01"),
                HasSubstr("No text here binds a vessel of this flag: everything is advice"));
    EXPECT_THAT(deferenceFor(catalogue(), vesselOf(Regime::SolasPassenger, "2012-05-01")),
                AllOf(HasSubstr("Local rules"), Not(HasSubstr("Marine Inspection"))));
}

TEST(Profile, AFlagsOwnRulesAreOneMore) {
    const auto with =
        withFlagRules(catalogue(), R"({"edition":"Order 7","issuer":"Port of Skerry","rows":[
            {"id":"hinged-time","change":"tighten","high":30,"cite":"order 7"}]})",
                      "skerry.json");
    ASSERT_TRUE(with);
    EXPECT_THAT(editionFor(*with, solasVessel()), HasSubstr("Order 7 (Port of Skerry)"));
    const Profile* profile = profileOf(*with, *findRequirement(*with, "hinged-time"));
    ASSERT_TRUE(profile);
    EXPECT_EQ(profile->issuer, "Port of Skerry");
}

// No text binds: whatever is seen, nothing fails.
TEST(OtherFlag, FailsNothing) {
    for (const char* keel : {"1985-03-01", "2015-01-01", ""})
        EXPECT_THAT(comingOut(Verdict::Unsatisfactory, Regime::Other, keel), testing::IsEmpty())
            << keel;
}

// LY3 says "should".
TEST(LargeYacht, LeavesEveryFailureToTheInspectorAndOtherRowsAreAdvice) {
    EXPECT_THAT(comingOut(Verdict::Unsatisfactory, yacht, "2015-01-01"), testing::IsEmpty());
    const Site made = of(on<yacht>);
    EXPECT_EQ(bad(yacht, "2015-01-01", made, "self-closing"), Verdict::Judge);
    EXPECT_EQ(bad(yacht, "2015-01-01", made, "no-hook"), Verdict::Advice);
}

// SOR/2017-14, s. 102(1).
TEST(Canada, GoesBySolasToo) {
    const Site made = of(on<canada>);
    for (const char* id : {"hinged-time", "no-hook", "indicator", "hose-port"}) {
        EXPECT_EQ(bad(canada, "2017-02-03", made, id), Verdict::Unsatisfactory) << id;
        EXPECT_EQ(bad(convention, "2002-07-01", made, id), Verdict::Unsatisfactory) << id;
    }
    EXPECT_EQ(badRow(vesselOf(canada, "2017-02-03"), made, "no-hook").requirement->cite,
              "SOLAS II-2/9.4.1.1.5.4; SOR/2017-14, s. 102(1)");
}

// ss. 103, 106: what was there before the Regulations may keep its former rule.
TEST(Canada, YoungerTextNeverFailsAnOlderShip) {
    const std::set<std::string> of_part_e{"condition", "plan-has-door"};
    for (const char* older : {"2017-02-02", "2012-05-01", "1985-03-01", ""})
        for (const std::string& id : comingOut(Verdict::Unsatisfactory, canada, older))
            EXPECT_TRUE(of_part_e.contains(id)) << id << " of " << older;
    const Site made = of(on<canada>);
    EXPECT_EQ(bad(canada, "2017-02-02", made, "self-closing"), Verdict::Judge);
    EXPECT_EQ(bad(canada, "2017-02-02", made, "independence"), Verdict::Advice);
    EXPECT_EQ(badRow(vesselOf(canada, ""), made, "no-hook").reason.kind,
              ReasonKind::TextLeavesOpen);
}

// The date of these ships is 3 February 2017, in each text that they share with convention ships.
TEST(Canada, NoShipWithoutConventionCertificatesIsToldOfTheYear2002) {
    for (const Regime regime : {canada, day_boat})
        for (const char* keel : {"1993-01-01", "2012-05-01", "2017-02-02", ""}) {
            Particulars vessel = vesselOf(regime, keel);
            vessel.passengers = 90;
            const Site made = of(on<canada>);
            for (const char* id : {"ca-plate", "ca-gap", "ca-louvre"}) {
                EXPECT_EQ(badRow(vessel, made, id).verdict, Verdict::Judge) << id << keel;
                EXPECT_EQ(badRow(vessel, made, id).reason.kind, ReasonKind::TextLeavesOpen) << id;
            }
            for (const RowGrade& each : badRows(vessel, made)) {
                const Phrase why = askedBecause(*each.requirement, vessel, made.door, zone);
                EXPECT_FALSE(why.code == phrase::with_semicolons &&
                             why.parts.back() == applies::keel_before("2002-07-01"))
                    << each.requirement->id << " of " << keel;
            }
        }
}

// s. 104: a convention ship before 1 July 2002.
TEST(Canada, ConventionShipBefore2002KeepsTheLawOfItsDay) {
    const Site made = of(on<convention>);
    for (const char* id : {"ca-plate", "ca-gap", "ca-louvre"}) {
        EXPECT_EQ(bad(convention, "2002-06-30", made, id), Verdict::Judge) << id;
        EXPECT_EQ(bad(convention, "2002-07-01", made, id), Verdict::Unsatisfactory) << id;
    }
    EXPECT_EQ(bad(convention, "2002-06-30", made, "self-closing"), Verdict::Unsatisfactory)
        << "in every older text seen";
    EXPECT_EQ(bad(convention, "2002-06-30", made, "hinged-time"), Verdict::Advice);
}

// s. 102(3): berths and voyage, which no register has.
TEST(Canada, WhetherItCountsAsOfMoreThan36PassengersIsNotSettledByPassengers) {
    Site made = of(on<canada>);
    EXPECT_EQ(bad(canada, "2018-01-01", made, "central-panel"), Verdict::Judge);
    EXPECT_EQ(bad(convention, "2012-01-01", made, "central-panel"), Verdict::Unsatisfactory);
    made.boundary.required.reset();
    made.boundary.spaces = std::pair(7, 7);
    made.door.fire_class = FireClass::B15;
    EXPECT_EQ(bad(canada, "2018-01-01", made, "rating"), Verdict::Judge);
    EXPECT_EQ(bad(convention, "2012-01-01", made, "rating"), Verdict::Unsatisfactory);
    Particulars few = vesselOf(canada, "2018-01-01");
    few.passengers = 30;
    made.boundary.spaces = std::pair(6, 6);
    EXPECT_EQ(badRow(few, made, "rating").verdict, Verdict::Unsatisfactory) << "table 9.3 its own";
}

// Part 2, ss. 201, 212, 218, has no table and no closing time.
TEST(CanadianDayBoat, IsNotHeldToSolas) {
    Site made = of(on<day_boat>);
    EXPECT_EQ(bad(day_boat, "2018-01-01", made, "hinged-time"), Verdict::Advice);
    EXPECT_EQ(bad(day_boat, "2018-01-01", made, "indicator"), Verdict::NotApplicable);
    for (const char* older : {"2017-02-02", ""})
        EXPECT_THAT(comingOut(Verdict::Unsatisfactory, day_boat, older), testing::IsEmpty());
}

// Art. 15.11(8): no seconds, no speed, no alarm, no angle.
TEST(EuInland, HasNoTimesAndNoAngle) {
    const Site made = of(on<inland>);
    EXPECT_EQ(bad(inland, "2012-01-01", made, "hinged-time"), Verdict::Advice);
    const RowGrade closing = badRow(vesselOf(inland, "2012-01-01"), made, "self-closing");
    EXPECT_EQ(closing.verdict, Verdict::Unsatisfactory);
    EXPECT_EQ(closing.requirement->incline_deg, std::nullopt);
    EXPECT_THAT(closing.requirement->cite, HasSubstr("15.11(8)(b)"));
}

TEST(EuInland, FailsOnlyVesselsOfTheDatesItWasReadFor) {
    const Site made = of(on<inland>);
    for (const char* id : {"rating", "self-closing", "local-release", "remote-release"}) {
        for (const char* inside : {"2008-12-30", "2018-10-06"})
            EXPECT_EQ(bad(inland, inside, made, id),
                      id == std::string("rating") ? Verdict::Satisfactory : Verdict::Unsatisfactory)
                << id << inside;
        for (const char* other : {"2008-12-29", "2018-10-07", ""})
            EXPECT_NE(bad(inland, other, made, id), Verdict::Unsatisfactory) << id << other;
    }
    for (const char* other : {"2008-12-29", "2018-10-07", ""})
        EXPECT_THAT(comingOut(Verdict::Unsatisfactory, inland, other), testing::IsEmpty());
}

TEST(EuInland, SaysWhyARowOfItIsNotAskedHere) {
    const Particulars vessel = vesselOf(inland, "2012-01-01");
    EXPECT_TRUE(speaksTo(row("self-closing"), vessel));
    EXPECT_EQ(askedBecause(row("self-closing"), vessel, hingedDoor(), Place::Cabin),
              applies::cabin());
    EXPECT_FALSE(speaksTo(row("control-heat"), vessel));
    EXPECT_EQ(askedBecause(row("control-heat"), vessel, hingedDoor(), Place::Cabin),
              applies::text_of_other_ships("SOLAS"));
}

// The tables of partitions were not read, and SOLAS's are not its own.
TEST(EuInland, ClassComesFromThePlanAlone) {
    Site made = of(on<inland>);
    made.boundary.spaces = std::pair(7, 7);
    made.boundary.required.reset();
    const RowGrade unknown = badRow(vesselOf(inland, "2012-01-01"), made, "rating");
    EXPECT_EQ(unknown.verdict, Verdict::Judge);
    EXPECT_EQ(unknown.reason.kind, ReasonKind::BoundaryClassUnknown);
}

// What nobody dated is never let off where a dated ship fails.
TEST(Profile, AnUndatedShipIsNeverPassedOver) {
    for (const auto& [regime, keel] :
         {std::pair(canada, "2018-01-01"), std::pair(convention, "2012-01-01"),
          std::pair(day_boat, "2018-01-01"), std::pair(inland, "2012-01-01")})
        for (const Site& made : everySite()) {
            const std::vector<RowGrade> undated = badRows(vesselOf(regime, ""), made);
            for (const RowGrade& dated : badRows(vesselOf(regime, keel), made)) {
                if (dated.verdict != Verdict::Unsatisfactory)
                    continue;
                const auto same = std::ranges::find_if(undated, [&](const RowGrade& row) {
                    return row.requirement->id == dated.requirement->id;
                });
                ASSERT_NE(same, undated.end());
                EXPECT_NE(same->verdict, Verdict::Satisfactory) << same->requirement->id;
                EXPECT_NE(same->verdict, Verdict::NotApplicable) << same->requirement->id;
            }
        }
}
