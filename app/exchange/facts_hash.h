// SHA-256 of facts, as signatures, reports and handover files name them.
#pragma once

#include <cstddef>
#include <span>
#include <string>

#include "core/evidence/fact.h"

namespace latchround {

/// Lower-case hex, 64 digits.
std::string sha256Hex(std::span<const std::byte> bytes);

/// Of the facts as JSON lines (fact_json.h), each with its line break, in the order given.
std::string factsSha256(std::span<const Fact* const> facts);

} // namespace latchround
