// Facts into the register: what is new, once, and whether it may be recorded now.
#pragma once

#include <span>

#include "app/register/sqlite_connection.h"
#include "core/evidence/fact.h"

namespace latchround {

/// Writes what is new; a fact that is already there must be the same fact. Call inside a write
/// transaction.
Result<> writeEach(SqliteConnection& connection, std::span<const Fact> facts);

/// The same for what is recorded on this device: refuses besides what may not be recorded now
/// (core/evidence/admission.h).
Result<> recordEach(SqliteConnection& connection, std::span<const Fact> facts);

} // namespace latchround
