#include <algorithm>

#include "app/report/closing_matter.h"
#include "app/report/front_matter.h"
#include "app/report/item_table.h"
#include "app/report/printed_kinds.h"
#include "app/report/report_words.h"
#include "app/report/shapes.h"
#include "app/report/signed_section.h"
#include "app/report/snapshot_section.h"
#include "app/report/translated.h"
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
           safe(item.state == ItemState::Found ? Report::tr("At present: %1.").arg(effect)
                                               : Report::tr("If it fails again: %1.").arg(effect)) +
           QStringLiteral("</p>");
}

QString dueCell(const ReportData& data, const Item& item) {
    const QString due = safe(ui::dueWords(item, data.today));
    return ui::isOverdue(item, data.today)
               ? QStringLiteral("<span class=\"bad\">") + due + QStringLiteral("</span>")
               : due;
}

QString listedRow(const ReportData& data, const Item& item) {
    const QString ground =
        item.ground_for_detention
            ? safe(*item.ground_for_detention ? Report::tr("yes") : Report::tr("no"))
            : QString();
    const QString cells[] = {QString::number(numberOf(data, item)),
                             QStringLiteral("<b>") + safe(item.door) +
                                 QStringLiteral("</b><p class=\"in-cell\">") +
                                 safe(itemPlaceWords(data, item)) + QStringLiteral("</p>"),
                             wrongHtml(item),
                             zoneEffectCell(data, item),
                             safe(ui::plainText(port_state_code)),
                             item.action ? safe(ui::actionWords(*item.action)) : QString(),
                             ground,
                             dueCell(data, item),
                             item.interim.empty() ? safe(Report::tr("none recorded"))
                                                  : recordedWordingHtml(item.interim),
                             safe(ui::assignedWords(item)),
                             safe(ui::stateWords(item.state)) + courseHtml(data, item)};
    QString html = QStringLiteral("<tr>");
    for (const QString& words : cells)
        html += cell(words);
    return html + QStringLiteral("</tr>");
}

QString countWords(const ReportData& data, const std::vector<const Item*>& open) {
    QStringList parts;
    for (const Severity severity : {Severity::Critical, Severity::Serious, Severity::Minor})
        if (const auto count = std::ranges::count(open, severity, &Item::severity))
            parts << QStringLiteral("%1 %2").arg(QString::number(count),
                                                 ui::severityName(severity));
    const auto overdue = std::ranges::count_if(
        open, [&](const Item* item) { return ui::isOverdue(*item, data.today); });
    return Report::tr("%1: %2; %3 overdue.")
        .arg(counted(int(open.size()), Report::tr("1 open item"), Report::tr("%1 open items")),
             listed(parts), QString::number(overdue));
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
           ruledTable({{Report::tr("No."), 3},
                       {Report::tr("Door and place"), 11},
                       {Report::tr("Deficiency"), 22},
                       {Report::tr("Severity, zones"), 12},
                       {Report::tr("Code"), 5},
                       {Report::tr("Action code"), 7},
                       {Report::tr("Ground for detention"), 8},
                       {Report::tr("Due"), 7},
                       {Report::tr("Interim measure"), 8},
                       {Report::tr("Assigned to"), 7},
                       {Report::tr("State"), 10}},
                      rows);
}

} // namespace

Pieces deficiencyListPieces(const ReportData& data, Pictures&) {
    const auto open = openItems(data);
    const QString title = titleHtml(data, Report::tr("Deficiency list"));
    Pieces pieces{
        {open.empty() ? title + sentence(Report::tr("The vessel has no open items."))
                      : title + sentence(countWords(data, open)) +
                            sentence(Report::tr("Code 07105: fire doors and openings in "
                                                "fire-resisting divisions. Action code and ground "
                                                "for detention are as given by port State control, "
                                                "and blank where it gave none."))}};
    for (const Severity severity : {Severity::Critical, Severity::Serious, Severity::Minor})
        pieces.push_back({groupHtml(data, open, severity)});
    pieces.push_back({deferenceHtml(data.asked.catalogue, &data.asked.arrangement.particulars)});
    pieces.push_back({heading(Report::tr("Signatures")) + linesToSignHtml(), true});
    pieces.push_back({snapshotHtml(data, snapshotOf(data)), true});
    return pieces;
}

} // namespace latchround::report
