// One connection to PostgreSQL, by Qt's driver under a name of its own. Knows SQL and errors;
// nothing of doors. One thread only.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>

#include <QSqlDatabase>
#include <QSqlQuery>
#include <QVariant>

#include "app/ashore/database_url.h"
#include "core/store/register.h"

class QSqlError;

namespace latchround {

/// Text as the driver takes it.
inline QVariant pgText(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

class PostgresConnection {
public:
    static Result<std::unique_ptr<PostgresConnection>> connect(const DatabaseUrl& url);
    PostgresConnection(const PostgresConnection&) = delete;
    PostgresConnection& operator=(const PostgresConnection&) = delete;
    ~PostgresConnection();

    /// Runs a statement that gives no rows; the answer is how many rows it added. Prepared once and
    /// kept: over a long line every question counts.
    Result<int> run(const std::string& sql, const QVariantList& values = {});
    using OnRow = std::function<void(const QSqlQuery& row)>;
    /// Row by row, never all at once. On the way nothing else may be asked of this connection.
    Result<> each(const std::string& sql, const QVariantList& values, const OnRow& on_row);
    /// First column of the first row; nothing where there is no row or it is NULL.
    Result<std::optional<std::string>> single(const std::string& sql,
                                              const QVariantList& values = {});
    /// Several statements at once, without values.
    Result<> script(const std::string& sql);

    /// The last fault was that the server is not there any more; what was committed is.
    bool isLost() const { return m_lost; }
    /// The last fault was a row that refers to something that is not there.
    bool missesReference() const { return m_misses_reference; }
    const std::string& where() const { return m_where; }

private:
    PostgresConnection(QString name, std::string where);
    tl::unexpected<Error> fault(const QSqlError& error);

    QString m_name;
    std::string m_where;
    QSqlDatabase m_database;
    std::unordered_map<std::string, QSqlQuery> m_prepared;
    bool m_lost = false;
    bool m_misses_reference = false;
};

/// All of what follows or nothing: leaving without a commit rolls back.
class PostgresTransaction {
public:
    static Result<PostgresTransaction> begin(PostgresConnection& connection);
    PostgresTransaction(PostgresTransaction&& other) noexcept;
    PostgresTransaction& operator=(PostgresTransaction&&) = delete;
    ~PostgresTransaction();
    /// Done means: on the server's disk.
    Result<> commit();

private:
    explicit PostgresTransaction(PostgresConnection& connection)
        : m_connection(&connection) {}
    PostgresConnection* m_connection;
};

} // namespace latchround
