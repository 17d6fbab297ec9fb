#include "app/report/paper_door.h"

#include <algorithm>
#include <iterator>
#include <utility>

#include "app/report/door_table.h"
#include "app/report/figure_words.h"
#include "app/report/report_words.h"
#include "core/evidence/run_sequence.h"
#include "core/grading/paper_items.h"
#include "ui/words/catalogue_words.h"
#include "ui/words/door_words.h"
#include "ui/words/grade_words.h"

namespace latchround::report {

namespace {

constexpr int tick_px = 9;
constexpr int runs_again = 2; ///< lines for what lies close to a limit
const QString between_halves = QStringLiteral("<td width=\"2%\"></td>");

/// "7 ", bold, as it stands before the same question where the form is typed in.
QString numberHtml(const PaperItem& item) {
    return QStringLiteral("<b>%1</b> &nbsp;").arg(item.number);
}

using Items = std::vector<PaperItem>;

Items itemsOf(const Items& all, PaperKind kind) {
    Items some;
    std::ranges::copy_if(all, std::back_inserter(some),
                         [kind](const PaperItem& item) { return item.kind == kind; });
    return some;
}

QString ticks(Pictures& pictures, bool asked) {
    QString html;
    for (int box = 0; box < 3; ++box)
        html += QStringLiteral("<td width=\"3%\" align=\"center\">") +
                (asked ? pictures.box(tick_px) : QString()) + QStringLiteral("</td>");
    return html;
}

/// Question and boxes: half the width of the page.
QString questionCells(const PaperItem* item, Pictures& pictures) {
    if (!item)
        return QStringLiteral("<td width=\"31%\"></td>") + ticks(pictures, false) +
               ticks(pictures, false);
    const Requirement& row = *item->requirement;
    return QStringLiteral("<td width=\"31%\">") + numberHtml(*item) + safe(ui::askedWords(row)) +
           QStringLiteral("</td>") + ticks(pictures, true) +
           ticks(pictures, row.check == CheckKind::SeenBothSides);
}

QString headCells() {
    const auto head = [](const QString& words) {
        return QStringLiteral("<th align=\"center\">") + safe(words) + QStringLiteral("</th>");
    };
    const QString ticks_head =
        head(Report::tr("yes")) + head(Report::tr("no")) + head(Report::tr("n/a"));
    return QStringLiteral("<th align=\"left\">") +
           safe(Report::tr("Second boxes: the other side")) + QStringLiteral("</th>") + ticks_head +
           ticks_head;
}

/// In two columns, down the left one first.
QString questionsHtml(const Items& rows, Pictures& pictures) {
    if (rows.empty())
        return {};
    QString html = QStringLiteral("<table class=\"lines paper\" width=\"100%\" cellspacing=\"0\" "
                                  "cellpadding=\"1\"><tr>") +
                   headCells() + between_halves + headCells() + QStringLiteral("</tr>");
    const std::size_t half = (rows.size() + 1) / 2;
    for (std::size_t at = 0; at < half; ++at)
        html += QStringLiteral("<tr>") + questionCells(&rows[at], pictures) + between_halves +
                questionCells(half + at < rows.size() ? &rows[half + at] : nullptr, pictures) +
                QStringLiteral("</tr>");
    return html + QStringLiteral("</table>");
}

QString toMeasure(const Items& all) {
    QStringList lines;
    for (const PaperItem& item : itemsOf(all, PaperKind::Figure)) {
        const QString limit = ui::limitWords(*item.requirement);
        lines << numberHtml(item) + safe(ui::askedWords(*item.requirement)) +
                     (limit.isEmpty() ? QString()
                                      : QStringLiteral(" (") + safe(limit) + QStringLiteral(")")) +
                     QStringLiteral(": _________ ") + safe(gaugeUnit(*item.requirement));
    }
    for (const PaperItem& item : itemsOf(all, PaperKind::SpringGauge))
        lines << numberHtml(item) +
                     safe(Report::tr("Spring gauge at the edge of the closed leaf")) +
                     QStringLiteral(": _________ ") + safe(gaugeUnit(*item.requirement));
    for (const PaperItem& item : itemsOf(all, PaperKind::Heel))
        lines << numberHtml(item) + safe(Report::tr("Ship's heel at this door")) +
                     QStringLiteral(": _______ ") + safe(Report::tr("degrees"));
    return QStringLiteral("<p class=\"paper\">") + lines.join(QStringLiteral(" &nbsp; ")) +
           QStringLiteral("</p>");
}

/// From one event that is marked to the next.
struct Time {
    MarkKind from;
    MarkKind to;

    bool operator==(const Time&) const = default;
};

std::vector<Time> timesOf(const Door& door, Release release) {
    const std::vector<MarkKind> marks = requiredMarks(door, release, RunKind::Closing);
    std::vector<Time> times;
    for (std::size_t at = 1; at < marks.size(); ++at)
        times.push_back({marks[at - 1], marks[at]});
    return times;
}

/// It ends what the row sets a limit to.
bool isLimited(const Time& time, Source source) {
    switch (source) {
    case Source::ClosingTime:
    case Source::ClosingRate:
        return time.to == MarkKind::Shut || time.to == MarkKind::SecondLeafHome;
    case Source::AlarmLead:
        return time.from == MarkKind::AlarmOn;
    case Source::AlarmAfterShut:
        return time.to == MarkKind::AlarmOff;
    default:
        return false;
    }
}

/// "Leaf moves to shut, s (10 s to 40 s)"; the second leaf's limit is that of both together.
QString timeHead(const Time& time, const std::vector<const Requirement*>& timed) {
    QStringList limits;
    for (const Requirement* row : timed)
        if (isLimited(time, row->source))
            limits << (time.to == MarkKind::SecondLeafHome
                           ? Report::tr("both together %1").arg(ui::limitWords(*row))
                           : ui::limitWords(*row));
    limits.removeDuplicates();
    const QString words = QStringLiteral("%1, s").arg(
        Report::tr("%1 to %2").arg(ui::markWords(time.from), ui::markWords(time.to).toLower()));
    return QStringLiteral("<th align=\"left\">") +
           safe(limits.isEmpty()
                    ? words
                    : QStringLiteral("%1 (%2)").arg(words, limits.join(QStringLiteral("; ")))) +
           QStringLiteral("</th>");
}

/// The times that are asked when the run is typed in; a dash where this one has no such time.
QString runLine(const QString& number, const QString& words, const std::vector<Time>& columns,
                const std::vector<Time>& asked) {
    QString html = QStringLiteral("<tr><td>%1</td><td>%2</td>").arg(number, words);
    for (const Time& column : columns)
        html += std::ranges::find(asked, column) == asked.end()
                    ? QStringLiteral("<td align=\"center\">–</td>")
                    : QStringLiteral("<td>&nbsp;</td>");
    return html + QStringLiteral("<td>&nbsp;</td></tr>");
}

/// Each way of release as a line, the times between its events as columns, and lines for runs that
/// are taken again.
QString runsHtml(const Door& door, const Items& all, const std::vector<const Requirement*>& timed) {
    const Items runs = itemsOf(all, PaperKind::Run);
    std::vector<Time> columns;
    for (const PaperItem& item : runs)
        for (const Time& time : timesOf(door, item.release))
            if (std::ranges::find(columns, time) == columns.end())
                columns.push_back(time);
    // As they follow in a run that has them all.
    std::ranges::stable_sort(columns, {}, [](const Time& time) {
        return std::pair{time.from != MarkKind::AlarmOn, time.to == MarkKind::AlarmOff};
    });
    QString head = QStringLiteral("<th width=\"5%\"></th><th align=\"left\">") +
                   safe(Report::tr("Released")) + QStringLiteral("</th>");
    for (const Time& time : columns)
        head += timeHead(time, timed);
    head += QStringLiteral("<th align=\"left\">") + safe(Report::tr("Shut, latched?")) +
            QStringLiteral("</th>");
    QString html = QStringLiteral("<table class=\"lines paper\" width=\"100%\" cellspacing=\"0\" "
                                  "cellpadding=\"4\"><tr>") +
                   head + QStringLiteral("</tr>");
    for (const PaperItem& item : runs)
        html += runLine(numberHtml(item), safe(ui::releaseWords(item.release)), columns,
                        timesOf(door, item.release));
    for (int again = 0; again < runs_again; ++again)
        html += runLine({}, safe(Report::tr("again, No. ____")), columns, columns);
    html += QStringLiteral("</table>");
    for (const PaperItem& item : itemsOf(all, PaperKind::Contact))
        html += QStringLiteral("<p class=\"paper\">") + numberHtml(item) +
                safe(Report::tr("Contact with a soft block, never a hand: touched to stopped")) +
                QStringLiteral(" _________ s</p>");
    return html;
}

QString doorHead(const PaperForm& form, const GradedDoor& door) {
    QStringList words{QString::fromStdString(std::string(word(door.door->fire_class)))};
    words << ui::doorWords(*door.door)
          << Report::tr("deck %1").arg(QString::fromStdString(door.door->deck));
    if (door.boundary)
        words << boundaryPlaceWords(*door.boundary);
    if (door.door->opening_m > 0)
        words << Report::tr("clear opening %1").arg(metres(door.door->opening_m));
    if (isRemotelyReleased(*door.door))
        words << Report::tr("released with %1")
                     .arg(QString::fromStdString(usualGroup(form.arrangement, *door.door)));
    if (door.door->watertight)
        words << Report::tr("not examined as a watertight door");
    return QStringLiteral("<h3 class=\"paper\">") +
           safe(Report::tr("Door %1").arg(QString::fromStdString(door.door->number))) +
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
    const Items items = paperItems(form.arrangement, door, form.catalogue, form.purpose);
    std::vector<const Requirement*> timed;
    for (const RowGrade& row : asked.grade.rows)
        if (isAsked(row) && isOfMarks(row.requirement->source))
            timed.push_back(row.requirement);
    QString plate;
    for (const PaperItem& item : itemsOf(items, PaperKind::Plate))
        plate = numberHtml(item) + safe(Report::tr("Plate reads:")) +
                QStringLiteral(" ______________ &nbsp; ");
    return doorHead(form, asked) + QStringLiteral("<p class=\"paper\">") + plate +
           safe(Report::tr("Time:")) + QStringLiteral(" __________ &nbsp; ") +
           safe(Report::tr("Inspector's verdict:")) +
           QStringLiteral(" ______________________</p>") +
           questionsHtml(itemsOf(items, PaperKind::Question), pictures) + toMeasure(items) +
           runsHtml(door, items, timed) + QStringLiteral("<p class=\"paper\">") +
           safe(Report::tr("Notes:")) + QChar(' ') + QString(110, QChar('_')) +
           QStringLiteral("</p>");
}

} // namespace latchround::report
