// By what a register file is known among all SQLite files.
#pragma once

#include <cstdint>

namespace latchround {

/// "LRVR" in the application_id field of the SQLite header (offset 68,
/// sqlite.org/fileformat2.html).
inline constexpr std::uint32_t register_application_id = 0x4C525652;

} // namespace latchround
