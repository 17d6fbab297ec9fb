#include "core/evidence/differences.h"

#include <algorithm>
#include <map>
#include <optional>
#include <tuple>

#include "core/evidence/fact_fields.h"
#include "core/evidence/terms.h"

namespace latchround {

namespace {

/// What facts of one kind are about: walkdown, door, requirement, side, kind, deficiency and its
/// field.
using About = std::tuple<std::string, std::string, std::string, Side, std::size_t, FactId,
                         std::optional<TermsField>>;

/// What a fact is about by itself, field by field.
struct OwnSubject {
    About& about;

    template <FieldRole Role, class Member>
    void operator()(FieldKey<Role>, const Member& member) const {
        if constexpr (Role == FieldRole::Walkdown)
            std::get<0>(about) = member;
        else if constexpr (Role == FieldRole::Door)
            std::get<1>(about) = member;
        else if constexpr (Role == FieldRole::Row)
            std::get<2>(about) = member;
        else if constexpr (Role == FieldRole::Side)
            std::get<3>(about) = member;
        else
            static_assert(!isSubject(Role), "part of what is differed about");
    }
    void operator()(const char*, const auto&) const {}
};

struct AboutWhat {
    std::size_t kind;
    const Ledger& ledger;

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
        if constexpr (rulesOf<Body>.differs == Differs::No) {
            return std::nullopt;
        } else {
            About about{"", "", "", Side::None, kind, {}, {}};
            eachField(body, OwnSubject{about});
            return about;
        }
    }
};

/// On one device terms are set one after the other, by whomever: the later ones are meant.
bool isBySomebodyElse(const Fact& one, const Fact& other) {
    if (std::holds_alternative<DeficiencyTerms>(one.body))
        return one.stamp.device != other.stamp.device;
    return one.stamp.person != other.stamp.person || one.stamp.device != other.stamp.device;
}

struct DropPhrase {
    void operator()(PhraseKey, std::optional<std::string>& phrase) const { phrase.reset(); }
    void operator()(const char*, const auto&) const {}
};

/// Picked or written, the same words say the same.
FactBody inPlainWords(FactBody body) {
    std::visit([](auto& of) { eachField(of, DropPhrase{}); }, body);
    return body;
}

/// Words of a deficiency differ, whatever it repeats; figures, whatever they were read off;
/// decisions differ in what stands.
bool saysSomethingElse(const FactBody& one, const FactBody& other) {
    if (const auto* deficiency = std::get_if<Deficiency>(&one))
        return deficiency->text.text != std::get<Deficiency>(other).text.text;
    if (const auto* measured = std::get_if<MeasuredValue>(&one)) {
        const auto& against = std::get<MeasuredValue>(other);
        return measured->value != against.value || measured->unit != against.unit;
    }
    if (const auto* settled = std::get_if<DifferenceSettled>(&one))
        return settled->stands != std::get<DifferenceSettled>(other).stands;
    return inPlainWords(one) != inPlainWords(other);
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
