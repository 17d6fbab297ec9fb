// Taking a handover file into a register: first a look at what it would bring, then the taking
// itself, in one transaction. Set union: the order of taking makes no difference, and taking the
// same twice changes nothing.
#pragma once

#include <cstddef>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "app/handover/handover.h"
#include "app/handover/key_rules.h"
#include "app/register/sqlite_register.h"
#include "core/evidence/ledger.h"

namespace latchround {

/// What the file would bring that is not here yet.
struct Preview {
    KeyStanding key = KeyStanding::Asks;
    std::string fingerprint; ///< of the file's key
    Added added;
    std::map<std::string_view, std::size_t> facts_by_kind; ///< by the kind's word; none that are 0
    std::vector<FactId> walkdowns;
    std::vector<std::string> doors;  ///< numbers no issue here lists
    std::vector<std::string> people; ///< names
    std::size_t differences = 0;     ///< that would be opened between people
};

/// Tries the whole taking and undoes it. `known`: every fact of the register.
Result<Preview> previewOf(const Handover& handover, SqliteRegister& into, const Ledger& known,
                          const Progress& progress = {});

struct Taking {
    /// Recorded with it, in the same transaction: where a key asks, the KeyAccepted fact, and
    /// before it the person of its stamp if that is new.
    std::vector<Fact> acceptance;
    Progress progress{};
};

/// Refuses another vessel's file, one whose key is neither accepted here nor by `taking`, and one
/// that accepts other keys in this device's name.
Result<Added> take(const Handover& handover, SqliteRegister& into, const Taking& taking);

} // namespace latchround
