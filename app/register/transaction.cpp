#include "app/register/transaction.h"

#include <utility>

#include <sqlite3.h>

namespace latchround {

Result<Transaction> Transaction::begin(SqliteConnection& connection, Kind kind) {
    const Doing before = connection.doing();
    if (kind == Kind::Write)
        connection.setDoing(Doing::Saving);
    const Result<int> begun = connection.run(kind == Kind::Write ? "BEGIN IMMEDIATE" : "BEGIN");
    if (!begun) {
        connection.setDoing(before);
        return tl::unexpected(begun.error());
    }
    return Transaction(connection, before);
}

Transaction::Transaction(Transaction&& other) noexcept
    : m_connection(std::exchange(other.m_connection, nullptr))
    , m_before(other.m_before) {}

Transaction::~Transaction() {
    if (m_connection == nullptr)
        return;
    // After some faults SQLite has rolled back by itself; a second ROLLBACK would be an error of
    // its own.
    if (sqlite3_get_autocommit(m_connection->handle()) == 0)
        static_cast<void>(m_connection->run("ROLLBACK"));
    m_connection->setDoing(m_before);
}

Result<> Transaction::commit() {
    const Result<int> committed = m_connection->run("COMMIT");
    if (!committed)
        return tl::unexpected(committed.error());
    return {};
}

} // namespace latchround
