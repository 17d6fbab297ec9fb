#include "app/report/item_table.h"

#include "app/report/door_table.h"
#include "app/report/report_words.h"
#include "app/report/row_words.h"
#include "app/report/shapes.h"
#include "app/report/translated.h"
#include "core/evidence/moment_text.h"
#include "ui/words/catalogue_words.h"
#include "ui/words/date_words.h"
#include "ui/words/grade_words.h"
#include "ui/words/item_words.h"

namespace latchround::report {

namespace {

QString line(const QString& html) {
    return QStringLiteral("<p class=\"in-cell\">") + html + QStringLiteral("</p>");
}

QString mutedLine(const QString& words) {
    return words.isEmpty() ? QString()
                           : QStringLiteral("<p class=\"in-cell muted\">") + safe(words) +
                                 QStringLiteral("</p>");
}

QString dayOf(const Stamp& stamp) {
    return ui::dateWords(shipsDay(stamp.when));
}

QString itemRow(const ReportData& data, const Item& item) {
    const QString due = safe(ui::dueWords(item, data.today));
    return QStringLiteral("<tr>") + cell(QString::number(numberOf(data, item))) +
           cell(QStringLiteral("<b>") + safe(item.door) + QStringLiteral("</b>")) +
           cell(wrongHtml(item)) + cell(safe(ui::severityName(item.severity))) +
           cell(line(safe(ui::stateWords(item.state))) + courseHtml(data, item)) +
           cell(ui::isOverdue(item, data.today)
                    ? QStringLiteral("<span class=\"bad\">") + due + QStringLiteral("</span>")
                    : due) +
           cell(safe(ui::assignedWords(item))) + QStringLiteral("</tr>");
}

} // namespace

QString askedWords(const Item& item) {
    if (item.row)
        return ui::rowWords(*item.row);
    return item.requirement.empty() ? Report::tr("the door as a whole")
                                    : QString::fromStdString(item.requirement);
}

QString zoneOfItem(const ReportData& data, const Item& item) {
    const Arrangement& arrangement = data.asked.arrangement;
    const Door* door = findDoor(arrangement, item.door);
    const Boundary* boundary = door ? findBoundary(arrangement, door->boundary) : nullptr;
    if (!boundary || boundary->zone_aft.empty())
        return Report::tr("zone not known");
    const QString aft = QString::fromStdString(boundary->zone_aft);
    return boundary->zone_aft == boundary->zone_forward
               ? Report::tr("zone %1").arg(aft)
               : Report::tr("zones %1 and %2")
                     .arg(aft, QString::fromStdString(boundary->zone_forward));
}

QString itemPlaceWords(const ReportData& data, const Item& item) {
    const Arrangement& arrangement = data.asked.arrangement;
    const Door* door = findDoor(arrangement, item.door);
    if (!door)
        return Report::tr("no longer in the register");
    QStringList words{Report::tr("deck %1").arg(QString::fromStdString(door->deck))};
    if (const Boundary* boundary = findBoundary(arrangement, door->boundary))
        words << boundaryPlaceWords(*boundary);
    words << zoneOfItem(data, item);
    return words.join(QStringLiteral(", "));
}

QString wrongHtml(const Item& item) {
    QString html = line(safe(askedWords(item)) +
                        (item.row ? englishOf([&] { return askedWords(item); }) : QString()));
    if (!item.text().empty())
        html +=
            line(QStringLiteral("<b>") + recordedWordingHtml(item.text()) + QStringLiteral("</b>"));
    if (item.row)
        html += mutedLine(ui::citeWords(*item.row));
    if (const QString repeats = ui::repeatWords(item); !repeats.isEmpty())
        html += line(QStringLiteral("<b>") + safe(Report::tr("Repeat: %1").arg(repeats)) +
                     QStringLiteral("</b>"));
    return html + mutedLine(ui::stillOpenWords(item));
}

QString courseHtml(const ReportData& data, const Item& item) {
    const auto& found = item.findings.back();
    QString html = mutedLine(
        Report::tr("found %1 by %2").arg(dayOf(found.stamp), personName(data, found.stamp.person)));
    if (!item.rectifications.empty()) {
        const auto& rectified = item.rectifications.back();
        html +=
            mutedLine(Report::tr("rectified %1 by %2: %3")
                          .arg(dayOf(rectified.stamp), QString::fromStdString(rectified.body.by),
                               recordedWording(rectified.body.what)));
    }
    if (item.retest && !item.retest->passed)
        html += mutedLine(Report::tr("retested %1: not in order").arg(dayOf(item.retest->newest)));
    return html;
}

QString openItemsHtml(const ReportData& data) {
    const auto open = openItems(data);
    if (open.empty())
        return heading(Report::tr("Open items")) +
               sentence(Report::tr("The vessel has no open items."));
    QString rows;
    for (const Item* item : open)
        rows += itemRow(data, *item);
    return heading(Report::tr("Open items")) +
           sentence(
               Report::tr("All open items of the vessel, from this walkdown and earlier ones.")) +
           ruledTable({{Report::tr("No."), 5},
                       {Report::tr("Door"), 8},
                       {Report::tr("Deficiency"), 37},
                       {Report::tr("Severity"), 9},
                       {Report::tr("State"), 19},
                       {Report::tr("Due"), 12},
                       {Report::tr("Assigned to"), 10}},
                      rows);
}

} // namespace latchround::report
