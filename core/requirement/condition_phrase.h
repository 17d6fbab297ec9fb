// What a row asks for, as phrases: the rule book's words for conditions and dates. Why it is asked
// of one door says applicability.h.
#pragma once

#include "core/phrase/phrase.h"
#include "core/requirement/applicability.h"
#include "core/requirement/requirement.h"

namespace latchround {

/// "zone bulkhead or stairway enclosure, sliding, power-operated": every field that is set.
Phrase conditionPhrase(const DoorCondition& condition);

/// The alternatives, one after the other; empty where there are none.
Phrase conditionsPhrase(const std::vector<DoorCondition>& conditions);

/// "keel laid on or after 2002-07-01"; empty where the row has no dates.
Phrase datesPhrase(const Requirement& row);

/// What it is for ships of other dates, and of none on record; empty where it has no dates.
Phrase otherDatesPhrase(const Requirement& row);

/// "SOLAS passenger ship or large yacht of 500 GT or more"; empty where none is named.
Phrase shipsPhrase(const std::vector<Regime>& regimes);

/// A variant of ships of other dates than its row: it stands for ships of its dates alone.
bool hasDatesOfItsOwn(const Requirement& variant, const Requirement& of);

/// Where a variant stands in the place of its row: its ships, dates and conditions, where they are
/// not those of the row.
Phrase variantPhrase(const Requirement& variant, const Requirement& of);

PhraseCode<0> said(Asked asked); ///< "it binds"

} // namespace latchround
