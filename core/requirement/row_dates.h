// What a row is for a ship of this date: its text was read for ships laid down between two days.
#pragma once

#include "core/requirement/applicability.h"

namespace latchround {

/// A variant of dates of its own stands for ships of those dates; one for older ships for undated
/// ships too, which are asked what every text asks.
bool isOfDate(const Requirement& variant, const Requirement& base, const Particulars& vessel);

/// What a row that fits a door is for a ship of this date.
Asked askedByDate(const Requirement& requirement, const Particulars& vessel);

/// Where it is the row of ships of other dates.
Phrase whyOfDate(const Requirement& requirement, const Particulars& vessel);

} // namespace latchround
