// The bytes of photographs, found by their SHA-256.
#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "app/register/sqlite_connection.h"

namespace latchround {

/// Refuses bytes that do not have this hash; leaves alone what is held already.
Result<> keepPhotograph(SqliteConnection& connection, std::string_view sha256,
                        std::span<const std::byte> bytes);

Result<std::vector<std::byte>> readPhotograph(SqliteConnection& connection,
                                              std::string_view sha256);

/// Hashes of all whose bytes are here, in their order.
Result<std::vector<std::string>> photographsHeld(SqliteConnection& connection);

} // namespace latchround
