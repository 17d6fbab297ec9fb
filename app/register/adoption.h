// An issue of the arrangement that comes into force. Whether facts hang on a door that it leaves
// out is looked for before anybody else is kept from writing, and again only where somebody has
// written since.
#pragma once

#include <string>

#include "app/register/issue.h"
#include "app/register/sqlite_connection.h"

namespace latchround {

class Adoption {
public:
    /// `when`: a moment after that of the last issue counts in its place, whatever the clock says.
    Adoption(const Arrangement& arrangement, Moment when)
        : m_issue{when, arrangement} {}

    /// Refuses an arrangement that lacks a door with facts. Call inside a read transaction.
    Result<> lookAhead(SqliteConnection& connection);
    /// Adds the issue, or refuses it for what was recorded since. Call inside a write transaction.
    Result<> write(SqliteConnection& connection);

private:
    Issue m_issue;
    std::string m_seen; ///< data_version where no door with facts was left out
};

} // namespace latchround
