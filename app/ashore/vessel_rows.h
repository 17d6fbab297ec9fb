// The rows of one vessel between the tables ashore and the register in memory.
#pragma once

#include <string>
#include <vector>

#include <nlohmann/json.hpp>

#include "app/ashore/postgres_connection.h"
#include "app/ashore/vessel_mirror.h"

namespace latchround {

/// All that is ashore of this vessel, into a mirror that has begun.
Result<> loadVessel(PostgresConnection& ashore, const std::string& number, VesselMirror& mirror);

/// What came into the mirror since. Call inside a transaction.
Result<> writeNewRows(PostgresConnection& ashore, const std::string& number, VesselMirror& mirror);

/// `rows`: array of objects by column. PostgreSQL makes each cell what its column is.
Result<> insertRows(PostgresConnection& ashore, const std::string& number, const std::string& table,
                    const std::vector<std::string>& columns, const nlohmann::json& rows);

} // namespace latchround
