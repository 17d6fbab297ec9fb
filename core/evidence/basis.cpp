#include "core/evidence/basis.h"

#include <algorithm>
#include <map>
#include <type_traits>

#include "core/evidence/references.h"

namespace latchround {

namespace {

class Basis {
public:
    explicit Basis(FactId walkdown)
        : m_walkdown(std::move(walkdown)) {}

    bool takesIn(const FactId& id, const Fact& fact) const {
        const auto& superseded = fact.stamp.supersedes;
        return (superseded && m_ids.contains(*superseded)) ||
               std::visit([&](const auto& body) { return belongs(id, body); }, fact.body);
    }
    bool add(const FactId& id) { return m_ids.insert(id).second; }
    const std::set<FactId>& ids() const { return m_ids; }

private:
    /// What a fact hangs on, field by field.
    struct Hanging {
        const Basis& basis;
        bool belongs = false;

        template <FieldRole Role, class Member>
        void operator()(FieldKey<Role>, const Member& member) {
            if constexpr (Role == FieldRole::Walkdown)
                belongs = belongs || member == basis.m_walkdown;
            if constexpr (Role == FieldRole::Run || Role == FieldRole::Deficiency ||
                          Role == FieldRole::Stands || Role == FieldRole::Yields)
                eachText(member, [this](const FactId& id) {
                    belongs = belongs || basis.m_ids.contains(id);
                });
        }
        void operator()(const char*, const auto&) {}
    };

    template <class Body>
    bool belongs(const FactId& id, const Body& body) const {
        constexpr Signed is_signed = rulesOf<Body>.is_signed;
        if constexpr (std::is_same_v<Body, WalkdownBegun>)
            return id == m_walkdown;
        if constexpr (is_signed == Signed::ByItsWay) {
            Hanging hanging{*this};
            eachField(body, hanging);
            return hanging.belongs;
        }
        return is_signed == Signed::Always;
    }

    FactId m_walkdown;
    std::set<FactId> m_ids;
};

} // namespace

std::vector<const Fact*> basisOf(const Ledger& ledger, const FactId& walkdown) {
    Basis basis(walkdown);
    // What refers to a fact comes after it by its id, unless a clock went back: then once more.
    for (bool grew = true; grew;) {
        grew = false;
        for (const auto& [id, fact] : ledger.facts())
            if (basis.takesIn(id, fact) && basis.add(id))
                grew = true;
    }
    std::vector<const Fact*> facts;
    for (const FactId& id : basis.ids())
        facts.push_back(ledger.find(id));
    return facts;
}

std::vector<const Fact*> vesselBasisOf(const Ledger& ledger) {
    std::vector<const Fact*> facts;
    for (const auto& [id, fact] : ledger.facts())
        if (rulesFor(fact.body).is_signed != Signed::Never)
            facts.push_back(&fact);
    return facts;
}

std::vector<Covered> coverOf(std::span<const Fact* const> facts) {
    std::map<std::string, Covered> by_device;
    for (const Fact* fact : facts) {
        Covered& covered = by_device[fact->stamp.device];
        covered.device = fact->stamp.device;
        covered.last = fact->stamp.id;
        ++covered.facts;
    }
    std::vector<Covered> covers;
    for (const auto& [device, covered] : by_device)
        covers.push_back(covered);
    return covers;
}

Split splitBy(std::span<const Fact* const> facts, std::span<const Covered> covers) {
    std::map<std::string_view, std::string_view> last;
    for (const Covered& covered : covers)
        last[covered.device] = covered.last;
    Split split;
    for (const Fact* fact : facts) {
        const auto of_device = last.find(fact->stamp.device);
        const bool covered = of_device != last.end() && fact->stamp.id <= of_device->second;
        (covered ? split.covered : split.later).push_back(fact);
    }
    return split;
}

} // namespace latchround
