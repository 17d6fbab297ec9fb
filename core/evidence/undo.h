// Undo: what is recorded so that a tap no longer counts. Nothing is deleted; what the tap replaced
// is recorded again, or that the tap was a slip.
#pragma once

#include <optional>

#include "core/evidence/ledger.h"

namespace latchround {

struct Undo {
    FactBody body;
    FactId supersedes;
};

/// Undoes a fact that counts. A run is undone as a whole, by its end. Nothing for what undo does
/// not reach: the marks and the start of a run (the stopwatch takes marks back itself), who
/// somebody is, keys, signatures and papers that were made.
std::optional<Undo> undoOf(const Fact& fact, const Ledger& ledger);

} // namespace latchround
