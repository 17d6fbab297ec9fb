// The tables ashore, in a schema of their own so that office people can point their tools at it.
#pragma once

#include <span>

#include "app/ashore/mirrored_tables.h"
#include "app/ashore/postgres_connection.h"

namespace latchround {

/// The version that this program makes and knows.
int ashoreVersion();

/// Makes the tables in an empty database, and brings older ones to this program's form: those of a
/// register that are not there yet, then the steps of ashore_1.sql and on. From then on the
/// connection's plain names mean them. Refuses, and leaves alone, a database that holds something
/// else and one that a newer program made.
Result<> readyAshore(PostgresConnection& connection, std::span<const MirroredTable> of_register);

} // namespace latchround
