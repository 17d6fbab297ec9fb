#include "app/report/door_table.h"

#include "app/report/report_words.h"
#include "app/report/shapes.h"
#include "ui/words/door_words.h"
#include "ui/words/grade_words.h"
#include "ui/words/verdict_words.h"

namespace latchround::report {

namespace {

/// More than this many findings in one line make a table nobody reads; the details have them all.
constexpr int most_findings = 3;
/// More doors than these stand deck by deck, each with its bookmark.
constexpr std::size_t most_in_one_table = 100;

QString inCell(const QString& html) {
    return QStringLiteral("<p class=\"in-cell\">") + html + QStringLiteral("</p>");
}

QString findingHtml(const RowGrade& row) {
    QStringList found{ui::reasonWords(row.reason)};
    if (const QString measured = ui::measuredWords(row); !measured.isEmpty())
        found.prepend(measured);
    return safe(row.requirement->words) + QStringLiteral(": <b>") +
           safe(found.join(QStringLiteral(", "))) + QStringLiteral("</b>");
}

QString findingsHtml(const GradedDoor& door) {
    QString html;
    int shown = 0;
    int more = 0;
    for (const RowGrade* row : askedWorstFirst(door.grade)) {
        if (!needsAttention(row->verdict))
            continue;
        if (++shown <= most_findings)
            html += inCell(findingHtml(*row));
        else
            ++more;
    }
    if (more > 0)
        html += inCell(
            safe(say("and one more, see its details", "and %n more, see its details", more)));
    return html;
}

/// Name of a timed figure, for those that a finding has not shown already.
const char* figureName(const RowGrade& row) {
    if (!isAsked(row) || needsAttention(row.verdict))
        return nullptr;
    switch (row.requirement->source) {
    case Source::ClosingTime:
        return "shuts in %1";
    case Source::ClosingRate:
        return "closes at %1";
    case Source::AlarmLead:
        return "alarm leads by %1";
    default:
        return nullptr;
    }
}

QString figuresHtml(const GradedDoor& door) {
    QStringList figures;
    for (const RowGrade& row : door.grade.rows)
        if (const char* name = figureName(row))
            if (const QString measured = ui::measuredWords(row); !measured.isEmpty())
                figures << say(name).arg(measured);
    return figures.isEmpty() ? QString() : inCell(safe(figures.join(QStringLiteral("; "))));
}

QString untestedCountHtml(const GradedDoor& door) {
    const int untested = countOf(door.grade, Verdict::Untested);
    return untested == 0 ? QString()
                         : QStringLiteral("<p class=\"in-cell muted\">") +
                               safe(say("one row untested", "%n rows untested", untested)) +
                               QStringLiteral("</p>");
}

QString placeHtml(const GradedDoor& door) {
    const QString kind = QStringLiteral("<br/>") + safe(ui::kindWords(door.door->kind));
    if (!door.boundary)
        return safe(say("boundary not in the register")) + kind;
    return safe(boundaryPlaceWords(*door.boundary)) + kind;
}

QString rowHtml(const GradedDoor& door, Pictures& pictures) {
    const Verdict verdict = door.grade.verdict;
    return QStringLiteral("<tr>") +
           cell(QStringLiteral("<b>") + safe(door.door->number) + QStringLiteral("</b>")) +
           cell(safe(door.door->deck)) + cell(placeHtml(door)) +
           cell(safe(plateReadWords(door.evidence))) +
           cell(safe(std::string(word(door.door->fire_class)))) +
           cell(safe(ui::boundaryClassWords(door.grade.asked_class))) +
           cell(pictures.glyph(verdict, 15) + QStringLiteral(" ") +
                safe(ui::verdictWords(verdict))) +
           cell(findingsHtml(door) + figuresHtml(door) + untestedCountHtml(door)) +
           QStringLiteral("</tr>");
}

QString tableOf(const QString& rows) {
    return ruledTable({{"Door", 7},
                       {"Deck", 5},
                       {"Place and kind", 20},
                       {"Plate read", 7},
                       {"Register", 8},
                       {"Boundary", 9},
                       {"Verdict", 15},
                       {"Findings; figures with U (k = 2)", 29}},
                      rows);
}

} // namespace

QString boundaryPlaceWords(const Boundary& boundary) {
    const QString place = ui::placeWords(boundary.place);
    const QString id = QString::fromStdString(boundary.id);
    return boundary.place == Place::ZoneBulkhead ? QStringLiteral("%1 %2").arg(place, id)
                                                 : QStringLiteral("%1 (%2)").arg(place, id);
}

QString plateReadWords(const DoorEvidence& evidence) {
    if (!evidence.plate)
        return say("not read");
    const PlateRead& plate = evidence.plate->body;
    if (plate.fire_class)
        return QString::fromStdString(std::string(word(*plate.fire_class)));
    return plate.state == PlateState::None ? say("none") : say("illegible");
}

Pieces doorTable(const ReportData& data, Pictures& pictures) {
    if (data.doors.empty())
        return {{heading("Doors") + sentence(say("No door of the register is on this walkdown."))}};
    const bool by_deck = data.doors.size() > most_in_one_table;
    Pieces pieces;
    for (auto door = data.doors.begin(); door != data.doors.end();) {
        QString html = pieces.empty() ? heading("Doors") : QString();
        const std::string& deck = door->door->deck;
        if (by_deck)
            html += QStringLiteral("<h3>") +
                    safe(say("Deck %1").arg(QString::fromStdString(deck))) +
                    QStringLiteral("</h3>");
        QString rows;
        for (; door != data.doors.end() && (!by_deck || door->door->deck == deck); ++door)
            rows += rowHtml(*door, pictures);
        pieces.push_back({html + tableOf(rows)});
    }
    return pieces;
}

} // namespace latchround::report
