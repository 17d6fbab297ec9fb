// Facts that come together, in an order in which each comes after those it refers to. SQLite looks
// through all rows for every reference that is still open, so an unlucky order would take the
// square of the rows.
#pragma once

#include <vector>

#include "app/register/sqlite_connection.h"
#include "core/evidence/fact.h"

namespace latchround {

/// `fresh`: by id, none of them in the register. An error names the first fact that refers to
/// something that is neither among them nor in the register, or to itself by a roundabout way.
Result<std::vector<const Fact*>> inOrderOfReference(SqliteConnection& connection,
                                                    const std::vector<const Fact*>& fresh);

} // namespace latchround
