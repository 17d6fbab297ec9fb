#include <algorithm>
#include <map>

#include "app/report/closing_matter.h"
#include "app/report/front_matter.h"
#include "app/report/item_table.h"
#include "app/report/printed_kinds.h"
#include "app/report/report_words.h"
#include "app/report/shapes.h"
#include "app/report/snapshot_section.h"
#include "app/report/translated.h"
#include "ui/words/item_words.h"

namespace latchround::report {

namespace {

/// Room to write what was done: three lines, and who and when below them.
const QString room_to_write =
    QStringLiteral("<p class=\"in-cell\">&nbsp;<br/>&nbsp;<br/>&nbsp;</p>");

QString dueAndInterim(const ReportData& data, const Item& item) {
    const QString due = safe(ui::dueWords(item, data.today));
    QString html = QStringLiteral("<p class=\"in-cell%1\">")
                       .arg(ui::isOverdue(item, data.today) ? QStringLiteral(" bad") : QString()) +
                   due + QStringLiteral("</p>");
    if (!item.interim.empty())
        html += QStringLiteral("<p class=\"in-cell\">") + safe(Report::tr("Interim measure: ")) +
                recordedWordingHtml(item.interim) + QStringLiteral("</p>");
    return html;
}

QString workRow(const ReportData& data, const Item& item, Pictures& pictures) {
    const QString cells[] = {pictures.box(16),
                             QString::number(numberOf(data, item)),
                             QStringLiteral("<b>") + safe(item.door) +
                                 QStringLiteral("</b><p class=\"in-cell\">") +
                                 safe(itemPlaceWords(data, item)) + QStringLiteral("</p>"),
                             wrongHtml(item) + QStringLiteral("<p class=\"in-cell muted\">") +
                                 safe(ui::severityName(item.severity)) + QStringLiteral("</p>"),
                             dueAndInterim(data, item),
                             room_to_write + QStringLiteral("<p class=\"in-cell muted\">") +
                                 safe(Report::tr("by, date:")) + QStringLiteral("</p>")};
    QString html = QStringLiteral("<tr>");
    for (const QString& words : cells)
        html += cell(words);
    return html + QStringLiteral("</tr>");
}

/// Of one person, by zone from aft forward.
using Work = std::map<std::pair<double, QString>, std::vector<const Item*>>;

std::pair<double, QString> zoneKey(const ReportData& data, const Item& item) {
    const Arrangement& arrangement = data.asked.arrangement;
    const Door* door = findDoor(arrangement, item.door);
    const Boundary* boundary = door ? findBoundary(arrangement, door->boundary) : nullptr;
    const Zone* zone = boundary ? findZone(arrangement, boundary->zone_aft) : nullptr;
    return {zone ? zone->aft_m : 0, zoneOfItem(data, item)};
}

QString workHtml(const ReportData& data, const QString& who, const Work& work, Pictures& pictures) {
    QString html = QStringLiteral("<h2>") + safe(who) + QStringLiteral("</h2>");
    for (const auto& [zone, items] : work) {
        QString rows;
        for (const Item* item : items)
            rows += workRow(data, *item, pictures);
        QString name = zone.second;
        name[0] = name[0].toUpper();
        html += QStringLiteral("<h3>") + safe(name) + QStringLiteral("</h3>") +
                ruledTable({{Report::tr("Done"), 6},
                            {Report::tr("No."), 5},
                            {Report::tr("Door"), 17},
                            {Report::tr("What to rectify"), 34},
                            {Report::tr("Due"), 16},
                            {Report::tr("What was done"), 22}},
                           rows);
    }
    return html;
}

QString waitingHtml(const ReportData& data, const std::vector<const Item*>& open) {
    QString rows;
    for (const Item* item : open)
        if (item->state != ItemState::Found)
            rows += QStringLiteral("<tr>") + cell(QString::number(numberOf(data, *item))) +
                    cell(QStringLiteral("<b>") + safe(item->door) + QStringLiteral("</b>")) +
                    cell(safe(askedWords(*item))) +
                    cell(safe(ui::stateWords(item->state)) + courseHtml(data, *item)) +
                    QStringLiteral("</tr>");
    if (rows.isEmpty())
        return {};
    return heading(Report::tr("Rectified, awaiting retest")) +
           sentence(Report::tr("To be retested by someone other than whoever rectified it.")) +
           ruledTable({{Report::tr("No."), 5},
                       {Report::tr("Door"), 12},
                       {Report::tr("Requirement"), 45},
                       {Report::tr("State"), 38}},
                      rows);
}

} // namespace

Pieces workListPieces(const ReportData& data, Pictures& pictures) {
    const auto open = openItems(data);
    std::map<QString, Work> by_person;
    for (const Item* item : open)
        if (item->state == ItemState::Found)
            by_person[QString::fromStdString(item->assigned).simplified()][zoneKey(data, *item)]
                .push_back(item);
    const QString title = titleHtml(data, Report::tr("Work list"));
    Pieces pieces{
        {by_person.empty() ? title + sentence(Report::tr("There is nothing to rectify.")) : title}};
    for (const auto& [person, work] : by_person)
        if (!person.isEmpty())
            pieces.push_back({workHtml(data, Report::tr("For %1").arg(person), work, pictures)});
    if (const auto nobody = by_person.find(QString()); nobody != by_person.end())
        pieces.push_back(
            {workHtml(data, Report::tr("Assigned to no one yet"), nobody->second, pictures)});
    pieces.push_back({waitingHtml(data, open)});
    pieces.push_back({deferenceHtml(data.asked.catalogue, &data.asked.arrangement.particulars)});
    pieces.push_back({snapshotHtml(data, snapshotOf(data)), true});
    return pieces;
}

} // namespace latchround::report
