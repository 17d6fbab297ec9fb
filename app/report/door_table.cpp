#include "app/report/door_table.h"

#include "app/report/report_words.h"
#include "app/report/shapes.h"
#include "ui/words/catalogue_words.h"
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
    return safe(ui::rowWords(*row.requirement)) + QStringLiteral(": <b>") +
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
        html += inCell(safe(counted(more, Report::tr("and one more, see Details"),
                                    Report::tr("and %1 more, see Details"))));
    return html;
}

/// Name of a timed figure, for those that a finding has not shown already.
QString figureName(const RowGrade& row) {
    if (!isAsked(row) || needsAttention(row.verdict))
        return {};
    switch (row.requirement->source) {
    case Source::ClosingTime:
        return Report::tr("shuts in %1");
    case Source::ClosingRate:
        return Report::tr("closes at %1");
    case Source::AlarmLead:
        return Report::tr("alarm leads by %1");
    default:
        return {};
    }
}

QString figuresHtml(const GradedDoor& door) {
    QStringList figures;
    for (const RowGrade& row : door.grade.rows)
        if (const QString name = figureName(row); !name.isEmpty())
            if (const QString measured = ui::measuredWords(row); !measured.isEmpty())
                figures << name.arg(measured);
    return figures.isEmpty() ? QString() : inCell(safe(figures.join(QStringLiteral("; "))));
}

QString untestedCountHtml(const GradedDoor& door) {
    const int untested = countOf(door.grade, Verdict::Untested);
    return untested == 0 ? QString()
                         : QStringLiteral("<p class=\"in-cell muted\">") +
                               safe(counted(untested, Report::tr("one check untested"),
                                            Report::tr("%1 checks untested"))) +
                               QStringLiteral("</p>");
}

QString placeHtml(const GradedDoor& door) {
    const QString kind = QStringLiteral("<br/>") + safe(ui::kindWords(door.door->kind));
    if (!door.boundary)
        return safe(Report::tr("boundary not in the register")) + kind;
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
    return ruledTable({{Report::tr("Door"), 7},
                       {Report::tr("Deck"), 5},
                       {Report::tr("Place and kind"), 20},
                       {Report::tr("Plate read"), 7},
                       {Report::tr("Register"), 8},
                       {Report::tr("Boundary"), 9},
                       {Report::tr("Verdict"), 15},
                       {Report::tr("Findings; figures with U (k = 2)"), 29}},
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
        return Report::tr("not read");
    const PlateRead& plate = evidence.plate->body;
    if (plate.fire_class)
        return QString::fromStdString(std::string(word(*plate.fire_class)));
    return plate.state == PlateState::None ? Report::tr("none") : Report::tr("illegible");
}

Pieces doorTable(const ReportData& data, Pictures& pictures) {
    if (data.doors.empty())
        return {{heading(Report::tr("Doors")) +
                 sentence(Report::tr("No door of this walkdown is in the register."))}};
    const bool by_deck = data.doors.size() > most_in_one_table;
    Pieces pieces;
    for (auto door = data.doors.begin(); door != data.doors.end();) {
        QString html = pieces.empty() ? heading(Report::tr("Doors")) : QString();
        const std::string& deck = door->door->deck;
        if (by_deck)
            html += QStringLiteral("<h3>") +
                    safe(Report::tr("Deck %1").arg(QString::fromStdString(deck))) +
                    QStringLiteral("</h3>");
        QString rows;
        for (; door != data.doors.end() && (!by_deck || door->door->deck == deck); ++door)
            rows += rowHtml(*door, pictures);
        pieces.push_back({html + tableOf(rows)});
    }
    return pieces;
}

} // namespace latchround::report
