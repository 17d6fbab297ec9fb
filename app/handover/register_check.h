// Looks through a whole register: whether the file is sound, photographs have the hashes they are
// found by, corrections are corrections, signatures and reports still rest on what they rested on.
#pragma once

#include <string>
#include <vector>

#include "app/handover/key_rules.h"
#include "app/handover/walkdown_signature.h"
#include "app/register/sqlite_register.h"
#include "core/evidence/ledger.h"

namespace latchround {

struct SignatureChecked {
    const Fact* fact = nullptr; ///< holds a WalkdownSigned
    KeyStanding key = KeyStanding::Asks;
    std::size_t later = 0; ///< facts of the walkdown that came after it
};

struct ReportChecked {
    const Fact* fact = nullptr; ///< holds a ReportMade
    std::size_t later = 0;
};

struct RegisterCheck {
    Errors faults;
    std::size_t photographs = 0;                  ///< whose bytes are here
    std::vector<std::string> photographs_missing; ///< hashes that facts name; not a fault
    std::vector<SignatureChecked> signatures;     ///< by id
    std::vector<ReportChecked> reports;           ///< by id
    std::size_t superseded = 0;                   ///< facts that another one replaces
    /// Facts whose id is earlier than that of what they replace: a clock was wrong. Not a fault.
    std::vector<FactId> out_of_order;
    std::vector<KeyAccepted> keys; ///< accepted on this device
};

/// `ledger`: every fact of the register. An error only where the register cannot be read.
Result<RegisterCheck> checkedRegister(SqliteRegister& file, const Ledger& ledger);

} // namespace latchround
