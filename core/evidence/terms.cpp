#include "core/evidence/terms.h"

namespace latchround {

namespace {

/// Calls `visit(field, member)` for every field that is set.
template <class Visit>
void eachSet(const DeficiencyTerms& terms, Visit visit) {
    const auto one = [&](TermsField field, auto member) {
        if (terms.*member)
            visit(field, member);
    };
    one(TermsField::Severity, &DeficiencyTerms::severity);
    one(TermsField::Action, &DeficiencyTerms::action);
    one(TermsField::Ground, &DeficiencyTerms::ground_for_detention);
    one(TermsField::Due, &DeficiencyTerms::due);
    one(TermsField::Interim, &DeficiencyTerms::interim);
    one(TermsField::Assigned, &DeficiencyTerms::assigned);
}

} // namespace

std::optional<TermsField> onlyFieldOf(const DeficiencyTerms& terms) {
    std::optional<TermsField> only;
    int set = 0;
    eachSet(terms, [&](TermsField field, auto) {
        only = field;
        ++set;
    });
    return set == 1 ? only : std::nullopt;
}

std::vector<DeficiencyTerms> fieldByField(const DeficiencyTerms& terms) {
    std::vector<DeficiencyTerms> apart;
    eachSet(terms, [&](TermsField, auto member) {
        DeficiencyTerms one;
        one.deficiency = terms.deficiency;
        one.*member = terms.*member;
        apart.push_back(std::move(one));
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
