// The arrangement as rows: each adopted issue beside the earlier ones, read back as one value.
#pragma once

#include "app/register/sqlite_connection.h"
#include "core/evidence/fact.h"
#include "core/vessel/arrangement.h"

namespace latchround {

/// The issue adopted last; an empty arrangement before the first. Call inside a read transaction.
Result<Arrangement> readLatestArrangement(SqliteConnection& connection);

/// Adds an issue. Call inside a write transaction.
Done writeArrangement(SqliteConnection& connection, const Arrangement& arrangement, Moment when);

/// A complaint where the arrangement lacks a door about which facts are recorded.
Done refuseLostDoors(SqliteConnection& connection, const Arrangement& arrangement);

} // namespace latchround
