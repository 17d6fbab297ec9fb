// By what a register file is known among all SQLite files.
#pragma once

#include <cstdint>

#include "app/register/register_kind.h"

namespace latchround {

/// "LRVR" in the application_id field of the SQLite header (offset 68,
/// sqlite.org/fileformat2.html).
inline constexpr std::uint32_t register_application_id = 0x4C525652;
/// "LRPR": the register of an exercise, see register_kind.h.
inline constexpr std::uint32_t practice_application_id = 0x4C525052;

constexpr std::uint32_t applicationIdOf(RegisterKind kind) {
    return kind == RegisterKind::Practice ? practice_application_id : register_application_id;
}

} // namespace latchround
