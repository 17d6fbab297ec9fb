#include "app/report/paper_door.h"

#include "app/report/door_table.h"
#include "app/report/figure_words.h"
#include "app/report/report_words.h"
#include "core/grading/graded_walkdown.h"
#include "ui/parts/door_words.h"
#include "ui/parts/grade_words.h"

namespace latchround::report {

namespace {

constexpr int tick_px = 9;
const QString between_halves = QStringLiteral("<td width=\"2%\"></td>");

/// Answered by yes and no, or a figure; the rest is read from plate and runs.
bool isTicked(const Requirement& row) {
    return row.check == CheckKind::Seen || row.check == CheckKind::SeenBothSides;
}
bool isTimed(const Requirement& row) {
    return row.source == Source::ClosingTime || row.source == Source::ClosingRate ||
           row.source == Source::AlarmLead || row.source == Source::AlarmAfterShut;
}
bool isGaugedOnPaper(const Requirement& row) {
    return row.source == Source::Gauge || row.incline_deg;
}

QString askedOnPaper(const Requirement& row) {
    return QString::fromStdString(row.question.empty() ? row.words : row.question);
}

QString ticks(Pictures& pictures, bool asked) {
    QString html;
    for (int box = 0; box < 3; ++box)
        html += QStringLiteral("<td width=\"3%\" align=\"center\">") +
                (asked ? pictures.box(tick_px) : QString()) + QStringLiteral("</td>");
    return html;
}

/// Question and boxes: half the width of the page.
QString questionCells(const Requirement* row, Pictures& pictures) {
    if (!row)
        return QStringLiteral("<td width=\"31%\"></td>") + ticks(pictures, false) +
               ticks(pictures, false);
    return QStringLiteral("<td width=\"31%\">") + safe(askedOnPaper(*row)) +
           QStringLiteral("</td>") + ticks(pictures, true) +
           ticks(pictures, row->check == CheckKind::SeenBothSides);
}

QString headCells() {
    const auto head = [](const QString& words) {
        return QStringLiteral("<th align=\"center\">") + safe(words) + QStringLiteral("</th>");
    };
    const QString ticks_head = head(say("yes")) + head(say("no")) + head(say("n/a"));
    return QStringLiteral("<th align=\"left\">") + safe(say("Second boxes: the other side")) +
           QStringLiteral("</th>") + ticks_head + ticks_head;
}

QString questionsHtml(const std::vector<const Requirement*>& rows, Pictures& pictures) {
    if (rows.empty())
        return {};
    QString html = QStringLiteral("<table class=\"lines paper\" width=\"100%\" cellspacing=\"0\" "
                                  "cellpadding=\"1\"><tr>") +
                   headCells() + between_halves + headCells() + QStringLiteral("</tr>");
    const std::size_t half = (rows.size() + 1) / 2;
    for (std::size_t at = 0; at < half; ++at)
        html += QStringLiteral("<tr>") + questionCells(rows[at], pictures) + between_halves +
                questionCells(half + at < rows.size() ? rows[half + at] : nullptr, pictures) +
                QStringLiteral("</tr>");
    return html + QStringLiteral("</table>");
}

QString toMeasure(const std::vector<const Requirement*>& rows) {
    QStringList all;
    for (const Requirement* row : rows) {
        const QString limit = ui::limitWords(*row);
        all << safe(row->incline_deg ? say("Spring gauge at the edge of the leaf, shut")
                                     : askedOnPaper(*row)) +
                   (limit.isEmpty() || row->incline_deg
                        ? QString()
                        : QStringLiteral(" (") + safe(limit) + QStringLiteral(")")) +
                   QStringLiteral(": _________ ") + safe(gaugeUnit(*row));
    }
    return all.isEmpty() ? QString()
                         : QStringLiteral("<p class=\"paper\">") +
                               all.join(QStringLiteral(" &nbsp; ")) + QStringLiteral("</p>");
}

const char* nameOfTime(Source source) {
    switch (source) {
    case Source::ClosingTime:
        return "Leaf moves to shut";
    case Source::ClosingRate:
        return "Leaf moves to shut";
    case Source::AlarmLead:
        return "Alarm on to leaf moves";
    case Source::AlarmAfterShut:
        return "Shut to alarm off";
    default:
        return "";
    }
}

/// Three runs as lines, the times asked for as columns; where nothing is timed, who released it.
QString runsHtml(const std::vector<const Requirement*>& timed) {
    std::map<QString, QStringList> columns;
    for (const Requirement* row : timed)
        columns[say(nameOfTime(row->source))] << ui::limitWords(*row);
    QString head = QStringLiteral("<th align=\"left\" width=\"8%\">") + safe(say("Run")) +
                   QStringLiteral("</th><th align=\"left\">") +
                   safe(say("Released (station, side one, side two, let go)")) +
                   QStringLiteral("</th>");
    for (auto& [name, limits] : columns) {
        limits.removeDuplicates();
        head += QStringLiteral("<th align=\"left\">") +
                safe(QStringLiteral("%1, s (%2)").arg(name, limits.join(QStringLiteral("; ")))) +
                QStringLiteral("</th>");
    }
    head += QStringLiteral("<th align=\"left\">") + safe(say("Heel; shut, latched?")) +
            QStringLiteral("</th>");
    QString html = QStringLiteral("<table class=\"lines paper\" width=\"100%\" cellspacing=\"0\" "
                                  "cellpadding=\"4\"><tr>") +
                   head + QStringLiteral("</tr>");
    for (int run = 1; run <= 3; ++run)
        html += QStringLiteral("<tr><td>%1</td>").arg(run) +
                QStringLiteral("<td>&nbsp;</td>").repeated(int(columns.size()) + 2) +
                QStringLiteral("</tr>");
    return html + QStringLiteral("</table>");
}

QString doorHead(const PaperForm& form, const GradedDoor& door) {
    QStringList words{QString::fromStdString(std::string(word(door.door->fire_class)))};
    words << ui::doorWords(*door.door)
          << say("deck %1").arg(QString::fromStdString(door.door->deck));
    if (door.boundary)
        words << boundaryPlaceWords(*door.boundary);
    if (door.door->opening_m > 0)
        words << say("clear opening %1").arg(metres(door.door->opening_m));
    if (isRemotelyReleased(*door.door))
        words << say("released with %1")
                     .arg(QString::fromStdString(usualGroup(form.arrangement, *door.door)));
    return QStringLiteral("<h3 class=\"paper\">") +
           safe(say("Door %1").arg(QString::fromStdString(door.door->number))) +
           QStringLiteral("</h3><p class=\"paper muted\">") +
           safe(words.join(QStringLiteral(", "))) + QStringLiteral("</p>");
}

} // namespace

QString paperDoorHtml(const PaperForm& form, const Door& door, Pictures& pictures) {
    const Boundary* boundary = findBoundary(form.arrangement, door.boundary);
    const GradedDoor asked{&door,
                           boundary,
                           {},
                           grade(form.arrangement.particulars, door, boundary, {}, form.catalogue,
                                 upkeepOf(form.catalogue, form.purpose))};
    std::vector<const Requirement*> ticked;
    std::vector<const Requirement*> gauged;
    std::vector<const Requirement*> timed;
    for (const RowGrade& row : asked.grade.rows) {
        if (!isAsked(row))
            continue;
        if (isTimed(*row.requirement))
            timed.push_back(row.requirement);
        else if (isTicked(*row.requirement))
            ticked.push_back(row.requirement);
        if (isGaugedOnPaper(*row.requirement))
            gauged.push_back(row.requirement);
    }
    return doorHead(form, asked) + QStringLiteral("<p class=\"paper\">") +
           safe(say("Plate reads:")) + QStringLiteral(" ______________ &nbsp; ") +
           safe(say("Time:")) + QStringLiteral(" __________ &nbsp; ") +
           safe(say("Verdict of the surveyor:")) + QStringLiteral(" ______________________</p>") +
           questionsHtml(ticked, pictures) + toMeasure(gauged) + runsHtml(timed) +
           QStringLiteral("<p class=\"paper\">") + safe(say("Notes:")) + QChar(' ') +
           QString(110, QChar('_')) + QStringLiteral("</p>");
}

} // namespace latchround::report
