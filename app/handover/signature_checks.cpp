#include "app/handover/signature_checks.h"

namespace latchround {

const SignatureChecks::Standing& SignatureChecks::of(const Ledger& ledger, const Fact& signature) {
    const FactId& id = signature.stamp.id;
    const std::size_t facts = ledger.facts().size();
    auto found = m_known.find(id);
    if (found == m_known.end() || found->second.facts != facts ||
        found->second.signature != signature) {
        BasisCheck check = m_check(ledger, signature);
        found = m_known
                    .insert_or_assign(
                        id, Known{facts, signature, {std::move(check.fault), check.later.size()}})
                    .first;
    }
    return found->second.standing;
}

} // namespace latchround
