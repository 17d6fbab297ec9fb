// contents.sha256: the entries of a handover file and their hashes, as sha256sum writes and checks
// them; and which names entries may have.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>

#include "core/error/error.h"

namespace latchround {

/// SHA-256 in hex by the name of the entry.
using Contents = std::map<std::string, std::string>;

/// Lines in the order of the names.
std::string textOf(const Contents& contents);

/// `where` stands in errors.
Result<Contents> contentsFrom(std::string_view text, const std::string& where);

/// The hash that names a photograph's entry; nothing where the entry is none.
std::optional<std::string> photographOf(std::string_view entry);

/// Whether a handover file has such an entry besides contents.sha256 and contents.sig.
bool isKnownEntry(std::string_view entry, std::size_t arrangements);

} // namespace latchround
