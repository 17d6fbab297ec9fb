// How the rows of a catalogue stand at a door, and aboard a vessel: whether they bind, and why.
#pragma once

#include <optional>
#include <vector>

#include "core/grading/graded_walkdown.h"
#include "core/requirement/applicability.h"

namespace latchround {

/// What a row that is asked so comes to: common practice, and what its text leaves open, is left to
/// the inspector; advice stays advice.
Asked comesTo(const Requirement& in_force, Asked asked);

struct RuleAtDoor {
    /// The row, or the variant that stands in its place; into the catalogue.
    const Requirement* in_force = nullptr;
    Asked asked = Asked::No; ///< as it comes to
    Phrase because{};
    /// Where an answer at the door takes the row away, which says so; then it is not asked.
    std::optional<Reason> excused{};
};

/// A door of which nothing was seen yet: by the register alone.
GradedDoor asRegistered(const Arrangement& arrangement, const Door& door,
                        const Catalogue& catalogue);

/// Every row of the catalogue that the door was graded by, in its order.
std::vector<RuleAtDoor> rulesAtDoor(const GradedDoor& graded, const Particulars& vessel);

struct RuleAboard {
    std::vector<const Door*> binding{}; ///< each as it comes to
    std::vector<const Door*> left_to_inspector{};
    std::vector<const Door*> advised{};
    Phrase because{}; ///< where it is asked of none of them: why

    bool isAsked() const {
        return !binding.empty() || !left_to_inspector.empty() || !advised.empty();
    }
};

/// Every row of the catalogue, in its order, by the register alone. Points into the arrangement.
std::vector<RuleAboard> rulesAboard(const Catalogue& catalogue, const Arrangement& arrangement);

} // namespace latchround
