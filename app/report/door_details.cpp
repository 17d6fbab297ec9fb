#include "app/report/door_details.h"

#include <algorithm>

#include "app/report/door_table.h"
#include "app/report/figure_words.h"
#include "app/report/report_words.h"
#include "app/report/row_words.h"
#include "app/report/run_table.h"
#include "app/report/shapes.h"
#include "app/report/translated.h"
#include "ui/words/catalogue_words.h"
#include "ui/words/door_words.h"
#include "ui/words/grade_words.h"
#include "ui/words/inclination_words.h"
#include "ui/words/verdict_words.h"

namespace latchround::report {

namespace {

QString paragraph(const QString& html) {
    return QStringLiteral("<p>") + html + QStringLiteral("</p>");
}

QString small(const QString& html) {
    return QStringLiteral("<p class=\"in-cell muted\">") + html + QStringLiteral("</p>");
}

QString subheading(const QString& words) {
    return QStringLiteral("<h4>") + safe(words) + QStringLiteral("</h4>");
}

QString headingHtml(const GradedDoor& door, Pictures& pictures) {
    const Verdict verdict = door.grade.verdict;
    return QStringLiteral("<h3>") + pictures.glyph(verdict, 20) + QStringLiteral("&nbsp; ") +
           safe(Report::tr("Door %1").arg(QString::fromStdString(door.door->number))) +
           QStringLiteral(", ") + safe(ui::verdictWords(verdict)) + QStringLiteral("</h3>");
}

QString placeWords(const ReportData& data, const GradedDoor& door) {
    const Deck* deck = findDeck(data.asked.arrangement, door.door->deck);
    const QString number = QString::fromStdString(door.door->deck);
    QStringList words{
        deck && !deck->name.empty()
            ? Report::tr("deck %1, %2").arg(number, QString::fromStdString(deck->name))
            : Report::tr("deck %1").arg(number)};
    if (door.boundary) {
        words << boundaryPlaceWords(*door.boundary);
        if (door.boundary->zone_aft != door.boundary->zone_forward)
            words << Report::tr("between zones %1 and %2")
                         .arg(QString::fromStdString(door.boundary->zone_aft),
                              QString::fromStdString(door.boundary->zone_forward));
    }
    words << ui::doorWords(*door.door);
    if (door.door->opening_m > 0)
        words << Report::tr("clear opening %1").arg(metres(door.door->opening_m));
    if (door.door->watertight)
        words << Report::tr("not examined as a watertight door");
    return words.join(QStringLiteral(", "));
}

QString classWords(const GradedDoor& door) {
    return Report::tr("class on the plate: %1, in the register: %2, required by the boundary: %3")
        .arg(plateReadWords(door.evidence),
             QString::fromStdString(std::string(word(door.door->fire_class))),
             ui::boundaryClassWords(door.grade.asked_class));
}

/// Figure and unit stay on one line: "m/s" would break at its stroke.
QString unbroken(const QString& words) {
    return QStringLiteral("<p class=\"in-cell unbroken\">") + safe(words) + QStringLiteral("</p>");
}

QString rowHtml(const ReportData& data, const GradedDoor& door, const RowGrade& row) {
    const QString recorded = recordedWords(data, door, row);
    return QStringLiteral("<tr>") +
           cell(safe(ui::rowWords(*row.requirement)) +
                englishOf([&] { return ui::rowWords(*row.requirement); }) +
                small(safe(ui::citationWords(*row.requirement)))) +
           cell(unbroken(ui::limitWords(*row.requirement))) +
           cell(unbroken(ui::measuredWords(row))) +
           cell(QStringLiteral("<b>") + safe(ui::verdictWords(row.verdict)) +
                QStringLiteral("</b>, ") + safe(ui::reasonWords(row.reason)) +
                (recorded.isEmpty() ? QString() : small(safe(recorded)))) +
           QStringLiteral("</tr>");
}

QString rowsHtml(const ReportData& data, const GradedDoor& door) {
    QString rows;
    for (const RowGrade* row : askedWorstFirst(door.grade))
        if (needsAttention(row->verdict))
            rows += rowHtml(data, door, *row);
    if (rows.isEmpty())
        return {};
    return ruledTable({{Report::tr("Requirement"), 36},
                       {Report::tr("Limit"), 12},
                       {Report::tr("Measured, U (k = 2)"), 18},
                       {Report::tr("Found"), 34}},
                      rows);
}

QString untestedHtml(const GradedDoor& door) {
    QStringList words;
    for (const RowGrade& row : door.grade.rows) {
        const bool untested = row.verdict == Verdict::Untested || row.indicative;
        if (!untested || row.reason.kind == ReasonKind::CouldNotTest)
            continue;
        const QString asked = ui::rowWords(*row.requirement);
        words << (row.reason.kind == ReasonKind::NotYetTested
                      ? asked
                      : QStringLiteral("%1 (%2)").arg(asked, ui::reasonWords(row.reason)));
    }
    if (words.isEmpty())
        return {};
    return paragraph(QStringLiteral("<b>") + safe(Report::tr("Untested:")) +
                     QStringLiteral("</b> ") + safe(words.join(QStringLiteral("; "))));
}

QString inclinedHtml(const GradedDoor& door) {
    QString html;
    for (const RowGrade& row : door.grade.rows)
        if (isAsked(row) && ui::isGauged(row, door))
            html += paragraph(QStringLiteral("<b>") + safe(Report::tr("On an inclined ship:")) +
                              QStringLiteral("</b> ") +
                              safe(ui::inclinationWords(*row.requirement, door)));
    return html;
}

QString couldNotTestHtml(const ReportData& data, const DoorEvidence& evidence) {
    QString html;
    for (const auto& [id, record] : evidence.could_not_test) {
        const Requirement* row = findRequirement(data.asked.catalogue, id);
        const QString what = id.empty() ? Report::tr("the whole door")
                             : row      ? ui::rowWords(*row)
                                        : QString::fromStdString(id);
        html += QStringLiteral("<li>") + safe(what) + QStringLiteral(": ") +
                recordedWordingHtml(record.body.reason) +
                QStringLiteral(" <span class=\"muted\">") + safe(stampWords(data, record.stamp)) +
                QStringLiteral("</span></li>");
    }
    return html.isEmpty() ? QString()
                          : subheading(Report::tr("Could not be tested")) + QStringLiteral("<ul>") +
                                html + QStringLiteral("</ul>");
}

template <class Body>
QString writtenHtml(const ReportData& data, const QString& name,
                    const std::vector<Recorded<Body>>& records) {
    QString html;
    for (const Recorded<Body>& record : records)
        html += QStringLiteral("<li>") + recordedWordingHtml(record.body.text) +
                QStringLiteral(" <span class=\"muted\">") + safe(stampWords(data, record.stamp)) +
                QStringLiteral("</span></li>");
    return html.isEmpty()
               ? QString()
               : subheading(name) + QStringLiteral("<ul>") + html + QStringLiteral("</ul>");
}

QString photographCell(const ReportData& data, const Recorded<Photograph>& record,
                       Pictures& pictures) {
    // Twelve digits find the picture again; the register keeps all sixty-four.
    const QString hash = QString::fromStdString(record.body.sha256.substr(0, 12));
    const QString caption =
        record.body.caption.empty()
            ? QString()
            : safe(recordedWording(record.body.caption)) + QStringLiteral("<br/>");
    return QStringLiteral("<td width=\"50%\">") + pictures.photograph(record.body) +
           QStringLiteral("<p class=\"caption\">") + caption +
           QStringLiteral("<span class=\"muted\">") + safe(stampWords(data, record.stamp)) +
           QStringLiteral(", SHA-256 ") + safe(hash) + QStringLiteral("…</span></p></td>");
}

QString photographsHtml(const ReportData& data, const DoorEvidence& evidence, Pictures& pictures) {
    const auto& photographs = evidence.photographs;
    if (photographs.empty())
        return {};
    QString html;
    for (std::size_t at = 0; at < photographs.size(); at += 2) {
        html += QStringLiteral("<tr>") + photographCell(data, photographs[at], pictures);
        html += at + 1 < photographs.size() ? photographCell(data, photographs[at + 1], pictures)
                                            : QStringLiteral("<td width=\"50%\"></td>");
        html += QStringLiteral("</tr>");
    }
    return subheading(Report::tr("Photographs")) +
           QStringLiteral("<table width=\"100%\" cellspacing=\"0\" cellpadding=\"2\">") + html +
           QStringLiteral("</table>");
}

QString blockHtml(const ReportData& data, const GradedDoor& door, Pictures& pictures) {
    const QString runs = runTableHtml(data, door);
    return headingHtml(door, pictures) + QStringLiteral("<p class=\"muted\">") +
           safe(placeWords(data, door)) + QStringLiteral("; ") + safe(classWords(door)) +
           QStringLiteral("</p>") + rowsHtml(data, door) + inclinedHtml(door) + untestedHtml(door) +
           couldNotTestHtml(data, door.evidence) +
           writtenHtml(data, Report::tr("Deficiencies"), door.evidence.deficiencies) +
           writtenHtml(data, Report::tr("Notes"), door.evidence.notes) +
           photographsHtml(data, door.evidence, pictures) +
           (runs.isEmpty() ? QString() : subheading(Report::tr("Runs")) + runs);
}

} // namespace

Pieces doorDetails(const ReportData& data, Pictures& pictures, const ProgressRange& pace) {
    std::vector<const GradedDoor*> doors;
    std::vector<const Photograph*> photographs;
    for (const GradedDoor& door : data.doors)
        if (hasDetails(door)) {
            doors.push_back(&door);
            for (const auto& record : door.evidence.photographs)
                photographs.push_back(&record.body);
        }
    if (doors.empty())
        return {};
    pictures.prepare(photographs, pace.part(0, 50));
    std::ranges::stable_sort(doors, {}, [](const GradedDoor* door) { return door->grade.verdict; });
    Pieces pieces;
    for (const GradedDoor* door : doors) {
        if (!pace.part(50, 100).at(pieces.size(), doors.size()))
            break;
        pieces.push_back({(pieces.empty() ? heading(Report::tr("Details")) : QString()) +
                          blockHtml(data, *door, pictures)});
    }
    return pieces;
}

} // namespace latchround::report
