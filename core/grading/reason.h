// Why a row has its verdict: a kind and what it speaks of. Worded in ui/words/grade_words.h.
#pragma once

#include "core/evidence/wording.h"
#include "core/phrase/phrase.h"

namespace latchround {

enum class ReasonKind {
    NotAsked,         ///< the row does not apply
    ExcusedByAnswer,  ///< an answer to another row (text) says that this one is not for the door
    AnsweredNotAsked, ///< something is recorded for it though it is not asked (text: why not)
    OtherDates,       ///< fails, but its text was not read for ships of this date (text)
    TextLeavesOpen,   ///< fails, but the text does not settle whether it must (text)
    OutsideThisWalk,  ///< nothing is recorded, and a walk of this purpose does not try it (text)
    NotYetTested,     ///< no evidence
    OneSideMissing,   ///< both sides asked, one answered
    OneSideLeftOut,   ///< both sides asked, one said not to apply
    CouldNotTest,     ///< a reason was given (said)
    AnsweredYes,
    AnsweredNo,
    AnsweredNotApplicable,
    NoSuchCase,   ///< answered not applicable, of which its text says nothing
    CaseNotShown, ///< the same, where the text has the case and the register does not show it
    ToldNo,       ///< the answer says what the door is, and is no fault
    ShownByRun,   ///< a complete run says as much as a yes
    InsideLimits,
    OutsideLimits,
    OnTheLimit,            ///< within half a step of the instrument, and not beyond
    BeyondByLessThanAStep, ///< of the instrument (text: the step)
    BetweenTwoFigures,     ///< that the text prints for one limit (text)
    WithinMargin,    ///< outside a band that is approximate, no further than its margin (text)
    TooCloseToLimit, ///< the uncertainty covers a limit
    StillCloseAfterThree,
    StillCloseToApproximate, ///< the same where the text says "approximate"
    ForceTooLow,             ///< a closing force below what the leaf's weight takes (text)
    FasterThanALeaf,         ///< marked as home faster than a leaf can move: the marks are doubted
    RunsDisagree,            ///< closes unevenly: the worst run stands
    AlarmsDisagree,          ///< the alarm differs from run to run: the worst stands
    UnevenHalves,            ///< half-way mark shows a half outside the band
    ShipNotUpright,          ///< heel over 1 degree: the time is advice
    ClassSuits,
    ClassTooLow,
    PlanBelowRule,  ///< the approved plan has no A class where the rule asks for one
    ClassNotOfShip, ///< too low by tables that are not shown to be this ship's
    ClassOverTanks, ///< too low, but not where oil fuel tanks lie below
    BoundaryClassUnknown,
    NoValuePrinted, ///< the table's cell is blank: ask the Administration
    NoClassAsked,   ///< steel or equivalent, or nothing
    PlateAgrees,
    PlateDiffers,
    PlateMissing,     ///< none or illegible: ask for the certificate
    UsageNotMet,      ///< common practice without a source: the inspector decides
    InspectorDecided, ///< a judgement with its reason (said)
    NeedsRemoteRun,   ///< only a remote release can show it
    AlarmNotMarked,   ///< released from the control station, and no alarm was marked
    MarkMissing,      ///< run to its end without an event that the row needs
    NoRunComplete,    ///< begun, and none came to its end
    EventsInOrder,
    EventsOutOfOrder,
    AlarmAfterClosing, ///< it came on only when the door was shut
    OpeningUnknown     ///< a rate needs the clear opening
};

/// The text that belongs to it is words of the data, in English.
constexpr bool holdsCatalogueWords(ReasonKind kind) {
    return kind == ReasonKind::ExcusedByAnswer || kind == ReasonKind::TextLeavesOpen ||
           kind == ReasonKind::OutsideThisWalk;
}

/// What was said of the row before the newest that it reads.
enum class Overtaken {
    Nothing,
    Answer,  ///< that an alarm sounded
    Decision ///< by the inspector (said): may be decided anew, and must be where it was good
};

struct Reason {
    ReasonKind kind = ReasonKind::NotYetTested;
    Phrase text;         ///< what belongs to it: the classes compared
    int runs = 0;        ///< how many runs the figure comes from
    double heel_deg = 0; ///< for ShipNotUpright
    Wording said{};      ///< by a person
    Overtaken overtaken = Overtaken::Nothing;
    bool of_advice = false; ///< the row is advice: nothing is left to decide
};

} // namespace latchround
