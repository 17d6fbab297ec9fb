// Puts bytes in a file so that the file is whole or untouched: written beside its place, flushed,
// renamed into it, and the folder flushed too. Survives loss of power if the storage
// honours flush requests.
#pragma once

#include <cstddef>
#include <filesystem>
#include <span>

#include "core/store/register.h"

namespace latchround {

/// What is to become of a file that is there already.
enum class IfThere { Refuse, Replace };

/// An error means: what stood at `path` before stands there still.
Result<> writeDurably(const std::filesystem::path& path, std::span<const std::byte> bytes,
                      IfThere if_there);

/// Puts bytes into a file that is there, from this place on, and flushes them; what stands before
/// them stays whatever happens. Where the file goes on behind them, nothing but the bytes has to be
/// flushed. After an error, or a cut of power, they may be there in part.
Result<> writeDurablyAt(const std::filesystem::path& path, std::size_t place,
                        std::span<const std::byte> bytes);

/// What was renamed or taken away in this folder is so for good; false with errno set.
bool flushFolder(const std::filesystem::path& folder);

/// Takes a file away, and flushes its folder: it does not come back with the power. One that is not
/// there is away.
Result<> removeDurably(const std::filesystem::path& path);

/// Complains where `to` is the register that is read, or lies beside it as a part of it, however it
/// is spelt. Opens nothing: that would drop the register's locks.
Result<> refuseOverRegister(const std::filesystem::path& to,
                            const std::filesystem::path& vessel_register);

} // namespace latchround
