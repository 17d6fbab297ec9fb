// What signatures are worth, worked out once for each and for what the ledger holds: the check goes
// through every fact that was signed.
#pragma once

#include <cstddef>
#include <functional>
#include <map>
#include <optional>
#include <string>

#include "app/handover/walkdown_signature.h"
#include "core/evidence/ledger.h"
#include "core/phrase/phrase.h"

namespace latchround {

/// Of one register. Facts are only ever added, so that their number says what a ledger holds.
class SignatureChecks {
public:
    using Check = std::function<BasisCheck(const Ledger& ledger, const Fact& signature)>;
    explicit SignatureChecks(Check check = checkedSignature)
        : m_check(std::move(check)) {}

    struct Standing {
        std::optional<Phrase> fault; ///< nothing where it holds
        std::size_t later = 0;       ///< facts of the walkdown that came after it
    };
    const Standing& of(const Ledger& ledger, const Fact& signature);

private:
    struct Known {
        std::size_t facts; ///< that the ledger held
        Fact signature;
        Standing standing;
    };
    Check m_check;
    std::map<FactId, Known> m_known;
};

} // namespace latchround
