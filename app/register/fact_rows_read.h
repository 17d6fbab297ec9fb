// Facts back out of their rows, exactly as they were recorded.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "app/register/sqlite_connection.h"
#include "core/evidence/fact.h"

namespace latchround {

/// All facts in the order of their ids. Call inside a read transaction.
Result<std::vector<Fact>> readFacts(SqliteConnection& connection);

/// Those of one kind, by its index in FactBody, in the order of their ids.
Result<std::vector<Fact>> readFactsOfKind(SqliteConnection& connection, std::size_t kind);

/// One fact, if it is there.
Result<std::optional<Fact>> readFact(SqliteConnection& connection, const FactId& id);

} // namespace latchround
