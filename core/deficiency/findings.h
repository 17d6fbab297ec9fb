// Rows of a walkdown that ask to be written up: unsatisfactory, and without a deficiency yet.
#pragma once

#include <optional>
#include <vector>

#include "core/deficiency/item.h"
#include "core/grading/graded_walkdown.h"

namespace latchround {

struct ToWriteUp {
    const GradedDoor* door = nullptr; ///< into the doors given
    const RowGrade* row = nullptr;    ///< into its grade
    /// The newest finding of the same row of the same door on an earlier walk: this is the same
    /// defect found again.
    std::optional<FactId> repeats;
};

/// In the order of the walk, each door's worst row first. `items` are those of the same register.
std::vector<ToWriteUp> toWriteUp(const std::vector<GradedDoor>& doors,
                                 const std::vector<Item>& items);

/// The newest finding of this row of this door; nothing where it was never written up.
std::optional<FactId> newestFinding(const std::vector<Item>& items, const std::string& door,
                                    const std::string& requirement);

} // namespace latchround
