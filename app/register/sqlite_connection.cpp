#include "app/register/sqlite_connection.h"

#include <utility>

#include <QSqlDriver>
#include <QSqlError>
#include <QUrl>
#include <QUuid>
#include <QVariant>
#include <sqlite3.h>

#include "core/error/register_errors.h"

namespace latchround {

namespace {

QString uriOf(const QString& file, FileMode mode, const QString& vfs) {
    QString uri = QStringLiteral("file:") + QString::fromLatin1(QUrl::toPercentEncoding(file, "/"));
    uri += mode == FileMode::Create      ? QStringLiteral("?mode=rwc")
           : mode == FileMode::ReadWrite ? QStringLiteral("?mode=rw")
           : mode == FileMode::Still     ? QStringLiteral("?mode=ro&immutable=1")
                                         : QStringLiteral("?mode=ro");
    if (!vfs.isEmpty())
        uri += QStringLiteral("&vfs=") + vfs;
    return uri;
}

} // namespace

SqliteConnection::SqliteConnection(QString name, const QString& file)
    : m_name(std::move(name))
    , m_where(file.toStdString()) {}

Result<std::unique_ptr<SqliteConnection>> SqliteConnection::connect(const QString& file,
                                                                    FileMode mode,
                                                                    const QString& vfs,
                                                                    int busy_timeout_ms) {
    const QString name =
        QStringLiteral("register-") + QUuid::createUuid().toString(QUuid::WithoutBraces);
    std::unique_ptr<SqliteConnection> connection(new SqliteConnection(name, file));
    QSqlDatabase& database = connection->m_database;
    database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), name);
    if (!database.isValid())
        return tl::unexpected(Error{connection->m_where, errors::no_sqlite_driver()});
    database.setConnectOptions(
        QStringLiteral("QSQLITE_OPEN_URI;QSQLITE_BUSY_TIMEOUT=%1").arg(busy_timeout_ms));
    database.setDatabaseName(uriOf(file, mode, vfs));
    if (!database.open())
        return tl::unexpected(connection->error(database.lastError()));
    const QVariant handle = database.driver()->handle();
    if (qstrcmp(handle.typeName(), "sqlite3*") != 0)
        return tl::unexpected(Error{connection->m_where, errors::sqlite_driver_unusable()});
    connection->m_handle = *static_cast<sqlite3* const*>(handle.constData());
    return connection;
}

SqliteConnection::~SqliteConnection() {
    m_statements.clear();
    m_database.close();
    m_database = QSqlDatabase();
    QSqlDatabase::removeDatabase(m_name);
}

Error SqliteConnection::error(int code, const std::string& detail) {
    m_must_reopen = m_must_reopen || needsReopening(code);
    return errorOf(code, detail, m_where, m_doing);
}

Error SqliteConnection::error(const QSqlError& fault) {
    return error(fault.nativeErrorCode().toInt(), fault.databaseText().toStdString());
}

Error SqliteConnection::lastError() {
    return error(sqlite3_extended_errcode(m_handle), sqlite3_errmsg(m_handle));
}

void SqliteConnection::Finalize::operator()(sqlite3_stmt* statement) const {
    sqlite3_finalize(statement);
}

Result<sqlite3_stmt*> SqliteConnection::bound(std::string_view sql, Values values) {
    auto found = m_statements.find(sql);
    if (found == m_statements.end()) {
        sqlite3_stmt* fresh = nullptr;
        if (sqlite3_prepare_v3(m_handle, sql.data(), static_cast<int>(sql.size()),
                               SQLITE_PREPARE_PERSISTENT, &fresh, nullptr) != SQLITE_OK)
            return tl::unexpected(lastError());
        found = m_statements.emplace(std::string(sql), Statement(fresh)).first;
    }
    sqlite3_stmt* statement = found->second.get();
    int place = 0;
    for (const Value& value : values)
        if (value.bindTo(statement, ++place) != SQLITE_OK)
            return tl::unexpected(lastError());
    return statement;
}

Result<int> SqliteConnection::run(std::string_view sql, Values values) {
    const Result<sqlite3_stmt*> statement = bound(sql, values);
    if (!statement)
        return tl::unexpected(statement.error());
    const int code = sqlite3_step(*statement);
    if (code != SQLITE_DONE && code != SQLITE_ROW) {
        const Error fault = lastError();
        sqlite3_reset(*statement);
        return tl::unexpected(fault);
    }
    const int changed = sqlite3_changes(m_handle);
    sqlite3_reset(*statement);
    return changed;
}

Result<> SqliteConnection::each(std::string_view sql, Values values, const OnRow& on_row) {
    const Result<sqlite3_stmt*> statement = bound(sql, values);
    if (!statement)
        return tl::unexpected(statement.error());
    bool sound = true;
    int code = SQLITE_ROW;
    while (sound && (code = sqlite3_step(*statement)) == SQLITE_ROW) {
        Row row(*statement);
        on_row(row);
        sound = row.isSound();
    }
    Result<> done;
    if (!sound)
        done = tl::unexpected(error(SQLITE_CORRUPT, "a row has an unknown word"));
    else if (code != SQLITE_DONE)
        done = tl::unexpected(lastError());
    sqlite3_reset(*statement);
    return done;
}

Result<std::string> SqliteConnection::single(std::string_view sql,
                                             std::initializer_list<Value> values) {
    std::string answer;
    bool first = true;
    const Result<> done = each(sql, values, [&](Row& row) {
        if (std::exchange(first, false))
            answer = row.text(0);
    });
    if (!done)
        return tl::unexpected(done.error());
    return answer;
}

Result<> SqliteConnection::script(const char* sql) {
    const int code = sqlite3_exec(m_handle, sql, nullptr, nullptr, nullptr);
    if (code != SQLITE_OK)
        return tl::unexpected(lastError());
    return {};
}

} // namespace latchround
