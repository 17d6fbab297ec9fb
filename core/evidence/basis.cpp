#include "core/evidence/basis.h"

#include <algorithm>
#include <map>
#include <type_traits>

namespace latchround {

namespace {

template <class Body>
constexpr bool is_of_the_register =
    std::is_same_v<Body, PersonJoined> || std::is_same_v<Body, ThumbDrill> ||
    std::is_same_v<Body, DecisionLimits>;

template <class Body>
constexpr bool is_about_a_basis =
    std::is_same_v<Body, WalkdownSigned> || std::is_same_v<Body, ReportMade>;

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
    template <class Body>
    bool belongs(const FactId& id, const Body& body) const {
        if constexpr (is_about_a_basis<Body>)
            return false;
        else if constexpr (is_of_the_register<Body>)
            return true;
        else if constexpr (requires { body.walkdown; })
            return body.walkdown == m_walkdown;
        else if constexpr (requires { body.run; })
            return m_ids.contains(body.run);
        else if constexpr (requires { body.deficiency; })
            return m_ids.contains(body.deficiency);
        else if constexpr (std::is_same_v<Body, DifferenceSettled>)
            return m_ids.contains(body.stands) ||
                   std::ranges::any_of(body.over,
                                       [this](const FactId& over) { return m_ids.contains(over); });
        else
            return id == m_walkdown;
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
        if (!std::visit(
                [](const auto& body) {
                    return is_about_a_basis<std::remove_cvref_t<decltype(body)>>;
                },
                fact.body))
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
