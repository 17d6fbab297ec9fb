// Why a batch of facts was refused for referring to something unknown: SQLite says only that it
// was.
#pragma once

#include <optional>
#include <span>

#include "app/register/sqlite_connection.h"
#include "core/evidence/fact.h"

namespace latchround {

/// The first reference that is neither in the register nor in the batch. Asked only after a
/// refusal, so it costs nothing while a door is being timed.
std::optional<Error> missingReference(SqliteConnection& connection, std::span<const Fact> facts);

} // namespace latchround
