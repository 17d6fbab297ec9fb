#include "core/evidence/differences.h"

#include <algorithm>
#include <map>
#include <optional>
#include <tuple>

#include "core/evidence/terms.h"

namespace latchround {

namespace {

/// What facts of one kind are about: walkdown, door, requirement, side, kind, deficiency and its
/// field.
using About = std::tuple<std::string, std::string, std::string, Side, std::size_t, FactId,
                         std::optional<TermsField>>;

struct AboutWhat {
    std::size_t kind;
    const Ledger& ledger;

    std::optional<About> operator()(const Observation& body) const {
        return About{body.walkdown, body.door, body.requirement, body.side, kind, {}, {}};
    }
    std::optional<About> operator()(const PlateRead& body) const {
        return About{body.walkdown, body.door, "", Side::None, kind, {}, {}};
    }
    std::optional<About> operator()(const DifferenceSettled& body) const {
        FactId first = body.stands;
        for (const FactId& over : body.over)
            first = std::min(first, over);
        return About{"", "", first, Side::None, kind, {}, {}};
    }
    std::optional<About> operator()(const DeficiencyTerms& body) const {
        const Fact* found = ledger.find(body.deficiency);
        const std::optional<TermsField> field = onlyFieldOf(body);
        if (!found || !field)
            return std::nullopt;
        const auto& of = std::get<Deficiency>(found->body);
        return About{of.walkdown, of.door,         of.requirement, Side::None,
                     kind,        body.deficiency, field};
    }
    template <class Body>
    std::optional<About> operator()(const Body& body) const {
        if constexpr (std::is_same_v<Body, MeasuredValue> || std::is_same_v<Body, Judgement> ||
                      std::is_same_v<Body, CouldNotTest> || std::is_same_v<Body, Deficiency>)
            return About{body.walkdown, body.door, body.requirement, Side::None, kind, {}, {}};
        else
            return std::nullopt;
    }
};

/// On one device terms are set one after the other, by whomever: the later ones are meant.
bool isBySomebodyElse(const Fact& one, const Fact& other) {
    if (std::holds_alternative<DeficiencyTerms>(one.body))
        return one.stamp.device != other.stamp.device;
    return one.stamp.person != other.stamp.person || one.stamp.device != other.stamp.device;
}

/// Words of a deficiency differ, whatever it repeats; decisions differ in what stands.
bool saysSomethingElse(const FactBody& one, const FactBody& other) {
    if (const auto* deficiency = std::get_if<Deficiency>(&one))
        return deficiency->text != std::get<Deficiency>(other).text;
    if (const auto* settled = std::get_if<DifferenceSettled>(&one))
        return settled->stands != std::get<DifferenceSettled>(other).stands;
    return one != other;
}

bool differ(const std::vector<const Fact*>& facts) {
    const Fact& shows = *facts.back();
    return std::ranges::any_of(facts, [&](const Fact* fact) {
        return isBySomebodyElse(*fact, shows) && saysSomethingElse(fact->body, shows.body);
    });
}

} // namespace

std::vector<Difference> differencesOf(const Ledger& ledger) {
    std::map<About, std::vector<const Fact*>> by_subject;
    for (const auto& [id, fact] : ledger.facts())
        if (const auto about = std::visit(AboutWhat{fact.body.index(), ledger}, fact.body);
            about && !ledger.isSuperseded(id))
            by_subject[*about].push_back(&fact);
    std::vector<Difference> differences;
    for (const auto& [about, facts] : by_subject) {
        if (!differ(facts))
            continue;
        const auto& [walkdown, door, requirement, side, kind, deficiency, field] = about;
        const bool decision = std::holds_alternative<DifferenceSettled>(facts.back()->body);
        differences.push_back({walkdown, door, decision ? "" : requirement, side, facts});
    }
    return differences;
}

} // namespace latchround
