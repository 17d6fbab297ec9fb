#include "app/report/closing_matter.h"

#include <algorithm>

#include <QLocale>

#include "app/report/report_words.h"
#include "app/report/shapes.h"
#include "core/grading/row_check.h"
#include "core/measure/reaction_model.h"

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
    return say("Times were taken by hand. A start and stop by thumb is given a standard "
               "uncertainty of %1 s and a bias of at most %2 s either way, or %3 s where one end "
               "is heard and the other seen; figures stand with their expanded uncertainty U "
               "(k = 2). Reaction, sight of the leaf and the device all belong to it: these are "
               "no laboratory times.")
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
                    : say("Of %1 runs %2 were timed by somebody with a thumb drill on that tablet: "
                          "their own delay and scatter stand in place of the published figures.")
                          .arg(runs)
                          .arg(own);
}

QString decisionWords(const DecisionLimits& limits) {
    QString words =
        say("A figure is called satisfactory where it lies inside its limits with a "
            "probability of at least %1, unsatisfactory where that is at most %2, and between "
            "them it is to be timed again or left to judgement (JCGM 106:2012).")
            .arg(percent(limits.satisfactory_from), percent(limits.unsatisfactory_to));
    if (limits != DecisionLimits{} && !limits.reason.empty())
        words += QLatin1Char(' ') + say("These are not the usual 95 % and 5 %; reason given: %1.")
                                        .arg(QString::fromStdString(limits.reason.text));
    return words + QLatin1Char(' ') +
           say("A figure read off rule or gauge is satisfactory at its limit, left to judgement "
               "less "
               "than one step of the instrument beyond it, and unsatisfactory further out. Outside "
               "a "
               "band that its text calls approximate a closing is left to judgement as far as the "
               "margin of its row reaches. Steps and margins are our own choice, no source.");
}

} // namespace

QString standingCautionsHtml(const ReportData& data) {
    const Catalogue& catalogue = data.asked.catalogue;
    const Particulars& vessel = data.asked.arrangement.particulars;
    const QString drills = drillWords(data);
    return QStringLiteral("<h2>") + safe(say("How far this report reaches")) +
           QStringLiteral("</h2><ul>") +
           item(say("The flag Administration, approved plans and local rules stand above this "
                    "report; grades are an aid to the surveyor's judgement.")) +
           item(QString::fromStdString(deferenceFor(catalogue, vessel))) + item(handTimingWords()) +
           (drills.isEmpty() ? QString() : item(drills)) +
           item(decisionWords(data.asked.ledger.limitsFor(data.walkdown.id))) +
           item(say("The rules speak of the upright ship: a time taken at more than %1° of heel "
                    "is advice only.")
                    .arg(QLocale().toString(upright_within_deg, 'f', 0))) +
           item(say("It says what was seen at the doors named, at the times given, and nothing "
                    "about doors, rows or times that are not in it.")) +
           QStringLiteral("</ul><p><b>") + safe(say("Catalogue:")) + QStringLiteral("</b> ") +
           safe(editionFor(catalogue, vessel)) + QStringLiteral("</p>");
}

QString deferenceHtml(const Catalogue& catalogue) {
    return deferenceHtml(catalogue.deference);
}

QString deferenceHtml(const std::string& deference) {
    return heading("Whose rules stand above this") + QStringLiteral("<ul>") +
           item(say("The flag Administration, approved plans and local rules stand above this "
                    "document; grades are an aid to the judgement of those who sign.")) +
           item(QString::fromStdString(deference)) +
           item(say("A released door moves by itself and can crush. Before work on a door it is "
                    "kept from being released; before it is tried again everybody near it is "
                    "told.")) +
           QStringLiteral("</ul>");
}

} // namespace latchround::report
