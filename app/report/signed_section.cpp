#include "app/report/signed_section.h"

#include "app/exchange/facts_hash.h"
#include "app/report/moment_words.h"
#include "app/report/report_words.h"
#include "app/report/row_words.h"
#include "app/report/shapes.h"
#include "core/evidence/basis.h"
#include "ui/words/item_words.h"
#include "ui/words/plain_text.h"

namespace latchround::report {

namespace {

/// Later facts beyond so many are counted, not listed.
constexpr std::size_t most_later_facts = 25;

QString kindOfFact(const Fact& fact) {
    return ui::plainText(factKindWords[fact.body.index()]).replace(QChar('-'), QChar(' '));
}

QString laterHtml(const ReportData& data, const std::vector<const Fact*>& later) {
    QString rows;
    for (std::size_t at = 0; at < std::min(later.size(), most_later_facts); ++at) {
        const Fact& fact = *later[at];
        rows += QStringLiteral("<tr>") + cell(safe(data.asked.ledger.doorOf(fact))) +
                cell(safe(kindOfFact(fact))) + cell(safe(stampWords(data, fact.stamp))) +
                QStringLiteral("</tr>");
    }
    QString html = ruledTable({{"Door", 15}, {"Recorded later", 35}, {"By, when", 50}}, rows);
    if (later.size() > most_later_facts)
        html += sentence(say("and one more", "and %n more", int(later.size() - most_later_facts)));
    return html;
}

QString signatureHtml(const ReportData& data, const Recorded<WalkdownSigned>& record) {
    const WalkdownSigned& body = record.body;
    const Split split = splitBy(data.basis, body.covers);
    const bool unchanged = factsSha256(split.covered) == body.facts_sha256;
    QString html =
        QStringLiteral("<p><b>") + safe(personName(data, record.stamp.person)) +
        QStringLiteral("</b>") +
        safe(say(", %1, signed %2.")
                 .arg(ui::capacityWords(body.capacity), shipsTimeAndUtc(record.stamp.when))) +
        QStringLiteral("<br/><span class=\"muted\">") +
        safe(say("%1 facts, SHA-256 %2…, key of the tablet %3…")
                 .arg(QString::number(split.covered.size()),
                      QString::fromStdString(body.facts_sha256.substr(0, 16)),
                      QString::fromStdString(body.key.substr(0, 16)))) +
        QStringLiteral("</span></p>");
    if (!unchanged)
        html += QStringLiteral("<p class=\"bad\">") +
                safe(say("The facts this signature covers are not here as they were signed.")) +
                QStringLiteral("</p>");
    if (split.later.empty())
        return html + sentence(say("Nothing was recorded after this signature."));
    return html +
           sentence(say("One fact was recorded after this signature and is not covered by it:",
                        "%n facts were recorded after this signature and are not covered by it:",
                        int(split.later.size()))) +
           laterHtml(data, split.later);
}

QString lineToSign(const char* who) {
    return QStringLiteral("<td width=\"44%\" class=\"sign\">") + safe(say(who)) +
           QStringLiteral("</td>");
}

} // namespace

QString signaturesHtml(const ReportData& data) {
    QString html = heading("Signatures");
    const auto recorded = data.asked.ledger.signaturesOf(data.walkdown.id);
    for (const auto& record : recorded)
        html += signatureHtml(data, record);
    if (recorded.empty())
        html += sentence(say("Nobody has signed this walkdown in the register."));
    return html + linesToSignHtml();
}

QString linesToSignHtml() {
    return QStringLiteral("<p class=\"room-to-sign\">&nbsp;</p>"
                          "<table width=\"100%\" cellspacing=\"0\" cellpadding=\"4\"><tr>") +
           lineToSign("Surveyor: name, signature, date") +
           QStringLiteral("<td width=\"12%\"></td>") +
           lineToSign("Chief officer: name, signature, date") + QStringLiteral("</tr></table>");
}

} // namespace latchround::report
