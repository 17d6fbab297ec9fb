// Makes the handover file of a register.
#pragma once

#include <filesystem>
#include <optional>
#include <string>

#include "app/exchange/durable_file.h"
#include "app/handover/cover_sheet.h"
#include "app/register/merge.h"
#include "app/register/sqlite_register.h"

namespace latchround {

struct Giving {
    Moment when;
    std::string program;                   ///< name and version of what makes it
    std::optional<std::string> sealed_for; ///< the receiver's public key in hex
};

/// The bytes of the file. Refuses a register that holds no vessel yet.
struct Given {
    CoverSheet sheet;
    std::string bytes;
};
Result<Given> handoverOf(SqliteRegister& from, const Giving& giving, const Progress& progress = {});

/// The same into a file, which is whole afterwards or, after an error, untouched; never over the
/// register itself.
Result<CoverSheet> giveTo(const std::filesystem::path& to, SqliteRegister& from,
                          const Giving& giving, IfThere if_there, const Progress& progress = {});

} // namespace latchround
