// Opens a register file that is there: refuses what is not a sound register of this program without
// changing a byte of it, then asks SQLite for what durability needs and checks every answer.
#pragma once

#include <memory>

#include <QString>

#include "app/register/open_options.h"
#include "app/register/sqlite_connection.h"

namespace latchround {

Result<std::unique_ptr<SqliteConnection>> openRegisterFile(const QString& file,
                                                           const OpenOptions& options);

} // namespace latchround
