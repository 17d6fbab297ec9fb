// One connection to a register file through Qt's SQLite driver, under a name of its own, with its
// prepared statements kept for the next time. Knows SQL and complaints; nothing of doors. One
// thread only.
#pragma once

#include <functional>
#include <map>
#include <memory>
#include <string>
#include <string_view>

#include <QSqlDatabase>
#include <QSqlQuery>
#include <QString>

#include "app/register/row.h"
#include "app/register/sql_values.h"
#include "app/register/sqlite_words.h"
#include "core/complaint.h"
#include "core/store/register.h"

struct sqlite3;

namespace latchround {

enum class FileMode { ReadWrite, Create };

class SqliteConnection {
public:
    static Result<std::unique_ptr<SqliteConnection>>
    connect(const QString& file, FileMode mode, const QString& vfs, int busy_timeout_ms);
    SqliteConnection(const SqliteConnection&) = delete;
    SqliteConnection& operator=(const SqliteConnection&) = delete;
    ~SqliteConnection();

    using OnRow = std::function<void(Row&)>;

    /// Runs a statement that gives no rows; the answer is how many rows it added.
    Result<int> run(std::string_view sql, const Values& values = {});
    /// Runs a statement and hands over each row of its answer. A row that is not sound ends it.
    Done each(std::string_view sql, const Values& values, const OnRow& on_row);
    /// First column of the first row, as text; empty where there is no row.
    Result<std::string> single(std::string_view sql, const Values& values = {});
    /// Several statements at once, without values: a migration.
    Done script(const char* sql);

    /// From now on faults are about opening, reading or saving.
    void setDoing(Doing doing) { m_doing = doing; }
    Doing doing() const { return m_doing; }
    /// A fault came after which this connection must not write again.
    bool isSpent() const { return m_spent; }
    Complaint complaint(int code, const std::string& detail);
    const std::string& where() const { return m_where; }
    /// SQLite's own handle. Debian's Qt driver and this program share one libsqlite3.
    sqlite3* handle() const { return m_handle; }

private:
    SqliteConnection(QString name, const QString& file);
    Result<QSqlQuery*> executed(std::string_view sql, const Values& values);
    Complaint complaint(const QSqlError& error);

    QString m_name;
    std::string m_where;
    QSqlDatabase m_database;
    sqlite3* m_handle = nullptr;
    std::map<std::string, QSqlQuery, std::less<>> m_statements;
    Doing m_doing = Doing::Opening;
    bool m_spent = false;
};

} // namespace latchround
