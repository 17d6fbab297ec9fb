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

} // namespace

QString measuredWords(const RowGrade& row) {
    if (!row.figure || row.requirement == nullptr)
        return {};
    const std::string& unit = row.requirement->unit;
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
    const QString text = holdsCatalogueWords(reason.kind) ? catalogueWords(reason.text.text)
                                                          : phraseWords(reason.text);
    const QString given =
        reason.said.empty() ? GradeWords::tr("no reason given") : wordingWords(reason.said);
    switch (reason.kind) {
    case ReasonKind::NotAsked:
        return GradeWords::tr("not asked of this door");
    case ReasonKind::ExcusedByAnswer:
        return GradeWords::tr("not asked: see the answer to “%1”").arg(text);
    case ReasonKind::AnsweredNotAsked:
        return GradeWords::tr("not asked of this door (%1): what is recorded here does not count")
            .arg(text);
    case ReasonKind::OtherDates:
        return GradeWords::tr("fails, but the text is not shown to bind here (%1): you decide")
            .arg(text);
    case ReasonKind::TextLeavesOpen:
        return GradeWords::tr("fails, but the text leaves it open, you decide: %1").arg(text);
    case ReasonKind::OutsideThisWalk:
        return GradeWords::tr("not tried on this walk: %1").arg(text);
    case ReasonKind::NotYetTested:
        return GradeWords::tr("not yet tried");
    case ReasonKind::OneSideMissing:
        return GradeWords::tr("one side still to be tried");
    case ReasonKind::OneSideLeftOut:
        return GradeWords::tr("one side was answered n/a, and the text asks for both: you decide");
    case ReasonKind::CouldNotTest:
        return GradeWords::tr("could not be tested: %1").arg(given);
    case ReasonKind::AnsweredYes:
        return GradeWords::tr("seen");
    case ReasonKind::AnsweredNo:
        return GradeWords::tr("seen, and it is not so");
    case ReasonKind::AnsweredNotApplicable:
        return GradeWords::tr("answered as not applicable to this door");
    case ReasonKind::ToldNo:
        return GradeWords::tr("seen, and it is another kind of door");
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
        return GradeWords::tr("beyond the limit by less than one step of the instrument (%1): you "
                              "decide")
            .arg(text);
    case ReasonKind::BetweenTwoFigures:
        return GradeWords::tr("between the two figures that the text prints (%1): you decide")
            .arg(text);
    case ReasonKind::WithinMargin:
        return GradeWords::tr("outside a band that the text calls approximate, %1: you decide")
            .arg(text);
    case ReasonKind::TooCloseToLimit:
        return GradeWords::tr("a limit lies inside the uncertainty: measure once more");
    case ReasonKind::StillCloseAfterThree:
        return GradeWords::tr("still too close to a limit after %1 runs: you decide")
            .arg(reason.runs);
    case ReasonKind::FasterThanALeaf:
        return GradeWords::tr("shut faster than a leaf can move, a slip of the finger? Make "
                              "another run, or decide");
    case ReasonKind::StillCloseToApproximate:
        return GradeWords::
            tr("still too close to a limit after %1 runs: the text says approximate, you decide")
                .arg(reason.runs);
    case ReasonKind::RunsDisagree:
        return GradeWords::tr("closes unevenly: %1 runs do not agree, the worst stands")
            .arg(reason.runs);
    case ReasonKind::AlarmsDisagree:
        return GradeWords::tr("the alarm differs: %1 runs do not agree, the worst stands")
            .arg(reason.runs);
    case ReasonKind::UnevenHalves:
        return GradeWords::tr("one half of the travel lies outside the limits: roughly uniform?");
    case ReasonKind::ShipNotUpright:
        return GradeWords::tr("heel %1 degrees: the figure is advice only, time it again upright")
            .arg(QLocale().toString(reason.heel_deg, 'f', 1));
    case ReasonKind::ClassSuits:
    case ReasonKind::PlateAgrees:
        return text;
    case ReasonKind::ClassTooLow:
        return GradeWords::tr("weaker than its boundary: %1").arg(text);
    case ReasonKind::ClassNotOfShip:
        return GradeWords::tr("weaker by tables that are not shown to be this ship's: %1; ask for "
                              "the approved drawing")
            .arg(text);
    case ReasonKind::ClassOverTanks:
        return GradeWords::tr("weaker than its boundary, unless oil fuel tanks lie below: %1")
            .arg(text);
    case ReasonKind::BoundaryClassUnknown:
        return GradeWords::tr("%1; the register does not say what the boundary asks for: see the "
                              "approved fire plan or ask the Administration")
            .arg(text);
    case ReasonKind::NoValuePrinted:
        return GradeWords::tr("%1; no value printed: ask the Administration").arg(text);
    case ReasonKind::NoClassAsked:
        return GradeWords::tr("%1; no fire class is asked here").arg(text);
    case ReasonKind::PlateDiffers:
        return GradeWords::tr("they differ: %1").arg(text);
    case ReasonKind::PlateMissing:
        return GradeWords::tr("%1: ask for the certificate").arg(text);
    case ReasonKind::PracticeNotMet:
        return GradeWords::tr(
            "not as good practice has it: you decide whether the door may stay so");
    case ReasonKind::InspectorDecided:
        return GradeWords::tr("decided by the inspector: %1").arg(given);
    case ReasonKind::NeedsRemoteRun:
        return GradeWords::tr("needs a run released from the control station");
    case ReasonKind::MarkMissing:
        return GradeWords::tr("run to its end, but not every event was marked");
    case ReasonKind::NoRunComplete:
        return GradeWords::tr("a run was begun, and none came to its end");
    case ReasonKind::AlarmAfterClosing:
        return GradeWords::tr("the alarm came on only when the door was shut");
    case ReasonKind::NoSuchCase:
        return GradeWords::tr("answered n/a, and the text has no such case: you decide");
    case ReasonKind::PlanBelowRule:
        return GradeWords::tr("the approved plan has no A class where the rule asks for one: %1")
            .arg(text);
    case ReasonKind::AlarmNotMarked:
        return GradeWords::tr("released from the control station, and no alarm was marked");
    case ReasonKind::EventsInOrder:
        return GradeWords::tr("the alarm was still on when the door was shut");
    case ReasonKind::EventsOutOfOrder:
        return GradeWords::tr("the alarm stopped before the door was shut");
    case ReasonKind::OpeningUnknown:
        return GradeWords::tr("the register has no clear opening for this door");
    }
    return {};
}

std::string reasonText(const Reason& reason) {
    return reasonWords(reason).toStdString();
}

QString citeWords(const Requirement& requirement) {
    return requirement.status == Status::Practice ? statusWords(requirement.status)
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
        return GradeWords::tr("the cited text was read");
    case Status::Practice:
        return GradeWords::tr("common practice, no source");
    case Status::Advice:
        return GradeWords::tr("advice, never a reason to fail a door");
    }
    return {};
}

QString settleWords(const RowGrade& row) {
    switch (row.verdict) {
    case Verdict::Unsatisfactory:
        return GradeWords::tr("put it right, then test it again");
    case Verdict::Judge:
        return GradeWords::tr("your judgement, with its reason");
    case Verdict::TimeAgain:
        return GradeWords::tr("one more run; three at most, then you decide");
    case Verdict::Untested:
        break;
    default:
        return {};
    }
    switch (row.reason.kind) {
    case ReasonKind::OneSideMissing:
        return GradeWords::tr("try it from the other side");
    case ReasonKind::NeedsRemoteRun:
        return GradeWords::tr("a run released from the control station");
    case ReasonKind::NoRunComplete:
    case ReasonKind::MarkMissing:
        return GradeWords::tr("another run");
    case ReasonKind::AlarmNotMarked:
        return GradeWords::tr("say whether the alarm sounded, or run it again");
    case ReasonKind::FasterThanALeaf:
        return GradeWords::tr("another run");
    case ReasonKind::OpeningUnknown:
        return GradeWords::tr("measure the clear opening");
    case ReasonKind::ShipNotUpright:
        return GradeWords::tr("time it with the ship upright");
    case ReasonKind::CouldNotTest:
        return GradeWords::tr("come back when it can be tested");
    default:
        return GradeWords::tr("try it at the door");
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
    add(QT_TRANSLATE_NOOP("GradeWords", "%1 to settle"),
        countOf(grade, Verdict::Judge) + countOf(grade, Verdict::TimeAgain));
    add(QT_TRANSLATE_NOOP("GradeWords", "%1 untested"), countOf(grade, Verdict::Untested));
    if (parts.isEmpty())
        add(QT_TRANSLATE_NOOP("GradeWords", "all %1 satisfactory"),
            countOf(grade, Verdict::Satisfactory));
    return parts.isEmpty() ? GradeWords::tr("nothing asked") : parts.join(QStringLiteral(", "));
}

QString severityWords(Severity severity) {
    switch (severity) {
    case Severity::Grave:
        return GradeWords::tr("grave: fire or smoke passes, or a person can be hurt");
    case Severity::Serious:
        return GradeWords::tr("serious: the door does not do what is asked");
    case Severity::Minor:
        break;
    }
    return GradeWords::tr("minor: upkeep and marking");
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
