// What a walkdown's grades or a report rest on, so that a signature can name it: facts come
// together from several tablets, and those that were not there when somebody signed are shown as
// later. Every device hands over its facts from the first to some last one, in the order of their
// ids; so a device, a last id and a count name the same facts on every tablet and for ever.
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "core/evidence/ledger.h"

namespace latchround {

/// By id: the walkdown's own facts, superseded ones included, marks and ends of its runs, the
/// course of its deficiencies, whatever supersedes or decides one of these, and the persons,
/// drills and limits of decision of the register. Signatures and reports are not among them. A
/// fact that is among them stays so whatever is added later.
std::vector<const Fact*> basisOf(const Ledger& ledger, const FactId& walkdown);

/// By id: everything recorded aboard but signatures and reports. What a report rests on: it shows
/// items and times of every walkdown.
std::vector<const Fact*> vesselBasisOf(const Ledger& ledger);

/// Names these facts, which are in the order of their ids: the last of each device and how many.
std::vector<Covered> coverOf(std::span<const Fact* const> facts);

struct Split {
    std::vector<const Fact*> covered;
    std::vector<const Fact*> later;
};
/// Those of the facts that were covered, and the rest, each in the order given.
Split splitBy(std::span<const Fact* const> facts, std::span<const Covered> covers);

} // namespace latchround
