// The steps that bring a register file to the form this program writes, in order. Until a first
// release there is one, which is edited; a step that has shipped never is: from then on a change of
// the schema is a new file resources/schema/register_N.sql with the next number.
#pragma once

#include <span>

#include "app/register/sqlite_connection.h"

namespace latchround {

struct Migration {
    int version;     ///< the file's user_version once this step is done; 1, 2, 3, ...
    const char* sql; ///< statements, without BEGIN and COMMIT
};

/// All steps that ship.
std::span<const Migration> migrations();

/// The version a file has when all of them are done.
int currentVersion();

/// Runs the steps above the file's version, each in a transaction of its own together with its
/// number. A step that fails leaves the file at the version before it.
Result<> migrate(SqliteConnection& connection, std::span<const Migration> steps);

} // namespace latchround
