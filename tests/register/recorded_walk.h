// Records a walk action by action, and says of a register file afterwards how much of the walk it
// holds.
#pragma once

#include <string>
#include <vector>

#include <QString>

#include "app/register/sqlite_register.h"
#include "tests/register/sample_facts.h"

namespace latchround {

Result<> perform(Register& opened, const Action& action);

/// What lies in a register file after whatever happened to it.
struct Found {
    std::string fault;       ///< empty: it opened, is sound, and nothing in it is half
    std::size_t actions = 0; ///< so many whole actions of the walk, from its beginning
};

/// Opens the file as the program does, asks SQLite itself for soundness, and compares with the
/// walk.
Found lookInto(const QString& file, const std::vector<Action>& walk, const QString& vfs = {});

/// A closed register with the sample arrangement adopted.
void makeRegister(const QString& file, const QString& vfs = {});

/// Copies a closed register over whatever lies at `to`, logs included.
void placeCopy(const QString& from, const QString& to);

} // namespace latchround
