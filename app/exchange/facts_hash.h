// SHA-256 of facts, as signatures, reports and handover files name them, and of the catalogue that
// a report was made by.
#pragma once

#include <cstddef>
#include <span>
#include <string>

#include "core/evidence/fact.h"

namespace latchround {

struct Catalogue;

/// Lower-case hex, 64 digits.
std::string sha256Hex(std::span<const std::byte> bytes);

/// Of the facts as JSON lines (fact_json.h), each with its line break, in the order given.
std::string factsSha256(std::span<const Fact* const> facts);

/// Of the catalogue's texts (core/requirement/rule_texts.h): two that bear one edition and differ
/// in a number have two sums. Empty where it was not read from texts.
std::string catalogueSha256(const Catalogue& catalogue);

} // namespace latchround
