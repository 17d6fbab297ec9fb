// The bytes of a file, or why they cannot be had.
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>

#include "core/error/error.h"

namespace latchround {

/// Refuses what is not a regular file and what is larger than `most_bytes`.
Result<std::string> bytesOf(const std::filesystem::path& path, std::uintmax_t most_bytes);

} // namespace latchround
