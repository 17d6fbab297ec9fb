#include "ui/screens/practice/debrief_sections.h"

#include <algorithm>

#include <QCoreApplication>

#include "core/practice/right_verdict.h"
#include "ui/frames/reading_pane.h"
#include "ui/screens/practice/debrief_row.h"
#include "ui/screens/practice/mark_rows.h"
#include "ui/words/catalogue_words.h"
#include "ui/words/cue_words.h"
#include "ui/words/exercise_words.h"
#include "ui/words/grade_words.h"
#include "ui/words/phrase_words.h"
#include "ui/words/plain_text.h"
#include "ui/words/units.h"
#include "ui/words/verdict_words.h"

namespace latchround::ui {

namespace {

struct DebriefWords {
    Q_DECLARE_TR_FUNCTIONS(DebriefWords)
};

/// The row as it is asked of that door, with the limits of its variant.
const Requirement* askedRow(const VesselSession& session, const practice::FaultCompared& fault) {
    const GradedDoor* door = session.door(QString::fromStdString(fault.door));
    const RowGrade* row = door ? findRow(door->grade, fault.requirement) : nullptr;
    return row ? row->requirement : findRequirement(session.catalogue(), fault.requirement);
}

QString rowAndCitation(const Requirement& row) {
    const QString limit = limitWords(row);
    const QString words = rowWords(row);
    return QStringLiteral("%1%2 · %3")
        .arg(words, limit.isEmpty() ? limit : QStringLiteral(", ") + limit, citationWords(row));
}

DebriefRow* faultRow(const practice::FaultCompared& fault, const VesselSession& session) {
    using practice::Outcome;
    const QString door = QString::fromStdString(fault.door);
    const QString what =
        fault.fault ? faultWords(*fault.fault) : DebriefWords::tr("nothing was wrong here");
    const QString headline =
        QStringLiteral("%1 · %2: %3").arg(door, outcomeWords(fault.outcome), what);
    const auto [shape, ink] =
        fault.outcome == Outcome::Found    ? std::pair(MarkShape::Tick, Ink::Good)
        : fault.outcome == Outcome::Missed ? std::pair(MarkShape::Cross, Ink::Bad)
                                           : std::pair(MarkShape::Dash, Ink::Again);
    auto* row = new DebriefRow(shape, ink, headline);
    if (fault.fault)
        row->addLine(phraseWords(sentence(*fault.fault)));
    if (const Requirement* asked = askedRow(session, fault))
        row->addLine(rowAndCitation(*asked), Ink::Muted, TextSize::Small);
    else if (fault.fault == practice::Fault::PeopleInPath)
        row->addLine(DebriefWords::tr("The right response is to stop. No requirement covers this."),
                     Ink::Muted, TextSize::Small);
    return row;
}

QString figureWords(std::optional<double> figure, std::string_view unit) {
    if (!figure)
        return {};
    const int places = unit == "m/s" ? 3 : unit == "mm" ? 0 : 2;
    return QStringLiteral(", ") + quantityWords(*figure, unit, places);
}

} // namespace

void readFaults(ReadingPane& pane, const practice::Debrief& debrief, const VesselSession& session) {
    using practice::Outcome;
    if (debrief.faults.empty())
        pane.add(DebriefWords::tr("There was no fault, and none was reported."));
    for (const Outcome outcome : {Outcome::Missed, Outcome::Absent, Outcome::Found})
        for (const practice::FaultCompared& fault : debrief.faults)
            if (fault.outcome == outcome)
                pane.add(faultRow(fault, session));
}

void readVerdicts(ReadingPane& pane, const practice::Debrief& debrief) {
    bool any = false;
    for (const practice::VerdictCompared& each : debrief.verdicts) {
        if (practice::isRight(each.given, each.right) || !each.requirement)
            continue;
        any = true;
        const Requirement& asked = *each.requirement;
        auto* row = new DebriefRow(
            each.right,
            QStringLiteral("%1 · %2").arg(QString::fromStdString(each.door), rowWords(asked)));
        row->addLine(DebriefWords::tr("You: %1").arg(
            verdictWords(each.given) + figureWords(each.figure_given, gaugeUnit(asked))));
        row->addLine(
            DebriefWords::tr("Correct: %1")
                .arg(verdictWords(each.right) + figureWords(each.figure_right, gaugeUnit(asked))));
        const QString limit = limitWords(asked);
        row->addLine(limit.isEmpty() ? citationWords(asked)
                                     : limit + QStringLiteral(" · ") + citationWords(asked),
                     Ink::Muted, TextSize::Small);
        pane.add(row);
    }
    if (!any)
        pane.add(DebriefWords::tr("Every check is graded correctly."));
}

void readPeople(ReadingPane& pane, const practice::Debrief& debrief) {
    const bool endangered = debrief.endangered > 0;
    auto* people = new DebriefRow(
        endangered ? MarkShape::Cross : MarkShape::Tick, endangered ? Ink::Bad : Ink::Good,
        !endangered ? DebriefWords::tr("No one was endangered")
        : debrief.endangered == 1
            ? DebriefWords::tr("One person was endangered")
            : DebriefWords::tr("%1 people were endangered").arg(debrief.endangered));
    people->addLine(endangered
                        ? DebriefWords::tr("A leaf reached someone, or would have. Aboard, that is "
                                           "a crushed hand or a death: a power-operated leaf does "
                                           "not know who is in its way.")
                        : DebriefWords::tr("No moving leaf reached anyone."));
    people->addWarning([] {
        return DebriefWords::tr("Watch the opening, not the clock. Stop the moment someone steps "
                                "in: a stopped run costs two minutes.");
    });
    pane.add(people);
    const bool untrue = debrief.cautions_untrue > 0;
    auto* cautions = new DebriefRow(
        untrue ? MarkShape::Cross : MarkShape::Tick, untrue ? Ink::Bad : Ink::Good,
        !untrue ? DebriefWords::tr("Every caution was true when confirmed")
        : debrief.cautions_untrue == 1
            ? DebriefWords::tr("One caution was falsely confirmed")
            : DebriefWords::tr("%1 cautions were falsely confirmed").arg(debrief.cautions_untrue));
    cautions->addWarning([untrue] {
        return untrue ? DebriefWords::tr(
                            "The stopwatch was armed with someone in the way. Look at "
                            "both sides first. Ask people to stand clear. Never confirm a "
                            "caution just to go on.")
                      : DebriefWords::tr("The way was clear each time the stopwatch was armed.");
    });
    pane.add(cautions);
}

void readMarks(ReadingPane& pane, const practice::Debrief& debrief) {
    if (debrief.marks.empty()) {
        pane.add(DebriefWords::tr("Nothing was timed."));
        return;
    }
    pane.add(DebriefWords::tr("Your reaction time in this exercise"), TextSize::Lead, Ink::Plain,
             true);
    const ThumbDrill drill{debrief.delays};
    for (const Word<Cue>& entry : cueWords)
        pane.add(
            QStringLiteral("%1: %2").arg(cueTitle(entry.value), thumbLine(entry.value, drill)));
    pane.add(DebriefWords::tr(
                 "The marks of all your exercises add up. Once there are %1 of a kind, the timing "
                 "drill offers to use them as your own figures in place of the published ones.")
                 .arg(min_trials),
             TextSize::Small, Ink::Muted);
    pane.add(DebriefWords::tr("Each mark against the true time"), TextSize::Lead, Ink::Plain, true);
    const LateScale scale = scaleOf(debrief.marks);
    for (const practice::MarkCompared& mark : debrief.marks)
        pane.add(new MarkRow(mark, scale));
}

} // namespace latchround::ui
