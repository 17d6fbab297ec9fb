#include "app/report/door_table.h"

#include "app/report/report_words.h"
#include "ui/parts/door_words.h"
#include "ui/parts/grade_words.h"
#include "ui/parts/verdict_look.h"

namespace latchround::report {

namespace {

/// More than this many findings in one line make a table nobody reads; the details have them all.
constexpr int most_findings = 3;

QString cell(const QString& html) {
    return QStringLiteral("<td>") + html + QStringLiteral("</td>");
}

QString findingHtml(const RowGrade& row) {
    return safe(row.requirement->words) + QStringLiteral(": <b>") +
           safe(ui::verdictWords(row.verdict)) + QStringLiteral("</b>, ") +
           safe(ui::reasonWords(row.reason));
}

QString findingsHtml(const GradedDoor& door) {
    QString html;
    int shown = 0;
    int more = 0;
    for (const RowGrade* row : askedWorstFirst(door.grade)) {
        if (!needsAttention(row->verdict))
            continue;
        if (shown < most_findings) {
            html += QStringLiteral("<p class=\"in-cell\">") + findingHtml(*row) +
                    QStringLiteral("</p>");
            ++shown;
        } else {
            ++more;
        }
    }
    if (more > 0)
        html += QStringLiteral("<p class=\"in-cell\">") +
                safe(say("and %n more, see its details", "and %n more, see its details", more)) +
                QStringLiteral("</p>");
    if (const int untested = countOf(door.grade, Verdict::Untested))
        html += QStringLiteral("<p class=\"in-cell muted\">") +
                safe(say("%n row untested", "%n rows untested", untested)) + QStringLiteral("</p>");
    return html;
}

QString figuresHtml(const GradedDoor& door) {
    QString html;
    for (const RowGrade& row : door.grade.rows) {
        const QString measured = ui::measuredWords(row);
        if (measured.isEmpty() || row.reason.kind == ReasonKind::NotAsked)
            continue;
        QString name;
        switch (row.requirement->source) {
        case Source::ClosingTime:
            name = say("shuts in %1");
            break;
        case Source::ClosingRate:
            name = say("closes at %1");
            break;
        case Source::AlarmLead:
            name = say("alarm leads by %1");
            break;
        case Source::AlarmAfterShut:
            name = say("alarm off %1 after shut");
            break;
        default:
            name = say("measured %1");
        }
        html += QStringLiteral("<p class=\"in-cell\">") + safe(name.arg(measured)) +
                QStringLiteral("</p>");
    }
    return html;
}

QString headHtml() {
    struct Column {
        const char* name;
        int width_percent;
    };
    constexpr Column columns[] = {{"Door", 7},       {"Deck", 5},
                                  {"Place", 12},     {"Kind", 9},
                                  {"Plate read", 7}, {"Register class", 8},
                                  {"Boundary", 8},   {"Verdict", 14},
                                  {"Findings", 17},  {"Figures, U (k = 2)", 13}};
    QString html = QStringLiteral("<thead><tr>");
    for (const Column& column : columns)
        html += QStringLiteral("<th align=\"left\" width=\"%1%\">").arg(column.width_percent) +
                safe(say(column.name)) + QStringLiteral("</th>");
    return html + QStringLiteral("</tr></thead>");
}

QString placeHtml(const GradedDoor& door) {
    if (!door.boundary)
        return safe(say("boundary not in the register"));
    return safe(ui::placeWords(door.boundary->place)) + QStringLiteral("<br/>") +
           safe(door.boundary->id);
}

QString rowHtml(const GradedDoor& door, Pictures& pictures) {
    const Verdict verdict = door.grade.verdict;
    return QStringLiteral("<tr>") +
           cell(QStringLiteral("<b>") + safe(door.door->number) + QStringLiteral("</b>")) +
           cell(safe(door.door->deck)) + cell(placeHtml(door)) +
           cell(safe(ui::kindWords(door.door->kind))) + cell(safe(plateReadWords(door.evidence))) +
           cell(safe(std::string(word(door.door->fire_class)))) +
           cell(safe(boundaryClassWords(door.boundary))) +
           cell(pictures.glyph(verdict, 15) + QStringLiteral(" ") +
                safe(ui::verdictWords(verdict))) +
           cell(findingsHtml(door)) + cell(figuresHtml(door)) + QStringLiteral("</tr>");
}

} // namespace

QString plateReadWords(const DoorEvidence& evidence) {
    if (!evidence.plate)
        return say("not read");
    const PlateRead& plate = evidence.plate->body;
    if (plate.fire_class)
        return QString::fromStdString(std::string(word(*plate.fire_class)));
    return plate.state == PlateState::None ? say("none") : say("illegible");
}

QString boundaryClassWords(const Boundary* boundary) {
    if (!boundary || !boundary->required)
        return say("not known");
    return QString::fromStdString(std::string(word(*boundary->required)));
}

QString doorTableHtml(const Matter& matter, Pictures& pictures) {
    if (matter.doors.empty())
        return QStringLiteral("<h2>") + safe(say("Doors")) + QStringLiteral("</h2><p>") +
               safe(say("No door of the register is on this walkdown.")) + QStringLiteral("</p>");
    QString html = QStringLiteral("<h2>") + safe(say("Doors")) +
                   QStringLiteral("</h2><table class=\"lines small\" width=\"100%\" "
                                  "cellspacing=\"0\" cellpadding=\"3\">") +
                   headHtml() + QStringLiteral("<tbody>");
    for (const GradedDoor& door : matter.doors)
        html += rowHtml(door, pictures);
    return html + QStringLiteral("</tbody></table>");
}

} // namespace latchround::report
