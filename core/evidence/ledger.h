// Every fact known, indexed by walkdown and door. Facts go in, in any order; nothing comes out
// again. The one place where superseding is worked out.
#pragma once

#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/evidence/door_evidence.h"
#include "core/evidence/fact.h"

namespace latchround {

struct Person {
    FactId id;
    std::string name;
    std::string role;
};

struct Walkdown {
    FactId id;
    Stamp begun_by;
    WalkdownBegun plan;
    std::optional<Recorded<WalkdownEnded>> end;
};

class Ledger {
public:
    /// Adding a fact whose id is already there changes nothing.
    void add(Fact fact);

    const std::vector<Person>& people() const { return m_people; }
    /// In the order they began.
    std::vector<Walkdown> walkdowns() const;
    std::optional<Walkdown> walkdown(std::string_view id) const;
    /// What this walkdown knows of this door; empty evidence where nothing was recorded.
    DoorEvidence evidenceOf(std::string_view walkdown, std::string_view door) const;
    /// Numbers of the doors this walkdown recorded anything about.
    std::vector<std::string> doorsTouched(std::string_view walkdown) const;
    /// The fact that ends this run now; nothing while it is open.
    std::optional<FactId> endOf(const FactId& run) const;
    bool isSuperseded(const FactId& id) const { return m_superseded.contains(id); }
    const Fact* find(const FactId& id) const;
    std::size_t size() const { return m_facts.size(); }

private:
    using Key = std::pair<std::string, std::string>; // walkdown, door
    std::map<FactId, Fact> m_facts;
    std::set<FactId> m_superseded;
    std::map<Key, std::set<FactId>> m_by_door;
    std::map<FactId, std::set<FactId>> m_by_run; // marks and ends
    std::set<FactId> m_walkdowns;
    std::map<FactId, FactId> m_walkdown_ends; // walkdown -> end
    std::vector<Person> m_people;
};

} // namespace latchround
