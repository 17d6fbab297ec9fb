// Opens a register file that is there: refuses what is not a sound register of this program without
// changing a byte of it, then asks SQLite for what durability needs and checks every answer.
#pragma once

#include <memory>

#include <QString>

#include "app/register/open_options.h"
#include "app/register/sqlite_connection.h"
#include "core/progress_range.h"

namespace latchround {

Result<std::unique_ptr<SqliteConnection>> openRegisterFile(const QString& file,
                                                           const OpenOptions& options);

/// A connection that only looks, into a vessel's register of whatever version that this program
/// knows: no lock is held against anybody, nothing is changed or left beside the file, and whether
/// all of it is sound is not asked.
Result<std::unique_ptr<SqliteConnection>> lookInto(const QString& file);

/// Looks whether the whole file is sound, which takes as long as reading it.
Result<> checkWhole(const QString& file, const Progress& progress = {});

} // namespace latchround
