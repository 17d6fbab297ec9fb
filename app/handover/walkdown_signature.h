// Signing a walkdown, and checking what a signature or a report says it rests on: the facts as they
// were then are still all there and still the same, and what came later is told apart.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "app/handover/device_key.h"
#include "core/evidence/ledger.h"
#include "core/phrase/phrase.h"

namespace latchround {

/// `unsigned_fact`: a WalkdownSigned with its stamp, walkdown and capacity; gets the rest of it.
/// Refuses a walkdown that the ledger does not know.
Result<Fact> signedWalkdown(const Ledger& ledger, const Fact& unsigned_fact, const DeviceKey& key);

/// How a walkdown's facts stand to what somebody signed or reported.
struct BasisCheck {
    std::optional<Phrase> fault;    ///< nothing where all is as it was
    std::vector<const Fact*> later; ///< came after it, by id; into the ledger
};
BasisCheck checkedBasis(std::span<const Fact* const> basis, std::span<const Covered> covers,
                        const std::string& facts_sha256);

/// The basis and, over all of the fact, the signature itself. `fact` holds a WalkdownSigned.
BasisCheck checkedSignature(const Ledger& ledger, const Fact& fact);

} // namespace latchround
