// What lies ashore as text, to be compared.
#pragma once

#include <string>
#include <vector>

#include "app/ashore/postgres_connection.h"
#include "core/evidence/ledger.h"
#include "core/vessel/arrangement.h"

namespace latchround::test {

std::unique_ptr<PostgresConnection> connected(const DatabaseUrl& url);

/// Rows with a tab between their cells.
std::vector<std::string> rowsOf(PostgresConnection& ashore, const std::string& sql);

/// Every table of the vessels, row by row, without the moments at which the rows were written.
std::string everythingIn(PostgresConnection& ashore);

/// A vessel's register as it comes back from ashore.
struct FromAshore {
    Arrangement arrangement;
    Ledger ledger;
};
FromAshore vesselFrom(PostgresConnection& ashore, const std::string& number);

/// Facts as lines, by id.
std::string linesOf(const Ledger& ledger);

} // namespace latchround::test
