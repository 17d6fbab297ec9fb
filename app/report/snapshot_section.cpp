#include "app/report/snapshot_section.h"

#include "app/exchange/facts_hash.h"
#include "app/report/moment_words.h"
#include "app/report/report_words.h"
#include "app/report/shapes.h"

namespace latchround::report {

namespace {

QString factsWords(std::size_t count, const std::string& sha256) {
    return safe(say("%n fact", "%n facts", int(count))) + QStringLiteral(", SHA-256 ") +
           safe(sha256);
}

} // namespace

Snapshot snapshotOf(const ReportData& data) {
    return {factsSha256(data.basis), data.basis.size(), data.vessel_sha256,
            data.vessel_basis.size(), catalogueSha256(data.asked.catalogue)};
}

QString snapshotHtml(const ReportData& data, const Snapshot& snapshot) {
    const WalkdownReport& asked = data.asked;
    NamedRows rows;
    rows.add("Catalogue", safe(editionFor(asked.catalogue, asked.arrangement.particulars)));
    if (!snapshot.catalogue_sha256.empty())
        rows.add("Texts of the catalogue",
                 QStringLiteral("SHA-256 ") + safe(snapshot.catalogue_sha256));
    rows.add("Made", safe(asked.person.empty() ? say("%1 by %2")
                                                     .arg(shipsTimeAndUtc(asked.printed),
                                                          QString::fromStdString(asked.program))
                                               : say("%1 by %2, with %3")
                                                     .arg(shipsTimeAndUtc(asked.printed),
                                                          personWords(data, asked.person),
                                                          QString::fromStdString(asked.program))));
    rows.add("Walkdown", safe(data.walkdown.id));
    rows.add("Facts of this walkdown",
             factsWords(snapshot.walkdown_facts, snapshot.walkdown_sha256));
    rows.add("Facts of the vessel", factsWords(snapshot.vessel_facts, snapshot.vessel_sha256));
    return heading("What this document was made from") +
           sentence(say("It shows the register as it was then. Facts that were added later are not "
                        "in it; the sums below tell whether there are any.")) +
           QStringLiteral("<div style=\"font-size: 7.5pt\">") + rows.html() +
           QStringLiteral("</div>");
}

} // namespace latchround::report
