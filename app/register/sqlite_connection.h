// One connection to a register file, opened by Qt's SQLite driver under a name of its own; its
// statements are SQLite's own, prepared once and kept for the next time. Knows SQL and errors;
// nothing of doors. One thread only.
#pragma once

#include <functional>
#include <initializer_list>
#include <memory>
#include <string>
#include <string_view>
#include <unordered_map>

#include <QSqlDatabase>
#include <QString>

#include "app/register/row.h"
#include "app/register/sql_values.h"
#include "app/register/sqlite_words.h"
#include "core/error/error.h"
#include "core/store/register.h"

struct sqlite3;
struct sqlite3_stmt;
class QSqlError;

namespace latchround {

/// Still: as Read, of a file that nobody has open; nothing is made beside it.
enum class FileMode { Still, Read, ReadWrite, Create };

class SqliteConnection {
public:
    static Result<std::unique_ptr<SqliteConnection>>
    connect(const QString& file, FileMode mode, const QString& vfs, int busy_timeout_ms);
    SqliteConnection(const SqliteConnection&) = delete;
    SqliteConnection& operator=(const SqliteConnection&) = delete;
    ~SqliteConnection();

    using OnRow = std::function<void(Row&)>;

    /// Runs a statement that gives no rows; the answer is how many rows it added.
    Result<int> run(std::string_view sql, Values values);
    Result<int> run(std::string_view sql, std::initializer_list<Value> values = {}) {
        return run(sql, Values(values.begin(), values.size()));
    }
    /// Runs a statement and hands over each row of its answer. A row that is not sound ends it. On
    /// the way the same statement must not be run again.
    Result<> each(std::string_view sql, Values values, const OnRow& on_row);
    Result<> each(std::string_view sql, std::initializer_list<Value> values, const OnRow& on_row) {
        return each(sql, Values(values.begin(), values.size()), on_row);
    }
    /// First column of the first row, as text; empty where there is no row.
    Result<std::string> single(std::string_view sql, std::initializer_list<Value> values = {});
    /// Several statements at once, without values: a migration.
    Result<> script(const char* sql);

    /// From now on faults are about opening, reading or saving.
    void setDoing(Doing doing) { m_doing = doing; }
    Doing doing() const { return m_doing; }
    /// A fault came after which this connection must not write again.
    bool mustReopen() const { return m_must_reopen; }
    void spend() { m_must_reopen = true; }
    Error error(int code, const std::string& detail);
    const std::string& where() const { return m_where; }
    /// SQLite's own handle. Debian's Qt driver and this program share one libsqlite3.
    sqlite3* handle() const { return m_handle; }

private:
    SqliteConnection(QString name, const QString& file);
    Result<sqlite3_stmt*> bound(std::string_view sql, Values values);
    Error error(const QSqlError& fault);
    Error lastError();

    struct Finalize {
        void operator()(sqlite3_stmt* statement) const;
    };
    using Statement = std::unique_ptr<sqlite3_stmt, Finalize>;
    struct SqlHash : std::hash<std::string_view> {
        using is_transparent = void;
    };

    QString m_name;
    std::string m_where;
    QSqlDatabase m_database;
    sqlite3* m_handle = nullptr;
    std::unordered_map<std::string, Statement, SqlHash, std::equal_to<>> m_statements;
    Doing m_doing = Doing::Opening;
    bool m_must_reopen = false;
};

} // namespace latchround
