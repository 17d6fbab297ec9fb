#include "app/report/door_history.h"

#include <algorithm>
#include <cmath>

#include <QLocale>

#include "app/report/item_table.h"
#include "app/report/report_words.h"
#include "app/report/row_words.h"
#include "app/report/shapes.h"
#include "app/report/time_chart.h"
#include "app/report/translated.h"
#include "core/evidence/moment_text.h"
#include "ui/words/date_words.h"
#include "ui/words/grade_words.h"
#include "ui/words/item_words.h"

namespace latchround::report {

namespace {

QString andEarlier(std::size_t left_out) {
    return left_out == 0 ? QString()
                         : QStringLiteral("<p class=\"in-cell muted small\">") +
                               safe(counted(int(left_out), Report::tr("and one earlier"),
                                            Report::tr("and %1 earlier"))) +
                               QStringLiteral("</p>");
}

/// "15.71 ± 0.16 s": U (k = 2) rounded up, as the rows of the grade have it.
QString figureWords(const TimedDay& day, const std::string& unit) {
    const int places = unit == "s" ? 2 : 3;
    const double scale = std::pow(10.0, places);
    const double expanded = std::ceil(2 * day.u * scale - 1e-9) / scale;
    return QStringLiteral("%1 ± %2 %3")
        .arg(QLocale().toString(day.value, 'f', places), QLocale().toString(expanded, 'f', places),
             QString::fromStdString(unit));
}

/// A time before a rate: that is what most doors are asked.
const Requirement* timedRow(const DoorGrade& grade) {
    const Requirement* found = nullptr;
    for (const RowGrade& row : grade.rows)
        if (isAsked(row) && (row.requirement->source == Source::ClosingTime ||
                             (!found && row.requirement->source == Source::ClosingRate)))
            found = row.requirement;
    return found;
}

std::vector<const Item*> itemsOfDoor(const ReportData& data, const std::string& door) {
    std::vector<const Item*> items;
    for (const Item& item : data.items)
        if (item.door == door)
            items.push_back(&item);
    std::ranges::reverse(items);
    std::ranges::stable_sort(items, {}, [](const Item* item) { return !item->isOpen(); });
    return items;
}

std::vector<Recorded<Photograph>> photographsOfDoor(const Ledger& ledger, const std::string& door) {
    std::vector<Recorded<Photograph>> all;
    for (const Walkdown& walkdown : ledger.walkdowns())
        std::ranges::move(ledger.evidenceOf(walkdown.id, door).photographs,
                          std::back_inserter(all));
    std::ranges::reverse(all);
    return all;
}

} // namespace

DoorHistory historyOf(const ReportData& data, const GradedDoor& door) {
    const Ledger& ledger = data.asked.ledger;
    const Requirement* timed = timedRow(door.grade);
    return {data, timed,
            timed ? timedDays(ledger, ledger.walkdowns(), *door.door, *timed)
                  : std::vector<TimedDay>{},
            itemsOfDoor(data, door.door->number), photographsOfDoor(ledger, door.door->number)};
}

QString shortened(const QString& words, int letters) {
    const QString plain = words.simplified();
    if (plain.size() <= letters)
        return plain;
    QString begin = plain.left(letters);
    if (begin.back().isHighSurrogate())
        begin.chop(1);
    return begin.trimmed() + QChar(0x2026);
}

QString timesHtml(const DoorHistory& history, const Room& room, Pictures& pictures) {
    if (!history.timed)
        return {};
    QString html =
        QStringLiteral("<h2>") +
        safe(history.timed->source == Source::ClosingTime ? Report::tr("Closing times")
                                                          : Report::tr("Closing rates")) +
        QStringLiteral("</h2>");
    if (history.days.empty())
        return html + sentence(Report::tr("Not yet timed with the ship upright."));
    if (history.days.size() > 1 && room.chart_mm > 0)
        html += QStringLiteral("<p>") +
                pictures.drawing(QStringLiteral("times"),
                                 timeChart(history.days, history.timed->low, history.timed->high),
                                 room.chart_mm) +
                QStringLiteral("</p>");
    QStringList figures;
    const std::size_t shown = std::min(room.times, history.days.size());
    for (std::size_t at = 0; at < shown; ++at) {
        const TimedDay& day = history.days[history.days.size() - 1 - at];
        figures << QStringLiteral("%1: %2%3")
                       .arg(ui::dateWords(day.day), figureWords(day, history.timed->unit),
                            day.outside ? Report::tr(" (outside the limit)") : QString());
    }
    html +=
        QStringLiteral("<p class=\"small\">") +
        safe(Report::tr("Limit: %1 (%2). Newest first, with U (k = 2): %3.")
                 .arg(ui::limitWords(*history.timed), QString::fromStdString(history.timed->cite),
                      figures.join(QStringLiteral("; ")))) +
        QStringLiteral("</p>");
    return html + andEarlier(history.days.size() - shown);
}

QString itemsHtml(const DoorHistory& history, const Room& room) {
    if (history.items.empty())
        return heading(Report::tr("Deficiencies")) +
               sentence(Report::tr("No deficiency has been written up at "
                                   "this door."));
    QString rows;
    const std::size_t shown = std::min(room.items, history.items.size());
    for (std::size_t at = 0; at < shown; ++at) {
        const Item& item = *history.items[at];
        const QString text = item.text().empty() ? askedWords(item) : recordedWording(item.text());
        rows += QStringLiteral("<tr>") + cell(QString::number(numberOf(history.data, item))) +
                cell(safe(shortened(text, room.letters))) +
                cell(safe(ui::severityName(item.severity))) +
                cell(QStringLiteral("<b>") + safe(ui::stateWords(item.state)) +
                     QStringLiteral("</b>")) +
                cell(safe(Report::tr("found %1")
                              .arg(ui::dateWords(shipsDay(item.findings.back().stamp.when)))) +
                     (item.isOpen() && item.due
                          ? QStringLiteral(", ") + safe(ui::dueWords(item, history.data.today))
                          : QString())) +
                QStringLiteral("</tr>");
    }
    return heading(Report::tr("Deficiencies")) +
           ruledTable({{Report::tr("No."), 5},
                       {Report::tr("Deficiency"), 49},
                       {Report::tr("Severity"), 9},
                       {Report::tr("State"), 13},
                       {Report::tr("Found, due"), 24}},
                      rows) +
           andEarlier(history.items.size() - shown);
}

QString photographsHtml(const DoorHistory& history, const Room& room, Pictures& pictures) {
    const std::size_t shown = std::min(room.photographs, history.photographs.size());
    if (history.photographs.empty())
        return {};
    QString shown_pictures;
    QString captions;
    for (std::size_t at = 0; at < shown; ++at) {
        const auto& record = history.photographs[at];
        shown_pictures += QStringLiteral("<td width=\"33%\">") +
                          pictures.photograph(record.body, room.photograph_mm) +
                          QStringLiteral("</td>");
        captions += QStringLiteral("<td><p class=\"caption\">") +
                    safe(shortened(recordedWording(record.body.caption), room.letters)) +
                    QStringLiteral(" <span class=\"muted\">") +
                    safe(stampWords(history.data, record.stamp)) +
                    QStringLiteral("</span></p></td>");
    }
    return (shown == 0 ? QString()
                       : heading(Report::tr("Photographs")) +
                             QStringLiteral("<table width=\"100%\" cellspacing=\"0\" "
                                            "cellpadding=\"2\"><tr>") +
                             shown_pictures + QStringLiteral("</tr><tr>") + captions +
                             QStringLiteral("</tr></table>")) +
           (history.photographs.size() == shown
                ? QString()
                : QStringLiteral("<p class=\"in-cell muted small\">") +
                      safe(counted(int(history.photographs.size() - shown),
                                   Report::tr("and one photograph in the register"),
                                   Report::tr("and %1 photographs in the register"))) +
                      QStringLiteral("</p>"));
}

} // namespace latchround::report
