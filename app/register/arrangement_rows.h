// The arrangement as rows: each adopted issue beside the earlier ones, read back as one value.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "app/register/issue.h"
#include "app/register/sqlite_connection.h"

namespace latchround {

/// All issues in their order (issue.h). Call inside a transaction.
Result<std::vector<Issue>> readIssues(SqliteConnection& connection);

/// The last of them; nothing before the first. Call inside a transaction.
Result<std::optional<Issue>> readIssueInForce(SqliteConnection& connection);

/// Adds an issue. Call inside a write transaction.
Result<> writeIssue(SqliteConnection& connection, const Issue& issue);

/// Doors that facts are recorded about and that this arrangement does not list, and how many facts.
using LostDoors = std::vector<std::pair<std::string, std::int64_t>>;
Result<LostDoors> lostDoors(SqliteConnection& connection, const Arrangement& arrangement);

/// An error where the arrangement lacks a door about which facts are recorded.
Result<> refuseLostDoors(SqliteConnection& connection, const Arrangement& arrangement);

} // namespace latchround
