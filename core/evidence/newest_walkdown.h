// In which walkdown a door was seen last.
#pragma once

#include <optional>
#include <string>

#include "core/evidence/ledger.h"

namespace latchround {

/// The newest walkdown that recorded anything about this door, else the newest that had it in its
/// plan: what a door record is made of. Nothing where there is none.
std::optional<Walkdown> newestWalkdownOf(const Ledger& ledger, const std::string& door);

} // namespace latchround
