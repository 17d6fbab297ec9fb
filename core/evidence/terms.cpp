#include "core/evidence/terms.h"

#include "core/evidence/fact_fields.h"

namespace latchround {

namespace {

/// Tells the fields that may be set from the deficiency that they are set of.
template <class Visit>
struct TermsVisitor {
    const Visit& visit;
    int next = 0;

    template <class Member>
    void operator()(const char*, std::optional<Member>& member) {
        visit(TermsField(next++), member);
    }
    /// Goes with the words that it was picked for.
    void operator()(PhraseKey, std::optional<std::string>& phrase) {
        visit(TermsField(next - 1), phrase);
    }
    void operator()(const char*, const FactId&) {}
};

/// Calls `visit(field, member)` for every field that may be set.
template <class Visit>
void eachTerm(DeficiencyTerms& terms, const Visit& visit) {
    eachField(terms, TermsVisitor<Visit>{visit});
}

std::vector<TermsField> fieldsSetIn(DeficiencyTerms terms) {
    std::vector<TermsField> set;
    eachTerm(terms, [&](TermsField field, const auto& member) {
        if (member && (set.empty() || set.back() != field))
            set.push_back(field);
    });
    return set;
}

} // namespace

std::optional<TermsField> onlyFieldOf(const DeficiencyTerms& terms) {
    const std::vector<TermsField> set = fieldsSetIn(terms);
    return set.size() == 1 ? std::optional(set.front()) : std::nullopt;
}

std::vector<DeficiencyTerms> fieldByField(const DeficiencyTerms& terms) {
    std::vector<DeficiencyTerms> apart;
    for (const TermsField only : fieldsSetIn(terms))
        eachTerm(apart.emplace_back(terms), [&](TermsField field, auto& member) {
            if (field != only)
                member.reset();
        });
    return apart;
}

std::optional<FactId> standingTerms(const Ledger& ledger, const DeficiencyTerms& field) {
    std::optional<FactId> standing;
    for (const Fact* fact : ledger.courseOf(field.deficiency))
        if (const auto* terms = std::get_if<DeficiencyTerms>(&fact->body);
            terms && onlyFieldOf(*terms) == onlyFieldOf(field))
            standing = fact->stamp.id;
    return standing;
}

} // namespace latchround
