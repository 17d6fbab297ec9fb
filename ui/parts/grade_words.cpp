#include "ui/parts/grade_words.h"

#include <algorithm>
#include <cmath>

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

namespace latchround::ui {
namespace {

QString count(const char* text, int n) {
    return QCoreApplication::translate("Grade", text, nullptr, n);
}

QString plainFigure(double value) {
    return QLocale().toString(value, 'g', 6);
}

QString withUnit(const QString& figure, const std::string& unit) {
    return unit.empty() ? figure : figure + QChar(0x00a0) + QString::fromStdString(unit);
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
    const Reading& figure = *row.figure;
    const double edge = expanded(figure);
    if (!(edge > 0))
        return withUnit(plainFigure(figure.value), unit);
    const int places = placesFor(edge);
    const QLocale locale;
    return withUnit(
        QStringLiteral("%1 ± %2").arg(locale.toString(figure.value, 'f', places),
                                      locale.toString(roundedUp(edge, places), 'f', places)),
        unit);
}

QString limitWords(const Requirement& requirement) {
    const auto figure = [](double value) { return plainFigure(value); };
    if (requirement.low && requirement.high)
        return withUnit(QCoreApplication::translate("Grade", "%1 to %2")
                            .arg(figure(*requirement.low), figure(*requirement.high)),
                        requirement.unit);
    if (requirement.high)
        return withUnit(
            QCoreApplication::translate("Grade", "at most %1").arg(figure(*requirement.high)),
            requirement.unit);
    if (requirement.low)
        return withUnit(
            QCoreApplication::translate("Grade", "at least %1").arg(figure(*requirement.low)),
            requirement.unit);
    return {};
}

QString reasonWords(const Reason& reason) {
    return QString::fromStdString(inWords(reason));
}

QString citationWords(const Requirement& requirement) {
    QString cite = QString::fromStdString(requirement.cite);
    if (requirement.edition.empty())
        return cite;
    return QCoreApplication::translate("Grade", "%1, edition %2")
        .arg(cite, QString::fromStdString(requirement.edition));
}

QString statusWords(Status status) {
    switch (status) {
    case Status::Read:
        return QCoreApplication::translate("Grade", "the cited text was read");
    case Status::Practice:
        return QCoreApplication::translate("Grade", "common practice, no source");
    case Status::Advice:
        return QCoreApplication::translate("Grade", "advice, never a reason to fail a door");
    }
    return {};
}

QString settleWords(const RowGrade& row) {
    switch (row.verdict) {
    case Verdict::Unsatisfactory:
        return QCoreApplication::translate("Grade", "put it right, then test it again");
    case Verdict::Judge:
        return QCoreApplication::translate("Grade", "your judgement, with its reason");
    case Verdict::TimeAgain:
        return QCoreApplication::translate("Grade", "one more run; three at most, then you decide");
    case Verdict::Untested:
        break;
    default:
        return {};
    }
    switch (row.reason.kind) {
    case ReasonKind::OneSideMissing:
        return QCoreApplication::translate("Grade", "try it from the other side");
    case ReasonKind::NeedsRemoteRun:
        return QCoreApplication::translate("Grade", "a run released from the control station");
    case ReasonKind::OpeningUnknown:
        return QCoreApplication::translate("Grade", "measure the clear opening");
    case ReasonKind::ShipNotUpright:
        return QCoreApplication::translate("Grade", "time it with the ship upright");
    case ReasonKind::CouldNotTest:
        return QCoreApplication::translate("Grade", "come back when it can be tested");
    default:
        return QCoreApplication::translate("Grade", "try it at the door");
    }
}

QString countLine(const DoorGrade& grade) {
    QStringList parts;
    const auto add = [&parts](const char* text, int n) {
        if (n > 0)
            parts << count(text, n);
    };
    add(QT_TRANSLATE_NOOP("Grade", "%n unsatisfactory"), countOf(grade, Verdict::Unsatisfactory));
    add(QT_TRANSLATE_NOOP("Grade", "%n to settle"),
        countOf(grade, Verdict::Judge) + countOf(grade, Verdict::TimeAgain));
    add(QT_TRANSLATE_NOOP("Grade", "%n untested"), countOf(grade, Verdict::Untested));
    if (parts.isEmpty())
        add(QT_TRANSLATE_NOOP("Grade", "all %n satisfactory"),
            countOf(grade, Verdict::Satisfactory));
    return parts.isEmpty() ? QCoreApplication::translate("Grade", "nothing asked")
                           : parts.join(QStringLiteral(", "));
}

QString severityWords(Severity severity) {
    switch (severity) {
    case Severity::Grave:
        return QCoreApplication::translate("Grade",
                                           "grave: fire or smoke passes, or a person can be hurt");
    case Severity::Serious:
        return QCoreApplication::translate("Grade", "serious: the door does not do what is asked");
    case Severity::Minor:
        break;
    }
    return QCoreApplication::translate("Grade", "minor: upkeep and marking");
}

QString boundaryClassWords(const DoorClass& asked) {
    const auto text = [](FireClass value) {
        return QString::fromStdString(std::string(word(value)));
    };
    switch (asked.kind) {
    case DoorClass::Kind::Class:
        return *asked.door == *asked.division ? text(*asked.division)
                                              : QCoreApplication::translate("Grade", "%1 (door %2)")
                                                    .arg(text(*asked.division), text(*asked.door));
    case DoorClass::Kind::Free:
        return QCoreApplication::translate("Grade", "no class");
    case DoorClass::Kind::NotPrinted:
        return QCoreApplication::translate("Grade", "not printed");
    case DoorClass::Kind::NotKnown:
        break;
    }
    return QCoreApplication::translate("Grade", "not known");
}

QString boundarySourceWords(const DoorClass& asked) {
    QString words = boundaryClassWords(asked);
    if (asked.from_plan)
        return QCoreApplication::translate("Grade", "%1 by the approved plan").arg(words);
    if (asked.kind == DoorClass::Kind::NotKnown)
        return words;
    const RequiredClass& rule = asked.by_rule;
    const QString by = rule.cell ? QStringLiteral("%1, %2-%3")
                                       .arg(QString::fromStdString(rule.table->name))
                                       .arg(rule.spaces.first)
                                       .arg(rule.spaces.second)
                                 : QString::fromStdString(citeOf(rule));
    return QCoreApplication::translate("Grade", "%1 by %2").arg(words, by);
}

} // namespace latchround::ui
