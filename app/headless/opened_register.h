// An existing register with everything in it read, as the commands that show something need it.
#pragma once

#include <memory>
#include <optional>
#include <string>

#include "app/register/sqlite_register.h"
#include "core/evidence/ledger.h"

namespace latchround::headless {

struct OpenedRegister {
    std::unique_ptr<SqliteRegister> file;
    Arrangement arrangement;
    Ledger ledger;
};

/// Refuses where no file is: a look must not begin a new register.
Result<OpenedRegister> openedRegister(const std::string& path);

/// The walkdown of this id; without an id the one that began last.
Result<Walkdown> chosenWalkdown(const OpenedRegister& from, const std::optional<std::string>& id,
                                const std::string& path);

/// A register with all that SQLite keeps beside it: its write-ahead log and the log's index.
void takeAway(const std::string& path);

/// The wall clock, with the offset of this machine's time zone.
Moment now();

} // namespace latchround::headless
