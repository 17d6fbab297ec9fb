// Where two people, or one on two tablets, said different things of the same and neither replaced
// the other: both stay, the later one shows, and somebody is to decide (DifferenceSettled).
#pragma once

#include <string>
#include <vector>

#include "core/evidence/ledger.h"

namespace latchround {

struct Difference {
    std::string walkdown;
    std::string door;
    std::string requirement; ///< empty where it is about the plate or a decision
    Side side = Side::None;
    std::vector<const Fact*> facts; ///< of one kind, by id: the last one shows; into the ledger
};

/// By walkdown, door and requirement. Answers, measures, judgements, reasons for not testing,
/// plates, wordings of a deficiency, terms of one that were set on different devices, and decisions
/// that contradict each other.
std::vector<Difference> differencesOf(const Ledger& ledger);

} // namespace latchround
