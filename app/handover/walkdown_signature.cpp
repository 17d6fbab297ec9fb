#include "app/handover/walkdown_signature.h"

#include "app/exchange/fact_json.h"
#include "app/exchange/facts_hash.h"
#include "app/exchange/hex.h"
#include "core/error/handover_errors.h"
#include "core/evidence/basis.h"
#include "core/phrase/places.h"

namespace latchround {

namespace {

/// What is signed: the fact as a line, with an empty signature.
std::string lineWithoutSignature(Fact fact) {
    std::get<WalkdownSigned>(fact.body).signature.clear();
    return jsonLineFrom(fact);
}

} // namespace

Result<Fact> signedWalkdown(const Ledger& ledger, const Fact& unsigned_fact, const DeviceKey& key) {
    Fact fact = unsigned_fact;
    auto& body = std::get<WalkdownSigned>(fact.body);
    if (!ledger.walkdown(body.walkdown))
        return tl::unexpected(Error{place::walkdown(body.walkdown), errors::no_walkdown_to_sign()});
    const std::vector<const Fact*> basis = basisOf(ledger, body.walkdown);
    body.covers = coverOf(basis);
    body.facts_sha256 = factsSha256(basis);
    body.key = key.publicHex();
    body.signature = hexOf(key.sign(lineWithoutSignature(fact)));
    return fact;
}

BasisCheck checkedBasis(std::span<const Fact* const> basis, std::span<const Covered> covers,
                        const std::string& facts_sha256) {
    Split split = splitBy(basis, covers);
    BasisCheck check{std::nullopt, std::move(split.later)};
    const std::vector<Covered> found = coverOf(split.covered);
    for (const Covered& then : covers) {
        int now = 0;
        for (const Covered& covered : found)
            now = covered.device == then.device ? covered.facts : now;
        if (now != then.facts)
            check.fault = errors::basis_of_other_count(then.facts, then.device, then.last, now);
    }
    if (!check.fault && factsSha256(split.covered) != facts_sha256)
        check.fault = errors::basis_changed();
    return check;
}

BasisCheck checkedSignature(const Ledger& ledger, const Fact& fact) {
    const auto& body = std::get<WalkdownSigned>(fact.body);
    BasisCheck check = checkedBasis(basisOf(ledger, body.walkdown), body.covers, body.facts_sha256);
    if (!check.fault && !isSignedBy(body.key, lineWithoutSignature(fact), body.signature))
        check.fault = errors::signature_unfit();
    return check;
}

} // namespace latchround
