// How a register file is opened. The defaults are what ships; the other members let a test stand
// between SQLite and the disk without another code path.
#pragma once

#include <functional>

#include <QString>

#include "app/register/register_kind.h"

struct sqlite3;

namespace latchround {

struct OpenOptions {
    RegisterKind kind = RegisterKind::Vessel; ///< a file of the other kind is refused
    bool only_read =
        false; ///< another program writes in it: nothing is changed, its log least of all
    bool is_open_already = false; ///< by this program: its log is in use, and no leftover
    bool is_checked = false;    ///< this program has looked already whether the whole file is sound
    int busy_timeout_ms = 5000; ///< how long a write waits for another program's write
    QString vfs;                ///< name of a VFS known to SQLite; empty: the system's own
    std::function<void(sqlite3*)> after_open; ///< last step of opening; empty: none
};

} // namespace latchround
