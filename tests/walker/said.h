// A fact that a press should record, and whether a fact that it did record is that one.
#pragma once

#include <string>
#include <vector>

#include "core/evidence/fact.h"

namespace latchround::walker {

struct Said {
    FactBody body; ///< the run of a mark or an end: empty for that which the same press began
    std::optional<FactId> supersedes{};
};

/// What the program chooses for itself is not compared: its words for why a run ended or something
/// was taken back, units, the heel of a run, what an earlier finding is.
bool isSaid(const Said& said, const Fact& fact);

/// As a line of JSON.
std::string lineOf(const Fact& fact);
std::string lineOf(const Said& said);

/// The walkdown and the door that a fact speaks of; empty where it speaks of none.
std::string walkdownOf(const FactBody& body);
std::string doorOf(const FactBody& body);
/// It says who typed in a paper form.
bool isNoteOfTyping(const Note& note);

/// The run that a mark or an end belongs to; empty for any other fact.
FactId runOf(const FactBody& body);
/// The deficiency that it says something more of; empty for any other fact.
FactId deficiencyOf(const FactBody& body);

} // namespace latchround::walker
