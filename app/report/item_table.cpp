#include "app/report/item_table.h"

#include "app/report/door_table.h"
#include "app/report/report_words.h"
#include "app/report/row_words.h"
#include "app/report/shapes.h"
#include "core/evidence/moment_text.h"
#include "ui/words/date_words.h"
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
        return QString::fromStdString(item.row->words);
    return item.requirement.empty() ? say("the door as a whole")
                                    : QString::fromStdString(item.requirement);
}

QString zoneOfItem(const ReportData& data, const Item& item) {
    const Arrangement& arrangement = data.asked.arrangement;
    const Door* door = findDoor(arrangement, item.door);
    const Boundary* boundary = door ? findBoundary(arrangement, door->boundary) : nullptr;
    if (!boundary || boundary->zone_aft.empty())
        return say("zone not known");
    const QString aft = QString::fromStdString(boundary->zone_aft);
    return boundary->zone_aft == boundary->zone_forward
               ? say("zone %1").arg(aft)
               : say("zones %1 and %2").arg(aft, QString::fromStdString(boundary->zone_forward));
}

QString itemPlaceWords(const ReportData& data, const Item& item) {
    const Arrangement& arrangement = data.asked.arrangement;
    const Door* door = findDoor(arrangement, item.door);
    if (!door)
        return say("no longer in the register");
    QStringList words{say("deck %1").arg(QString::fromStdString(door->deck))};
    if (const Boundary* boundary = findBoundary(arrangement, door->boundary))
        words << boundaryPlaceWords(*boundary);
    words << zoneOfItem(data, item);
    return words.join(QStringLiteral(", "));
}

QString wrongHtml(const Item& item) {
    QString html = line(safe(askedWords(item)));
    if (!item.text().empty())
        html += line(QStringLiteral("<b>") + safeLines(item.text().text) + QStringLiteral("</b>"));
    if (item.row)
        html += mutedLine(QString::fromStdString(item.row->cite));
    if (const QString repeats = ui::repeatWords(item); !repeats.isEmpty())
        html += line(QStringLiteral("<b>") + safe(say("Repeat: %1").arg(repeats)) +
                     QStringLiteral("</b>"));
    return html + mutedLine(ui::stillOpenWords(item));
}

QString courseHtml(const ReportData& data, const Item& item) {
    const auto& found = item.findings.back();
    QString html = mutedLine(
        say("found %1 by %2").arg(dayOf(found.stamp), personName(data, found.stamp.person)));
    if (!item.rectifications.empty()) {
        const auto& mended = item.rectifications.back();
        html += mutedLine(say("put right %1 by %2: %3")
                              .arg(dayOf(mended.stamp), QString::fromStdString(mended.body.by),
                                   QString::fromStdString(mended.body.what.text)));
    }
    if (item.retest && !item.retest->passed)
        html += mutedLine(say("tried again %1: not in order").arg(dayOf(item.retest->newest)));
    return html;
}

QString openItemsHtml(const ReportData& data) {
    const auto open = openItems(data);
    if (open.empty())
        return heading("Open items") + sentence(say("The vessel has no open item."));
    QString rows;
    for (const Item* item : open)
        rows += itemRow(data, *item);
    return heading("Open items") +
           sentence(say("All of the vessel, from this walkdown and from those before it.")) +
           ruledTable({{"No.", 5},
                       {"Door", 8},
                       {"What is wrong", 37},
                       {"Severity", 9},
                       {"State", 19},
                       {"Due", 12},
                       {"Assigned to", 10}},
                      rows);
}

} // namespace latchround::report
