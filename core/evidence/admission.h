// What may be recorded here and now, beside what is on record. What another tablet brings is not
// asked: there, people may have walked on while somebody here ended the walkdown.
#pragma once

#include <functional>
#include <optional>
#include <string>

#include "core/error/error.h"
#include "core/evidence/ledger.h"

namespace latchround {

/// What the rule has to know of the register.
struct OnRecord {
    std::function<std::optional<Fact>(const FactId&)> find;
    std::function<bool(const FactId& walkdown)> hasEnded;
    /// Of a run, where that can be told without all of its fact, as for each mark; else `find`
    /// tells.
    std::function<FactId(const FactId& run)> walkdownOf{};
};

/// By what is in the ledger.
OnRecord onRecord(const Ledger& ledger);

/// Recorded at a door in the course of a walkdown; null for anything else. Deficiencies, and what
/// shows them, are written up after the walk as well.
const std::string* doorWalkedTo(const FactBody& body);

/// Whether `fact` may stand for `slip`: it takes it back; it says the same kind of thing of the
/// same walkdown, door, row and side; it gives again what `slip` took back; or it undoes it, which
/// is for who recorded it on that device, and for nothing that rests on itself: people, keys,
/// signatures, papers, and marks, which the stopwatch takes back.
bool mayReplace(const Fact& fact, const Fact& slip,
                const std::function<std::optional<Fact>(const FactId&)>& find);

/// The walkdown that must be under way for this fact, or for what it takes back; empty where none
/// has to be.
FactId walkFor(const Fact& fact, const OnRecord& on_record);

/// Why this fact may not be recorded now: its walkdown has ended, or it would replace something
/// else. Nothing where it may. What it refers to and is not there at all is for the register to
/// say.
std::optional<Error> refusalOf(const Fact& fact, const OnRecord& on_record);

} // namespace latchround
