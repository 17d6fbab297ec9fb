#include "app/register/adoption.h"

#include <algorithm>

#include <sqlite3.h>

#include "app/register/arrangement_rows.h"
#include "core/error/register_errors.h"
#include "core/phrase/places.h"
#include "core/vessel/arrangement_check.h"

namespace latchround {

namespace {

Phrase rowOf(const ArrangementFault& fault, const Arrangement& arrangement) {
    switch (fault.table) {
    case ArrangementTable::Vessel:
        break;
    case ArrangementTable::Deck:
        return place::deck(arrangement.decks.at(fault.row).number);
    case ArrangementTable::Zone:
        return place::zone(arrangement.zones.at(fault.row).number);
    case ArrangementTable::Boundary:
        return place::boundary(arrangement.boundaries.at(fault.row).id);
    case ArrangementTable::Door:
        return place::door(arrangement.doors.at(fault.row).number);
    }
    return place::vessel();
}

/// The core's own reason for what is wrong with an arrangement that SQLite refused.
Error explained(const Error& refusal, const Arrangement& arrangement) {
    const std::vector<ArrangementFault> faults = faultsOf(arrangement);
    if (faults.empty())
        return refusal;
    const ArrangementFault& fault = faults.front();
    return {place::within(rowOf(fault, arrangement), fault.field), errors::not_adopted(fault.what)};
}

} // namespace

Result<> Adoption::lookAhead(SqliteConnection& connection) {
    const auto version = connection.single("PRAGMA data_version");
    if (!version)
        return tl::unexpected(version.error());
    if (Result<> done = refuseLostDoors(connection, m_issue.arrangement); !done)
        return done;
    m_seen = *version;
    return {};
}

Result<> Adoption::write(SqliteConnection& connection) {
    const auto version = connection.single("PRAGMA data_version");
    if (!version)
        return tl::unexpected(version.error());
    if (*version != m_seen)
        if (Result<> done = refuseLostDoors(connection, m_issue.arrangement); !done)
            return done;
    const auto last = connection.single("SELECT max(adopted_utc_ms) FROM arrangement");
    if (!last)
        return tl::unexpected(last.error());
    if (!last->empty())
        m_issue.adopted.utc_ms =
            std::max(m_issue.adopted.utc_ms, std::int64_t{std::stoll(*last)} + 1);
    const Result<> done = writeIssue(connection, m_issue);
    const int code = sqlite3_extended_errcode(connection.handle());
    if (!done && (code & 0xff) == SQLITE_CONSTRAINT)
        return tl::unexpected(explained(done.error(), m_issue.arrangement));
    return done;
}

} // namespace latchround
