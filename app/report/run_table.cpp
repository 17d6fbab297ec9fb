#include "app/report/run_table.h"

#include "app/report/figure_words.h"
#include "app/report/moment_words.h"
#include "app/report/report_words.h"
#include "app/report/translated.h"
#include "core/measure/interval.h"
#include "ui/words/door_words.h"

namespace latchround::report {

namespace {

std::optional<double> secondsAfterFirst(const RunRecord& run, const Mark& mark) {
    if (&mark == &run.marks.front().mark)
        return 0.0;
    if (mark.by_hand_ns)
        return double(*mark.by_hand_ns) / 1e9;
    const auto interval = intervalBetween(run.marks.front().mark, mark);
    return interval ? std::optional(interval->seconds) : std::nullopt;
}

QString marksWords(const RunRecord& run) {
    QStringList marks;
    bool typed = false;
    for (const RunRecord::MarkRecord& record : run.marks) {
        const auto time = secondsAfterFirst(run, record.mark);
        marks << QStringLiteral("%1 %2").arg(ui::markWords(record.mark.kind).toLower(),
                                             time ? seconds(*time) : Report::tr("no common clock"));
        typed = typed || record.mark.by_hand_ns;
    }
    QString words = marks.isEmpty() ? Report::tr("no marks") : marks.join(QStringLiteral(", "));
    return typed ? words + QStringLiteral(" ") + Report::tr("(typed in)") : words;
}

QString notMeasured(const QString& what, const Wording& reason) {
    return reason.empty()
               ? Report::tr("%1, no reason given: not a measurement").arg(what)
               : Report::tr("%1: %2. Not a measurement").arg(what, recordedWording(reason));
}

QString outcomeHtml(const RunRecord& run) {
    if (!run.end)
        return safe(Report::tr("cut short: not a measurement"));
    if (run.end->outcome == RunOutcome::Complete)
        return safe(marksWords(run));
    if (run.reversed)
        return QStringLiteral("<b>") +
               safe(Report::tr("marks out of order, %1 before %2: not a measurement")
                        .arg(ui::markWords(run.reversed->second).toLower(),
                             ui::markWords(run.reversed->first).toLower())) +
               QStringLiteral("</b>");
    if (run.unmarked)
        return QStringLiteral("<b>") +
               safe(Report::tr("%1 was not marked: not a measurement")
                        .arg(ui::markWords(*run.unmarked).toLower())) +
               QStringLiteral("</b>");
    return QStringLiteral("<b>") +
           safe(notMeasured(ui::outcomeWords(run.end->outcome), run.end->reason)) +
           QStringLiteral("</b>");
}

QString kindOfRun(const RunRecord& run) {
    const QString released =
        run.release_group.empty()
            ? ui::releaseWords(run.release)
            : Report::tr("%1, group %2")
                  .arg(ui::releaseWords(run.release), QString::fromStdString(run.release_group));
    return run.kind == RunKind::Contact ? Report::tr("contact, %1").arg(released) : released;
}

QString headHtml(bool with_door) {
    const auto column = [](const QString& name, int percent) {
        return QStringLiteral("<th align=\"left\" width=\"%1%\">").arg(percent) + safe(name) +
               QStringLiteral("</th>");
    };
    return QStringLiteral("<thead><tr>") + (with_door ? column(Report::tr("Door"), 8) : QString()) +
           column(Report::tr("Run begun"), 16) + column(Report::tr("By"), with_door ? 13 : 15) +
           column(Report::tr("Released"), 22) + column(Report::tr("Heel"), 7) +
           column(Report::tr("Marks, seconds after the first"), with_door ? 34 : 40) +
           QStringLiteral("</tr></thead>");
}

QString rowsHtml(const ReportData& data, const GradedDoor& door, bool with_door) {
    QString html;
    for (const RunRecord& run : door.evidence.runs) {
        const Fact* started = data.asked.ledger.find(run.id);
        const QString cells[] = {
            safe(dayAndTime(run.started)),
            started ? safe(personName(data, started->stamp.person)) : QString(),
            safe(kindOfRun(run)), safe(degrees(run.heel_deg)), outcomeHtml(run)};
        html += QStringLiteral("<tr>");
        if (with_door)
            html += cell(QStringLiteral("<b>") + safe(door.door->number) + QStringLiteral("</b>"));
        for (const QString& words : cells)
            html += cell(words);
        html += QStringLiteral("</tr>");
    }
    return html;
}

QString tableHtml(const QString& rows, bool with_door) {
    return QStringLiteral("<table class=\"lines small\" width=\"100%\" cellspacing=\"0\" "
                          "cellpadding=\"3\">") +
           headHtml(with_door) + QStringLiteral("<tbody>") + rows +
           QStringLiteral("</tbody></table>");
}

} // namespace

QString runTableHtml(const ReportData& data, const GradedDoor& door) {
    return door.evidence.runs.empty() ? QString() : tableHtml(rowsHtml(data, door, false), false);
}

QString otherRunsHtml(const ReportData& data) {
    QString rows;
    for (const GradedDoor& door : data.doors)
        if (!hasDetails(door))
            rows += rowsHtml(data, door, true);
    return rows.isEmpty() ? QString()
                          : QStringLiteral("<h2>") + safe(Report::tr("Runs at the other doors")) +
                                QStringLiteral("</h2>") + tableHtml(rows, true);
}

} // namespace latchround::report
