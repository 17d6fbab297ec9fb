#include "app/report/snapshot_section.h"

#include "app/exchange/facts_hash.h"
#include "app/report/moment_words.h"
#include "app/report/report_words.h"
#include "app/report/shapes.h"

namespace latchround::report {

namespace {

QString factsWords(std::size_t count, const std::string& sha256) {
    return safe(counted(int(count), Report::tr("1 entry"), Report::tr("%1 entries"))) +
           QStringLiteral(", SHA-256 ") + safe(sha256);
}

} // namespace

Snapshot snapshotOf(const ReportData& data) {
    return {factsSha256(data.basis), data.basis.size(), data.vessel_sha256,
            data.vessel_basis.size(), catalogueSha256(data.asked.catalogue)};
}

QString snapshotHtml(const ReportData& data, const Snapshot& snapshot) {
    const WalkdownReport& asked = data.asked;
    NamedRows rows;
    rows.add(Report::tr("Catalogue"),
             safe(editionFor(asked.catalogue, asked.arrangement.particulars)));
    if (!snapshot.catalogue_sha256.empty())
        rows.add(Report::tr("Texts of the catalogue"),
                 QStringLiteral("SHA-256 ") + safe(snapshot.catalogue_sha256));
    rows.add(
        Report::tr("Created"),
        safe(asked.person.empty()
                 ? Report::tr("%1 by %2")
                       .arg(shipsTimeAndUtc(asked.printed), QString::fromStdString(asked.program))
                 : Report::tr("%1 by %2, with %3")
                       .arg(shipsTimeAndUtc(asked.printed), personWords(data, asked.person),
                            QString::fromStdString(asked.program))));
    rows.add(Report::tr("Walkdown"), safe(data.walkdown.id));
    rows.add(Report::tr("Entries of this walkdown"),
             factsWords(snapshot.walkdown_facts, snapshot.walkdown_sha256));
    rows.add(Report::tr("Entries of the vessel"),
             factsWords(snapshot.vessel_facts, snapshot.vessel_sha256));
    return heading(Report::tr("What this document was made from")) +
           sentence(
               Report::tr("It shows the register as it was at that time. Entries added later are "
                          "not in it; the checksums below show whether there are any.")) +
           QStringLiteral("<div style=\"font-size: 7.5pt\">") + rows.html() +
           QStringLiteral("</div>");
}

} // namespace latchround::report
