// The first 100 bytes of a file, read without opening it as a database: enough to say whether it is
// a register and of which version, before anything beside it is made or changed.
#pragma once

#include <cstdint>

#include <QString>

#include "core/error/error.h"

namespace latchround {

struct FileHeader {
    std::int64_t size = 0;            ///< of the file, bytes
    bool is_sqlite = false;           ///< begins with SQLite's magic text
    std::uint32_t application_id = 0; ///< offset 68
    std::uint32_t user_version = 0; ///< offset 60; newer pages may still lie in the write-ahead log
};

/// Reads through SQLite's own file layer: a descriptor opened and closed beside it would drop the
/// locks that another connection of this process holds (sqlite.org/howtocorrupt.html, 2.2).
Result<FileHeader> readHeader(const QString& file, const QString& vfs);

} // namespace latchround
