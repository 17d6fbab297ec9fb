// An existing register with everything in it read, as the commands that show something need it.
#pragma once

#include <memory>
#include <optional>
#include <set>
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

/// Remembers what lies at a register's place, the write-ahead log and its index included, before a
/// command may begin a register there.
class PlaceBefore {
public:
    explicit PlaceBefore(std::string path);
    /// Of a register that was begun since: all of it but what lay there before.
    void takeAwayWhatWasBegun() const;

private:
    std::string m_path;
    std::set<std::string> m_there;
};

/// The wall clock, with the offset of this machine's time zone.
Moment now();

} // namespace latchround::headless
