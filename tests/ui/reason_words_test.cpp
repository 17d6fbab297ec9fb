// Every reason of a verdict in plain English, typed here anew.
#include <gmock/gmock.h>

#include "core/grading/reason_phrases.h"
#include "tests/ui/print_to.h"
#include "ui/words/door_words.h"
#include "ui/words/grade_words.h"
#include "ui/words/run_words.h"

namespace latchround::ui {
namespace {

struct ReasonSaid {
    ReasonKind kind;
    const char* english;                ///< %1 for what the reason holds
    const char* without_text = nullptr; ///< where something else is said then
    const char* of_one_run = nullptr;
};

constexpr auto all_reasons = std::to_array<ReasonSaid>({
    {ReasonKind::NotAsked, "does not apply to this door"},
    {ReasonKind::ExcusedByAnswer, "does not apply: see the answer to “%1”"},
    {ReasonKind::AnsweredNotAsked,
     "does not apply to this door (%1): what is recorded here does not count"},
    {ReasonKind::OtherDates, "fails, but the text is not shown to apply here (%1): you decide"},
    {ReasonKind::TextLeavesOpen, "fails, but the text leaves it open; you decide: %1"},
    {ReasonKind::OutsideThisWalk, "not tested on this walkdown: %1"},
    {ReasonKind::NotYetTested, "not yet tested"},
    {ReasonKind::OneSideMissing, "one side still to be tested"},
    {ReasonKind::OneSideLeftOut,
     "one side was answered n/a, but the text requires both: you decide"},
    {ReasonKind::CouldNotTest, "could not be tested: %1", "could not be tested: no reason given"},
    {ReasonKind::AnsweredYes, "checked: met"},
    {ReasonKind::AnsweredNo, "checked: not met"},
    {ReasonKind::AnsweredNotApplicable, "answered n/a for this door"},
    {ReasonKind::NoSuchCase, "answered n/a, but the text has no such case: you decide"},
    {ReasonKind::CaseNotShown,
     "answered n/a, but the register does not show that case: you decide"},
    {ReasonKind::ToldNo, "checked: another kind of door"},
    {ReasonKind::ShownByRun, "shown by a complete run"},
    {ReasonKind::InsideLimits, "inside the limits, mean of 3 runs", nullptr, "inside the limits"},
    {ReasonKind::OutsideLimits, "outside the limits, mean of 3 runs", nullptr,
     "outside the limits"},
    {ReasonKind::OnTheLimit, "on the limit"},
    {ReasonKind::BeyondByLessThanAStep,
     "beyond the limit by less than one step of the instrument (%1): you decide"},
    {ReasonKind::BetweenTwoFigures, "between the two figures printed in the text (%1): you decide"},
    {ReasonKind::WithinMargin, "outside a band that the text calls approximate, %1: you decide"},
    {ReasonKind::TooCloseToLimit, "too close to the limit to call: time again"},
    {ReasonKind::StillCloseAfterThree, "still too close to a limit after 3 runs: you decide"},
    {ReasonKind::StillCloseToApproximate,
     "still too close to a limit after 3 runs; the text says approximate: you decide"},
    {ReasonKind::ForceTooLow,
     "closing force below what the leaf's weight alone needs (%1): you decide"},
    {ReasonKind::FasterThanALeaf,
     "shut faster than a leaf can move: marked by mistake? Make another run"},
    {ReasonKind::RunsDisagree, "closes unevenly: 3 runs do not agree; the worst counts"},
    {ReasonKind::AlarmsDisagree, "the alarm varies: 3 runs do not agree; the worst counts"},
    {ReasonKind::UnevenHalves,
     "one half of the travel is outside the limits: is it roughly uniform?"},
    {ReasonKind::ShipNotUpright,
     "heel 1.5 degrees: the figure is advice only; time it again upright"},
    {ReasonKind::ClassSuits, "%1"},
    {ReasonKind::ClassTooLow, "class too low for its boundary: %1"},
    {ReasonKind::PlanBelowRule, "the approved plan has no A class where the rule requires one: %1"},
    {ReasonKind::ClassNotOfShip,
     "class too low by tables not shown to apply to this ship: %1; ask for the approved drawing"},
    {ReasonKind::ClassOverTanks,
     "class too low for its boundary, unless oil fuel tanks are below: %1"},
    {ReasonKind::BoundaryClassUnknown,
     "%1; the register does not give the boundary's class: see the approved fire plan or ask the "
     "Administration"},
    {ReasonKind::NoValuePrinted, "%1; no value printed: ask the Administration"},
    {ReasonKind::NoClassAsked, "%1; no fire class is required here"},
    {ReasonKind::PlateAgrees, "%1"},
    {ReasonKind::PlateDiffers, "they differ: %1"},
    {ReasonKind::PlateMissing, "%1: ask for the certificate"},
    {ReasonKind::UsageNotMet, "common practice is not met: you decide whether that is acceptable"},
    {ReasonKind::InspectorDecided, "decided by the inspector: %1",
     "decided by the inspector: no reason given"},
    {ReasonKind::NeedsRemoteRun, "needs a run released from the control station"},
    {ReasonKind::AlarmNotMarked, "released from the control station, but no alarm was marked"},
    {ReasonKind::MarkMissing, "run completed, but not every event was marked"},
    {ReasonKind::NoRunComplete, "run started, but none completed"},
    {ReasonKind::EventsInOrder, "the alarm was still on when the door was shut"},
    {ReasonKind::EventsOutOfOrder, "the alarm stopped before the door was shut"},
    {ReasonKind::AlarmAfterClosing, "the alarm did not come on until the door was shut"},
    {ReasonKind::OpeningUnknown, "the clear opening of this door is not in the register"},
});

TEST(CoreInEnglish, EveryReasonIsSaidInPlainWords) {
    ASSERT_EQ(all_reasons.size(), std::size_t(ReasonKind::OpeningUnknown) + 1);
    for (std::size_t i = 0; i < all_reasons.size(); ++i) {
        const ReasonSaid& said = all_reasons[i];
        EXPECT_EQ(std::size_t(said.kind), i);
        const auto expected = [](const char* english, const char* text) {
            return QString::fromUtf8(english).replace("%1", text).toStdString();
        };
        const bool is_of_a_person = said.without_text != nullptr;
        const auto reason = [&](const char* words) {
            return is_of_a_person ? Reason{said.kind, {}, 3, 1.5, words}
                                  : Reason{said.kind, words, 3, 1.5};
        };
        EXPECT_EQ(reasonText(reason("magnet, as found")),
                  expected(said.english, "magnet, as found"));
        if (!holdsCatalogueWords(said.kind) && !is_of_a_person) {
            EXPECT_EQ(reasonText({said.kind, reason::plate("A-60"), 3, 1.5}),
                      expected(said.english, "plate A-60"));
        }
        EXPECT_EQ(reasonText(reason("")),
                  is_of_a_person ? std::string(said.without_text) : expected(said.english, ""));
        if (said.of_one_run) {
            EXPECT_EQ(reasonText({said.kind, {}, 1, 1.5}), said.of_one_run);
        }
    }
}

TEST(CoreInEnglish, AReasonShowsTheDecisionThatANewerEntryOvertook) {
    Reason reason{ReasonKind::BeyondByLessThanAStep, "1 mm", 1, 0, "rule worn"};
    reason.overtaken = Overtaken::Decision;
    EXPECT_EQ(reasonText(reason),
              "beyond the limit by less than one step of the instrument (1 mm): you decide; the "
              "earlier decision (satisfactory: rule worn) was made before a newer entry");
    Reason bad{ReasonKind::InspectorDecided, {}, 0, 0, "too wide"};
    bad.overtaken = Overtaken::Decision;
    EXPECT_EQ(reasonText(bad),
              "decided by the inspector: too wide; a newer entry has been made since: it stays "
              "unsatisfactory until you decide again");
    Reason answered;
    answered.kind = ReasonKind::AlarmNotMarked;
    answered.overtaken = Overtaken::Answer;
    EXPECT_EQ(reasonText(answered),
              "released from the control station, but no alarm was marked; the answer was recorded "
              "before this run");
}

TEST(CoreInEnglish, AVoidRunNamesTheMarkThatItLacks) {
    RunRecord run;
    run.end = RunEnded{{}, RunOutcome::Void, {}};
    run.unmarked = MarkKind::SecondLeafHome;
    EXPECT_EQ(runWords(run, {}).toStdString(),
              "void: “" + markWords(MarkKind::SecondLeafHome).toLower().toStdString() +
                  "” was not marked");
}

// Advice cannot be decided: no key offers it, and no verdict hangs on it.
TEST(CoreInEnglish, OfAdviceNothingIsLeftToDecide) {
    const auto of_advice = [](ReasonKind kind) {
        Reason reason{kind, "a plate", 3, 1.5};
        reason.of_advice = true;
        return reasonText(reason);
    };
    EXPECT_EQ(of_advice(ReasonKind::TextLeavesOpen), "not met, but this is advice only: a plate");
    EXPECT_EQ(of_advice(ReasonKind::NoSuchCase),
              "answered n/a, but the text has no such case: advice only");
    for (const ReasonSaid& said : all_reasons)
        if (said.kind != ReasonKind::UsageNotMet) { // no common practice is advice
            EXPECT_THAT(of_advice(said.kind), testing::Not(testing::HasSubstr("decide:")));
            EXPECT_THAT(of_advice(said.kind), testing::Not(testing::HasSubstr("you decide")));
        }
}

} // namespace
} // namespace latchround::ui
