// The tables ashore, in a schema of their own so that office people can point their tools at it.
#pragma once

#include "app/ashore/postgres_connection.h"

namespace latchround {

/// The version that this program makes and knows.
int ashoreVersion();

/// Makes the tables in an empty database, and brings older ones to this program's form. From then
/// on the connection's plain names mean them. Refuses, and leaves alone, a database that holds
/// something else and one that a newer program made.
Done readyAshore(PostgresConnection& connection);

} // namespace latchround
