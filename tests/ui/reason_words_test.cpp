// Every reason of a verdict in plain English, typed here anew.
#include <gtest/gtest.h>

#include "core/grading/reason_phrases.h"
#include "tests/ui/print_to.h"
#include "ui/words/grade_words.h"

namespace latchround::ui {
namespace {

struct ReasonSaid {
    ReasonKind kind;
    const char* english;                ///< %1 for what the reason holds
    const char* without_text = nullptr; ///< where something else is said then
    const char* of_one_run = nullptr;
};

constexpr auto all_reasons = std::to_array<ReasonSaid>({
    {ReasonKind::NotAsked, "not asked of this door"},
    {ReasonKind::ExcusedByAnswer, "not asked: see the answer to “%1”"},
    {ReasonKind::AnsweredNotAsked,
     "not asked of this door (%1): what is recorded here does not count"},
    {ReasonKind::OtherDates, "fails, but the text is not shown to bind here (%1): you decide"},
    {ReasonKind::TextLeavesOpen, "fails, but the text leaves it open, you decide: %1"},
    {ReasonKind::OutsideThisWalk, "not tried on this walk: %1"},
    {ReasonKind::NotYetTested, "not yet tried"},
    {ReasonKind::OneSideMissing, "one side still to be tried"},
    {ReasonKind::OneSideLeftOut,
     "one side was answered n/a, and the text asks for both: you decide"},
    {ReasonKind::CouldNotTest, "could not be tested: %1", "could not be tested: no reason given"},
    {ReasonKind::AnsweredYes, "seen"},
    {ReasonKind::AnsweredNo, "seen, and it is not so"},
    {ReasonKind::AnsweredNotApplicable, "answered as not applicable to this door"},
    {ReasonKind::NoSuchCase, "answered n/a, and the text has no such case: you decide"},
    {ReasonKind::ToldNo, "seen, and it is another kind of door"},
    {ReasonKind::ShownByRun, "shown by a complete run"},
    {ReasonKind::InsideLimits, "inside the limits, mean of 3 runs", nullptr, "inside the limits"},
    {ReasonKind::OutsideLimits, "outside the limits, mean of 3 runs", nullptr,
     "outside the limits"},
    {ReasonKind::OnTheLimit, "on the limit"},
    {ReasonKind::BeyondByLessThanAStep,
     "beyond the limit by less than one step of the instrument (%1): you decide"},
    {ReasonKind::BetweenTwoFigures,
     "between the two figures that the text prints (%1): you decide"},
    {ReasonKind::WithinMargin, "outside a band that the text calls approximate, %1: you decide"},
    {ReasonKind::TooCloseToLimit, "a limit lies inside the uncertainty: measure once more"},
    {ReasonKind::StillCloseAfterThree, "still too close to a limit after 3 runs: you decide"},
    {ReasonKind::StillCloseToApproximate,
     "still too close to a limit after 3 runs: the text says approximate, you decide"},
    {ReasonKind::FasterThanALeaf,
     "shut faster than a leaf can move, a slip of the finger? Make another run, or decide"},
    {ReasonKind::RunsDisagree, "closes unevenly: 3 runs do not agree, the worst stands"},
    {ReasonKind::AlarmsDisagree, "the alarm differs: 3 runs do not agree, the worst stands"},
    {ReasonKind::UnevenHalves, "one half of the travel lies outside the limits: roughly uniform?"},
    {ReasonKind::ShipNotUpright,
     "heel 1.5 degrees: the figure is advice only, time it again upright"},
    {ReasonKind::ClassSuits, "%1"},
    {ReasonKind::ClassTooLow, "weaker than its boundary: %1"},
    {ReasonKind::PlanBelowRule, "the approved plan has no A class where the rule asks for one: %1"},
    {ReasonKind::ClassNotOfShip,
     "weaker by tables that are not shown to be this ship's: %1; ask for the approved drawing"},
    {ReasonKind::ClassOverTanks, "weaker than its boundary, unless oil fuel tanks lie below: %1"},
    {ReasonKind::BoundaryClassUnknown,
     "%1; the register does not say what the boundary asks for: see the approved fire plan or ask "
     "the Administration"},
    {ReasonKind::NoValuePrinted, "%1; no value printed: ask the Administration"},
    {ReasonKind::NoClassAsked, "%1; no fire class is asked here"},
    {ReasonKind::PlateAgrees, "%1"},
    {ReasonKind::PlateDiffers, "they differ: %1"},
    {ReasonKind::PlateMissing, "%1: ask for the certificate"},
    {ReasonKind::PracticeNotMet,
     "not as good practice has it: you decide whether the door may stay so"},
    {ReasonKind::InspectorDecided, "decided by the inspector: %1",
     "decided by the inspector: no reason given"},
    {ReasonKind::NeedsRemoteRun, "needs a run released from the control station"},
    {ReasonKind::AlarmNotMarked, "released from the control station, and no alarm was marked"},
    {ReasonKind::MarkMissing, "run to its end, but not every event was marked"},
    {ReasonKind::NoRunComplete, "a run was begun, and none came to its end"},
    {ReasonKind::EventsInOrder, "the alarm was still on when the door was shut"},
    {ReasonKind::EventsOutOfOrder, "the alarm stopped before the door was shut"},
    {ReasonKind::AlarmAfterClosing, "the alarm came on only when the door was shut"},
    {ReasonKind::OpeningUnknown, "the register has no clear opening for this door"},
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

} // namespace
} // namespace latchround::ui
