// A second opinion: the file through SQLite's own interface, without any of the code under test.
#pragma once

#include <string>
#include <vector>

#include <QString>
#include <sqlite3.h>

namespace latchround {

class RawSqlite {
public:
    explicit RawSqlite(const QString& file) {
        sqlite3_open_v2(file.toUtf8().constData(), &m_handle,
                        SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE, nullptr);
        sqlite3_extended_result_codes(m_handle, 1);
    }
    RawSqlite(const RawSqlite&) = delete;
    RawSqlite& operator=(const RawSqlite&) = delete;
    ~RawSqlite() { sqlite3_close(m_handle); }

    /// The result code; the first columns of all rows are kept in `column`.
    int run(const std::string& sql) {
        column.clear();
        return sqlite3_exec(
            m_handle, sql.c_str(),
            [](void* self, int, char** values, char**) {
                static_cast<RawSqlite*>(self)->column.emplace_back(values[0] != nullptr ? values[0]
                                                                                        : "NULL");
                return 0;
            },
            this, nullptr);
    }
    std::string single(const std::string& sql) {
        const int code = run(sql);
        if (code != SQLITE_OK)
            return "code " + std::to_string(code);
        return column.empty() ? "" : column.front();
    }
    std::string message() const { return sqlite3_errmsg(m_handle); }
    sqlite3* handle() const { return m_handle; }

    std::vector<std::string> column;

private:
    sqlite3* m_handle = nullptr;
};

} // namespace latchround
