// The terms of a deficiency, field by field: each is set by a fact of its own, so that two people
// who set the same differently can be told apart from two who set different things.
#pragma once

#include <optional>
#include <vector>

#include "core/evidence/ledger.h"

namespace latchround {

/// In the order in which they stand in follow_up_fields.h.
enum class TermsField { Severity, Action, Ground, Due, Interim, Assigned };

/// The field, where exactly one is set.
std::optional<TermsField> onlyFieldOf(const DeficiencyTerms& terms);

/// One for each field that is set.
std::vector<DeficiencyTerms> fieldByField(const DeficiencyTerms& terms);

/// The fact that sets this one field of that deficiency now, and nothing else; nothing where there
/// is none.
std::optional<FactId> standingTerms(const Ledger& ledger, const DeficiencyTerms& field);

} // namespace latchround
