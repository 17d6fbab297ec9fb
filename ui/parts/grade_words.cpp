#include "ui/parts/grade_words.h"

#include <algorithm>
#include <cmath>

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

namespace latchround::ui {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("Grade", text);
}

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
    if (!row.value || row.requirement == nullptr)
        return {};
    const std::string& unit = row.requirement->unit;
    if (!row.u || !(*row.u > 0))
        return withUnit(plainFigure(*row.value), unit);
    const double expanded = 2 * *row.u;
    const int places = placesFor(expanded);
    const QLocale locale;
    return withUnit(
        QStringLiteral("%1 ± %2").arg(locale.toString(*row.value, 'f', places),
                                      locale.toString(roundedUp(expanded, places), 'f', places)),
        unit);
}

QString limitWords(const Requirement& requirement) {
    const auto figure = [](double value) { return plainFigure(value); };
    if (requirement.low && requirement.high)
        return withUnit(tr(QT_TRANSLATE_NOOP("Grade", "%1 to %2"))
                            .arg(figure(*requirement.low), figure(*requirement.high)),
                        requirement.unit);
    if (requirement.high)
        return withUnit(tr(QT_TRANSLATE_NOOP("Grade", "at most %1")).arg(figure(*requirement.high)),
                        requirement.unit);
    if (requirement.low)
        return withUnit(tr(QT_TRANSLATE_NOOP("Grade", "at least %1")).arg(figure(*requirement.low)),
                        requirement.unit);
    return {};
}

QString reasonWords(const Reason& reason) {
    return QString::fromStdString(inWords(reason));
}

QString citationWords(const Requirement& requirement) {
    const QString cite = QString::fromStdString(requirement.cite);
    if (requirement.edition.empty())
        return cite;
    return tr(QT_TRANSLATE_NOOP("Grade", "%1, edition %2"))
        .arg(cite, QString::fromStdString(requirement.edition));
}

QString statusWords(Status status) {
    switch (status) {
    case Status::Read:
        return tr(QT_TRANSLATE_NOOP("Grade", "the cited text was read"));
    case Status::Practice:
        return tr(QT_TRANSLATE_NOOP("Grade", "common practice, no source"));
    case Status::Advice:
        return tr(QT_TRANSLATE_NOOP("Grade", "advice, never a reason to fail a door"));
    }
    return {};
}

QString settleWords(const RowGrade& row) {
    switch (row.verdict) {
    case Verdict::Unsatisfactory:
        return tr(QT_TRANSLATE_NOOP("Grade", "put it right, then test it again"));
    case Verdict::Judge:
        return tr(QT_TRANSLATE_NOOP("Grade", "your judgement, with its reason"));
    case Verdict::TimeAgain:
        return tr(QT_TRANSLATE_NOOP("Grade", "one more run; three at most, then you decide"));
    case Verdict::Untested:
        break;
    default:
        return {};
    }
    switch (row.reason.kind) {
    case ReasonKind::OneSideMissing:
        return tr(QT_TRANSLATE_NOOP("Grade", "try it from the other side"));
    case ReasonKind::NeedsRemoteRun:
        return tr(QT_TRANSLATE_NOOP("Grade", "a run released from the control station"));
    case ReasonKind::OpeningUnknown:
        return tr(QT_TRANSLATE_NOOP("Grade", "measure the clear opening"));
    case ReasonKind::ShipNotUpright:
        return tr(QT_TRANSLATE_NOOP("Grade", "time it with the ship upright"));
    case ReasonKind::CouldNotTest:
        return tr(QT_TRANSLATE_NOOP("Grade", "come back when it can be tested"));
    default:
        return tr(QT_TRANSLATE_NOOP("Grade", "try it at the door"));
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
    return parts.isEmpty() ? tr(QT_TRANSLATE_NOOP("Grade", "nothing asked"))
                           : parts.join(QStringLiteral(", "));
}

} // namespace latchround::ui
