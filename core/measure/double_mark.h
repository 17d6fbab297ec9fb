// Two marks that one finger may have made: kept as they came, and asked about after the run.
#pragma once

#include <cstddef>
#include <optional>

#include "core/evidence/door_evidence.h"

namespace latchround {

/// Closer together than this, seconds, two marks may be one touch too many: a finger comes down
/// again within 0.1 to 0.3 s (common practice, no published source).
inline constexpr double suspected_within_s = 0.3;

/// Between these two the leaf went all its way.
bool isClosing(MarkKind from, MarkKind to);

/// The index of the second of two such marks of this run, or of the one that has a leaf home faster
/// than it can move; nothing where all lie further apart or were typed in.
std::optional<std::size_t> suspectedDouble(const RunRecord& run);

} // namespace latchround
