// A fact into its rows: one in `fact`, one in the table of its kind, and those of its lists and
// parts.
#pragma once

#include "app/register/sqlite_connection.h"
#include "core/evidence/fact.h"

namespace latchround {

enum class Written { New, AlreadyThere };

/// Call inside a write transaction. AlreadyThere: a fact of this id lies in the register, and
/// nothing was written; whether it is the same fact is for the caller to find out.
Result<Written> writeFact(SqliteConnection& connection, const Fact& fact);

} // namespace latchround
