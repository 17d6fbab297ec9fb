// One action of a person: all of it or none. Commit is said aloud; leaving without it rolls back.
#pragma once

#include "app/register/sqlite_connection.h"

namespace latchround {

class Transaction {
public:
    /// Write takes the write lock at once (BEGIN IMMEDIATE), so a conflict shows before any work is
    /// done. Read holds one state of the register still while several questions are asked.
    enum class Kind { Read, Write };

    static Result<Transaction> begin(SqliteConnection& connection, Kind kind);
    Transaction(Transaction&& other) noexcept;
    Transaction& operator=(Transaction&&) = delete;
    ~Transaction();

    /// Done means: on disk.
    Result<> commit();

private:
    explicit Transaction(SqliteConnection& connection, Doing before)
        : m_connection(&connection)
        , m_before(before) {}
    SqliteConnection* m_connection;
    Doing m_before;
};

} // namespace latchround
