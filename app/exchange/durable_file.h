// Puts bytes in a file so that the file is whole or untouched: written beside its place, flushed,
// renamed over the old one, and the folder flushed too. Survives loss of power if the storage
// honours flush requests.
#pragma once

#include <filesystem>
#include <span>

#include "core/store/register.h"

namespace latchround {

/// A complaint means: what stood at `path` before stands there still.
Done writeDurably(const std::filesystem::path& path, std::span<const std::byte> bytes);

} // namespace latchround
