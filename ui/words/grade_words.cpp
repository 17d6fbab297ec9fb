#include "ui/words/grade_words.h"

#include <algorithm>
#include <cmath>

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

#include "ui/words/catalogue_words.h"
#include "ui/words/offered.h"
#include "ui/words/phrase_words.h"
#include "ui/words/units.h"

namespace latchround::ui {
namespace {

struct GradeWords {
    Q_DECLARE_TR_FUNCTIONS(GradeWords)
};

QString count(const char* text, int n) {
    return GradeWords::tr(text).arg(n);
}

QString plainFigure(double value) {
    return QLocale().toString(value, 'g', 6);
}

QString withUnit(const QString& figure, const QString& unit) {
    return inOnePiece(unit.isEmpty() ? figure : figure + QChar(0x00a0) + unit);
}

/// As the text has it.
QString limitInText(const Requirement& requirement) {
    const InTextUnits text;
    const auto figure = [unit = unitInUse(requirement.unit)](double value) {
        return withUnit(plainFigure(value), unit);
    };
    if (requirement.low && requirement.high)
        return GradeWords::tr("%1 to %2")
            .arg(plainFigure(*requirement.low), figure(*requirement.high));
    // Of one limit the text may print two figures that differ.
    const auto printed = [&](double value, const std::optional<double>& also) {
        return also ? GradeWords::tr("%1 or %2").arg(plainFigure(value), figure(*also))
                    : figure(value);
    };
    if (requirement.high)
        return GradeWords::tr("at most %1").arg(printed(*requirement.high, requirement.high_also));
    if (requirement.low)
        return GradeWords::tr("at least %1").arg(printed(*requirement.low, requirement.low_also));
    return {};
}

/// Places after the point that leave two figures of the uncertainty; three at most: no thumb times
/// finer.
int placesFor(double expanded) {
    if (!(expanded > 0))
        return 2;
    return std::clamp(1 - int(std::floor(std::log10(expanded))), 0, 3);
}

double roundedUp(double value, int places) {
    const double scale = std::pow(10.0, places);
    return std::ceil(value * scale - 1e-9) / scale;
}

QString givenReason(const Reason& reason) {
    return reason.said.empty() ? GradeWords::tr("no reason given") : wordingWords(reason.said);
}

/// As if nothing had been decided before.
QString plainReason(const Reason& reason) {
    const QString text = holdsCatalogueWords(reason.kind) ? catalogueWords(reason.text.text)
                                                          : phraseWords(reason.text);
    const QString given = givenReason(reason);
    // Of advice nothing is left to decide.
    const QString end =
        reason.of_advice ? GradeWords::tr("%1: advice only") : GradeWords::tr("%1: you decide");
    switch (reason.kind) {
    case ReasonKind::NotAsked:
        return GradeWords::tr("does not apply to this door");
    case ReasonKind::ExcusedByAnswer:
        return GradeWords::tr("does not apply: see the answer to “%1”").arg(text);
    case ReasonKind::AnsweredNotAsked:
        return GradeWords::tr(
                   "does not apply to this door (%1): what is recorded here does not count")
            .arg(text);
    case ReasonKind::OtherDates:
        return end.arg(
            GradeWords::tr("fails, but the text is not shown to apply here (%1)").arg(text));
    case ReasonKind::TextLeavesOpen:
        return (reason.of_advice
                    ? GradeWords::tr("not met, but this is advice only: %1")
                    : GradeWords::tr("fails, but the text leaves it open; you decide: %1"))
            .arg(text);
    case ReasonKind::OutsideThisWalk:
        return GradeWords::tr("not tested on this walkdown: %1").arg(text);
    case ReasonKind::NotYetTested:
        return GradeWords::tr("not yet tested");
    case ReasonKind::OneSideMissing:
        return GradeWords::tr("one side still to be tested");
    case ReasonKind::OneSideLeftOut:
        return end.arg(GradeWords::tr("one side was answered n/a, but the text requires both"));
    case ReasonKind::CouldNotTest:
        return GradeWords::tr("could not be tested: %1").arg(given);
    case ReasonKind::AnsweredYes:
        return GradeWords::tr("checked: met");
    case ReasonKind::AnsweredNo:
        return GradeWords::tr("checked: not met");
    case ReasonKind::AnsweredNotApplicable:
        return GradeWords::tr("answered n/a for this door");
    case ReasonKind::ToldNo:
        return GradeWords::tr("checked: another kind of door");
    case ReasonKind::ShownByRun:
        return GradeWords::tr("shown by a complete run");
    case ReasonKind::InsideLimits:
        return reason.runs > 1
                   ? GradeWords::tr("inside the limits, mean of %1 runs").arg(reason.runs)
                   : GradeWords::tr("inside the limits");
    case ReasonKind::OutsideLimits:
        return reason.runs > 1
                   ? GradeWords::tr("outside the limits, mean of %1 runs").arg(reason.runs)
                   : GradeWords::tr("outside the limits");
    case ReasonKind::OnTheLimit:
        return GradeWords::tr("on the limit");
    case ReasonKind::BeyondByLessThanAStep:
        return end.arg(
            GradeWords::tr("beyond the limit by less than one step of the instrument (%1)")
                .arg(text));
    case ReasonKind::BetweenTwoFigures:
        return end.arg(
            GradeWords::tr("between the two figures printed in the text (%1)").arg(text));
    case ReasonKind::WithinMargin:
        return end.arg(
            GradeWords::tr("outside a band that the text calls approximate, %1").arg(text));
    case ReasonKind::TooCloseToLimit:
        return GradeWords::tr("too close to the limit to call: time again");
    case ReasonKind::StillCloseAfterThree:
        return end.arg(GradeWords::tr("still too close to a limit after %1 runs").arg(reason.runs));
    case ReasonKind::ForceTooLow:
        return end.arg(GradeWords::tr("closing force below what the leaf's weight alone needs (%1)")
                           .arg(text));
    case ReasonKind::FasterThanALeaf:
        return GradeWords::tr("shut faster than a leaf can move: marked by mistake? Make another "
                              "run");
    case ReasonKind::StillCloseToApproximate:
        return end.arg(
            GradeWords::tr("still too close to a limit after %1 runs; the text says approximate")
                .arg(reason.runs));
    case ReasonKind::RunsDisagree:
        return GradeWords::tr("closes unevenly: %1 runs do not agree; the worst counts")
            .arg(reason.runs);
    case ReasonKind::AlarmsDisagree:
        return GradeWords::tr("the alarm varies: %1 runs do not agree; the worst counts")
            .arg(reason.runs);
    case ReasonKind::UnevenHalves:
        return GradeWords::tr(
            "one half of the travel is outside the limits: is it roughly uniform?");
    case ReasonKind::ShipNotUpright:
        return GradeWords::tr("heel %1 degrees: the figure is advice only; time it again upright")
            .arg(QLocale().toString(reason.heel_deg, 'f', 1));
    case ReasonKind::ClassSuits:
    case ReasonKind::PlateAgrees:
        return text;
    case ReasonKind::ClassTooLow:
        return GradeWords::tr("class too low for its boundary: %1").arg(text);
    case ReasonKind::ClassNotOfShip:
        return GradeWords::tr("class too low by tables not shown to apply to this ship: %1; ask "
                              "for the approved drawing")
            .arg(text);
    case ReasonKind::ClassOverTanks:
        return GradeWords::tr("class too low for its boundary, unless oil fuel tanks are below: %1")
            .arg(text);
    case ReasonKind::BoundaryClassUnknown:
        return GradeWords::tr("%1; the register does not give the boundary's class: see the "
                              "approved fire plan or ask the Administration")
            .arg(text);
    case ReasonKind::NoValuePrinted:
        return GradeWords::tr("%1; no value printed: ask the Administration").arg(text);
    case ReasonKind::NoClassAsked:
        return GradeWords::tr("%1; no fire class is required here").arg(text);
    case ReasonKind::PlateDiffers:
        return GradeWords::tr("they differ: %1").arg(text);
    case ReasonKind::PlateMissing:
        return GradeWords::tr("%1: ask for the certificate").arg(text);
    case ReasonKind::UsageNotMet:
        return GradeWords::tr("common practice is not met: you decide whether that is acceptable");
    case ReasonKind::InspectorDecided:
        return GradeWords::tr("decided by the inspector: %1").arg(given);
    case ReasonKind::NeedsRemoteRun:
        return GradeWords::tr("needs a run released from the control station");
    case ReasonKind::MarkMissing:
        return GradeWords::tr("run completed, but not every event was marked");
    case ReasonKind::NoRunComplete:
        return GradeWords::tr("run started, but none completed");
    case ReasonKind::AlarmAfterClosing:
        return GradeWords::tr("the alarm did not come on until the door was shut");
    case ReasonKind::NoSuchCase:
        return end.arg(GradeWords::tr("answered n/a, but the text has no such case"));
    case ReasonKind::CaseNotShown:
        return end.arg(GradeWords::tr("answered n/a, but the register does not show that case"));
    case ReasonKind::PlanBelowRule:
        return GradeWords::tr("the approved plan has no A class where the rule requires one: %1")
            .arg(text);
    case ReasonKind::AlarmNotMarked:
        return GradeWords::tr("released from the control station, but no alarm was marked");
    case ReasonKind::EventsInOrder:
        return GradeWords::tr("the alarm was still on when the door was shut");
    case ReasonKind::EventsOutOfOrder:
        return GradeWords::tr("the alarm stopped before the door was shut");
    case ReasonKind::OpeningUnknown:
        return GradeWords::tr("the clear opening of this door is not in the register");
    }
    return {};
}

} // namespace

QString measuredWords(const RowGrade& row) {
    if (!row.figure || row.requirement == nullptr)
        return {};
    const std::string unit = gaugeUnit(*row.requirement);
    const Shown value = inUse(row.figure->value, unit, 0);
    const double edge = inUse(expanded(*row.figure), unit, 0).value;
    if (!(edge > 0))
        return withUnit(plainFigure(value.value), value.unit);
    const int places = placesFor(edge);
    const QLocale locale;
    return withUnit(
        QStringLiteral("%1 ± %2").arg(locale.toString(value.value, 'f', places),
                                      locale.toString(roundedUp(edge, places), 'f', places)),
        value.unit);
}

QString limitWords(const Requirement& requirement) {
    QString limit = limitInText(requirement);
    if (limit.isEmpty() || alsoWords(0, requirement.unit, 0).isEmpty())
        return limit;
    // The same in the unit in use; three figures are finer than anybody reads a tape.
    const auto also = [&](double value) {
        return QLocale().toString(inUse(value, requirement.unit, 0).value, 'g', 3);
    };
    const QString same =
        requirement.low && requirement.high
            ? GradeWords::tr("%1 to %2").arg(also(*requirement.low), also(*requirement.high))
            : also(requirement.high ? *requirement.high : *requirement.low);
    return QStringLiteral("%1 (%2)").arg(limit, withUnit(same, unitInUse(requirement.unit)));
}

QString reasonWords(const Reason& reason) {
    const QString why = plainReason(reason);
    if (reason.of_advice) // of which nothing is decided
        return why;
    switch (reason.overtaken) {
    case Overtaken::Nothing:
        break;
    case Overtaken::Answer:
        return GradeWords::tr("%1; the answer was recorded before this run").arg(why);
    case Overtaken::Decision:
        if (reason.kind == ReasonKind::InspectorDecided)
            return GradeWords::tr("%1; a newer entry has been made since: it stays unsatisfactory "
                                  "until you decide again")
                .arg(why);
        return GradeWords::tr(
                   "%1; the earlier decision (satisfactory: %2) was made before a newer entry")
            .arg(why, givenReason(reason));
    }
    return why;
}

std::string reasonText(const Reason& reason) {
    return reasonWords(reason).toStdString();
}

QString citeWords(const Requirement& requirement) {
    return requirement.status == Status::Usage ? statusWords(requirement.status)
                                               : QString::fromStdString(requirement.cite);
}

QString citationWords(const Requirement& requirement) {
    QString cite = citeWords(requirement);
    if (requirement.edition.empty())
        return cite;
    return GradeWords::tr("%1, edition %2").arg(cite, QString::fromStdString(requirement.edition));
}

QString statusWords(Status status) {
    switch (status) {
    case Status::Read:
        return GradeWords::tr("checked against the text");
    case Status::Usage:
        return GradeWords::tr("common practice, no published source");
    case Status::Advice:
        return GradeWords::tr("advice, never a reason to fail a door");
    }
    return {};
}

QString settleWords(const RowGrade& row) {
    switch (row.verdict) {
    case Verdict::Unsatisfactory:
        return GradeWords::tr("rectify it, then test it again");
    case Verdict::Judge:
        return GradeWords::tr("your decision, with a reason");
    case Verdict::TimeAgain:
        return GradeWords::tr("one more run; three at most, then you decide");
    case Verdict::Untested:
        break;
    default:
        return {};
    }
    switch (row.reason.kind) {
    case ReasonKind::OneSideMissing:
        return GradeWords::tr("test it from the other side");
    case ReasonKind::NeedsRemoteRun:
        return GradeWords::tr("a run released from the control station");
    case ReasonKind::NoRunComplete:
    case ReasonKind::MarkMissing:
        return GradeWords::tr("another run");
    case ReasonKind::AlarmNotMarked:
        return GradeWords::tr("record whether the alarm sounded, or run it again");
    case ReasonKind::FasterThanALeaf:
        return GradeWords::tr("another run");
    case ReasonKind::OpeningUnknown:
        return GradeWords::tr("measure the clear opening");
    case ReasonKind::ShipNotUpright:
        return GradeWords::tr("time it with the ship upright");
    case ReasonKind::CouldNotTest:
        return GradeWords::tr("come back when it can be tested");
    default:
        return GradeWords::tr("test it at the door");
    }
}

QString countLine(const DoorGrade& grade) {
    QStringList parts;
    const auto add = [&parts](const char* text, int n) {
        if (n > 0)
            parts << count(text, n);
    };
    add(QT_TRANSLATE_NOOP("GradeWords", "%1 unsatisfactory"),
        countOf(grade, Verdict::Unsatisfactory));
    add(QT_TRANSLATE_NOOP("GradeWords", "%1 undecided"),
        countOf(grade, Verdict::Judge) + countOf(grade, Verdict::TimeAgain));
    add(QT_TRANSLATE_NOOP("GradeWords", "%1 untested"), countOf(grade, Verdict::Untested));
    if (parts.isEmpty())
        add(QT_TRANSLATE_NOOP("GradeWords", "all %1 satisfactory"),
            countOf(grade, Verdict::Satisfactory));
    return parts.isEmpty() ? GradeWords::tr("no checks") : parts.join(QStringLiteral(", "));
}

QString severityWords(Severity severity) {
    switch (severity) {
    case Severity::Critical:
        return GradeWords::tr("critical: fire or smoke passes, or a person can be hurt");
    case Severity::Serious:
        return GradeWords::tr("serious: the door does not do what is required");
    case Severity::Minor:
        break;
    }
    return GradeWords::tr("minor: maintenance and marking");
}

QString boundaryClassWords(const DoorClass& asked) {
    const auto text = [](FireClass value) {
        return QString::fromStdString(std::string(word(value)));
    };
    switch (asked.kind) {
    case DoorClass::Kind::Class:
        return *asked.door == *asked.division
                   ? text(*asked.division)
                   : GradeWords::tr("%1 (door %2)").arg(text(*asked.division), text(*asked.door));
    case DoorClass::Kind::Free:
        return GradeWords::tr("no class");
    case DoorClass::Kind::NotPrinted:
        return GradeWords::tr("not printed");
    case DoorClass::Kind::NotKnown:
        break;
    }
    return GradeWords::tr("not known");
}

QString boundarySourceWords(const DoorClass& asked) {
    QString words = boundaryClassWords(asked);
    if (asked.from_plan)
        return GradeWords::tr("%1 by the approved plan").arg(words);
    if (asked.kind == DoorClass::Kind::NotKnown)
        return words;
    const RequiredClass& rule = asked.by_rule;
    const QString by = rule.cell ? QStringLiteral("%1, %2-%3")
                                       .arg(QString::fromStdString(rule.table->name))
                                       .arg(rule.spaces.first)
                                       .arg(rule.spaces.second)
                                 : QString::fromStdString(citeOf(rule));
    return GradeWords::tr("%1 by %2").arg(words, by);
}

} // namespace latchround::ui
