// An n/a: where the text knows such a case, where it knows none, and where it does but the register
// does not show it.
#include <gtest/gtest.h>

#include "core/requirement/applicability.h"
#include "tests/core/profile_row_cases.h"
#include "tests/core/us_asked.h"

using namespace latchround;
using namespace latchround::given;

namespace {

RowGrade whenNa(const Site& made, const char* id) {
    DoorEvidence evidence = said(made, id, Answer::NotApplicable);
    return rowOf(vesselOf(made), made, id, evidence);
}

/// Asked, and in no case of n/a, as far as the register goes: it lacks a word.
struct WantOfAWord {
    const char* id;
    Change site;
    Said Door::*word;
};

Site silent(const WantOfAWord& each) {
    Site made = of(each.site);
    (made.door.*each.word).word.reset();
    return made;
}

void hingedClosed(Site& s) {
    solasHinged(s);
    s.door.normally = NormalPosition::Closed;
    s.door.hold_back = false;
}
void escapeDoor(Site& s) {
    latching(s);
    s.boundary.place = Place::Other;
}
void horizontal(Site& s) {
    deckDoor(s);
    s.boundary.required = FireClass::A60;
}

/// Doors of every kind, anywhere, fitted in every way that a case of n/a speaks of.
template <class Use>
void eachDoor(Use use) {
    Site made;
    for (const auto& kind : doorKindWords)
        for (const auto& place : placeWords)
            for (const auto& normally : normalPositionWords)
                for (int fitted = 0; fitted < 16; ++fitted) {
                    made.door = hingedDoor(kind.value);
                    made.boundary.place = place.value;
                    made.door.normally = normally.value;
                    made.door.hold_back = (fitted & 1) != 0;
                    made.door.escape_route = (fitted & 2) != 0;
                    made.door.latch = (fitted & 4) != 0;
                    made.door.power_operated = (fitted & 8) != 0;
                    made.door.watertight = false;
                    made.door.escape_trunk = false;
                    made.door.special_category = false;
                    use(made);
                }
}

bool canBeMet(const Requirement& row, const DoorCondition& na) {
    Particulars vessel = solasVessel();
    vessel.regime = row.regimes.empty() ? vessel.regime : row.regimes.front();
    bool met = false;
    eachDoor([&](const Site& made) {
        const DoorLocation location(made.boundary.place);
        met = met || (howAsked(row, vessel, made.door, location) != Asked::No &&
                      isShownToMeetOneOf({na}, made.door, location));
    });
    return met;
}

} // namespace

// SOLAS II-2/9.4.1.1.5.1, .4, .10, 9.4.1.1.4: none exempts a door that is held open.
TEST(NotApplicable, ToWhatTheTextKnowsNoCaseOfIsTheInspectors) {
    for (const char* id : {"self-closing", "no-hook", "fail-safe", "alarm-sounds", "one-person",
                           "local-release", "remote-release"}) {
        Site made = of(solasSliding);
        made.door.watertight = false;
        made.door.escape_trunk = false;
        made.door.special_category = false;
        EXPECT_EQ(whenNa(made, id).verdict, Verdict::Judge) << id;
        EXPECT_EQ(whenNa(made, id).reason.kind, ReasonKind::NoSuchCase) << id;
    }
}

TEST(NotApplicable, StandsWhereNothingHoldsTheDoorOpen) {
    for (const char* id : {"remote-release", "local-release", "fail-safe", "reopen-local"})
        EXPECT_EQ(whenNa(of(hingedClosed), id).verdict, Verdict::NotApplicable) << id;
}

TEST(NotApplicable, StandsInCommonPracticeAndInLighterRows) {
    for (const char* id : {"pocket-clear", "indicator"})
        EXPECT_EQ(whenNa(of(solasSliding), id).verdict, Verdict::NotApplicable) << id;
}

TEST(NotApplicable, WhereTheRegisterDoesNotShowTheCaseSaysSo) {
    const WantOfAWord asked[] = {{"quick-release", escapeDoor, &Door::escape_route},
                                 {"machinery-release", engineRoom, &Door::hold_back},
                                 {"remote-release", hingedClosed, &Door::hold_back},
                                 {"fail-safe", hingedClosed, &Door::hold_back},
                                 {"local-release", hingedClosed, &Door::hold_back},
                                 {"remote-release", on<inland>, &Door::hold_back},
                                 {"alarm-sounds", solasHinged, &Door::power_operated},
                                 {"k-release", usA<K, zone>, &Door::hold_back},
                                 {"k-horizontal-release", horizontal, &Door::hold_back},
                                 {"auto-latch", latchingDouble, &Door::latch},
                                 {"latches", latching, &Door::latch}};
    for (const WantOfAWord& each : asked) {
        const Site made = silent(each);
        EXPECT_EQ(whenNa(made, each.id).verdict, Verdict::Judge) << each.id;
        EXPECT_EQ(whenNa(made, each.id).reason.kind, ReasonKind::CaseNotShown) << each.id;
    }
}

TEST(NotApplicable, WhereAnExemptionIsNotShownSaysSo) {
    Site made = of(solasHinged);
    made.door.escape_trunk.word.reset();
    EXPECT_EQ(whenNa(made, "remote-release").reason.kind, ReasonKind::CaseNotShown);
    made.door.escape_trunk = false;
    EXPECT_EQ(whenNa(made, "remote-release").reason.kind, ReasonKind::NoSuchCase);
}

// Of some machinery space; the register does not say of which category.
TEST(NotApplicable, ToAMachinerySpaceOfUnknownCategoryIsACaseNotShown) {
    Site made = of(engineRoom);
    made.door.watertight = false;
    EXPECT_EQ(whenNa(made, "machinery-closes").reason.kind, ReasonKind::CaseNotShown);
    made.boundary.spaces = std::pair(12, 3);
    EXPECT_EQ(whenNa(made, "machinery-closes").reason.kind, ReasonKind::NoSuchCase);
}

// 46 CFR 72.05-25 asks by the class of the boundary.
TEST(NotApplicable, OfARowByTheDoorsOwnClassIsACaseNotShown) {
    Site made = of(usB<H>);
    made.door.watertight = false;
    DoorLocation location(Place::Other);
    const auto is_shown = [&] {
        return isShownToBeAsked(row("h-b-construction"), vesselOf(made), made.door, location);
    };
    EXPECT_FALSE(is_shown());
    location.family = BoundaryFamily::B;
    EXPECT_TRUE(is_shown());
}

TEST(NotApplicable, EveryCaseThatATextKnowsCanBeMetByADoorThatTheRowIsAskedOf) {
    for (const Requirement& row : catalogue().rows)
        for (std::size_t i = 0; i < row.na_where.size(); ++i) {
            bool met = canBeMet(row, row.na_where[i]);
            for (const Requirement& variant : row.variants)
                met = met || canBeMet(variant, row.na_where[i]);
            EXPECT_TRUE(met) << row.id << ", case " << i;
        }
}
