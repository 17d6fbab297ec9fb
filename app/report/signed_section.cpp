#include "app/report/signed_section.h"

#include "app/exchange/facts_hash.h"
#include "app/report/fact_kind_words.h"
#include "app/report/moment_words.h"
#include "app/report/report_words.h"
#include "app/report/row_words.h"
#include "app/report/shapes.h"
#include "app/report/translated.h"
#include "core/evidence/basis.h"
#include "ui/words/item_words.h"

namespace latchround::report {

namespace {

/// Later facts beyond so many are counted, not listed.
constexpr std::size_t most_later_facts = 25;

QString laterHtml(const ReportData& data, const std::vector<const Fact*>& later) {
    QString rows;
    for (std::size_t at = 0; at < std::min(later.size(), most_later_facts); ++at) {
        const Fact& fact = *later[at];
        rows += QStringLiteral("<tr>") + cell(safe(data.asked.ledger.doorOf(fact))) +
                cell(safe(factKind(fact))) + cell(safe(stampWords(data, fact.stamp))) +
                QStringLiteral("</tr>");
    }
    QString html = ruledTable({{Report::tr("Door"), 15},
                               {Report::tr("Recorded later"), 35},
                               {Report::tr("By, when"), 50}},
                              rows);
    if (later.size() > most_later_facts)
        html += sentence(counted(int(later.size() - most_later_facts), Report::tr("and one more"),
                                 Report::tr("and %1 more")));
    return html;
}

QString signatureHtml(const ReportData& data, const Recorded<WalkdownSigned>& record) {
    const WalkdownSigned& body = record.body;
    const Split split = splitBy(data.basis, body.covers);
    const bool unchanged = factsSha256(split.covered) == body.facts_sha256;
    QString html =
        QStringLiteral("<p><b>") + safe(personName(data, record.stamp.person)) +
        QStringLiteral("</b>") +
        safe(Report::tr(", %1, signed %2.")
                 .arg(ui::capacityWords(body.capacity), shipsTimeAndUtc(record.stamp.when))) +
        QStringLiteral("<br/><span class=\"muted\">") +
        safe(Report::tr("%1 entries, SHA-256 %2…, key of the tablet %3…")
                 .arg(QString::number(split.covered.size()),
                      QString::fromStdString(body.facts_sha256.substr(0, 16)),
                      QString::fromStdString(body.key.substr(0, 16)))) +
        QStringLiteral("</span></p>");
    if (!unchanged)
        html += QStringLiteral("<p class=\"bad\">") +
                safe(Report::tr("The entries covered by this signature are no longer as they were "
                                "when signed.")) +
                QStringLiteral("</p>");
    if (split.later.empty())
        return html + sentence(Report::tr("Nothing was recorded after this signature."));
    return html +
           sentence(counted(
               int(split.later.size()),
               Report::tr("One entry was recorded after this signature and is not covered by it:"),
               Report::tr("%1 entries were recorded after this signature and are not covered by "
                          "it:"))) +
           laterHtml(data, split.later);
}

QString lineToSign(const QString& who) {
    return QStringLiteral("<td width=\"44%\" class=\"sign\">") + safe(who) +
           QStringLiteral("</td>");
}

} // namespace

QString signaturesHtml(const ReportData& data) {
    QString html = heading(Report::tr("Signatures"));
    const auto recorded = data.asked.ledger.signaturesOf(data.walkdown.id);
    for (const auto& record : recorded)
        html += signatureHtml(data, record);
    if (recorded.empty())
        html += sentence(Report::tr("No one has signed this walkdown in the register."));
    return html + linesToSignHtml();
}

QString linesToSignHtml() {
    return englishIsSignedHtml() +
           QStringLiteral("<p class=\"room-to-sign\">&nbsp;</p>"
                          "<table width=\"100%\" cellspacing=\"0\" cellpadding=\"4\"><tr>") +
           lineToSign(Report::tr("Inspector: name, signature, date")) +
           QStringLiteral("<td width=\"12%\"></td>") +
           lineToSign(Report::tr("Chief officer: name, signature, date")) +
           QStringLiteral("</tr></table>");
}

} // namespace latchround::report
