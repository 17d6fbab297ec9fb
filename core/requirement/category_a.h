// Whether a boundary bounds a machinery space of category A, by the categories of its two spaces:
// 6 of eleven (SOLAS II-2, tables 9.3 and 9.4), 12 of fourteen (tables 9.1 and 9.2), of which main
// galleys are too.
#pragma once

#include <optional>
#include <utility>

#include "core/vessel/arrangement.h"

namespace latchround {

/// MayBe: the spaces do not settle it. NotSaid: of some machinery space, the register does not say
/// of which.
enum class CategoryA { No, MayBe, NotSaid, Yes };

/// Where it is not shown by which list a ship's spaces are numbered, a pair without a number above
/// eleven may be of either. Of a galley's boundary the one space of category 12 is the galley.
CategoryA boundsCategoryA(Place place, const std::optional<std::pair<int, int>>& spaces,
                          const Particulars* vessel);

} // namespace latchround
