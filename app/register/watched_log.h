// SQLite's log beside a register that this program writes in. Another program that removes it, or
// begins another in its place, takes away what it alone held: whether it is still there is asked
// after each commit, nothing of a log that was taken goes into a file that others may have written
// to since, and the facts that the log may be alone to hold are kept here, to be written again.
#pragma once

#include <cstdint>
#include <span>
#include <utility>
#include <vector>

#include <QByteArray>
#include <QString>

#include "app/register/sqlite_connection.h"
#include "core/evidence/fact.h"

struct sqlite3;

namespace latchround {

class WatchedLog {
public:
    explicit WatchedLog(const QString& register_file);
    WatchedLog(const WatchedLog&) = delete;
    WatchedLog& operator=(const WatchedLog&) = delete;

    /// Of a connection that has just been opened to write. Until then nothing is watched.
    void watch(SqliteConnection& connection);
    /// Another file lies in its place, or none.
    bool isTaken();
    /// These were said to be saved.
    void hold(std::span<const Fact> facts);
    /// What it holds goes into the register, as far as nobody reads what was there before.
    void empty(SqliteConnection& connection);
    /// Before a connection is closed. SQLite then empties a log that is still there, and leaves one
    /// that was taken.
    void leave(SqliteConnection& connection);
    /// A log was taken, and what was held has not been looked for since.
    bool isOwed() const { return m_is_owed; }
    /// Writes what was held and is not in the register any more.
    Result<> writeAgain(SqliteConnection& connection);

private:
    using File = std::pair<std::uint64_t, std::uint64_t>; ///< device and number; 0, 0: none
    File there() const;
    void empty(sqlite3* handle);

    QByteArray m_path;
    bool m_is_watched = false;
    File m_file;
    std::vector<Fact> m_held; ///< since the log was last empty, in their order
    bool m_is_owed = false;
};

} // namespace latchround
