#include <algorithm>

#include "app/report/closing_matter.h"
#include "app/report/front_matter.h"
#include "app/report/item_table.h"
#include "app/report/printed_kinds.h"
#include "app/report/report_words.h"
#include "app/report/shapes.h"
#include "app/report/signed_section.h"
#include "app/report/snapshot_section.h"
#include "ui/words/grade_words.h"
#include "ui/words/item_words.h"
#include "ui/words/plain_text.h"

namespace latchround::report {

namespace {

QString zoneEffectCell(const ReportData& data, const Item& item) {
    const QString effect =
        ui::zoneEffectWords(zoneEffect(data.asked.arrangement, data.items, item));
    const QString severity =
        QStringLiteral("<b>") + safe(ui::severityName(item.severity)) + QStringLiteral("</b>");
    if (effect.isEmpty())
        return severity;
    return severity + QStringLiteral("<p class=\"in-cell\">") +
           safe(item.state == ItemState::Found ? say("As it is: %1.").arg(effect)
                                               : say("If it does not hold: %1.").arg(effect)) +
           QStringLiteral("</p>");
}

QString dueCell(const ReportData& data, const Item& item) {
    const QString due = safe(ui::dueWords(item, data.today));
    return ui::isOverdue(item, data.today)
               ? QStringLiteral("<span class=\"bad\">") + due + QStringLiteral("</span>")
               : due;
}

QString listedRow(const ReportData& data, const Item& item) {
    const QString ground = item.ground_for_detention
                               ? safe(*item.ground_for_detention ? say("yes") : say("no"))
                               : QString();
    const QString cells[] = {
        QString::number(numberOf(data, item)),
        QStringLiteral("<b>") + safe(item.door) + QStringLiteral("</b><p class=\"in-cell\">") +
            safe(itemPlaceWords(data, item)) + QStringLiteral("</p>"),
        wrongHtml(item),
        zoneEffectCell(data, item),
        safe(ui::plainText(port_state_code)),
        item.action ? safe(ui::actionWords(*item.action)) : QString(),
        ground,
        dueCell(data, item),
        item.interim.empty() ? safe(say("nothing recorded")) : safeLines(item.interim.text),
        safe(ui::assignedWords(item)),
        safe(ui::stateWords(item.state)) + courseHtml(data, item)};
    QString html = QStringLiteral("<tr>");
    for (const QString& words : cells)
        html += cell(words);
    return html + QStringLiteral("</tr>");
}

QString countWords(const ReportData& data, const std::vector<const Item*>& open) {
    QStringList parts;
    for (const Severity severity : {Severity::Grave, Severity::Serious, Severity::Minor})
        if (const auto count = std::ranges::count(open, severity, &Item::severity))
            parts << QStringLiteral("%1 %2").arg(QString::number(count),
                                                 ui::severityName(severity));
    const auto overdue = std::ranges::count_if(
        open, [&](const Item* item) { return ui::isOverdue(*item, data.today); });
    return say("%1: %2; %3 overdue.")
        .arg(say("%n open item", "%n open items", int(open.size())), listed(parts),
             QString::number(overdue));
}

QString groupHtml(const ReportData& data, const std::vector<const Item*>& open, Severity severity) {
    QString rows;
    for (const Item* item : open)
        if (item->severity == severity)
            rows += listedRow(data, *item);
    if (rows.isEmpty())
        return {};
    QString name = ui::severityWords(severity);
    name[0] = name[0].toUpper();
    return QStringLiteral("<h2>") + safe(name) + QStringLiteral("</h2>") +
           ruledTable({{"No.", 3},
                       {"Door and place", 11},
                       {"What is wrong", 22},
                       {"Severity, zones", 12},
                       {"Code", 5},
                       {"Action code", 7},
                       {"Ground for detention", 8},
                       {"Due", 7},
                       {"Until then", 8},
                       {"Assigned to", 7},
                       {"State", 10}},
                      rows);
}

} // namespace

Pieces deficiencyListPieces(const ReportData& data, Pictures&) {
    const auto open = openItems(data);
    const QString title = titleHtml(data, say("Deficiency list"));
    Pieces pieces{{open.empty()
                       ? title + sentence(say("The vessel has no open item."))
                       : title + sentence(countWords(data, open)) +
                             sentence(say("Code 07105: fire doors and openings in fire-resisting "
                                          "divisions. Action code and ground for detention stand "
                                          "as port State control gave them, and are blank where "
                                          "it gave none."))}};
    for (const Severity severity : {Severity::Grave, Severity::Serious, Severity::Minor})
        pieces.push_back({groupHtml(data, open, severity)});
    pieces.push_back(
        {deferenceHtml(deferenceFor(data.asked.catalogue, data.asked.arrangement.particulars))});
    pieces.push_back({heading("Signatures") + linesToSignHtml(), true});
    pieces.push_back({snapshotHtml(data, snapshotOf(data)), true});
    return pieces;
}

} // namespace latchround::report
