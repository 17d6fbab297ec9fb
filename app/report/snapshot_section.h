// What a document was made from, so that anybody can tell later whether it still says what the
// register says: catalogue, moment, person, and the SHA-256 of the facts.
#pragma once

#include "app/report/report_data.h"

namespace latchround::report {

/// Facts of the walkdown as a signature names them, and those of the whole vessel, as ReportMade
/// does: a document shows items of earlier walkdowns too.
struct Snapshot {
    std::string walkdown_sha256;
    std::size_t walkdown_facts = 0;
    std::string vessel_sha256;
    std::size_t vessel_facts = 0; ///< signatures and reports aside
    std::string catalogue_sha256{};
};
Snapshot snapshotOf(const ReportData& data);

QString snapshotHtml(const ReportData& data, const Snapshot& snapshot);

} // namespace latchround::report
