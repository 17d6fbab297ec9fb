#include "app/report/closing_matter.h"

#include <algorithm>

#include <QLocale>

#include "app/report/report_words.h"
#include "app/report/shapes.h"
#include "app/report/translated.h"
#include "core/grading/row_check.h"
#include "core/measure/reaction_model.h"
#include "ui/words/rule_words.h"

namespace latchround::report {

namespace {

QString item(const QString& words) {
    return QStringLiteral("<li>") + safe(words) + QStringLiteral("</li>");
}

QString percent(double part) {
    return QLocale().toString(100 * part, 'f', 0) + QStringLiteral("\u00a0%");
}

QString handTimingWords() {
    const QLocale locale;
    return Report::tr(
               "Times were taken by hand. Starting and stopping by hand has a standard "
               "uncertainty of %1 s and a bias of at most %2 s either way, or %3 s where one "
               "end is heard and the other seen. Figures are given with their expanded "
               "uncertainty U (k = 2), which covers reaction time, sight of the leaf and the "
               "device. These are not laboratory times.")
        .arg(locale.toString(published_pair_spread_s, 'f', 2),
             locale.toString(bias_left_seen_s, 'f', 2), locale.toString(published_bias_s, 'f', 2));
}

/// How many of the runs were corrected by the drill of whoever timed them.
QString drillWords(const ReportData& data) {
    int runs = 0;
    int own = 0;
    for (const GradedDoor& door : data.doors)
        for (const RunRecord& run : door.evidence.runs) {
            ++runs;
            const bool keyed = std::ranges::none_of(
                run.marks, [](const auto& record) { return record.mark.by_hand_ns.has_value(); });
            own += run.drill && keyed ? 1 : 0;
        }
    return own == 0 ? QString()
                    : Report::tr("Runs timed by a person who had done the timing drill on that "
                                 "tablet: %2 of %1. For these, the person's own delay and scatter "
                                 "replace the published figures.")
                          .arg(runs)
                          .arg(own);
}

QString decisionWords(const DecisionLimits& limits) {
    QString words =
        Report::tr(
            "A figure is satisfactory if the probability that it is within its limits is at "
            "least %1, and unsatisfactory if that probability is at most %2. In between, the "
            "run is timed again or the inspector decides (JCGM 106:2012).")
            .arg(percent(limits.satisfactory_from), percent(limits.unsatisfactory_to));
    if (limits != DecisionLimits{} && !limits.reason.empty())
        words +=
            QLatin1Char(' ') + Report::tr("These are not the usual 95 % and 5 %; reason given: %1.")
                                   .arg(recordedWording(limits.reason));
    return words + QLatin1Char(' ') +
           Report::tr(
               "A figure read off a rule or gauge is satisfactory at its limit and "
               "unsatisfactory one step of the instrument or more beyond it. In between, the "
               "inspector decides. Where the text calls its band approximate, the inspector "
               "also decides on a closing outside the band but within the margin of that "
               "requirement. Steps and margins are the program's own choice, no source.");
}

QString crushWords() {
    return Report::tr("A released door moves by itself and can crush. Before work on a door, "
                      "secure it against release. Before it is tested again, warn everyone near "
                      "it.");
}

} // namespace

QString standingCautionsHtml(const ReportData& data) {
    const Catalogue& catalogue = data.asked.catalogue;
    const Particulars& vessel = data.asked.arrangement.particulars;
    const QString drills = drillWords(data);
    return QStringLiteral("<h2>") + safe(Report::tr("Scope and limits")) +
           QStringLiteral("</h2><ul>") +
           item(
               Report::tr("The flag Administration, approved plans and local rules take precedence "
                          "over this report; grades are an aid to the inspector's judgement.")) +
           item(ui::deferenceWords(catalogue, &vessel)) + item(handTimingWords()) +
           (drills.isEmpty() ? QString() : item(drills)) +
           item(decisionWords(data.asked.ledger.limitsFor(data.walkdown.id))) +
           item(
               Report::tr("The rules assume an upright ship: a time taken at more than %1° of heel "
                          "is advice only.")
                   .arg(QLocale().toString(upright_within_deg, 'f', 0))) +
           item(
               Report::tr("The report covers what was seen at the doors named, at the times given. "
                          "It says nothing about any other door, check or time.")) +
           QStringLiteral("</ul><p><b>") + safe(Report::tr("Catalogue:")) +
           QStringLiteral("</b> ") + safe(editionFor(catalogue, vessel)) + QStringLiteral("</p>");
}

QString deferenceHtml(const Catalogue& catalogue, const Particulars* vessel) {
    return heading(Report::tr("Rules that take precedence")) + QStringLiteral("<ul>") +
           item(Report::tr(
               "The flag Administration, approved plans and local rules take precedence "
               "over this document; grades are an aid to the judgement of those who sign.")) +
           item(ui::deferenceWords(catalogue, vessel)) + QStringLiteral("<li>") +
           safe(crushWords()) + englishOfWarning(crushWords) + QStringLiteral("</li></ul>");
}

} // namespace latchround::report
