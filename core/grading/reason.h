// Why a row has its verdict: a kind and what it speaks of. Worded in ui/words/grade_words.h.
#pragma once

#include "core/evidence/wording.h"
#include "core/phrase/phrase.h"

namespace latchround {

enum class ReasonKind {
    NotAsked,        ///< the row does not apply
    OutsideThisWalk, ///< nothing is recorded, and a walk of this purpose does not try it (text)
    NotYetTested,    ///< no evidence
    OneSideMissing,  ///< both sides asked, one answered
    CouldNotTest,    ///< a reason was given (said)
    AnsweredYes,
    AnsweredNo,
    AnsweredNotApplicable,
    ShownByRun, ///< a complete run says as much as a yes
    InsideLimits,
    OutsideLimits,
    TooCloseToLimit, ///< the uncertainty covers a limit
    StillCloseAfterThree,
    RunsDisagree,   ///< closes unevenly: the worst run stands
    UnevenHalves,   ///< half-way mark shows a half outside the band
    ShipNotUpright, ///< heel over 1 degree: the time is advice
    ClassSuits,
    ClassTooLow,
    BoundaryClassUnknown,
    NoValuePrinted, ///< the table's cell is blank: ask the Administration
    NoClassAsked,   ///< steel or equivalent, or nothing
    PlateAgrees,
    PlateDiffers,
    PlateMissing,     ///< none or illegible: ask for the certificate
    PracticeNotMet,   ///< common practice without a source: the inspector decides
    InspectorDecided, ///< a judgement with its reason (said)
    NeedsRemoteRun,   ///< only a remote release can show it
    EventsInOrder,
    EventsOutOfOrder,
    OpeningUnknown ///< a rate needs the clear opening
};

struct Reason {
    ReasonKind kind = ReasonKind::NotYetTested;
    Phrase text;         ///< what belongs to it: the classes compared
    int runs = 0;        ///< how many runs the figure comes from
    double heel_deg = 0; ///< for ShipNotUpright
    Wording said{};      ///< by a person
};

} // namespace latchround
