// SQLite's log beside a register that this program writes in. Another program that removes it, or
// begins another in its place, takes away what it alone held: whether it is still there is asked
// after each commit, nothing of a log that was taken goes into a file that others may have written
// to since, and the facts that the log may be alone to hold are kept here, to be written again.
// All that this program has open of one register know one log and what it holds, as SQLite has it.
#pragma once

#include <cstdint>
#include <memory>
#include <span>
#include <utility>

#include <QByteArray>
#include <QString>

#include "app/register/sqlite_connection.h"
#include "core/evidence/fact.h"

struct sqlite3;

namespace latchround {

/// Where it lies; one place, whichever links lead to the register.
QString logFileOf(const QString& register_file);

class WatchedLog {
public:
    explicit WatchedLog(const QString& register_file);
    WatchedLog(const WatchedLog&) = delete;
    WatchedLog& operator=(const WatchedLog&) = delete;

    /// Of a connection that has just been opened to write, until it is left.
    void watch(SqliteConnection& connection);
    /// Another file lies in its place, or none.
    bool isTaken();
    /// Other connections of this program are open.
    bool isShared() const;
    /// Their log was taken: a further one would take what lies there now for that log, and make
    /// rubbish of the register.
    bool isTakenFromOthers() const;
    /// These were said to be saved.
    void hold(std::span<const Fact> facts);
    /// What it holds goes into the register, as far as nobody reads what was there before.
    void empty(SqliteConnection& connection);
    /// Before a connection is closed. SQLite then empties a log that is still there, and leaves one
    /// that was taken.
    void leave(SqliteConnection& connection);
    /// A log was taken and left, and what was held has not been looked for since.
    bool isOwed() const;
    /// Writes what was held and is not in the register any more.
    Result<> writeAgain(SqliteConnection& connection);

private:
    using File = std::pair<std::uint64_t, std::uint64_t>; ///< device and number; 0, 0: none
    struct Shared;
    static std::shared_ptr<Shared> sharedBy(const QByteArray& path);
    File there() const;
    void empty(sqlite3* handle);

    QByteArray m_path;
    std::shared_ptr<Shared> m_shared;
    bool m_is_watched = false;
};

} // namespace latchround
