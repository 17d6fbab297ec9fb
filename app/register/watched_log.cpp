#include "app/register/watched_log.h"

#include <sys/stat.h>

#include <QFile>
#include <sqlite3.h>

#include "app/register/recording.h"
#include "app/register/transaction.h"

namespace latchround {

namespace {

constexpr int most_pages = 1000; // as SQLite has it by itself

} // namespace

WatchedLog::WatchedLog(const QString& register_file)
    : m_path(QFile::encodeName(register_file + QStringLiteral("-wal"))) {}

WatchedLog::File WatchedLog::there() const {
    struct stat found {};
    return ::stat(m_path.constData(), &found) == 0 ? File{found.st_dev, found.st_ino} : File{};
}

void WatchedLog::watch(SqliteConnection& connection) {
    m_is_watched = true;
    m_file = there();
    // In place of SQLite's own, which would empty a log that was taken.
    const auto after_commit = [](void* log, sqlite3* handle, const char*, int pages) {
        if (pages >= most_pages)
            static_cast<WatchedLog*>(log)->empty(handle);
        return SQLITE_OK;
    };
    sqlite3_wal_hook(connection.handle(), after_commit, this);
}

bool WatchedLog::isTaken() {
    if (!m_is_watched)
        return false;
    const File now = there();
    if (m_file == File{})
        m_file = now;
    return now != m_file;
}

void WatchedLog::hold(std::span<const Fact> facts) {
    if (m_is_watched)
        m_held.insert(m_held.end(), facts.begin(), facts.end());
}

void WatchedLog::empty(SqliteConnection& connection) {
    if (m_is_watched)
        empty(connection.handle());
}

void WatchedLog::empty(sqlite3* handle) {
    if (isTaken())
        return;
    int pages = 0;
    int put_in = 0;
    if (sqlite3_wal_checkpoint_v2(handle, nullptr, SQLITE_CHECKPOINT_PASSIVE, &pages, &put_in) ==
            SQLITE_OK &&
        put_in == pages)
        m_held.clear();
}

void WatchedLog::leave(SqliteConnection& connection) {
    if (!isTaken())
        return;
    sqlite3_db_config(connection.handle(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr);
    m_is_owed = true;
}

Result<> WatchedLog::writeAgain(SqliteConnection& connection) {
    Result<Transaction> transaction = Transaction::begin(connection, Transaction::Kind::Write);
    if (!transaction)
        return tl::unexpected(transaction.error());
    Result<> done = writeEach(connection, m_held);
    if (done)
        done = transaction->commit();
    m_is_owed = !done;
    return done;
}

} // namespace latchround
