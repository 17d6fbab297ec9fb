// What must be on record of one vessel on one tablet, and what of it counts. Written without the
// program's own ledger: this is the second opinion.
#pragma once

#include <map>
#include <set>
#include <string>
#include <tuple>
#include <vector>

#include "core/evidence/fact.h"

namespace latchround::walker {

/// Door, row, side.
using Question = std::tuple<std::string, std::string, Side>;

/// What counts now.
struct Counting {
    FactId walkdown; ///< under way, or the last; empty before the first
    bool is_under_way = false;
    FactId begun_by; ///< person
    std::vector<std::string> doors;
    // Of that walkdown, the facts that count, by what they are about:
    std::map<Question, FactId> answers;
    std::map<Question, FactId> figures;
    std::map<Question, FactId> not_tested;
    std::map<std::string, FactId> plates;
    std::map<std::string, std::set<std::string>> confirmed; ///< cautions, by door
    std::map<FactId, std::vector<FactId>> marks;            ///< by run
    std::map<FactId, FactId> ends;                          ///< by run
    std::map<FactId, std::string> runs;                     ///< run to door
};

class Book {
public:
    std::map<FactId, Fact> saved;
    std::vector<std::vector<Fact>> waiting; ///< in the order in which it was recorded

    void add(const std::vector<Fact>& facts);
    const Fact* find(const FactId& id) const;
    bool knows(const FactId& id) const;
    bool counts(const FactId& id) const;
    bool isRested(const FactId& id) const { return settle(), isRestedOn(id); }
    const Counting& counting() const;
    /// What is taken back, undone or put back in the end; any other fact itself.
    const Fact* subjectOf(const Fact& fact) const;
    /// The door that it, its run, its deficiency or what it takes back speaks of; empty for none.
    std::string aboutDoor(const Fact& fact) const;
    /// One line for everything that counts, without the ids: the same before a tap and after it was
    /// undone.
    std::vector<std::string> lines() const;

private:
    void sort(const Fact& fact, Counting& into) const;
    /// Something that counts was recorded in it at a door, or about it.
    bool isRestedOn(const FactId& id) const;
    void settle() const;

    // Worked out when first asked for.
    mutable std::size_t m_settled = 0; ///< facts that it was worked out from
    mutable std::set<FactId> m_gone;
    mutable std::set<FactId> m_undone; ///< of those, as if they had never been
    mutable Counting m_counting;
};

} // namespace latchround::walker
