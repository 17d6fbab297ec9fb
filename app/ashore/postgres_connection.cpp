#include "app/ashore/postgres_connection.h"

#include <utility>

#include <QSqlError>
#include <QUuid>

#include "core/error/ashore_errors.h"

namespace latchround {

namespace {

// Codes of PostgreSQL's manual, appendix A. What libpq says of itself has none.
bool meansLost(const QString& code) {
    return code.isEmpty() || code.startsWith(QLatin1String("08")) ||
           code.startsWith(QLatin1String("57P"));
}
const QString foreign_key_violation = QStringLiteral("23503");

/// The server's first line says what; the rest says where in our own SQL.
std::string firstLineOf(const QString& text) {
    QString line = text.section(QLatin1Char('\n'), 0, 0).trimmed();
    for (const QLatin1String before : {QLatin1String("ERROR:"), QLatin1String("FATAL:")})
        if (line.startsWith(before))
            line = line.mid(before.size()).trimmed();
    return line.toStdString();
}

} // namespace

PostgresConnection::PostgresConnection(QString name, std::string where)
    : m_name(std::move(name))
    , m_where(std::move(where)) {}

Result<std::unique_ptr<PostgresConnection>> PostgresConnection::connect(const DatabaseUrl& url) {
    const QString name =
        QStringLiteral("ashore-") + QUuid::createUuid().toString(QUuid::WithoutBraces);
    std::unique_ptr<PostgresConnection> connection(new PostgresConnection(name, url.shown()));
    QSqlDatabase& database = connection->m_database;
    database = QSqlDatabase::addDatabase(QStringLiteral("QPSQL"), name);
    if (!database.isValid())
        return tl::unexpected(Error{url.shown(), errors::no_postgresql_driver()});
    database.setHostName(QString::fromStdString(url.host));
    if (url.port > 0)
        database.setPort(url.port);
    database.setUserName(QString::fromStdString(url.user));
    database.setPassword(QString::fromStdString(url.password));
    database.setDatabaseName(QString::fromStdString(url.database));
    database.setConnectOptions(QString::fromStdString(connectOptions(url)));
    if (!database.open())
        return tl::unexpected(Error{
            url.shown(), errors::no_connection(firstLineOf(database.lastError().databaseText()))});
    if (Result<> done = connection->script("SET client_min_messages TO warning"); !done)
        return tl::unexpected(done.error());
    return connection;
}

PostgresConnection::~PostgresConnection() {
    m_prepared.clear();
    m_database.close();
    m_database = QSqlDatabase();
    QSqlDatabase::removeDatabase(m_name);
}

tl::unexpected<Error> PostgresConnection::fault(const QSqlError& error) {
    m_lost = meansLost(error.nativeErrorCode());
    m_misses_reference = error.nativeErrorCode() == foreign_key_violation;
    if (m_lost)
        return tl::unexpected(Error{m_where, errors::connection_cut()});
    return tl::unexpected(Error{m_where, errors::database_said(firstLineOf(error.databaseText()))});
}

Result<int> PostgresConnection::run(const std::string& sql, const QVariantList& values) {
    auto kept = m_prepared.find(sql);
    if (kept == m_prepared.end()) {
        QSqlQuery query(m_database);
        if (!query.prepare(QString::fromStdString(sql)))
            return fault(query.lastError());
        kept = m_prepared.emplace(sql, std::move(query)).first;
    }
    QSqlQuery& query = kept->second;
    for (qsizetype i = 0; i < values.size(); ++i)
        query.bindValue(static_cast<int>(i), values[i]);
    if (!query.exec())
        return fault(query.lastError());
    const int added = query.numRowsAffected();
    query.finish();
    return added;
}

Result<> PostgresConnection::each(const std::string& sql, const QVariantList& values,
                                  const OnRow& on_row) {
    QSqlQuery query(m_database);
    query.setForwardOnly(true);
    if (!query.prepare(QString::fromStdString(sql)))
        return fault(query.lastError());
    for (const QVariant& value : values)
        query.addBindValue(value);
    if (!query.exec())
        return fault(query.lastError());
    while (query.next())
        on_row(query);
    // A line that breaks on the way looks like the end of the rows.
    if (query.lastError().isValid())
        return fault(query.lastError());
    return {};
}

Result<std::optional<std::string>> PostgresConnection::single(const std::string& sql,
                                                              const QVariantList& values) {
    std::optional<std::string> found;
    bool first = true;
    const Result<> done = each(sql, values, [&](const QSqlQuery& row) {
        if (std::exchange(first, false) && !row.isNull(0))
            found = row.value(0).toString().toStdString();
    });
    if (!done)
        return tl::unexpected(done.error());
    return found;
}

Result<> PostgresConnection::script(const std::string& sql) {
    QSqlQuery query(m_database);
    if (!query.exec(QString::fromStdString(sql)))
        return fault(query.lastError());
    // The driver reports the first statement; a fault of a later one comes with its answer.
    while (query.nextResult()) {
    }
    if (query.lastError().isValid())
        return fault(query.lastError());
    return {};
}

Result<PostgresTransaction> PostgresTransaction::begin(PostgresConnection& connection) {
    if (Result<> done = connection.script("BEGIN"); !done)
        return tl::unexpected(done.error());
    return PostgresTransaction(connection);
}

PostgresTransaction::PostgresTransaction(PostgresTransaction&& other) noexcept
    : m_connection(std::exchange(other.m_connection, nullptr)) {}

PostgresTransaction::~PostgresTransaction() {
    if (m_connection && !m_connection->isLost())
        (void)m_connection->script("ROLLBACK");
}

Result<> PostgresTransaction::commit() {
    // Checked first and by itself: COMMIT after a fault rolls back and calls it done.
    if (Result<> done = m_connection->script("SET CONSTRAINTS ALL IMMEDIATE"); !done)
        return done;
    return std::exchange(m_connection, nullptr)->script("COMMIT");
}

} // namespace latchround
