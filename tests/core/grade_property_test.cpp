// Properties of grading that no single case shows: a worse fact never brings a better verdict, and
// no door's rows hang on another door.
//
// A greater heel is not among the worse facts: over 1 degree a time is advice by rule, whatever it
// says.
#include <algorithm>

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "core/grading/grade.h"
#include "tests/core/row_cases.h"

using namespace latchround;

namespace {

struct Case {
    Particulars vessel = given::solasVessel();
    given::Site site;
    DoorEvidence evidence;
};

template <class E, std::size_t N>
E oneOf(const std::array<Word<E>, N>& words) {
    return words[*rc::gen::inRange<std::size_t>(0, N)].value;
}

bool coin() {
    return *rc::gen::arbitrary<bool>();
}

RunRecord someRun() {
    const double moves = *rc::gen::inRange(0, 150) / 10.0;
    const double shut = moves + *rc::gen::inRange(20, 500) / 10.0;
    RunRecord run = given::run(oneOf(releaseWords), {{MarkKind::AlarmOn, 0.0},
                                                     {MarkKind::LeafMoves, moves},
                                                     {MarkKind::Shut, shut},
                                                     {MarkKind::FirstLeafHome, shut - 1},
                                                     {MarkKind::SecondLeafHome, shut},
                                                     {MarkKind::AlarmOff, shut + 0.3}});
    return run;
}

Case someCase() {
    Case made;
    made.vessel.regime = oneOf(regimeWords);
    made.vessel.passengers = coin() ? 600 : 30;
    made.vessel.sprinklers = coin();
    if (coin())
        made.vessel.keel_laid = calendarDateFrom(coin() ? "1999-01-01" : "2016-01-01");
    Door& door = made.site.door;
    door = given::hingedDoor(oneOf(doorKindWords));
    door.fire_class = oneOf(fireClassWords);
    for (Said* member : {&door.power_operated, &door.hold_back, &door.designed_to_reopen,
                         &door.hose_port, &door.escape_route, &door.sill_in_frame, &door.latch,
                         &door.watertight, &door.escape_trunk, &door.special_category})
        *member = coin();
    Boundary& boundary = made.site.boundary;
    boundary.place = oneOf(placeWords);
    boundary.division = oneOf(divisionWords);
    boundary.required.reset();
    if (coin())
        boundary.required = oneOf(fireClassWords);
    boundary.spaces = std::pair(*rc::gen::inRange(1, 12), *rc::gen::inRange(1, 12));
    made.evidence.door = door.number;
    for (const Requirement& row : given::catalogue().rows) {
        if (row.source == Source::Gauge && coin())
            given::measured(made.evidence, row.id,
                            row.high.value_or(row.low.value_or(1)) * *rc::gen::inRange(50, 150) /
                                100.0);
        if (!row.question.empty() && coin())
            given::answer(made.evidence, row.id, oneOf(answerWords));
    }
    for (int runs = *rc::gen::inRange(0, 4); runs > 0; --runs)
        made.evidence.runs.push_back(someRun());
    return made;
}

DoorGrade graded(const Case& each) {
    return grade(each.vessel, each.site.door, &each.site.boundary, each.evidence,
                 given::catalogue());
}

void expectNoBetter(const Case& before, const Case& after, const char* what) {
    const DoorGrade was = graded(before);
    const DoorGrade is = graded(after);
    for (std::size_t i = 0; i < was.rows.size(); ++i)
        if (isWorse(was.rows[i].verdict, is.rows[i].verdict))
            RC_FAIL(std::string(what) + " made " + was.rows[i].requirement->id + " better aboard " +
                    std::string(word(before.vessel.regime)));
    if (isWorse(was.verdict, is.verdict))
        RC_FAIL(std::string(what) + " made the door better");
}

} // namespace

RC_GTEST_PROP(WorseFact, AYesThatBecomesNoBringsNoBetterVerdict, ()) {
    const Case before = someCase();
    RC_PRE(!before.evidence.observations.empty());
    Case after = before;
    auto which = after.evidence.observations.begin();
    std::advance(which, *rc::gen::inRange<std::size_t>(0, after.evidence.observations.size()));
    // What a No takes away it takes away on purpose: an alarm that never sounds is not timed.
    const std::string& row = which->first.first;
    RC_PRE(std::ranges::find(given::catalogue().rows, row, &Requirement::unless_no) ==
           given::catalogue().rows.end());
    which->second.body.answer = Answer::No;
    expectNoBetter(before, after, "a No");
}

RC_GTEST_PROP(WorseFact, AnAnswerTakenAwayBringsNoBetterVerdictThanAYes, ()) {
    Case before = someCase();
    RC_PRE(!before.evidence.observations.empty());
    auto which = before.evidence.observations.begin();
    std::advance(which, *rc::gen::inRange<std::size_t>(0, before.evidence.observations.size()));
    which->second.body.answer = Answer::Yes;
    Case after = before;
    after.evidence.observations.erase(which->first);
    expectNoBetter(before, after, "an answer less");
}

RC_GTEST_PROP(WorseFact, AFigureFurtherOutBringsNoBetterVerdict, ()) {
    const Case before = someCase();
    RC_PRE(!before.evidence.measured.empty());
    Case after = before;
    auto which = after.evidence.measured.begin();
    std::advance(which, *rc::gen::inRange<std::size_t>(0, after.evidence.measured.size()));
    const Requirement& base = given::row(which->first);
    which->second.body.value *= base.check == CheckKind::AtMost ? 1.2 : 0.8;
    expectNoBetter(before, after, "a worse figure");
}

RC_GTEST_PROP(WorseFact, ALowerClassOnTheDoorBringsNoBetterRating, ()) {
    const Case before = someCase();
    RC_PRE(before.site.door.fire_class != FireClass::C);
    Case after = before;
    after.site.door.fire_class = FireClass(int(before.site.door.fire_class) + 1);
    const DoorGrade was = graded(before);
    const DoorGrade is = graded(after);
    for (std::size_t i = 0; i < was.rows.size(); ++i)
        if (was.rows[i].requirement->check == CheckKind::ClassAtLeast)
            RC_ASSERT(!isWorse(was.rows[i].verdict, is.rows[i].verdict));
}

RC_GTEST_PROP(WorseFact, AStricterBoundaryBringsNoBetterRating, ()) {
    Case before = someCase();
    RC_PRE(before.site.boundary.required.value_or(FireClass::A60) != FireClass::A60);
    Case after = before;
    const FireClass was_asked = *before.site.boundary.required;
    const FireClass is_asked = FireClass(int(was_asked) - 1);
    after.site.boundary.required = is_asked;
    if (isAClass(was_asked) == isAClass(is_asked) && isBClass(was_asked) == isBClass(is_asked))
        expectNoBetter(before, after, "a stricter boundary");
    // 46 CFR asks other things of a door in a B-class boundary than in an A-class one.
    const DoorGrade was = graded(before);
    const DoorGrade is = graded(after);
    for (std::size_t i = 0; i < was.rows.size(); ++i)
        if (was.rows[i].requirement->check == CheckKind::ClassAtLeast &&
            was.rows[i].reason.kind != ReasonKind::PlanBelowRule) // the weaker plan is doubted
            RC_ASSERT(!isWorse(was.rows[i].verdict, is.rows[i].verdict));
}

/// One run alone, so that no mean of several hides it; slower or faster, away from the middle.
RC_GTEST_PROP(WorseFact, ATimeFurtherFromTheBandBringsNoBetterVerdict, ()) {
    Case before = someCase();
    const double middle_s = 20;
    const double seconds = *rc::gen::inRange(50, 600) / 10.0;
    const double further = *rc::gen::inRange(1, 100) / 10.0;
    const double worse = seconds > middle_s ? seconds + further : seconds - further;
    RC_PRE(worse > 0.5);
    before.site.door.kind = DoorKind::SingleLeaf;
    const auto closing = [](double time) {
        return std::vector{
            given::run(Release::LetGo, {{MarkKind::LeafMoves, 0}, {MarkKind::Shut, time}})};
    };
    Case after = before;
    before.evidence.runs = closing(seconds);
    after.evidence.runs = closing(worse);
    const DoorGrade was = graded(before);
    const DoorGrade is = graded(after);
    for (std::size_t i = 0; i < was.rows.size(); ++i)
        if (was.rows[i].requirement->id == "hinged-time")
            RC_ASSERT(!isWorse(was.rows[i].verdict, is.rows[i].verdict));
}

TEST(WorseFact, HasRowsToBiteOn) {
    const Requirement& time = given::row("hinged-time");
    EXPECT_LT(*time.low, 20);
    EXPECT_GT(*time.high, 20);
    EXPECT_TRUE(isWorse(Verdict::Unsatisfactory, Verdict::Satisfactory));
}
