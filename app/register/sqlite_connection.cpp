#include "app/register/sqlite_connection.h"

#include <utility>

#include <QSqlDriver>
#include <QSqlError>
#include <QUrl>
#include <QUuid>
#include <QVariant>
#include <sqlite3.h>

namespace latchround {

namespace {

QString uriOf(const QString& file, FileMode mode, const QString& vfs) {
    QString uri = QStringLiteral("file:") + QString::fromLatin1(QUrl::toPercentEncoding(file, "/"));
    uri += mode == FileMode::Create ? QStringLiteral("?mode=rwc") : QStringLiteral("?mode=rw");
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
        return tl::unexpected(Complaint{file.toStdString(), "Qt's SQLite driver is not installed.",
                                        "Install the package libqt6sql6-sqlite."});
    database.setConnectOptions(
        QStringLiteral("QSQLITE_OPEN_URI;QSQLITE_BUSY_TIMEOUT=%1").arg(busy_timeout_ms));
    database.setDatabaseName(uriOf(file, mode, vfs));
    if (!database.open())
        return tl::unexpected(connection->complaint(database.lastError()));
    const QVariant handle = database.driver()->handle();
    if (qstrcmp(handle.typeName(), "sqlite3*") != 0)
        return tl::unexpected(Complaint{file.toStdString(), "Qt's SQLite driver is not usable.",
                                        "Install the package libqt6sql6-sqlite."});
    connection->m_handle = *static_cast<sqlite3* const*>(handle.constData());
    return connection;
}

SqliteConnection::~SqliteConnection() {
    m_statements.clear();
    m_database.close();
    m_database = QSqlDatabase();
    QSqlDatabase::removeDatabase(m_name);
}

Complaint SqliteConnection::complaint(int code, const std::string& detail) {
    m_spent = m_spent || needsReopening(code);
    return complaintOf(code, detail, m_where, m_doing);
}

Complaint SqliteConnection::complaint(const QSqlError& error) {
    return complaint(error.nativeErrorCode().toInt(), error.databaseText().toStdString());
}

Result<QSqlQuery*> SqliteConnection::executed(std::string_view sql, const Values& values) {
    auto found = m_statements.find(sql);
    if (found == m_statements.end()) {
        QSqlQuery query(m_database);
        query.setForwardOnly(true);
        if (!query.prepare(QString::fromUtf8(sql.data(), static_cast<qsizetype>(sql.size()))))
            return tl::unexpected(complaint(query.lastError()));
        found = m_statements.emplace(std::string(sql), std::move(query)).first;
    }
    QSqlQuery& query = found->second;
    for (int i = 0; i < values.size(); ++i)
        query.bindValue(i, values[i]);
    if (!query.exec()) {
        const Complaint fault = complaint(query.lastError());
        query.finish();
        return tl::unexpected(fault);
    }
    return &query;
}

Result<int> SqliteConnection::run(std::string_view sql, const Values& values) {
    const Result<QSqlQuery*> query = executed(sql, values);
    if (!query)
        return tl::unexpected(query.error());
    const int changed = (*query)->numRowsAffected();
    (*query)->finish();
    return changed;
}

Done SqliteConnection::each(std::string_view sql, const Values& values, const OnRow& on_row) {
    const Result<QSqlQuery*> query = executed(sql, values);
    if (!query)
        return tl::unexpected(query.error());
    bool sound = true;
    while (sound && (*query)->next()) {
        Row row(**query);
        on_row(row);
        sound = row.isSound();
    }
    const QSqlError error = (*query)->lastError();
    (*query)->finish();
    if (error.isValid())
        return tl::unexpected(complaint(error));
    if (!sound)
        return tl::unexpected(complaint(SQLITE_CORRUPT, "a row holds an unknown word"));
    return {};
}

Result<std::string> SqliteConnection::single(std::string_view sql, const Values& values) {
    std::string answer;
    bool first = true;
    const Done done = each(sql, values, [&](Row& row) {
        if (std::exchange(first, false))
            answer = row.text(0);
    });
    if (!done)
        return tl::unexpected(done.error());
    return answer;
}

Done SqliteConnection::script(const char* sql) {
    const int code = sqlite3_exec(m_handle, sql, nullptr, nullptr, nullptr);
    if (code != SQLITE_OK)
        return tl::unexpected(
            complaint(sqlite3_extended_errcode(m_handle), sqlite3_errmsg(m_handle)));
    return {};
}

} // namespace latchround
