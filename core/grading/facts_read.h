// Which of the facts at a door a row reads: what a decision about it was made on, and what a retest
// of it must have.
#pragma once

#include <vector>

#include "core/evidence/door_evidence.h"
#include "core/requirement/requirement.h"

namespace latchround {

/// A complete run of this release bears on rows of this source.
bool readsRun(Source source, Release release);

/// Ids of the answers, figure, plate, and complete runs with their marks that this row reads; never
/// of judgements. Of a plate without a class the row that compares classes reads nothing: it goes
/// by the register then.
std::vector<FactId> factsRead(const Requirement& row, const DoorEvidence& evidence);

} // namespace latchround
