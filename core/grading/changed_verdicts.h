// The same facts by two catalogues: which doors are graded otherwise, by which rows. Nothing is
// stored of it: what was shown before is graded anew by the catalogue that stood then.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/evidence/ledger.h"
#include "core/grading/grade.h"

namespace latchround {

/// One row of the door by both. Nothing on the side whose catalogue does not have it; a side that
/// has it may not ask it of the door (isAsked).
struct ChangedRow {
    std::string id;
    std::optional<RowGrade> before; ///< into the catalogue before
    std::optional<RowGrade> now;    ///< into the catalogue now
};

struct ChangedVerdict {
    const Door* door = nullptr; ///< into the arrangement
    FactId walkdown;            ///< in which it was seen last
    Verdict before = Verdict::Untested;
    Verdict now = Verdict::Untested;
    /// Those that make it: that alone were as bad as the worse of the two verdicts.
    std::vector<ChangedRow> rows;
};

/// Doors whose verdict differs, worst now first, then in the order of the arrangement. Each as it
/// was seen in its newest walkdown; a door that no walkdown has is left out.
std::vector<ChangedVerdict> changedVerdicts(const Arrangement& arrangement, const Ledger& ledger,
                                            const Catalogue& before, const Catalogue& now);

} // namespace latchround
