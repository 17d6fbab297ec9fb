// What the register does not say, and what an answer at the door says of the door itself.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "core/grading/as_found.h"
#include "core/grading/grade.h"
#include "core/requirement/applicability.h"
#include "tests/core/given.h"

using namespace latchround;

namespace {

struct Look {
    Door door = given::hingedDoor();
    Boundary boundary = given::zoneBulkhead();
    DoorEvidence evidence{};
    Particulars vessel = given::solasVessel();

    Look() { evidence.door = door.number; }

    DoorGrade graded() const {
        return grade(vessel, door, &boundary, evidence, given::catalogue());
    }
    RowGrade row(std::string_view id) const { return *findRow(graded(), id); }
    void answer(const char* id, Answer given_answer) { given::answer(evidence, id, given_answer); }
};

Look lockedAndHooked() {
    Look look;
    look.door.normally = NormalPosition::Locked;
    look.answer("no-hook", Answer::No);
    return look;
}

} // namespace

// SOLAS II-2/9.4.1.1.5 excepts doors that are normally locked: where they are.
TEST(NormallyLocked, IsLeftOutOnlyWhereItWasFoundLocked) {
    Look look = lockedAndHooked();
    EXPECT_EQ(look.row("no-hook").verdict, Verdict::Unsatisfactory) << "nobody has looked yet";
    EXPECT_EQ(look.row("found-locked").verdict, Verdict::Untested);
    look.answer("found-locked", Answer::No);
    EXPECT_EQ(look.row("no-hook").verdict, Verdict::Unsatisfactory);
    EXPECT_EQ(look.row("found-locked").verdict, Verdict::Satisfactory) << "no is no fault";
    EXPECT_EQ(look.row("found-locked").reason.kind, ReasonKind::ToldNo);
    look.answer("found-locked", Answer::NotApplicable);
    EXPECT_EQ(look.row("no-hook").verdict, Verdict::Unsatisfactory);
    look.answer("found-locked", Answer::Yes);
    EXPECT_EQ(look.row("no-hook").verdict, Verdict::Unsatisfactory) << "hooked open, not locked";
    look.answer("no-hook", Answer::Yes);
    EXPECT_EQ(look.row("no-hook").verdict, Verdict::NotApplicable);
    EXPECT_EQ(look.row("no-hook").reason.kind, ReasonKind::AnsweredNotAsked);
}

TEST(NormallyLocked, FoundOtherwiseItIsWhatItIs) {
    Look look = lockedAndHooked();
    const auto normally = [&] { return AsFound(look.door, look.evidence).door().normally; };
    look.door.hold_back = true;
    EXPECT_EQ(normally(), NormalPosition::Open);
    look.door.hold_back = false;
    EXPECT_EQ(normally(), NormalPosition::Closed);
    look.door.hold_back.word.reset();
    EXPECT_EQ(normally(), NormalPosition::Open) << "the stricter of what it may be";
    look.answer("found-locked", Answer::Yes);
    EXPECT_EQ(normally(), NormalPosition::Open) << "it was hooked";
    look.answer("no-hook", Answer::Yes);
    EXPECT_EQ(normally(), NormalPosition::Locked);
    look.door.normally = NormalPosition::Closed;
    look.evidence.observations.clear();
    EXPECT_EQ(normally(), NormalPosition::Closed);
}

// SOLAS II-2/13.3.2.6.1.
TEST(NormallyLocked, WithAHookOrAWedgeItWasNotLocked) {
    for (const char* held : {"no-hook", "not-held"}) {
        Look look;
        look.door.normally = NormalPosition::Locked;
        look.answer("found-locked", Answer::Yes);
        EXPECT_EQ(look.row("self-closing").verdict, Verdict::NotApplicable);
        look.answer(held, Answer::No);
        EXPECT_EQ(look.row("self-closing").verdict, Verdict::Untested) << held;
        EXPECT_NE(look.graded().verdict, Verdict::Satisfactory) << held;
    }
}

TEST(PlateRead, OfAHigherFamilyThanTheRegisterHasItIsAskedAsThat) {
    Look look;
    look.boundary.place = Place::Other;
    look.boundary.required = look.door.fire_class = FireClass::B15;
    EXPECT_EQ(look.row("material").reason.kind, ReasonKind::NotAsked);
    given::plate(look.evidence, FireClass::A60);
    EXPECT_EQ(look.row("material").verdict, Verdict::Untested);
    EXPECT_EQ(look.row("hose-port").verdict, Verdict::Untested);
    EXPECT_EQ(look.row("plate").verdict, Verdict::Judge) << "and it differs from the register";
    look.boundary = given::zoneBulkhead();
    look.door.fire_class = FireClass::A60;
    given::plate(look.evidence, FireClass::B15);
    EXPECT_EQ(look.row("material").verdict, Verdict::Untested) << "a lower plate excuses nothing";
    EXPECT_EQ(look.row("rating").verdict, Verdict::Unsatisfactory);
}

TEST(BothSides, OneThatIsLeftOutIsTheInspectors) {
    Look look;
    given::answer(look.evidence, "one-person", Answer::Yes, Side::One);
    given::answer(look.evidence, "one-person", Answer::NotApplicable, Side::Two);
    EXPECT_EQ(look.row("one-person").verdict, Verdict::Judge);
    EXPECT_EQ(look.row("one-person").reason.kind, ReasonKind::OneSideLeftOut);
    given::answer(look.evidence, "one-person", Answer::NotApplicable, Side::One);
    EXPECT_EQ(look.row("one-person").verdict, Verdict::Judge);
    EXPECT_EQ(look.row("one-person").reason.kind, ReasonKind::NoSuchCase);
    given::answer(look.evidence, "one-person", Answer::No, Side::Two);
    EXPECT_EQ(look.row("one-person").verdict, Verdict::Unsatisfactory);
}

TEST(EscapeRoute, NeedsNoKey) {
    Look look;
    look.door.normally = NormalPosition::Locked;
    look.answer("found-locked", Answer::Yes);
    look.answer("escape-key", Answer::No);
    EXPECT_EQ(look.row("escape-key").verdict, Verdict::Unsatisfactory);
    EXPECT_EQ(look.graded().verdict, Verdict::Unsatisfactory);
    look.door.escape_route = false;
    EXPECT_EQ(look.row("escape-key").verdict, Verdict::NotApplicable);
    look.boundary.place = Place::Cabin;
    EXPECT_EQ(look.row("escape-key").verdict, Verdict::Unsatisfactory) << "a cabin, from inside";
}

// SOLAS II-2/13.3.2.6.2: 760 to 1120 mm above the deck, 67 N at most.
TEST(EscapeRoute, QuickReleaseInHeightAndForce) {
    Look look;
    const auto height = [&](double mm) {
        given::measured(look.evidence, "release-height", mm);
        return look.row("release-height").verdict;
    };
    EXPECT_EQ(height(762), Verdict::Satisfactory);
    EXPECT_EQ(height(1118), Verdict::Satisfactory);
    EXPECT_EQ(height(740), Verdict::Unsatisfactory);
    EXPECT_EQ(height(1140), Verdict::Unsatisfactory);
    const auto force = [&](double newtons) {
        given::measured(look.evidence, "release-force", newtons);
        return look.row("release-force").verdict;
    };
    EXPECT_EQ(force(65), Verdict::Satisfactory);
    EXPECT_EQ(force(70), Verdict::Unsatisfactory);
}

TEST(EscapeRoute, WithoutAQuickReleaseThereIsNothingToMeasure) {
    Look look;
    EXPECT_EQ(look.row("release-height").verdict, Verdict::Untested);
    look.answer("quick-release", Answer::No);
    EXPECT_EQ(look.row("quick-release").verdict, Verdict::Unsatisfactory);
    EXPECT_EQ(look.row("release-height").verdict, Verdict::Untested);
    look.answer("quick-release", Answer::NotApplicable);
    EXPECT_EQ(look.row("release-height").verdict, Verdict::NotApplicable);
    EXPECT_EQ(look.row("release-height").reason.kind, ReasonKind::ExcusedByAnswer);
    given::measured(look.evidence, "release-height", 500);
    EXPECT_EQ(look.row("release-height").reason.kind, ReasonKind::AnsweredNotAsked);
}

// SOLAS II-2/9.4.1.1.5.10.
TEST(SilentRegister, SlidingDoorIsAskedForItsAlarm) {
    Look look;
    look.door = given::slidingDoor();
    look.door.power_operated = false;
    look.door.release_groups.clear();
    EXPECT_EQ(look.row("alarm-lead").verdict, Verdict::Untested);
    look.answer("remote-release", Answer::Yes);
    EXPECT_EQ(look.row("alarm-lead").verdict, Verdict::Untested);
    EXPECT_EQ(look.row("alarm-holds").verdict, Verdict::Untested);
    EXPECT_EQ(look.row("alarm-sounds").verdict, Verdict::Untested);
    look.answer("remote-release", Answer::NotApplicable);
    EXPECT_EQ(look.row("alarm-lead").verdict, Verdict::NotApplicable);
    for (const char* id : {"alarm-sounds", "alarm-lead", "alarm-holds"})
        EXPECT_EQ(look.row(id).reason.kind, ReasonKind::ExcusedByAnswer) << id;
    look.evidence.runs = {given::run(Release::Remote, {{MarkKind::AlarmOn, 0.0},
                                                       {MarkKind::LeafMoves, 2.0},
                                                       {MarkKind::Shut, 11.3},
                                                       {MarkKind::AlarmOff, 11.4}})};
    EXPECT_EQ(look.row("alarm-lead").verdict, Verdict::Unsatisfactory) << "it was timed";
    look.evidence.runs.clear();
    look.evidence.observations.clear();
    look.door.escape_trunk = true;
    EXPECT_EQ(look.row("alarm-lead").verdict, Verdict::NotApplicable);
    look.door.release_groups = {"MVZ2"};
    EXPECT_EQ(look.row("alarm-lead").verdict, Verdict::Untested);
}

// SOLAS II-2/9.4.1.1.8.
TEST(SilentRegister, StairwayDoorIsAskedForItsHosePort) {
    Look look;
    look.boundary.place = Place::Stairway;
    look.door.escape_route.word.reset();
    look.answer("hose-port", Answer::No);
    EXPECT_EQ(look.row("hose-port").verdict, Verdict::Unsatisfactory);
    look.door.escape_route = true;
    EXPECT_EQ(look.row("hose-port").verdict, Verdict::Unsatisfactory);
    look.door.escape_route = false;
    EXPECT_EQ(look.row("hose-port").verdict, Verdict::NotApplicable);
}

TEST(SilentRegister, ExemptsFromNothing) {
    Look look;
    look.door = given::slidingDoor();
    look.door.escape_trunk.word.reset();
    EXPECT_EQ(look.row("remote-release").verdict, Verdict::Untested);
    look.door.escape_trunk = true;
    EXPECT_EQ(look.row("remote-release").verdict, Verdict::NotApplicable);
    look.door.watertight.word.reset();
    look.door.fire_class = FireClass::A0;
    EXPECT_EQ(look.row("rating").verdict, Verdict::Unsatisfactory)
        << "only a door known to be watertight needs no insulation";
}

TEST(NoSilentAnswer, ToARowThatIsNotAskedGivesANotice) {
    Look look;
    look.door.escape_route = false;
    EXPECT_EQ(look.row("hose-port").reason.kind, ReasonKind::NotAsked);
    EXPECT_FALSE(isAsked(look.row("hose-port")));
    look.answer("hose-port", Answer::No);
    const RowGrade row = look.row("hose-port");
    EXPECT_EQ(row.verdict, Verdict::NotApplicable);
    EXPECT_EQ(row.reason.kind, ReasonKind::AnsweredNotAsked);
    EXPECT_EQ(row.reason.text,
              askedBecause(given::row("hose-port"), look.vessel, look.door,
                           locationOf(look.vessel, &look.boundary, given::catalogue().divisions)));
    EXPECT_TRUE(isAsked(row)) << "listed with the others, on screen and on paper";
}

TEST(NoSilentAnswer, OfARowOfOtherShipsNeither) {
    Look look;
    look.answer("h-number", Answer::No);
    EXPECT_EQ(look.row("h-number").reason.kind, ReasonKind::AnsweredNotAsked);
}

TEST(NoSilentAnswer, EveryAnswerCountsOrIsNamed) {
    Look look;
    for (const Requirement& row : given::catalogue().rows)
        if (row.check == CheckKind::Seen || row.check == CheckKind::SeenBothSides)
            given::answer(look.evidence, row.id, Answer::No);
        else if (row.source == Source::Gauge)
            given::measured(look.evidence, row.id, 1);
    for (const auto& place : placeWords) {
        look.boundary.place = place.value;
        for (const RowGrade& row : look.graded().rows)
            if (isAnswered(*row.requirement, look.evidence)) {
                EXPECT_TRUE(isAsked(row)) << row.requirement->id << " " << place.word;
            }
    }
}

// Every yes or no of the register, in every place: nothing said is never better than yes or no.
RC_GTEST_PROP(SilentRegister, NeverGradesBetterThanASayingOne, ()) {
    Look look;
    look.door = given::slidingDoor();
    look.door.kind = doorKindWords[*rc::gen::inRange<std::size_t>(0, doorKindWords.size())].value;
    look.boundary.place = placeWords[*rc::gen::inRange<std::size_t>(0, placeWords.size())].value;
    look.door.normally =
        normalPositionWords[*rc::gen::inRange<std::size_t>(0, normalPositionWords.size())].value;
    look.vessel.regime = regimeWords[*rc::gen::inRange<std::size_t>(0, regimeWords.size())].value;
    look.door.fire_class = *rc::gen::arbitrary<bool>() ? FireClass::A0 : FireClass::B15;
    const std::array<Said*, 12> fittings{
        &look.door.power_operated, &look.door.hold_back,        &look.door.designed_to_reopen,
        &look.door.hose_port,      &look.door.escape_route,     &look.door.sill_in_frame,
        &look.door.latch,          &look.door.watertight,       &look.door.weathertight,
        &look.door.escape_trunk,   &look.door.special_category, &look.door.faces_embarkation};
    for (Said* fitting : fittings)
        *fitting = *rc::gen::arbitrary<bool>();
    for (const Requirement& row : given::catalogue().rows) {
        if (!row.question.empty() && row.source != Source::Gauge && *rc::gen::arbitrary<bool>())
            given::answer(look.evidence, row.id,
                          answerWords[*rc::gen::inRange<std::size_t>(0, answerWords.size())].value);
        if (row.source == Source::Gauge && *rc::gen::arbitrary<bool>())
            given::measured(look.evidence, row.id, *rc::gen::inRange(1, 1500));
    }
    const DoorGrade known = look.graded();
    Said* silent = fittings[*rc::gen::inRange<std::size_t>(0, fittings.size())];
    silent->word.reset();
    const DoorGrade unknown = look.graded();
    // By a text that nothing shows to bind a failure is the inspector's, and never passed over.
    const bool may_be_judged = silent == &look.door.special_category;
    const auto isBetter = [&](Verdict with, Verdict without) {
        const bool left_open = may_be_judged && with == Verdict::Unsatisfactory;
        return isWorse(left_open ? Verdict::Judge : with, without);
    };
    for (std::size_t i = 0; i < known.rows.size(); ++i)
        if (isBetter(known.rows[i].verdict, unknown.rows[i].verdict))
            RC_FAIL(known.rows[i].requirement->id);
    RC_ASSERT(!isBetter(known.verdict, unknown.verdict));
}
