#include "app/register/watched_log.h"

#include <cstddef>
#include <map>
#include <mutex>
#include <vector>

#include <sys/stat.h>

#include <QFile>
#include <QFileInfo>
#include <sqlite3.h>

#include "app/register/recording.h"
#include "app/register/transaction.h"

namespace latchround {

namespace {

constexpr int most_pages = 1000; // as SQLite has it by itself

} // namespace

QString logFileOf(const QString& register_file) {
    const QString whole = QFileInfo(register_file).canonicalFilePath();
    return (whole.isEmpty() ? register_file : whole) + QStringLiteral("-wal");
}

struct WatchedLog::Shared {
    std::mutex mutex;
    int watching = 0; ///< connections
    File file;
    std::vector<Fact> held;    ///< since the log was last empty, in their order
    std::ptrdiff_t let_go = 0; ///< how many were held before those
    bool is_owed = false;

    std::ptrdiff_t heldSoFar() {
        const std::lock_guard guard(mutex);
        return let_go + std::ssize(held);
    }
    /// Not what another connection has added since.
    void letGoOf(std::ptrdiff_t so_far) {
        const std::lock_guard guard(mutex);
        if (so_far <= let_go)
            return;
        held.erase(held.begin(), held.begin() + (so_far - let_go));
        let_go = so_far;
    }
};

std::shared_ptr<WatchedLog::Shared> WatchedLog::sharedBy(const QByteArray& path) {
    static std::mutex mutex;
    static std::map<QByteArray, std::weak_ptr<Shared>> all;
    const std::lock_guard guard(mutex);
    std::weak_ptr<Shared>& known = all[path];
    auto shared = known.lock();
    if (!shared)
        known = shared = std::make_shared<Shared>();
    return shared;
}

WatchedLog::WatchedLog(const QString& register_file)
    : m_path(QFile::encodeName(logFileOf(register_file)))
    , m_shared(sharedBy(m_path)) {}

WatchedLog::File WatchedLog::there() const {
    struct stat found {};
    return ::stat(m_path.constData(), &found) == 0 ? File{found.st_dev, found.st_ino} : File{};
}

void WatchedLog::watch(SqliteConnection& connection) {
    m_is_watched = true;
    {
        const std::lock_guard guard(m_shared->mutex);
        if (m_shared->watching++ == 0)
            m_shared->file = there();
    }
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
    const std::lock_guard guard(m_shared->mutex);
    const File now = there();
    if (m_shared->file == File{})
        m_shared->file = now;
    return now != m_shared->file;
}

bool WatchedLog::isShared() const {
    const std::lock_guard guard(m_shared->mutex);
    return m_shared->watching > (m_is_watched ? 1 : 0);
}

bool WatchedLog::isTakenFromOthers() const {
    if (!isShared())
        return false;
    const std::lock_guard guard(m_shared->mutex);
    return m_shared->file != File{} && m_shared->file != there();
}

void WatchedLog::hold(std::span<const Fact> facts) {
    if (!m_is_watched)
        return;
    const std::lock_guard guard(m_shared->mutex);
    m_shared->held.insert(m_shared->held.end(), facts.begin(), facts.end());
}

void WatchedLog::empty(SqliteConnection& connection) {
    if (m_is_watched)
        empty(connection.handle());
}

void WatchedLog::empty(sqlite3* handle) {
    if (isTaken())
        return;
    const std::ptrdiff_t held = m_shared->heldSoFar();
    int pages = 0;
    int put_in = 0;
    if (sqlite3_wal_checkpoint_v2(handle, nullptr, SQLITE_CHECKPOINT_PASSIVE, &pages, &put_in) ==
            SQLITE_OK &&
        put_in == pages)
        m_shared->letGoOf(held);
}

void WatchedLog::leave(SqliteConnection& connection) {
    if (!m_is_watched)
        return;
    const bool is_taken = isTaken();
    if (is_taken)
        sqlite3_db_config(connection.handle(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr);
    const std::lock_guard guard(m_shared->mutex);
    m_shared->is_owed = m_shared->is_owed || is_taken;
    m_shared->watching -= 1;
    m_is_watched = false;
}

bool WatchedLog::isOwed() const {
    const std::lock_guard guard(m_shared->mutex);
    return m_shared->is_owed;
}

Result<> WatchedLog::writeAgain(SqliteConnection& connection) {
    Result<Transaction> transaction = Transaction::begin(connection, Transaction::Kind::Write);
    if (!transaction)
        return tl::unexpected(transaction.error());
    const auto held = [this] {
        const std::lock_guard guard(m_shared->mutex);
        return m_shared->held;
    }();
    Result<> done = writeEach(connection, held);
    if (done)
        done = transaction->commit();
    const std::lock_guard guard(m_shared->mutex);
    m_shared->is_owed = !done;
    return done;
}

} // namespace latchround
